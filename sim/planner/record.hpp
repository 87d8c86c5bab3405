// Recorded seasons: every swarm's situation and end as plain numbers, from which the surrogate learns.
#pragma once

#include <cstdint>
#include <vector>

#include "planner/choice.hpp"
#include "planner/planner.hpp"

namespace maybough::planner {

inline constexpr std::uint32_t first_record_season = record_range.first;
inline constexpr std::uint32_t first_tuning_season = tuning_range.first;
inline constexpr std::uint32_t first_confirm_season = confirm_range.first;
inline constexpr std::uint32_t first_report_season = report_range.first;
inline constexpr std::uint32_t first_compare_season = compare_range.first;

/// Throws ModelFault where seasons first .. first + count are not all within one range: what is printed would be what
/// was searched.
void refuse_overlap(std::uint32_t first, std::uint32_t count);

/// One swarm within reach of a spot.
struct SwarmCase {
    Swarm swarm;
    std::uint32_t season = 0;  ///< index into Records::parameters
    double rivals = 1;         ///< pull of natural sites and of settling nowhere, once a surrogate is fitted
};

/// What one season taught.
struct RecordedSeason {
    std::vector<SwarmCase> cases;  ///< swarms that nobody hived, within reach of some spot, as they hung
    HuntData hunts;                ///< one a case, in the same order
    std::vector<RepeatedHunt> checks;
    std::vector<int> swarm_days;  ///< of swarms hung within the area
    double days_to_settle = 0;    ///< summed over swarms that moved
    std::int64_t moved = 0;
    std::int64_t asked = 0;
    std::int64_t run = 0;
};

/// All recorded seasons together.
struct Records {
    std::uint32_t first_season = 0;
    std::uint32_t seed = 1;
    std::vector<Parameters> parameters;  ///< one a season: the belief it was lived under
    std::vector<SwarmCase> cases;        ///< in order of season
    HuntData hunts;
    std::vector<RepeatedHunt> checks;
    std::vector<int> swarm_days;
    int days_to_settle = 2;  ///< typical, from hanging to moving in
    std::int64_t asked = 0;
    std::int64_t run = 0;
};

/// A random placement for a recorded season: none, sparse or dense in turn, each spot by luck keyed to its place.
Placement random_placement(const Scenario& scenario, std::uint32_t seed, std::uint32_t season);

/// Lives through `count` seasons from `first`, each with its random placement.
Records record_seasons(const Scenario& scenario, const Effort& effort, std::uint32_t first, std::uint32_t count,
                       const Progress& progress);

/// Every swarm's situation in a season lived through, as recorded ones have it: for measuring the surrogate on fresh
/// seasons. `weights` turn its natural sites into its rivals at once.
std::vector<SwarmCase> situations_of(const Scenario& scenario, const Backdrop& backdrop, const Parameters& parameters,
                                     std::vector<SwarmStory> stories, const ChoiceWeights& weights);

/// Turns every case's natural sites into its rivals by a fitted surrogate, and lets the sites go.
void settle_rivals(Records& records, const ChoiceWeights& weights);

/// The surrogate from all recorded hunts, and its error on repeated hunts of beliefs that a trial fit never saw.
ChoiceFit fit_records(const Records& records, SurrogateCheck& check);

}  // namespace maybough::planner
