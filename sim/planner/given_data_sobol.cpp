// Given-data Sobol indices by orthogonal polynomials on the ranks of each unknown.
#include "planner/given_data_sobol.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

#include "planner/worth_knowing.hpp"

namespace maybough {

namespace {
constexpr std::size_t beliefs_per_degree = 25;  // a degree more for so many beliefs
constexpr std::size_t most_degrees = 8;
constexpr std::size_t least_free = 5;  // degrees of freedom left for the noise
constexpr std::size_t jackknife_groups = 20;

using Column = std::vector<double>;

/// The beliefs of some seasons: their means, and each unknown's value.
struct BeliefTable {
    Column means;
    std::vector<Column> unknowns;
    Column seasons;  ///< the seasons themselves, for the variance between beliefs
};

/// All beliefs but those of jackknife group `left_out`; all of them where that is jackknife_groups.
BeliefTable table_of(const std::vector<Column>& columns, const Column& y, std::size_t left_out) {
    BeliefTable table;
    table.unknowns.resize(columns.size());
    for (std::size_t first = 0; first + seasons_per_belief <= y.size(); first += seasons_per_belief) {
        if (first / seasons_per_belief % jackknife_groups == left_out) continue;
        double sum = 0;
        for (std::size_t s = first; s < first + seasons_per_belief; ++s) {
            sum += y[s];
            table.seasons.push_back(y[s]);
        }
        table.means.push_back(sum / seasons_per_belief);
        for (std::size_t u = 0; u < columns.size(); ++u) table.unknowns[u].push_back(columns[u][first]);
    }
    return table;
}

double dot(const Column& a, const Column& b) { return std::inner_product(a.begin(), a.end(), b.begin(), 0.0); }

/// Polynomials of degree 1 to `degrees` in the rank of `values`: mean 0, mean square 1, at right angles to each other
/// over these values (Gram 1883), so that the variance explained is the sum of the squared coefficients.
std::vector<Column> rank_polynomials(const Column& values, std::size_t degrees) {
    const std::size_t n = values.size();
    std::vector<std::size_t> order(n);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
    Column place(n);
    for (std::size_t r = 0; r < n; ++r) {
        place[order[r]] = (2 * static_cast<double>(r) + 1) / static_cast<double>(n) - 1;
    }
    std::vector<Column> basis{Column(n, 1)};
    for (std::size_t d = 1; d <= degrees; ++d) {
        Column next(n);
        for (std::size_t i = 0; i < n; ++i) next[i] = place[i] * basis.back()[i];
        for (const Column& lower : basis) {
            const double along = dot(next, lower) / static_cast<double>(n);
            for (std::size_t i = 0; i < n; ++i) next[i] -= along * lower[i];
        }
        const double size = std::sqrt(dot(next, next) / static_cast<double>(n));
        for (double& v : next) v /= size;
        basis.push_back(std::move(next));
    }
    basis.erase(basis.begin());
    return basis;
}

/// What polynomials of `values` explain of `rest`, less what noise would. `spent` degrees of freedom went before.
double variance_explained(const Column& values, Column rest, std::size_t degrees, std::size_t spent) {
    const auto n = static_cast<double>(rest.size());
    double explained = 0;
    for (const Column& polynomial : rank_polynomials(values, degrees)) {
        const double along = dot(rest, polynomial) / n;
        explained += along * along;
        for (std::size_t i = 0; i < rest.size(); ++i) rest[i] -= along * polynomial[i];
    }
    const double noise = dot(rest, rest) / (n - static_cast<double>(spent + degrees));
    return explained - static_cast<double>(degrees) * noise / n;
}

/// Each unknown's share by one table; nothing where the table is too small or has no variance between beliefs.
std::optional<Column> shares_of(const BeliefTable& table) {
    const std::size_t beliefs = table.means.size();
    const std::size_t degrees = std::clamp<std::size_t>(beliefs / beliefs_per_degree, 1, most_degrees);
    if (beliefs < table.unknowns.size() + degrees + least_free) return std::nullopt;
    const double sd = estimate(table.seasons).sd_ignorance;
    if (!(sd > 0)) return std::nullopt;
    const Column b = least_squares(table.unknowns, table.means);
    Column rest = table.means;
    for (std::size_t i = 0; i < beliefs; ++i) {
        rest[i] -= b[0];
        for (std::size_t u = 0; u < table.unknowns.size(); ++u) rest[i] -= b[u + 1] * table.unknowns[u][i];
    }
    Column shares;
    for (std::size_t u = 0; u < table.unknowns.size(); ++u) {
        Column own = rest;
        double mean = 0;
        for (std::size_t i = 0; i < beliefs; ++i) {
            own[i] += b[u + 1] * table.unknowns[u][i];
            mean += own[i] / static_cast<double>(beliefs);
        }
        for (double& v : own) v -= mean;
        // The other unknowns' lines are spent, and the mean.
        const std::size_t spent = table.unknowns.size();
        shares.push_back(variance_explained(table.unknowns[u], std::move(own), degrees, spent) / (sd * sd));
    }
    return shares;
}
}  // namespace

std::vector<FirstOrder> first_order_shares(const std::vector<std::vector<double>>& columns,
                                           const std::vector<double>& y) {
    const std::optional<Column> all = shares_of(table_of(columns, y, jackknife_groups));
    if (!all) return {};
    std::vector<FirstOrder> result(columns.size());
    for (std::size_t u = 0; u < result.size(); ++u) result[u].share = (*all)[u];
    std::vector<Column> without;
    for (std::size_t group = 0; group < jackknife_groups; ++group) {
        const std::optional<Column> some = shares_of(table_of(columns, y, group));
        if (!some) return {};
        without.push_back(*some);
    }
    constexpr auto groups = static_cast<double>(jackknife_groups);
    for (std::size_t u = 0; u < result.size(); ++u) {
        double mean = 0;
        for (const Column& some : without) mean += some[u] / groups;
        double squares = 0;
        for (const Column& some : without) squares += (some[u] - mean) * (some[u] - mean);
        result[u].se = std::sqrt(squares * (groups - 1) / groups);
    }
    return result;
}

}  // namespace maybough
