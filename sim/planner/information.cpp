// Emulators of the net worth of each number of traps over the unknowns, and what follows from them.
#include "planner/information.hpp"

#include <algorithm>
#include <cmath>

#include "planner/given_data_sobol.hpp"
#include "planner/sobol.hpp"

namespace maybough::planner {

namespace {
constexpr std::uint32_t sobol_points = 2048;

std::vector<std::vector<double>> with_bends(const std::vector<std::vector<double>>& columns) {
    std::vector<std::vector<double>> terms = columns;
    for (const std::vector<double>& column : columns) {
        terms.push_back(column);
        for (double& z : terms.back()) z = z * z - 1;
    }
    return terms;
}

/// Seasons whose block of beliefs is of this half: beliefs of one block are not independent.
std::vector<std::size_t> half_of(std::size_t seasons, std::size_t half) {
    std::vector<std::size_t> rows;
    for (std::size_t s = 0; s < seasons; ++s) {
        if (s / seasons_per_block % 2 == half) rows.push_back(s);
    }
    return rows;
}

std::vector<double> picked(const std::vector<double>& values, const std::vector<std::size_t>& rows) {
    std::vector<double> some;
    some.reserve(rows.size());
    for (const std::size_t r : rows) some.push_back(values[r]);
    return some;
}

/// Emulators of every placement's net worth less that of `chosen`.
std::vector<Emulator> net_emulators(const std::vector<std::vector<double>>& columns, const Trials& trials,
                                    std::size_t chosen, const std::vector<std::size_t>& rows) {
    std::vector<std::vector<double>> some;
    some.reserve(columns.size());
    for (const std::vector<double>& column : columns) some.push_back(picked(column, rows));
    std::vector<Emulator> emulators;
    for (std::size_t k = 0; k < trials.outcomes.size(); ++k) {
        emulators.push_back(fit_emulator(some, picked(trials.difference(k, chosen, net_in), rows)));
    }
    return emulators;
}

std::size_t best_of(const std::vector<Emulator>& emulators, const std::vector<double>& z, std::size_t chosen) {
    std::size_t best = chosen;
    double best_net = emulators[chosen].at(z);
    for (std::size_t k = 0; k < emulators.size(); ++k) {
        const double net = emulators[k].at(z);
        if (net > best_net) {
            best_net = net;
            best = k;
        }
    }
    return best;
}

std::vector<double> row_of(const std::vector<std::vector<double>>& columns, std::size_t season) {
    std::vector<double> z;
    z.reserve(columns.size());
    for (const std::vector<double>& column : columns) z.push_back(column[season]);
    return z;
}

std::vector<std::size_t> all_rows(const Trials& trials) {
    std::vector<std::size_t> rows(trials.seasons());
    for (std::size_t s = 0; s < rows.size(); ++s) rows[s] = s;
    return rows;
}
}  // namespace

double Emulator::at(const std::vector<double>& z) const {
    double y = constant;
    for (std::size_t i = 0; i < z.size(); ++i) y += slope[i] * z[i] + bend[i] * (z[i] * z[i] - 1);
    return y;
}

Emulator fit_emulator(const std::vector<std::vector<double>>& columns, const std::vector<double>& y) {
    const std::vector<double> b = least_squares(with_bends(columns), y);
    const auto n = static_cast<std::ptrdiff_t>(columns.size());
    return {b[0], {b.begin() + 1, b.begin() + 1 + n}, {b.begin() + 1 + n, b.end()}};
}

std::vector<std::vector<double>> standardised(const std::vector<SampledUnknown>& unknowns) {
    std::vector<std::vector<double>> columns;
    for (const SampledUnknown& unknown : unknowns) {
        double mean = 0;
        double squares = 0;
        const auto n = static_cast<double>(unknown.values.size());
        for (const double v : unknown.values) mean += v / n;
        for (const double v : unknown.values) squares += (v - mean) * (v - mean) / n;
        const double sd = squares > 0 ? std::sqrt(squares) : 1;
        columns.push_back(unknown.values);
        for (double& v : columns.back()) v = (v - mean) / sd;
    }
    return columns;
}

double worth_of_knowing(const std::vector<std::vector<double>>& columns, const Trials& trials, std::size_t chosen) {
    const std::size_t terms = 2 * columns.size() + 1;
    double gained = 0;
    double seasons = 0;
    for (std::size_t half = 0; half < 2; ++half) {
        const std::vector<std::size_t> learn = half_of(trials.seasons(), half);
        if (learn.size() < 2 * terms) return 0;
        const std::vector<Emulator> emulators = net_emulators(columns, trials, chosen, learn);
        for (const std::size_t s : half_of(trials.seasons(), 1 - half)) {
            const std::size_t k = best_of(emulators, row_of(columns, s), chosen);
            gained += trials.outcomes[k][s].net() - trials.outcomes[chosen][s].net();
            seasons += 1;
        }
    }
    return seasons > 0 ? std::max(0.0, gained / seasons) : 0;
}

Regret regret_of(const std::vector<SampledUnknown>& unknowns, const Trials& trials, std::size_t chosen) {
    Regret regret;
    if (unknowns.empty() || trials.seasons() < 4 * unknowns.size() + 2) return regret;
    const std::vector<std::vector<double>> columns = standardised(unknowns);
    const std::vector<Emulator> emulators = net_emulators(columns, trials, chosen, all_rows(trials));
    for (std::size_t s = 0; s < trials.seasons(); ++s) {
        const std::vector<double> z = row_of(columns, s);
        const double forgone = emulators[best_of(emulators, z, chosen)].at(z) - emulators[chosen].at(z);
        regret.expected += forgone / static_cast<double>(trials.seasons());
        regret.worst = std::max(regret.worst, forgone);
    }
    return regret;
}

void add_information(std::vector<Sensitivity>& sensitivities, const std::vector<SampledUnknown>& unknowns,
                     const Trials& trials, std::size_t chosen, std::uint32_t seed) {
    if (unknowns.empty() || trials.seasons() < 4 * unknowns.size() + 2) return;
    const std::vector<std::vector<double>> columns = standardised(unknowns);
    const std::vector<FirstOrder> of_catch = first_order_shares(columns, trials.long_column(chosen, catches_in));
    const std::vector<Emulator> nets = net_emulators(columns, trials, chosen, all_rows(trials));
    // A uniform picks one of the drawn values: the belief's own law, without a second description of it.
    std::vector<double> z(columns.size());
    const auto place = [&](std::span<const double> u) {
        for (std::size_t i = 0; i < z.size(); ++i) {
            z[i] = columns[i][static_cast<std::size_t>(u[i] * static_cast<double>(columns[i].size()))];
        }
    };
    const auto luck = [seed](std::uint32_t which) { return Chance{seed, 0}.stream(Purpose::planner_bootstrap, which); };
    const SobolIndices of_decision = sobol_indices(
        [&](std::span<const double> u) {
            place(u);
            return static_cast<double>(best_of(nets, z, chosen));
        },
        columns.size(), sobol_points, luck(2));
    for (Sensitivity& sensitivity : sensitivities) {
        for (std::size_t u = 0; u < unknowns.size(); ++u) {
            if (unknowns[u].key != sensitivity.key) continue;
            if (!of_catch.empty()) {
                sensitivity.share_of_catch = std::clamp(of_catch[u].share, 0.0, 1.0);
                sensitivity.share_of_catch_se = of_catch[u].se;
            }
            sensitivity.share_of_decision = std::clamp(of_decision.total[u], 0.0, 1.0);
            sensitivity.worth_knowing = worth_of_knowing({columns[u]}, trials, chosen);
        }
    }
}

}  // namespace maybough::planner
