// The curve of catch and money against the number of traps, and what follows from it. Pure functions on tables.
#pragma once

#include <string>
#include <vector>

#include "planner/trials.hpp"

namespace maybough::planner {

/// Points 0..N; placement k of `trials` is the plan of k traps, for which `outlays[k]` has to be spent beforehand.
std::vector<CurvePoint> curve_of(const Trials& trials, const std::vector<Placement>& placements,
                                 const std::vector<double>& outlays);

/// The number of traps with the largest mean net worth; ties go to fewer.
int best_number(const Trials& trials);

/// The fewest traps whose odds of at least `swarms` reach `odds`; -1 where none does.
int number_for_odds(const Trials& trials, int swarms, double odds);

/// Numbers of traps whose net worth cannot be told from that of `chosen` at 95 % by paired differences, lengthened as
/// the curve's are.
std::pair<int, int> numbers_like(const Trials& trials, int chosen);

/// How the best number moves with what a swarm is worth, and with the budget (the outlay of each point in turn).
std::vector<ChangedTerms> with_swarm_value(const std::vector<CurvePoint>& curve);
std::vector<ChangedTerms> with_budget(const std::vector<CurvePoint>& curve);

/// Why the search went no further than the last point.
enum class LastPoint { most_traps, money, hours, places };

/// One line: what the next trap would add and cost, or which limit stops the plan.
std::string why_it_stops(const std::vector<CurvePoint>& curve, int recommended, const Question& question,
                         LastPoint last, const std::string& currency);

/// Non-increasing fit by pooling adjacent violators (Ayer et al. 1955), for drawing a smooth marginal curve only.
std::vector<double> falling_fit(const std::vector<double>& values, const std::vector<double>& weights);

}  // namespace maybough::planner
