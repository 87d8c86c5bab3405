// Means over seasons with honest errors: seasons under one block of beliefs are a cluster.
#include <algorithm>
#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/chi_squared.hpp>
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
    result.low_95 = result.mean - result.half_width_95;
    result.high_95 = result.mean + result.half_width_95;
    return result;
}

namespace {
/// Blocks' worth of belief that counts of a season vary as Poisson's do.
constexpr double poisson_blocks = 2;
constexpr double normal_quantile_95 = 1.959963984540054;

/// Clusters that add_error counts.
double clusters_in(std::size_t seasons) {
    return static_cast<double>(
        clusters_of(std::vector<double>(seasons), seasons > seasons_per_block ? seasons_per_block : seasons_per_belief)
            .size());
}
}  // namespace

void set_count_limits(Estimate& estimate, double degrees) {
    const double n = std::max<double>(1, estimate.n);
    const double wider = t_quantile_95(std::max(1.0, degrees)) / normal_quantile_95;
    // Swarms behind one effective count; a count of its own where nothing was caught or nothing varied.
    const double each = estimate.mean > 0 && estimate.se > 0 ? std::pow(wider * estimate.se, 2) / estimate.mean
                                                             : std::pow(wider, 2) / n;
    const double count = std::max(0.0, estimate.mean) / each;
    const auto limit = [](double p, double twice_count) {
        return boost::math::quantile(boost::math::chi_squared(twice_count), p) / 2;
    };
    constexpr double plenty = 1e4;  // from here on the limits are those of the normal law to four digits
    if (count > plenty) {
        estimate.low_95 = estimate.mean - wider * normal_quantile_95 * estimate.se;
        estimate.high_95 = estimate.mean + wider * normal_quantile_95 * estimate.se;
        return;
    }
    estimate.low_95 = count > 0 ? limit(1 - two_sided_95, 2 * count) * each : 0;
    estimate.high_95 = limit(two_sided_95, 2 * count + 2) * each;
}

Estimate estimate_count(std::span<const double> values) {
    Estimate result = estimate(values);
    if (values.empty()) return result;
    const double degrees = std::max(0.0, clusters_in(values.size()) - 1);
    const double poisson = result.mean / static_cast<double>(values.size());
    result.se = std::sqrt((degrees * result.se * result.se + poisson_blocks * poisson) / (degrees + poisson_blocks));
    result.half_width_95 = t_quantile_95(degrees + poisson_blocks) * result.se;
    set_count_limits(result, degrees + poisson_blocks);
    return result;
}

SeasonShare share_of(std::span<const double> happened) {
    SeasonShare result;
    if (happened.empty()) return result;
    std::vector<double> ones;
    for (const double value : happened) ones.push_back(value != 0 ? 1 : 0);
    const Estimate e = estimate(ones);
    const auto n = static_cast<double>(ones.size());
    const double clusters = clusters_in(ones.size());
    const double p = std::clamp(e.mean, 0.0, 1.0);
    double effective = std::max(1.0, n / seasons_per_belief);
    if (p > 0 && p < 1 && e.se > 0 && clusters > 1) {
        const double shrink = t_quantile_95(n - 1) / t_quantile_95(clusters - 1);
        effective = std::clamp(p * (1 - p) / (e.se * e.se) * shrink * shrink, 1.0, n);
    }
    const double hits = p * effective;
    const double misses = effective - hits;
    const auto beta = [](double a, double b, double q) {
        return boost::math::quantile(boost::math::beta_distribution<>(a, b), q);
    };
    result.share = p;
    result.low_95 = hits > 0 ? beta(hits, misses + 1, 1 - two_sided_95) : 0;
    result.high_95 = misses > 0 ? beta(hits + 1, misses, two_sided_95) : 1;
    return result;
}

}  // namespace maybough::ensemble
