// Tornado of the catch and of the decision by linear regression on drawn beliefs.
#include "planner/worth_knowing.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

namespace maybough::planner {

namespace {
struct Scale {
    double mean = 0;
    double sd = 1;
};

Scale scale_of(const std::vector<double>& values) {
    Scale scale;
    for (const double v : values) scale.mean += v;
    scale.mean /= static_cast<double>(values.size());
    double squares = 0;
    for (const double v : values) squares += (v - scale.mean) * (v - scale.mean);
    scale.sd = std::sqrt(squares / static_cast<double>(values.size()));
    if (!(scale.sd > 0)) scale.sd = 1;
    return scale;
}
}  // namespace

std::vector<SampledUnknown> sampled_unknowns(const Scenario& scenario, std::uint32_t seed, std::uint32_t first,
                                             std::size_t count) {
    std::vector<SampledUnknown> unknowns;
    std::vector<const ParameterEntry*> entries;
    for (const ParameterEntry& entry : parameter_table()) {
        Belief own;
        const Belief* belief = drawn_belief(scenario, entry, own);
        if (belief == nullptr || !(belief->high > belief->low)) continue;
        unknowns.push_back({std::string(entry.row.key), belief->low, belief->high, {}});
        entries.push_back(&entry);
    }
    for (std::size_t s = 0; s < count; ++s) {
        const Parameters drawn = draw_beliefs(scenario, seed, first + static_cast<std::uint32_t>(s));
        for (std::size_t u = 0; u < entries.size(); ++u) unknowns[u].values.push_back(entries[u]->get(drawn));
    }
    return unknowns;
}

std::vector<double> least_squares(const std::vector<std::vector<double>>& columns, const std::vector<double>& y) {
    constexpr double ridge = 1e-6;
    const auto rows = static_cast<Eigen::Index>(y.size());
    const auto terms = static_cast<Eigen::Index>(columns.size()) + 1;
    Eigen::MatrixXd x(rows, terms);
    x.col(0).setOnes();
    for (Eigen::Index c = 1; c < terms; ++c) {
        x.col(c) = Eigen::Map<const Eigen::VectorXd>(columns[static_cast<std::size_t>(c) - 1].data(), rows);
    }
    Eigen::MatrixXd normal = x.transpose() * x;
    normal.diagonal().array() += ridge * static_cast<double>(rows);
    const Eigen::VectorXd b = normal.ldlt().solve(x.transpose() * Eigen::Map<const Eigen::VectorXd>(y.data(), rows));
    return {b.begin(), b.end()};
}

std::vector<Sensitivity> sensitivities_of(const std::vector<SampledUnknown>& unknowns, const Trials& trials,
                                          std::size_t chosen) {
    std::vector<Sensitivity> result;
    if (unknowns.empty() || trials.seasons() < unknowns.size() + 2) return result;
    std::vector<std::vector<double>> columns;
    std::vector<Scale> scales;
    for (const SampledUnknown& unknown : unknowns) {
        scales.push_back(scale_of(unknown.values));
        columns.push_back(unknown.values);
        for (double& v : columns.back()) v = (v - scales.back().mean) / scales.back().sd;
    }
    const std::vector<double> catches = least_squares(columns, trials.long_column(chosen, catches_in));
    std::vector<std::vector<double>> nets;
    for (std::size_t k = 0; k < trials.outcomes.size(); ++k) {
        nets.push_back(least_squares(columns, trials.column(k, net_in)));
    }
    const auto best_at = [&](std::size_t u, double z) {
        int best = 0;
        for (std::size_t k = 1; k < nets.size(); ++k) {
            const std::vector<double>& was = nets[static_cast<std::size_t>(best)];
            if (nets[k][0] + nets[k][u + 1] * z > was[0] + was[u + 1] * z) best = static_cast<int>(k);
        }
        return best;
    };
    for (std::size_t u = 0; u < unknowns.size(); ++u) {
        const double z_low = (unknowns[u].low - scales[u].mean) / scales[u].sd;
        const double z_high = (unknowns[u].high - scales[u].mean) / scales[u].sd;
        result.push_back({unknowns[u].key, unknowns[u].low, unknowns[u].high,
                          std::max(0.0, catches[0] + catches[u + 1] * z_low),
                          std::max(0.0, catches[0] + catches[u + 1] * z_high), best_at(u, z_low), best_at(u, z_high)});
    }
    std::stable_sort(result.begin(), result.end(), [](const Sensitivity& a, const Sensitivity& b) {
        return std::abs(a.catches_at_high - a.catches_at_low) > std::abs(b.catches_at_high - b.catches_at_low);
    });
    return result;
}

}  // namespace maybough::planner
