// Exact laws over any source of 32-bit words: a named stream, or a test's script.
#pragma once

#include <cmath>
#include <concepts>
#include <cstdint>

namespace maybough::chance {

/// Anything that gives uniforms on the open interval (0, 1): Stream, or a scripted source in a test.
template <class G>
concept UniformSource = requires(G g) {
    { g.uniform() } -> std::convertible_to<double>;
};

/// Quantile of the standard normal law, p in (0, 1), by Boost.Math.
double normal_quantile(double p);

/// True with probability p (values outside 0..1 act as 0 or 1). One draw.
template <UniformSource G>
bool bernoulli(G& g, double p) {
    return g.uniform() < p;
}

/// Standard normal by inversion. One draw.
template <UniformSource G>
double standard_normal(G& g) {
    return normal_quantile(g.uniform());
}

/// Exponential with the given mean. One draw.
template <UniformSource G>
double exponential(G& g, double mean) {
    return -mean * std::log(g.uniform());
}

/// Lognormal with median `median` and standard deviation `sd_ln` of its logarithm. One draw.
template <UniformSource G>
double lognormal(G& g, double median, double sd_ln) {
    return median * std::exp(sd_ln * standard_normal(g));
}

/// Whole number with mean x (x >= 0) that is floor(x) or floor(x) + 1. One draw. For counts of thousands, where the
/// binomial's own spread is far below the spread between colonies.
template <UniformSource G>
std::int64_t round_at_random(G& g, double x) {
    return static_cast<std::int64_t>(std::floor(x + g.uniform()));
}

/// Poisson with mean `mean` (0..700 per call is split internally) by sequential inversion.
template <UniformSource G>
std::int64_t poisson(G& g, double mean) {
    std::int64_t count = 0;
    while (mean > 0) {
        const double part = mean > 30 ? 30 : mean;
        mean -= part;
        double p = std::exp(-part);
        double cumulative = p;
        const double u = g.uniform();
        std::int64_t k = 0;
        while (u > cumulative && p > 0) {
            ++k;
            p *= part / static_cast<double>(k);
            cumulative += p;
            if (k > 1000) break;
        }
        count += k;
    }
    return count;
}

/// Binomial(n, p) by counting for small n, by sequential inversion otherwise (n p split to stay above underflow).
template <UniformSource G>
std::int64_t binomial(G& g, std::int64_t n, double p) {
    if (n <= 0 || !(p > 0)) return 0;
    if (p >= 1) return n;
    if (p > 0.5) return n - binomial(g, n, 1 - p);
    std::int64_t count = 0;
    while (n > 0) {
        const auto part = static_cast<double>(n) * p > 30 ? static_cast<std::int64_t>(30 / p) : n;
        n -= part;
        const double odds = p / (1 - p);
        double f = std::exp(static_cast<double>(part) * std::log1p(-p));
        double cumulative = f;
        const double u = g.uniform();
        std::int64_t k = 0;
        while (u > cumulative && k < part) {
            f *= odds * static_cast<double>(part - k) / static_cast<double>(k + 1);
            ++k;
            cumulative += f;
        }
        count += k;
    }
    return count;
}

/// Gamma with shape > 0 and the given mean. Marsaglia and Tsang 2000, "A simple method for generating gamma variables".
template <UniformSource G>
double gamma(G& g, double shape, double mean) {
    if (shape < 1) {
        const double u = g.uniform();
        return gamma(g, shape + 1, mean * (shape + 1) / shape) * std::pow(u, 1 / shape);
    }
    const double d = shape - 1.0 / 3.0;
    const double c = 1 / std::sqrt(9 * d);
    for (;;) {
        const double x = standard_normal(g);
        const double v = std::pow(1 + c * x, 3);
        const double u = g.uniform();
        if (v > 0 && std::log(u) < 0.5 * x * x + d - d * v + d * std::log(v)) return d * v * mean / shape;
    }
}

}  // namespace maybough::chance
