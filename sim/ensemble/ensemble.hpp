// Ensemble: many replicates. Beliefs drawn, the parallel loop, tallies with honest errors.
#pragma once

#include <cstdint>
#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "season/season.hpp"

namespace maybough::ensemble {

/// Seasons simulated under one draw of the unknowns; more than one, so that chance and ignorance can be told apart.
inline constexpr std::uint32_t seasons_per_belief = 4;

/// Beliefs of one Latin-hypercube block: within it every unknown visits each part of its law once (McKay, Beckman and
/// Conover 1979), which steadies means. Blocks are independent, so they are the clusters that errors count; blocks of
/// two keep three quarters of what large ones gain on straight lines, and leave enough clusters to count.
inline constexpr std::uint32_t beliefs_per_block = 2;
inline constexpr std::uint32_t seasons_per_block = beliefs_per_block * seasons_per_belief;

/// The parameters of replicate `replicate`: unknowns drawn from their beliefs, shared by seasons_per_belief replicates.
Parameters draw_beliefs(const Scenario& scenario, std::uint32_t seed, std::uint32_t replicate);

/// The belief from which `entry` is drawn in this scenario, or nullptr where its value is taken as known. `own` is
/// room for a belief made from the row.
const Belief* drawn_belief(const Scenario& scenario, const ParameterEntry& entry, Belief& own);

/// The entity under which a parameter's belief is drawn: a hash of its key, so that the order of rows does not matter.
std::uint32_t belief_entity(std::string_view key);

/// Threads this machine runs at once, at least 1.
unsigned machine_threads();

/// What a long run tells the outside: called from one thread at a time. May be empty.
using Progress = std::function<void(std::uint32_t done, std::uint32_t total)>;

/// What job `index` is called where it fails; may be empty.
using FaultName = std::function<std::string(std::uint32_t index)>;

/// Jobs that are seasons under `seed`: a fault names the season as `replay` counts it, from 1, and the command that
/// shows it.
FaultName season_of(std::uint32_t seed);

/// Runs job(i) for i in [first, last) on `threads` threads and hands each result to `sink` in index order.
/// An InputError or RunError stops the run and is thrown on as it is, that of the first job once. Any other exception
/// is our own fault and does not stop the others: at most four are told together, by `name`, in one ModelFault. No
/// result past the first failure reaches the sink.
template <class Result>
void run_in_order(std::uint32_t first, std::uint32_t last, unsigned threads,
                  const std::function<Result(std::uint32_t)>& job,
                  const std::function<void(std::uint32_t, Result&&)>& sink, const Progress& progress = {},
                  const FaultName& name = {});

/// Mean over replicates with its standard error, blocks of beliefs as clusters, and the split of the spread.
struct Estimate {
    double mean = 0;
    double se = 0;             ///< of the mean, blocks of beliefs as clusters
    double half_width_95 = 0;  ///< of the 95 % interval about the mean, by Student's t with clusters - 1
    double low_95 = 0;         ///< ends of the 95 % interval: mean -+ half width, or limits made for counts
    double high_95 = 0;
    double sd_chance = 0;     ///< between seasons under one belief
    double sd_ignorance = 0;  ///< between beliefs
    double low = 0;           ///< 10 % quantile over replicates
    double high = 0;          ///< 90 % quantile
    std::uint32_t n = 0;
};
/// `values[i]` belongs to replicate i, and `values` begins with a block.
Estimate estimate(std::span<const double> values);

/// The same for counts of a season (swarms, catches), which are never below zero and few of which say little:
/// - the variance of the mean is drawn towards that of a Poisson count with the weight of two blocks, so that blocks
///   which happen to agree do not claim certainty (shrinkage of variances as in Smyth 2004, "Linear models and
///   empirical Bayes methods for assessing differential expression");
/// - the 95 % limits are those of Garwood 1936 ("Fiducial limits for the Poisson distribution") for the effective count
///   (mean / standard error)^2, so that clustering counts (Rao and Scott 1992), widened as Student's t is wider than
///   the normal law.
Estimate estimate_count(std::span<const double> values);

/// Gives an estimate of a count, however it was come by, limits made for counts. `degrees` of freedom of its error.
void set_count_limits(Estimate& estimate, double degrees);

/// A share of seasons with its 95 % limits, which never reach 0 or 1.
struct SeasonShare {
    double share = 0;
    double low_95 = 0;
    double high_95 = 1;
    bool operator==(const SeasonShare&) const = default;
};
/// SeasonShare of seasons in which `happened` is not 0, blocks of beliefs as clusters: limits of Clopper and Pearson
/// 1934 with the effective number of seasons of Korn and Graubard 1998 ("Confidence intervals for proportions with
/// small expected number of positive counts estimated from survey data"); one season a belief is taken as effective
/// where all seasons came out alike.
SeasonShare share_of(std::span<const double> happened);

/// The 97.5 % quantile of Student's t (half-width of a 95 % interval in standard errors); 0 below one degree.
double t_quantile_95(double degrees_of_freedom);

}  // namespace maybough::ensemble

#include "ensemble/run_in_order.hpp"

namespace maybough {
using namespace ensemble;  // so that rooms to the right need no prefix
}
