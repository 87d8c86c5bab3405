// A contest between designs on fresh seasons of the full model: losers drop out as soon as the seasons tell them apart.
#pragma once

#include <cstdint>
#include <vector>

#include "planner/trials.hpp"

namespace maybough::planner {

/// How a contest is run.
struct ContestRules {
    double indifference = 0;         ///< net worth a season that the keeper would not mind losing
    double odds_of_error = 0.05;     ///< of dropping the best where it leads by more than the indifference
    std::uint32_t first_groups = 8;  ///< beliefs lived through before anybody may drop out; they measure the spread
    std::uint32_t most_groups = 40;
};

/// How far apart a design has to fall behind another one, in means over groups of seasons, before it drops out.
///
/// Procedure KN of Kim and Nelson 2001 ("A fully sequential procedure for indifference-zone selection in simulation",
/// steps 2 and 3), which needs no independence between designs, so that common seasons count: `groups[i]` holds the
/// means of design i over the seasons of one belief each; the first `first_groups` of them give the variances of
/// differences. `left` are the designs still in; returned are those that stay.
std::vector<std::size_t> who_stays(const std::vector<std::vector<double>>& groups, const std::vector<std::size_t>& left,
                                   const ContestRules& rules);

/// Means of net worth over the seasons of each belief. The two of a block make up for one another in part, so that
/// their spread overstates the error of a mean: KN drops nobody too soon for it.
std::vector<double> group_means(const std::vector<Outcome>& outcomes);

/// What a contest came to.
struct Contest {
    std::vector<std::vector<Outcome>> outcomes;  ///< [design][season], as many as the design lived through
    std::vector<SwarmCase> situations;           ///< of all seasons, in order
    std::vector<std::size_t> left;               ///< designs never dropped, in order
    std::size_t winner = 0;                      ///< of them, the one with the most net worth
    std::uint32_t seasons = 0;
    ContestEnd end = ContestEnd::seasons_spent;
    std::int64_t asked = 0;
    std::int64_t run = 0;
};

/// What the contest is about: net worth, or only measuring every design on every season.
enum class Prize { net, none };

/// Lets the designs live through seasons from first_confirm_season on until one is left, or all that are left differ
/// by no more than the indifference, or the seasons are spent. The next contest finds their replicates in `kept`.
Contest hold_contest(const Scenario& scenario, const std::vector<Placement>& designs, const ContestRules& rules,
                     Prize prize, const ChoiceWeights& weights, const Effort& effort, const Progress& progress,
                     KeptReplicates* kept = nullptr);

}  // namespace maybough::planner
