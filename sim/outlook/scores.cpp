// Scores of forecasts: CRPS of ensembles and of laws, log scores, ranks.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "outlook/outlook.hpp"

namespace maybough::outlook {

namespace {
constexpr double negligible = 1e-14;

/// Sum over k >= 0 of (F(k) - [k >= y])^2, the CRPS of a law on whole numbers; `log_mass` gives ln P(k).
template <class LogMass>
double crps_counts(LogMass log_mass, double mean, std::int64_t observed) {
    double below = 0;
    double sum = 0;
    for (std::int64_t k = 0;; ++k) {
        below += std::exp(log_mass(static_cast<double>(k)));
        const double miss = below - (k >= observed ? 1 : 0);
        sum += miss * miss;
        if (k >= observed && static_cast<double>(k) > mean && 1 - below < negligible) return sum;
        // Rounding can hold 1 - below above the limit; no mass is left so far out.
        if (k >= observed && static_cast<double>(k) > mean && log_mass(static_cast<double>(k)) < -60) return sum;
    }
}

double log_poisson(double mean, double k) {
    return mean > 0 ? k * std::log(mean) - mean - std::lgamma(k + 1) : (k > 0 ? -1e300 : 0);
}

double log_negative_binomial(double size, double mean, double k) {
    if (!(mean > 0)) return k > 0 ? -1e300 : 0;
    const double p = size / (size + mean);
    return std::lgamma(size + k) - std::lgamma(size) - std::lgamma(k + 1) + size * std::log(p) + k * std::log1p(-p);
}
}  // namespace

double crps_ensemble(std::vector<double> members, double observed) {
    if (members.empty()) throw ModelFault("an ensemble without members was scored");
    std::sort(members.begin(), members.end());
    const auto m = static_cast<double>(members.size());
    double miss = 0;
    double spread = 0;  // sum over pairs i < j of x_j - x_i
    for (std::size_t i = 0; i < members.size(); ++i) {
        miss += std::abs(members[i] - observed);
        spread += (2 * static_cast<double>(i) - m + 1) * members[i];
    }
    return miss / m - (members.size() > 1 ? spread / (m * (m - 1)) : 0);
}

double crps_normal(double mean, double sd, double observed) {
    if (!(sd > 0)) return std::abs(observed - mean);
    const double z = (observed - mean) / sd;
    const double density = std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi);
    return sd * (z * std::erf(z / std::numbers::sqrt2) + 2 * density - std::numbers::inv_sqrtpi);
}

double crps_poisson(double mean, std::int64_t observed) {
    return crps_counts([mean](double k) { return log_poisson(mean, k); }, mean, observed);
}

double crps_negative_binomial(double size, double mean, std::int64_t observed) {
    return crps_counts([size, mean](double k) { return log_negative_binomial(size, mean, k); }, mean, observed);
}

double log_score_poisson(double mean, std::int64_t observed) {
    return -log_poisson(mean, static_cast<double>(observed));
}

double log_score_negative_binomial(double size, double mean, std::int64_t observed) {
    return -log_negative_binomial(size, mean, static_cast<double>(observed));
}

RankHistogram rank_shares(std::span<const double> members, double observed) {
    // With b members below the truth and e equal to it, its rank is one of b .. b + e of the m + 1 possible, each
    // alike: together a stretch of [0, 1] whose overlap with each class is that class's share.
    double below = 0;
    double equal = 0;
    for (const double member : members) {
        below += member < observed ? 1 : 0;
        equal += member == observed ? 1 : 0;
    }
    const double ranks = static_cast<double>(members.size()) + 1;
    const double from = below / ranks;
    const double until = (below + equal + 1) / ranks;
    RankHistogram shares{};
    const auto classes = static_cast<double>(shares.size());
    for (std::size_t c = 0; c < shares.size(); ++c) {
        const double low = std::max(from, static_cast<double>(c) / classes);
        const double high = std::min(until, static_cast<double>(c + 1) / classes);
        shares[c] = std::max(0.0, high - low) / (until - from);
    }
    return shares;
}

}  // namespace maybough::outlook
