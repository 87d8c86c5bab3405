// What the steps of learning from a catch log share: unknowns in their own spreads, a table of simulated catches, the
// law fitted to it, and the weighing of draws. Private to outlook/.
#pragma once

#include <vector>

#include "outlook/outlook.hpp"

namespace maybough::outlook {

/// One unknown of the scenario. It is handled as its normal score under the prior: 0 the median, 1 one spread up.
struct Unknown {
    const ParameterEntry* entry = nullptr;
    Belief prior;
};
std::vector<Unknown> unknowns_of(const Scenario& scenario);

/// Normal score of a value under a belief, the inverse of belief_quantile; 0 where that side has no spread.
double score_of(const ParameterRow& row, const Belief& belief, double value);

/// One trap in one season: a column of the table.
struct CatchCell {
    std::size_t season = 0;  ///< index into the log's seasons; their number stands for next year
    std::size_t trap = 0;    ///< within that season's placement
    std::size_t place = 0;   ///< number of its spot among those of the table
};

/// Simulated catches: rows are seasons, each under a draw of its own of all unknowns.
struct CatchTable {
    std::vector<CatchCell> cells;
    std::size_t places = 0;
    std::vector<std::vector<double>> scores;  ///< by row, by unknown
    std::vector<std::vector<int>> counts;     ///< by row, by cell
};

/// The law of catches, given the unknowns: Poisson about exp(level + effects . scores) times a gamma luck of the whole
/// area and one of the place, both of mean 1.
struct CatchLaw {
    std::vector<CatchCell> cells;
    std::size_t places = 0;
    std::vector<double> level;   ///< by cell: logarithm of the catch at the prior medians
    std::vector<double> effect;  ///< by unknown, common to all places
    std::vector<double> effect_se;
    std::vector<std::vector<double>> place_effect;  ///< by place, by unknown: added to the common effect
    double area_variance = 0;                       ///< of the area's luck
    double place_variance = 0;                      ///< of a place's luck

    /// Swarms expected in each cell.
    std::vector<double> expected(const std::vector<double>& scores) const;
};

/// Fits the law by Poisson regression with normal priors on effects (their widths are parameters), spreads of luck by
/// moments. Throws ModelFault for a table without rows.
CatchLaw fit_catches(const CatchTable& table, const OutlookParameters& parameters);

/// Draws of all unknowns together from the prior, each with its score of every unknown.
std::vector<std::vector<double>> prior_draws(const std::vector<Unknown>& unknowns, std::uint32_t seed,
                                             std::uint32_t draws);

/// Logarithm of the chance of the log's counts (by cell; cells of next year are skipped), but for a constant. A place
/// keeps its luck over the years, and so does the area: cautious, since part of it is weather.
double log_likelihood(const CatchLaw& law, const std::vector<double>& scores, const std::vector<int>& counts,
                      std::size_t seasons);

/// Weights of draws that sum to 1, and how they were come by.
struct Weights {
    std::vector<double> of_draw;
    double effective = 0;  ///< Kong's effective number of draws: 1 / sum of squares
    double power = 1;
    LearnOutcome outcome = LearnOutcome::learnt;
};
Weights weigh(const std::vector<double>& log_likelihoods, const OutlookParameters& parameters);

/// Weighted quantile of `values`: the least value up to which the weights reach p.
double weighted_quantile(const std::vector<double>& values, const std::vector<double>& weights, double p);

/// Catch of all cells of `season` over weighted draws.
CatchOdds catch_odds(const CatchLaw& law, const std::vector<std::vector<double>>& draws,
                     const std::vector<double>& weights, std::size_t season);

/// Simulates every season of the log, and next year with `next`, `options.seasons` times.
CatchTable simulate_catches(const Scenario& scenario, const CatchLog& log, const Placement& next, const Effort& effort,
                            const LearnOptions& options, const Progress& progress);

/// Whether the scenario's record knows nearly all of the simulated year that begins on `first`.
bool record_knows(const WeatherRecord& record, Date first);

/// Equally likely values of a gamma law of mean 1 and that variance, at the middles of `nodes` equal classes.
std::vector<double> luck_nodes(double variance, int nodes);

}  // namespace maybough::outlook
