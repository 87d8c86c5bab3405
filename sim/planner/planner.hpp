// Planner: candidates, surrogate, search, confirmation on fresh seasons, the curve, compare, what is worth knowing.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "ensemble/ensemble.hpp"

namespace maybough::planner {

/// The seasons (replicates) kept for one purpose: what is printed is never what was searched.
struct SeasonRange {
    std::uint32_t first = 0;
    std::uint32_t most = 0;  ///< seasons in it
    constexpr std::uint32_t end() const { return first + most; }
    constexpr bool holds(std::uint32_t from, std::uint32_t count) const {
        return from >= first && from < end() && count <= end() - from;
    }
};
/// Ranges one behind another: a range that reaches into the next does not compile.
template <std::size_t Ranges>
struct SeasonRanges {
    std::array<SeasonRange, Ranges> all;
    consteval explicit SeasonRanges(const std::array<SeasonRange, Ranges>& ranges) : all(ranges) {
        for (std::size_t i = 1; i < Ranges; ++i) {
            if (all[i].first < all[i - 1].end()) throw "ranges of seasons overlap";
        }
    }
};
inline constexpr SeasonRange record_range{0, 50'000};
inline constexpr SeasonRange tuning_range{50'000, 50'000};
inline constexpr SeasonRange confirm_range{100'000, 100'000};
inline constexpr SeasonRange report_range{200'000, 200'000};
inline constexpr SeasonRange compare_range{400'000, 200'000};
inline constexpr SeasonRanges<5> season_ranges{
    {{record_range, tuning_range, confirm_range, report_range, compare_range}}};

/// How hard to work, and on which luck.
struct Effort {
    std::uint32_t seed = 1;
    unsigned threads = 1;
    std::uint32_t record_seasons = 200;   ///< seasons the surrogate learns from
    std::uint32_t confirm_seasons = 600;  ///< fresh seasons the printed numbers come from
};

/// What the keeper asks for.
struct Question {
    int max_traps = 15;
    double budget = 0;        ///< money to spend before the season, 0 = no limit
    double hours = 0;         ///< the keeper's own hours for the season, 0 = no limit
    int exactly = 0;          ///< plan just this many, 0 = where a trap no longer pays
    int at_least_swarms = 0;  ///< with odds below; 0 = not asked
    double at_least_odds = 0.8;
};

/// The catch and the money for the first k traps of the plan, from fresh full simulations.
struct CurvePoint {
    int traps = 0;
    Placement placement;
    Estimate catches;
    Estimate cost;
    Estimate value;
    Estimate net;
    Estimate marginal_catches;  ///< paired difference against one trap fewer
    Estimate marginal_net;
    double outlay = 0;                       ///< money to spend before the season; what a budget limits
    double hours = 0;                        ///< the keeper's hours, mean
    std::vector<SeasonShare> odds_at_least;  ///< [k-1] = share of seasons with at least k swarms, k = 1..
    double worst_tenth_catches = 0;          ///< mean of the worst tenth of seasons
};

/// One trap of the recommended plan.
struct PlannedTrap {
    TrapSetting setting;
    Estimate catches;           ///< its own catch within the plan
    Estimate lost_without;      ///< swarms a year the total would lose without it, paired
    int rank = 0;               ///< order in which the search added it
    std::size_t next_spot = 0;  ///< best spot left unused, were this one refused; spots.size() where none is left
    TrapSetting next_setting;   ///< what would hang there
    Estimate next_difference;   ///< swarms a year lost by going there instead, paired
    Estimate next_net_loss;     ///< net worth lost by going there instead, paired
};

/// How well the surrogate foretells the full agent model, on situations it was not fitted to.
struct SurrogateCheck {
    std::int64_t hunts = 0;
    double rms_error = 0;  ///< of a choice probability, net of sampling noise
    double r_squared = 0;  ///< net of sampling noise
    double predicted_in_traps = 0;
    double seen_in_traps = 0;
};

/// How the contest between designs ended.
enum class ContestEnd {
    one_left,       ///< all others fell behind
    all_alike,      ///< what is left differs by no more than the indifference (95 %)
    seasons_spent,  ///< neither, within the seasons given
};

/// One design that the full model tried on seasons it shared with the others, and what the surrogate foretold of it on
/// the same seasons.
struct TriedDesign {
    Placement placement;
    std::uint32_t seasons = 0;
    Estimate catches;
    Estimate net;
    double foretold_catches = 0;
    double foretold_net = 0;
    bool left = false;  ///< never dropped
};

/// One unknown and what it moves.
struct Sensitivity {
    std::string key;
    double low = 0;
    double high = 0;
    double catches_at_low = 0;
    double catches_at_high = 0;
    int best_traps_at_low = 0;
    int best_traps_at_high = 0;
    double share_of_catch = 0;     ///< Sobol index, first order, of the mean catch; 0 also where seasons are too few
    double share_of_catch_se = 0;  ///< its standard error; 0 where seasons are too few to say
    double share_of_decision = 0;  ///< Sobol index, total, of the best number of traps
    double worth_knowing = 0;      ///< money a year gained by knowing it before deciding how many traps to hang
};

/// The best number of traps under other terms, from the same seasons.
struct ChangedTerms {
    double amount = 0;  ///< a swarm's worth as a multiple of the scenario's, or a budget in money
    int best_traps = 0;
    double net = 0;
};

/// How many swarms a season hang in one square of the area, on average.
struct SwarmSquare {
    Point centre;
    double side_m = 0;
    double swarms = 0;
};

struct Plan {
    std::vector<CurvePoint> curve;  ///< 0, 1, 2, ... traps
    int recommended = 0;            ///< index into curve
    int recommended_low = 0;        ///< fewest traps that cannot be told from the best at 95 %
    int recommended_high = 0;
    std::string why_it_stops;
    double least_outlay = 0;  ///< of any one trap: below it a budget buys none
    double least_hours = 0;   ///< the same of the keeper's hours
    std::vector<PlannedTrap> traps;
    std::vector<std::vector<std::size_t>> tied_spots;  ///< spots the seasons cannot tell apart
    double search_catches = 0;  ///< catches of the recommended plan by the surrogate, on the recorded seasons
    double bound_catches = 0;   ///< no placement of that many traps catches more by the surrogate (upper bound)
    double gap_net = 0;         ///< upper limit, 95 %, of net value missed against any placement at all
    double gap_found_net = 0;   ///< the same against what the search itself finds when it starts anew on other seasons
    SurrogateCheck surrogate;
    std::vector<TriedDesign> tried;  ///< by the full model before the recommendation; the winner first
    ContestEnd contest_end = ContestEnd::seasons_spent;
    double indifference = 0;         ///< net worth a season within which designs count as alike
    double catches_calibration = 1;  ///< full model over surrogate on the tuning seasons; the search is scaled by it
    double worth_calibration = 1;
    double hunts_exhaustive = 0;  ///< were every placement of as many traps tried on the contest's seasons
    std::vector<Sensitivity> sensitivities;
    double worth_knowing_all = 0;              ///< money a year gained by knowing every unknown before deciding
    double expected_regret = 0;                ///< net worth forgone against the best number for each belief, mean
    double worst_regret = 0;                   ///< the same under the belief least kind to the plan
    std::vector<ChangedTerms> if_swarm_value;  ///< the best number were a swarm worth more or less
    std::vector<ChangedTerms> if_budget;       ///< the best number within other budgets
    std::vector<double> swarm_days;            ///< per day of the simulated year: mean swarms hung in the area
    std::vector<double> catch_days;            ///< per day: mean catches under the recommended plan
    std::vector<SwarmSquare> swarm_squares;    ///< where the area's swarms hang
    std::int64_t hunts_asked = 0;
    std::int64_t hunts_run = 0;
    Effort effort;
    Question question;
};

/// The main job.
Plan make_plan(const Scenario& scenario, const Question& question, const Effort& effort, const Progress& progress = {});

/// Placements side by side on the same seasons.
struct NamedPlacement {
    std::string name;
    Placement placement;
};
struct ComparedPlacement {
    std::string name;
    Placement placement;
    Estimate catches;
    Estimate cost;
    Estimate net;
    Estimate catches_less_first;  ///< paired difference against the first
    Estimate net_less_first;
    double odds_better_than_first = 0;  ///< share of seasons with more net than the first, ties half
};
std::vector<ComparedPlacement> compare_placements(const Scenario& scenario, const std::vector<NamedPlacement>& sides,
                                                  const Effort& effort, const Progress& progress = {});

/// Rules of thumb as placements of `traps` traps of kind `kind`: all near the apiaries, an even spread, at random, the
/// most visible spots, woodland's edge.
std::vector<NamedPlacement> rules_of_thumb(const Scenario& scenario, int traps, std::size_t kind, std::uint32_t seed);

/// An ensemble of seasons for one placement.
struct SeasonSummary {
    Estimate catches;
    Estimate swarms;
    Estimate swarms_in_area;
    Estimate prime_share;
    Estimate settled_in_cavities;
    Estimate hived_by_others;
    Estimate lost;
    Estimate cost;
    Estimate value;
    Estimate net;
    std::vector<Estimate> by_trap;
    std::vector<SeasonShare> odds_at_least;
    std::vector<double> swarm_days;
    std::vector<double> catch_days;
    std::vector<SwarmSquare> swarm_squares;  ///< where the area's swarms hang
    std::vector<SeasonRecord> seasons;       ///< in replicate order
};
SeasonSummary simulate_seasons(const Scenario& scenario, const Placement& placement, const Effort& effort,
                               const Progress& progress = {});

}  // namespace maybough::planner

namespace maybough {
using namespace planner;  // so that rooms to the right need no prefix
}
