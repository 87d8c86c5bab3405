// Given-data Sobol indices by orthogonal polynomials on the ranks of each unknown.
#include "planner/given_data_sobol.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

#include "ensemble/ensemble.hpp"

namespace maybough::planner {

namespace {
constexpr Eigen::Index beliefs_per_degree = 25;  // a degree more for so many beliefs
constexpr Eigen::Index most_degrees = 8;
constexpr Eigen::Index least_free = 5;  // degrees of freedom left for the noise
constexpr std::size_t jackknife_groups = 20;

using Column = std::vector<double>;
using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

/// The beliefs of some seasons: their means, and each unknown's value.
struct BeliefTable {
    VectorXd means;
    MatrixXd unknowns;  ///< [belief, unknown], each of mean 0 and mean square 1
    Column seasons;     ///< the seasons themselves, for the variance between beliefs
};

/// All beliefs but those of the blocks of jackknife group `left_out`; all of them where that is jackknife_groups.
BeliefTable table_of(const std::vector<Column>& columns, const Column& y, std::size_t left_out) {
    std::vector<std::size_t> firsts;  // season of each belief kept
    for (std::size_t first = 0; first + seasons_per_belief <= y.size(); first += seasons_per_belief) {
        if (first / seasons_per_block % jackknife_groups != left_out) firsts.push_back(first);
    }
    BeliefTable table;
    const auto beliefs = static_cast<Index>(firsts.size());
    table.means.resize(beliefs);
    table.unknowns.resize(beliefs, static_cast<Index>(columns.size()));
    for (Index belief = 0; belief < beliefs; ++belief) {
        const std::size_t first = firsts[static_cast<std::size_t>(belief)];
        const auto from = y.begin() + static_cast<std::ptrdiff_t>(first);
        table.seasons.insert(table.seasons.end(), from, from + seasons_per_belief);
        table.means[belief] = std::accumulate(from, from + seasons_per_belief, 0.0) / seasons_per_belief;
        for (std::size_t u = 0; u < columns.size(); ++u) {
            table.unknowns(belief, static_cast<Index>(u)) = columns[u][first];
        }
    }
    for (auto column : table.unknowns.colwise()) {
        column.array() -= column.mean();
        const double size = std::sqrt(column.squaredNorm() / static_cast<double>(beliefs));
        if (size > 0) column /= size;
    }
    return table;
}

/// Polynomials of degree 1 to `degrees` in the rank of `values`: mean 0, mean square 1, at right angles to each other
/// over these values (Gram 1883), so that the variance explained is the sum of the squared coefficients.
MatrixXd rank_polynomials(const VectorXd& values, Index degrees) {
    const Index n = values.size();
    std::vector<Index> order(static_cast<std::size_t>(n));
    std::iota(order.begin(), order.end(), Index{0});
    std::stable_sort(order.begin(), order.end(), [&](Index a, Index b) { return values[a] < values[b]; });
    VectorXd place(n);
    for (Index r = 0; r < n; ++r) {
        place[order[static_cast<std::size_t>(r)]] = static_cast<double>(2 * r + 1) / static_cast<double>(n) - 1;
    }
    MatrixXd basis(n, degrees + 1);
    basis.col(0).setOnes();
    for (Index d = 1; d <= degrees; ++d) {
        VectorXd next = place.cwiseProduct(basis.col(d - 1));
        const auto lower = basis.leftCols(d);
        next -= lower * (lower.transpose() * next) / static_cast<double>(n);
        basis.col(d) = next * std::sqrt(static_cast<double>(n)) / next.norm();
    }
    return basis.rightCols(degrees);
}

/// What polynomials of unknown `u` explain of the means beside the lines of all others, less what noise would.
double variance_explained(const BeliefTable& table, Index u, Index degrees) {
    const Index n = table.means.size();
    const Index others = table.unknowns.cols();  // the mean in place of the unknown's own line
    MatrixXd x(n, others + degrees);
    x.leftCols(others) = table.unknowns;
    x.col(u).setOnes();
    x.rightCols(degrees) = rank_polynomials(table.unknowns.col(u), degrees);
    const Eigen::LDLT<MatrixXd> normal = (x.transpose() * x).ldlt();
    const VectorXd b = normal.solve(x.transpose() * table.means);
    const double noise = (table.means - x * b).squaredNorm() / static_cast<double>(n - x.cols());
    const MatrixXd inverse = normal.solve(MatrixXd::Identity(x.cols(), x.cols()));
    return b.tail(degrees).squaredNorm() - noise * inverse.diagonal().tail(degrees).sum();
}

/// Each unknown's share by one table; nothing where the table is too small or has no variance between beliefs.
std::optional<Column> shares_of(const BeliefTable& table) {
    const Index beliefs = table.means.size();
    const Index unknowns = table.unknowns.cols();
    const Index degrees = std::clamp<Index>(beliefs / beliefs_per_degree, 1, most_degrees);
    if (beliefs < unknowns + degrees + least_free) return std::nullopt;
    const double sd = estimate(table.seasons).sd_ignorance;
    if (!(sd > 0)) return std::nullopt;
    Column shares;
    for (Index u = 0; u < unknowns; ++u) shares.push_back(variance_explained(table, u, degrees) / (sd * sd));
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

}  // namespace maybough::planner
