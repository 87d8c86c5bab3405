// Running experiments, and judging what they found.
#include <boost/math/distributions/binomial.hpp>

#include "experiments/experiments.hpp"

namespace maybough::experiments {

bool agrees(const Finding& finding) {
    return finding.simulated >= finding.low && finding.simulated <= finding.high;
}

std::vector<Experiment> all_experiments() {
    std::vector<Experiment> all = weather_experiments();
    for (auto theme : {colony_experiments(), scout_experiments()}) all.insert(all.end(), theme.begin(), theme.end());
    return all;
}

std::vector<Verified> verify(const std::vector<Experiment>& experiments, const Parameters& parameters,
                             std::uint32_t seed, unsigned threads, const Progress& progress) {
    std::vector<Verified> done;
    run_in_order<Verified>(
        0, static_cast<std::uint32_t>(experiments.size()), threads,
        [&](std::uint32_t i) {
            const Experiment& experiment = experiments[i];
            return Verified{std::string(experiment.name), std::string(experiment.theme), std::string(experiment.title),
                            experiment.run(parameters, seed)};
        },
        [&](std::uint32_t, Verified&& verified) { done.push_back(std::move(verified)); }, progress);
    return done;
}

Interval binomial_interval_95(std::int64_t taken, std::int64_t offered) {
    using Binomial = boost::math::binomial_distribution<>;
    const auto n = static_cast<double>(offered);
    const auto k = static_cast<double>(taken);
    return {Binomial::find_lower_bound_on_p(n, k, 0.025), Binomial::find_upper_bound_on_p(n, k, 0.025)};
}

}  // namespace maybough::experiments
