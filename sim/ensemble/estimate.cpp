// Means over seasons with honest errors: seasons under one block of beliefs are a cluster.
#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

#include "ensemble/ensemble.hpp"

namespace maybough::ensemble {

namespace {
constexpr double two_sided_95 = 0.975;

/// Sample quantile by linear interpolation between order statistics (definition 7 of Hyndman and Fan 1996).
double quantile_of_sorted(const std::vector<double>& sorted, double p) {
    const double place = p * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (place - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

struct Cluster {
    double sum = 0;
    double n = 0;
};

/// Clusters of `length` values; the last may be shorter.
std::vector<Cluster> clusters_of(std::span<const double> values, std::uint32_t length) {
    std::vector<Cluster> clusters;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (i % length == 0) clusters.emplace_back();
        clusters.back().sum += values[i];
        clusters.back().n += 1;
    }
    return clusters;
}

/// Spread within and between beliefs: one-way analysis of variance with random effects (Searle, Casella and McCulloch
/// 1992, "Variance components", section 3.6), sizes unequal only in the last belief.
void split_spread(std::span<const double> values, Estimate& result) {
    const std::vector<Cluster> beliefs = clusters_of(values, seasons_per_belief);
    const auto n = static_cast<double>(values.size());
    const auto groups = static_cast<double>(beliefs.size());
    double within = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        const Cluster& c = beliefs[i / seasons_per_belief];
        within += std::pow(values[i] - c.sum / c.n, 2);
    }
    double between = 0;
    double squares = 0;
    for (const Cluster& c : beliefs) {
        between += c.n * std::pow(c.sum / c.n - result.mean, 2);
        squares += c.n * c.n;
    }
    const double within_mean_square = n > groups ? within / (n - groups) : 0;
    result.sd_chance = std::sqrt(within_mean_square);
    if (groups > 1) {
        const double typical_size = (n - squares / n) / (groups - 1);
        const double between_mean_square = between / (groups - 1);
        result.sd_ignorance = std::sqrt(std::max(0.0, (between_mean_square - within_mean_square) / typical_size));
    }
}

/// Blocks as clusters (Liang and Zeger 1986, with the small-sample factor of that many clusters); beliefs where there
/// is but one block.
void add_error(std::span<const double> values, Estimate& result) {
    const std::uint32_t length = values.size() > seasons_per_block ? seasons_per_block : seasons_per_belief;
    const std::vector<Cluster> clusters = clusters_of(values, length);
    const auto n = static_cast<double>(values.size());
    const auto groups = static_cast<double>(clusters.size());
    if (groups > 1) {
        double robust = 0;
        for (const Cluster& c : clusters) robust += std::pow(c.sum - c.n * result.mean, 2);
        result.se = std::sqrt(robust * groups / (groups - 1)) / n;
        result.half_width_95 = t_quantile_95(groups - 1) * result.se;
    } else if (n > 1) {
        result.se = result.sd_chance / std::sqrt(n);
        result.half_width_95 = t_quantile_95(n - 1) * result.se;
    }
}
}  // namespace

double t_quantile_95(double degrees_of_freedom) {
    if (!(degrees_of_freedom >= 1)) return 0;
    return boost::math::quantile(boost::math::students_t(degrees_of_freedom), two_sided_95);
}

Estimate estimate(std::span<const double> values) {
    Estimate result;
    result.n = static_cast<std::uint32_t>(values.size());
    if (values.empty()) return result;
    const auto n = static_cast<double>(values.size());
    double sum = 0;
    for (const double v : values) sum += v;
    result.mean = sum / n;

    split_spread(values, result);
    add_error(values, result);

    std::vector<double> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end());
    result.low = quantile_of_sorted(sorted, 0.1);
    result.high = quantile_of_sorted(sorted, 0.9);
    return result;
}

}  // namespace maybough::ensemble
