// Tornado of the catch and of the decision by linear regression on drawn beliefs.
#include "planner/worth_knowing.hpp"

#include <algorithm>
#include <cmath>

namespace maybough {

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

/// Solves a symmetric positive definite system in place by Gauss elimination.
std::vector<double> solve(std::vector<std::vector<double>> m, std::vector<double> right) {
    const std::size_t n = right.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t r = i + 1; r < n; ++r) {
            const double factor = m[r][i] / m[i][i];
            for (std::size_t c = i; c < n; ++c) m[r][c] -= factor * m[i][c];
            right[r] -= factor * right[i];
        }
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t c = i + 1; c < n; ++c) right[i] -= m[i][c] * right[c];
        right[i] /= m[i][i];
    }
    return right;
}
}  // namespace

std::vector<Unknown> unknowns_of(const Scenario& scenario, std::uint32_t seed, std::uint32_t first, std::size_t count) {
    std::vector<Unknown> unknowns;
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
    const std::size_t n = columns.size() + 1;
    std::vector<std::vector<double>> m(n, std::vector<double>(n, 0));
    std::vector<double> right(n, 0);
    const auto term = [&](std::size_t i, std::size_t s) { return i == 0 ? 1.0 : columns[i - 1][s]; };
    for (std::size_t s = 0; s < y.size(); ++s) {
        for (std::size_t i = 0; i < n; ++i) {
            right[i] += term(i, s) * y[s];
            for (std::size_t j = 0; j < n; ++j) m[i][j] += term(i, s) * term(j, s);
        }
    }
    for (std::size_t i = 0; i < n; ++i) m[i][i] += ridge * static_cast<double>(y.size());
    return solve(std::move(m), std::move(right));
}

std::vector<Sensitivity> sensitivities_of(const std::vector<Unknown>& unknowns, const Trials& trials,
                                          std::size_t chosen) {
    std::vector<Sensitivity> result;
    if (unknowns.empty() || trials.seasons() < unknowns.size() + 2) return result;
    std::vector<std::vector<double>> columns;
    std::vector<Scale> scales;
    for (const Unknown& unknown : unknowns) {
        scales.push_back(scale_of(unknown.values));
        columns.push_back(unknown.values);
        for (double& v : columns.back()) v = (v - scales.back().mean) / scales.back().sd;
    }
    const std::vector<double> catches = least_squares(columns, trials.column(chosen, catches_in));
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

}  // namespace maybough
