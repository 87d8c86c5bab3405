// The constants of scouts/.
#pragma once

#include "parameters/row.hpp"

// clang-format off
#define MAYBOUGH_SCOUTS_ROWS(ROW) \
    ROW(scout_share, "1", 0.05, 0.005, 0.2, fixed, 0.03, 0.06, published, "Seeley, Morse and Visscher 1979; Seeley and Chilcott 2015: 3-5 % of a swarm visit the chosen site", "share of the swarm's bees that scout for a home") \
    ROW(scouts_min, "1", 40, 5, 512, fixed, 20, 100, assumed, "", "scouts of the smallest swarm") \
    ROW(scouts_max, "1", 500, 5, 512, fixed, 300, 500, published, "Seeley, Morse and Visscher 1979: 300-500 scouts", "scouts of the largest swarm") \
    ROW(search_length_m, "m", 350, 50, 5000, ratio, 200, 700, derived, "Kohl and Rutschmann 2018, median 470 m danced near Gottingen; Seeley and Buhrman 1999", "distance over which the chance of a find near the swarm falls by the factor e") \
    ROW(far_search_share, "1", 0.35, 0, 1, fixed, 0.15, 0.5, fitted, "Villa 2004: new homes 0.2 to about 10 km away; Lindauer 1955; fitted by the house-hunts of `maybough verify`", "share of the search effort that goes to far flights") \
    ROW(far_search_length_m, "m", 2500, 50, 10000, fixed, 1500, 4000, fitted, "Villa 2004: new homes 0.2 to about 10 km away; Lindauer 1955; fitted by the house-hunts of `maybough verify`", "distance over which the chance of a find on far flights falls by the factor e") \
    ROW(farthest_find_m, "m", 8000, 300, 40000, fixed, 6000, 12000, derived, "Villa 2004: to about 10 km", "distance beyond which nothing is found") \
    ROW(coarse_beyond_m, "m", 1500, 0, 40000, fixed, 1500, 1500, derived, "a rule of arithmetic: one swarm finds any one of those cavities very seldom", "distance from the swarm beyond which one natural cavity in eight stands for eight") \
    ROW(find_chance, "1", 0.00043, 0, 0.05, fixed, 0.0001, 0.001, fitted, "Seeley and Buhrman 1999, Schneider 1995: about 12 sites advertised; fitted by the house-hunts of `maybough verify`", "chance that one search flight comes upon an ordinary cavity close by, at the search length find_length_m") \
    ROW(find_length_m, "m", 350, 50, 5000, fixed, 350, 350, derived, "search length for which the chance of a find holds; over a longer one the same effort is spread thinner", "search length at which find_chance holds") \
    ROW(company_find_gain, "1", 0.1, 0, 1, fixed, 0, 0.3, assumed, "Seeley 2010, from memory: bees at the entrance fan scent and draw others; size assumed", "share by which each bee outside a site raises the chance that a searching scout of her swarm comes upon it, up to a quorum's bees") \
    ROW(early_flights, "1", 1, 0, 6, fixed, 0, 3, from_memory, "Lindauer 1955; Rangel, Griffin and Seeley 2010: some scouts look at sites in the days before the swarm leaves", "search flights of each scout before the swarm left its hive; she knows what she found when it hangs") \
    ROW(visibility_find_ratio, "1", 1.75, 1, 4, fixed, 1.5, 2, derived, "Seeley and Morse 1978: exposed boxes are taken sooner, not preferred", "how much more often a cavity in plain sight is found than a hidden one") \
    ROW(volume_coefficient, "1", 1.23, 0, 6, ratio, 0.88, 3, fitted, "Seeley 1977; Schmidt and Hurley 1995; Seeley and Buhrman 2001; see tools/fit_traps. High end: Ithaca swarms that almost never took 17.5 l", "a in the volume term -a (ln V/V0)^2 of the log-odds") \
    ROW(volume_best_l, "l", 40, 10, 100, fixed, 30, 50, published, "Seeley and Morse 1976, Seeley 1977", "volume V0 that swarms like best") \
    ROW(entrance_coefficient, "1", 0.61, -1, 3, additive, 0.13, 1.09, fitted, "Seeley and Morse 1978: 12.5 over 75 cm2; see tools/fit_traps", "loss of log-odds for each factor e of entrance area away from the best") \
    ROW(entrance_best_cm2, "cm2", 12.5, 2, 100, fixed, 10, 15, published, "Seeley and Morse 1978; Seeley, Morse and Nowogrodzki 1989", "entrance area that swarms like best") \
    ROW(height_log_odds, "1", 1.1, -2, 4, additive, 0.24, 1.96, fitted, "Seeley and Morse 1978: 5 m over 1 m; see tools/fit_traps", "log-odds of an entrance at the full height against one at the low height") \
    ROW(height_low_m, "m", 1, 0, 3, fixed, 1, 1, published, "Seeley and Morse 1978", "low height of the published comparison") \
    ROW(height_full_m, "m", 5, 2, 20, fixed, 4, 7, published, "Seeley and Morse 1978", "height from which more is no better") \
    ROW(facing_log_odds, "1", 0.7, -2, 4, additive, -0.06, 1.46, fitted, "Seeley and Morse 1978: south over north; see tools/fit_traps", "log-odds of an entrance facing the midday sun against one facing away") \
    ROW(comb_log_odds, "1", 0.52, -2, 4, additive, -0.19, 1.24, fitted, "Schmidt 2001, Kohl et al. 2022, Free et al. 1981; see tools/fit_traps", "log-odds of old comb against none where there is no lure") \
    ROW(lure_log_odds, "1", 2.10, 0, 5, additive, 1.34, 2.87, fitted, "Free et al. 1981, Schmidt 1994, 2001; see tools/fit_traps", "log-odds of a fresh slow-release lure against none, finding and judging together") \
    ROW(lure_finding_share, "1", 0.5, 0, 1, fixed, 0.2, 0.8, assumed, "paired counts mix finding and choosing", "share of the lure's effect that acts by easier finding") \
    ROW(shade_log_odds, "1", 0.7, -2, 4, additive, -0.06, 1.46, fitted, "Seeley, Morse and Nowogrodzki 1989; see tools/fit_traps", "log-odds of full shade against full sun") \
    ROW(dryness_log_odds, "1", 0, -1, 2, fixed, 0, 0.5, published, "Seeley and Morse 1978: no preference shown", "log-odds of a dry cavity against a wet one") \
    ROW(distance_log_odds_per_km, "1/km", 0, -1, 1, fixed, 0, 0.4, from_memory, "Lindauer 1955, Seeley and Morse 1977: farther places preferred, Seeley, Morse and Nowogrodzki 1989: distance unimportant; 0 by default", "log-odds of a site a kilometre farther from the swarm against one as good nearer") \
    ROW(first_dance_runs, "1", 100, 10, 400, fixed, 60, 150, from_memory, "Seeley and Buhrman 2001: 100-150 runs for the best site, 30-60 for a poor one", "waggle runs of the first dance for a site of log-odds 0") \
    ROW(dance_slope, "1", 0.4, 0, 2, fixed, 0.3, 0.5, fitted, "by simulated paired trials, so that the log-odds of choice equal the difference of the scores", "change of ln(first dance) for one unit of log-odds") \
    ROW(most_dance_runs, "1", 250, 50, 1000, fixed, 200, 300, assumed, "", "longest first dance") \
    ROW(decay_runs, "1", 15, 1, 60, fixed, 10, 20, from_memory, "Seeley 2003", "waggle runs fewer at each return") \
    ROW(least_dance_runs, "1", 8, 1, 50, fixed, 5, 15, assumed, "", "a dance shorter than this is not danced: the scout retires") \
    ROW(judgement_error, "1", 0.8, 0, 4, fixed, 0.3, 1.5, assumed, "", "standard deviation of one scout's judgement, in log-odds") \
    ROW(taste_sd, "1", 0.75, 0, 4, fixed, 0.5, 1.3, fitted, "by simulated paired trials; the unexplained part of the conditional-logit model", "standard deviation, in log-odds, of what one swarm sees in a site beyond its score") \
    ROW(relax_per_h, "1/h", 0.15, 0, 1, fixed, 0.05, 0.25, assumed, "", "log-odds by which a swarm lowers its standards in an hour of scouting") \
    ROW(run_s, "s", 3, 1, 10, fixed, 2.5, 4, from_memory, "Seeley and Buhrman 2001", "duration of one waggle run with its return run") \
    ROW(flight_ms, "m/s", 7, 3, 12, fixed, 6.5, 7.5, published, "Wenner 1963", "a scout's cruising speed") \
    ROW(search_min, "min", 40, 5, 180, fixed, 20, 60, assumed, "Passino and Seeley 2006: expeditions of about 30 min", "duration of a search flight") \
    ROW(rest_min, "min", 30, 2, 240, fixed, 20, 60, assumed, "", "mean time an uncommitted scout rests between flights") \
    ROW(retire_rest_min, "min", 90, 2, 480, fixed, 30, 180, assumed, "", "mean rest of a scout that gave a site up") \
    ROW(follow_half_share, "1", 0.1, 0.001, 2, fixed, 0.05, 0.2, fitted, "Villa 2004: 20 daylight hours of house-hunting; fitted by the house-hunts of `maybough verify`", "dancers, as a share of all scouts, at which half of the uncommitted scouts follow a dance rather than search") \
    ROW(recruit_success, "1", 0.7, 0.05, 1, fixed, 0.4, 0.8, assumed, "", "share of recruits that find a place close by") \
    ROW(recruit_length_m, "m", 8000, 200, 20000, fixed, 4000, 12000, assumed, "", "distance over which the recruits' success falls by the factor e") \
    ROW(first_visit_min, "min", 20, 2, 180, fixed, 15, 60, derived, "Seeley 2019: about an hour on the first visit of a finder", "mean duration of a scout's first visit") \
    ROW(visit_min, "min", 7, 1, 120, fixed, 5, 15, assumed, "", "mean duration of a later visit") \
    ROW(home_min, "min", 50, 0.5, 120, fixed, 10, 60, assumed, "", "mean pause at the cluster between a dance and the next visit") \
    ROW(switch_chance, "1", 0.06, 0, 1, fixed, 0.02, 0.2, derived, "Seeley 2003: 23 of 27 losers retired before following a rival", "share of a returning scout's chance to follow that goes to following a rival before she has retired") \
    ROW(break_retire_chance, "1", 0.05, 0, 1, fixed, 0, 0.2, assumed, "", "chance that a scout gives her site up over a night or a spell without flight") \
    ROW(stop_chance, "1", 0.2, 0, 1, fixed, 0.05, 0.4, assumed, "Seeley et al. 2012", "chance that a dancer leaving the floor gives another one an effective stop signal, if she dances for another site") \
    ROW(quorum_outside, "1", 15, 2, 100, fixed, 10, 15, published, "Seeley and Visscher 2003: piping begins with 10-15 bees outside", "scouts seen together outside a site that make a quorum in a swarm with scouts_max scouts; fewer scouts in proportion") \
    ROW(quorum_least, "1", 5, 1, 50, fixed, 3, 8, assumed, "", "quorum of the smallest swarms") \
    ROW(outside_share, "1", 0.25, 0.05, 1, fixed, 0.23, 0.5, derived, "Seeley and Visscher 2003, 2009 account: 15 outside, 30-50 inside, so 15 of 45 to 65", "chance that a visitor is outside") \
    ROW(warm_up_min, "min", 60, 5, 240, fixed, 40, 80, published, "Seeley and Buhrman 1999; Seeley, Visscher and Passino 2006", "piping and warming between the quorum and lift-off") \
    ROW(swarm_flight_ms, "m/s", 2.5, 0.5, 8, fixed, 2, 3, from_memory, "Seeley, Morse and Visscher 1979; Beekman et al. 2006", "speed of the flying swarm") \
    ROW(settle_min, "min", 15, 0, 120, fixed, 10, 30, assumed, "", "slow start of the flying swarm and entering of its home") \
    ROW(robbed_days, "d", 7, 0, 60, fixed, 3, 21, assumed, "common practice, no published source: a dead colony's stores are robbed out in about a week", "days for which robbers crowd the nest of a colony that died; no swarm takes it before they are done") \
    ROW(honey_mg_per_bee_day, "mg", 6, 0.5, 30, fixed, 4, 12, derived, "Combs 1972; Otis et al. 1981: a swarm's load of 35-40 mg a bee lasts 3-10 days", "honey that a clustered bee uses in a day") \
    ROW(hunt_death_per_day, "1/d", 0.02, 0, 0.5, fixed, 0.01, 0.05, assumed, "a summer worker's life of 25-38 days (Winston 1987) would take 0.03 a day", "bees of a clustered swarm that die in a day") \
    ROW(longest_hunt_days, "d", 14, 1, 40, fixed, 10, 21, from_memory, "Lindauer 1955: up to two weeks in bad weather", "days after which the swarm gives up") \
    ROW(open_nest_chance, "1", 0.5, 0, 1, fixed, 0.3, 0.8, assumed, "Lindauer 1955: nests in the open are rare", "chance that a swarm that gives up builds in the open rather than disperses")
// clang-format on

namespace maybough::parameters {
struct ScoutParameters {
    MAYBOUGH_SCOUTS_ROWS(MAYBOUGH_MEMBER)
};
}  // namespace maybough::parameters
