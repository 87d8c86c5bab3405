// Experiments: what papers measured and tables give, done again with the model; published beside simulated.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "outlook/outlook.hpp"

namespace maybough::experiments {

/// How a published figure stands to the model's constants.
enum class Footing {
    independent,  ///< no constant was chosen by looking at it
    calibrated,   ///< a constant was chosen so that it comes out
};

/// One published figure and what the model does.
struct Finding {
    std::string what;         ///< a full phrase: "workers that leave with the prime swarm, share"
    std::string unit;         ///< "" for shares and counts
    std::string published;    ///< as the source gives it: "0.75", "0.17 to 4.30", "19 of 23"
    double simulated = 0;     ///< NaN where the experiment gave nothing to measure; never accepted
    double simulated_se = 0;  ///< its Monte Carlo standard error; 0 where it is exact
    double low = 0;           ///< accepted interval, written down before the run; may be infinite on one side
    double high = 0;
    std::string why_interval;  ///< "95 % binomial of 19 of 23", "stated spread of +-7.5 d"
    std::string source;        ///< authors, year, title; or "common practice, no published source"; or "from memory"
    Footing footing = Footing::independent;
    std::string known_departure;  ///< empty; or why the model is known to miss this figure, in one sentence
};

/// Whether the simulated value lies in the accepted interval.
bool agrees(const Finding& finding);

/// One experiment: a set-up of the model and what is measured in it. Its draws depend on seed alone.
struct Experiment {
    std::string_view name;   ///< unique, short, words joined by "-": "afterswarm-timing"
    std::string_view theme;  ///< "colony", "scouts", "weather", "land", "traps", "plan"
    std::string_view title;  ///< what is done, one line
    std::function<std::vector<Finding>(const Parameters& parameters, std::uint32_t seed)> run;
};

/// What one experiment found.
struct Verified {
    std::string name;
    std::string theme;
    std::string title;
    std::vector<Finding> findings;
};

/// The experiments of each theme, in the order of MODEL.md; each in files of its own.
std::vector<Experiment> colony_experiments();
std::vector<Experiment> scout_experiments();
std::vector<Experiment> weather_experiments();

/// Generated weather against the record it was fitted to (monthly means and spreads, wet days, spells, extremes,
/// degree-days); `record_name` says where the record is from.
Experiment record_experiment(const WeatherRecord& record, double latitude_deg, const std::string& record_name);

/// All experiments that need no record.
std::vector<Experiment> all_experiments();

/// Runs them on `threads` threads; results in the order given, the same for any number of threads.
std::vector<Verified> verify(const std::vector<Experiment>& experiments, const Parameters& parameters,
                             std::uint32_t seed, unsigned threads, const Progress& progress = {});

/// Exact (Clopper-Pearson) 95 % limits of a share of which `taken` of `offered` were counted.
struct Interval {
    double low = 0;
    double high = 1;
};
Interval binomial_interval_95(std::int64_t taken, std::int64_t offered);

}  // namespace maybough::experiments

namespace maybough {
using namespace experiments;  // so that rooms to the right need no prefix
}
