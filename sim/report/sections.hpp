// Facts drawn from a plan once and shown in several outputs: private to report/.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "report/report.hpp"
#include "report/words.hpp"

namespace maybough::report {

/// The recommended point of the curve; throws ModelFault where the plan has none.
const CurvePoint& recommended_point(const Plan& plan);

/// What one kind of trap asks of the keeper: how many are used, how many of them have to be built.
struct KindNeed {
    std::size_t kind = 0;
    int used = 0;
    int to_build = 0;
    double material = 0;  ///< money for those to build
    double build_hours = 0;
};
std::vector<KindNeed> kinds_needed(const Scenario& scenario, const Placement& placement);

/// SeasonShare of the spread between seasons that is ignorance: sd_ignorance^2 of both; NaN where there is no spread.
double share_of_ignorance(const Estimate& estimate);

/// Unknowns in order of what they move, the greatest first.
std::vector<Sensitivity> ranked(std::vector<Sensitivity> sensitivities);

/// Each of these is prose, one sentence or a few, without line ends.
std::string plan_answer(const Scenario& scenario, const Plan& plan);
std::string how_sure(const Scenario& scenario, const Plan& plan);
std::string stop_words(const Plan& plan);
std::string chance_and_ignorance(const Estimate& estimate);
/// How the contest between designs ended, in words.
std::string contest_words(const Scenario& scenario, const Plan& plan);
std::vector<std::string> search_quality(const Scenario& scenario, const Plan& plan);
std::vector<std::string> unknowns(const Scenario& scenario, const Plan& plan);
/// What if a swarm were worth more, or money shorter; what the plan loses by what is not known.
std::vector<std::string> other_terms(const Scenario& scenario, const Plan& plan);
std::vector<std::string> assumptions(const Scenario& scenario);
std::vector<std::string> reproduction(const Scenario& scenario, const Effort& effort, const Provenance& origin);

/// "in 8 seasons of 10 between 1 and 6".
std::string eight_in_ten(const Estimate& estimate);

}  // namespace maybough::report
