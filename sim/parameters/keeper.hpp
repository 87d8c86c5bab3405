// The constants of keeper/.
#pragma once

#include "parameters/row.hpp"

// clang-format off
#define MAYBOUGH_KEEPER_MISHAP_ROWS(ROW) \
    ROW(tenant_per_100_days, "1", 0.12, 0, 5, fixed, 0.05, 0.3, practice, "5 to 20 % of boxes lost to use by others in a season, a guess of the trade", "expected times in 100 days that ants, wasps or birds take a hung trap") \
    ROW(damage_per_100_days, "1", 0.04, 0, 5, fixed, 0.01, 0.1, assumed, "", "expected times in 100 days that wind or animals bring a hung trap down or open it") \
    ROW(theft_per_100_days, "1", 0.01, 0, 5, fixed, 0.003, 0.05, practice, "1 to 5 % of boxes lost in a year, a guess of the trade", "expected times in 100 days that a hung trap is stolen or destroyed for good") \
    ROW(gnaw_per_100_days, "1", 0.05, 0, 5, fixed, 0.01, 0.2, assumed, "", "expected times in 100 days that an animal gnaws a hung trap's entrance wide, where no plate guards it") \
    ROW(gnawed_entrance_ratio, "1", 4, 1, 20, fixed, 2, 8, assumed, "", "area of a gnawed entrance against the one that was made") \
    ROW(moths_per_100_days, "1", 0.3, 0, 5, fixed, 0.1, 1, assumed, "common practice, no published source: old comb in an empty box seldom lasts a summer", "expected times in 100 days that wax moths spoil the old comb in a hung trap; it draws no swarm from then on") \
    ROW(mend_minutes, "min", 20, 0, 240, fixed, 10, 45, practice, "", "work to clear out a tenant or to mend a trap at a visit")

#define MAYBOUGH_KEEPER_CALENDAR_ROWS(ROW) \
    ROW(hang_before_days, "d", 17, 0, 90, fixed, 14, 28, practice, "common practice, no published source: two to three weeks before the first swarms", "days for which traps hang before one swarm in twenty has come, so that scouts come upon them and the smell of the workshop is gone") \
    ROW(stay_after_days, "d", 5, 0, 90, fixed, 3, 14, practice, "common practice, no published source", "days for which traps stay after nearly all swarms have come, so that the last can move in and be seen")

#define MAYBOUGH_KEEPER_LURE_ROWS(ROW) \
    ROW(lure_half_life_days, "d", 60, 1, 720, fixed, 30, 90, from_memory, "release falls roughly exponentially, half-life 1 to 3 months", "days in which a vial's release halves in full shade") \
    ROW(lure_sun_speed, "1", 0.5, 0, 5, fixed, 0.2, 1, assumed, "", "by how much faster a vial empties in full sun, as a share")

#define MAYBOUGH_KEEPER_TAKING_ROWS(ROW) \
    ROW(comb_days, "d", 19.5, 1, 200, fixed, 12, 30, derived, "Lee and Winston 1985: 90 % of first-year comb within about 45 days, 45 / ln 10", "time constant with which settlers build comb towards a full set") \
    ROW(standard_bees, "bees", 11500, 2000, 40000, fixed, 10000, 16000, derived, "Villa 2004: mean mass 1.42 kg, at 125 to 150 mg a bee", "bees of an ordinary swarm, to which value and comb refer") \
    ROW(cutout_hours, "h", 3, 0, 24, fixed, 1.5, 5, practice, "", "extra work to cut a full set of comb out of a trap without frames and tie it into frames") \
    ROW(cross_comb_hours, "h", 0.5, 0, 24, fixed, 0.1, 1, practice, "", "extra work where a full set of comb stands on frames") \
    ROW(evening_hours, "h", 0.5, 0, 10, fixed, 0.2, 1, practice, "a caught swarm is shut in and carried after dark", "extra work of carrying a catch home") \
    ROW(queen_loss_moving, "1", 0.1, 0, 1, fixed, 0.03, 0.4, derived, "2 of 13 queens lost in moving from framed boxes, Missouri 2015, drawn towards the trade's few per cent", "chance that the queen is lost when a swarm is moved") \
    ROW(queen_loss_cutout, "1", 0.15, 0, 1, fixed, 0.05, 0.4, assumed, "", "further chance that she is lost where a full set of comb has to be cut out") \
    ROW(queenless_share, "1", 0.4, 0, 1, fixed, 0.2, 0.7, practice, "", "share of its value that a swarm keeps when its queen is lost") \
    ROW(cutout_loss, "1", 0.25, 0, 1, fixed, 0.1, 0.5, practice, "", "share of value lost with brood and stores where a full set of comb is cut out") \
    ROW(size_exponent, "1", 0.5, 0, 2, fixed, 0, 1, assumed, "", "power with which a swarm's value follows its number of bees") \
    ROW(size_limit, "1", 1.3, 1, 3, fixed, 1, 1.5, assumed, "", "value of the largest swarm against an ordinary one") \
    ROW(late_ramp_days, "d", 30, 0, 120, fixed, 0, 60, assumed, "", "days before the late date over which a swarm's value falls from early to late")

#define MAYBOUGH_KEEPER_LABOUR_ROWS(ROW) \
    ROW(visit_minutes, "min", 5, 0, 120, fixed, 2, 10, practice, "", "looking at one trap once one stands before it") \
    ROW(hang_minutes, "min", 20, 0, 240, fixed, 10, 40, practice, "", "hanging one trap within reach from the ground") \
    ROW(take_down_minutes, "min", 12, 0, 240, fixed, 5, 25, practice, "", "taking one trap down within reach from the ground") \
    ROW(lure_minutes, "min", 2, 0, 60, fixed, 1, 5, practice, "", "putting in a fresh vial") \
    ROW(ladder_above_m, "m", 2.5, 0.5, 10, fixed, 2, 3, practice, "", "height of a trap from which a ladder is needed") \
    ROW(ladder_hang_minutes, "min", 15, 0, 240, fixed, 8, 30, practice, "", "extra time to hang or take down from a ladder, the first metre above reach") \
    ROW(ladder_visit_minutes, "min", 4, 0, 120, fixed, 2, 10, practice, "", "extra time of a visit where the trap hangs above reach") \
    ROW(climb_minutes_per_m, "min/m", 4, 0, 60, fixed, 2, 8, practice, "", "further time for each metre above reach, when hanging or taking down") \
    ROW(light_trap_kg, "kg", 6.8, 0, 50, fixed, 5, 9, practice, "advice of the trade: under 15 lb", "mass up to which a trap is hung with ease") \
    ROW(heavy_minutes_per_kg, "min/kg", 2, 0, 60, fixed, 1, 4, assumed, "", "further time for each kilogram above that, when hanging or taking down") \
    ROW(drive_speed_kmh, "km/h", 40, 5, 120, fixed, 25, 60, practice, "", "speed on the rounds, for the hours spent driving")

#define MAYBOUGH_KEEPER_ROWS(ROW) \
    MAYBOUGH_KEEPER_MISHAP_ROWS(ROW) \
    MAYBOUGH_KEEPER_CALENDAR_ROWS(ROW) \
    MAYBOUGH_KEEPER_LURE_ROWS(ROW) \
    MAYBOUGH_KEEPER_TAKING_ROWS(ROW) \
    MAYBOUGH_KEEPER_LABOUR_ROWS(ROW)
// clang-format on

namespace maybough::parameters {
struct KeeperParameters {
    MAYBOUGH_KEEPER_ROWS(MAYBOUGH_MEMBER)
};
}  // namespace maybough::parameters
