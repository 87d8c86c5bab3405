// The constants of swarm/.
#pragma once

#include "parameters/row.hpp"

// clang-format off
#define MAYBOUGH_SWARM_ROWS(ROW) \
    ROW(prime_share, "1", 0.75, 0.1, 0.98, fixed, 0.6, 0.9, published, "Rangel and Seeley 2012", "mean share of the workers that leaves with the prime swarm") \
    ROW(prime_share_sd, "1", 0.06, 0, 0.3, fixed, 0.03, 0.1, derived, "Rangel and Seeley 2012", "spread of that share") \
    ROW(after_share, "1", 0.5, 0.1, 0.98, fixed, 0.4, 0.7, derived, "Winston 1980: 11 457 workers an afterswarm", "mean share of the workers that leaves with an afterswarm") \
    ROW(after_share_sd, "1", 0.08, 0, 0.3, fixed, 0.03, 0.15, assumed, "", "spread of that share") \
    ROW(leave_per_fit_day, "1", 0.7, 0, 1, fixed, 0.5, 0.95, derived, "within two days of the first capping: Winston 1980", "chance that a prepared colony leaves on a perfectly fit day") \
    ROW(after_leave_per_fit_day, "1", 0.55, 0, 1, fixed, 0.3, 0.9, derived, "afterswarms 1-4 days apart: Winston 1987; Gilley and Tarpy 2005", "the same for afterswarms") \
    ROW(after_half_bees, "bees", 16000, 500, 60000, fixed, 6000, 18000, fitted, "0.5-0.7 cast one: Gilley and Tarpy 2005; Winston 1980", "workers and sealed brood at which half of the colonies cast an afterswarm") \
    ROW(after_width_bees, "bees", 3000, 100, 30000, fixed, 1500, 6000, assumed, "", "width of that rise") \
    ROW(after_number_half_bees, "bees", 1000, 0, 30000, fixed, 0, 5000, assumed, "", "what each afterswarm before adds to that number") \
    ROW(min_bees, "bees", 1200, 100, 10000, fixed, 800, 2500, published, "0.17 kg the lightest: Villa 2004", "a swarm smaller than this does not leave") \
    ROW(max_swarms, "1", 5, 1, 8, fixed, 4, 6, from_memory, "Winston 1987: up to four afterswarms", "swarms a colony casts in a year at most") \
    ROW(honey_per_bee_mg, "mg", 40, 0, 80, fixed, 30, 50, from_memory, "Combs 1972", "honey a bee of a swarm carries") \
    ROW(hang_distance_m, "m", 30, 0, 500, fixed, 10, 100, practice, "", "median distance from the parent at which a swarm hangs") \
    ROW(hang_distance_sd_ln, "1", 0.6, 0, 2, fixed, 0.3, 1, assumed, "", "spread of that distance, standard deviation of the logarithm") \
    ROW(hived_managed, "1", 0.35, 0, 1, additive, 0.15, 0.6, assumed, "", "chance that somebody hives a cluster cast by a managed hive, if it hangs long enough") \
    ROW(hived_wild, "1", 0.06, 0, 1, additive, 0.02, 0.15, assumed, "", "the same for a wild colony's cluster") \
    ROW(hived_after_median_h, "h", 8, 0.1, 200, fixed, 3, 24, assumed, "", "median hours from hanging to being hived") \
    ROW(hived_after_sd_ln, "1", 0.9, 0, 3, fixed, 0.5, 1.5, assumed, "", "spread of those hours, standard deviation of the logarithm")
// clang-format on

namespace maybough::parameters {
struct SwarmParameters {
    MAYBOUGH_SWARM_ROWS(MAYBOUGH_MEMBER)
};
}  // namespace maybough::parameters
