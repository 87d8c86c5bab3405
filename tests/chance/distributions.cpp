// Laws against their exact distributions: chi-square with pooled cells, Kolmogorov-Smirnov, and a wrong twin each.
#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/gamma.hpp>
#include <boost/math/distributions/poisson.hpp>
#include <cmath>
#include <functional>
#include <vector>

#include "chance/chance.hpp"
#include "support/scripted.hpp"

using namespace maybough;

namespace {

// Seven checks share a family-wise 1e-4 (Sidak): 1.43e-5 each.
constexpr double alpha = 1.43e-5;

Stream stream_of(std::uint32_t entity) {
    return Chance{20260101, 0}.stream(Purpose::colony_day, entity);
}

/// Right-tail p of the chi-square statistic of `n` draws against `pmf`, cells with fewer than 5 expected pooled.
double chi_square_p(int n, int top, const std::function<std::int64_t(Stream&)>& draw,
                    const std::function<double(int)>& pmf) {
    std::vector<double> seen(static_cast<std::size_t>(top) + 2, 0);
    Stream g = stream_of(7);
    for (int i = 0; i < n; ++i) seen[static_cast<std::size_t>(std::clamp<std::int64_t>(draw(g), 0, top + 1))] += 1;
    double statistic = 0;
    double pooled_seen = 0;
    double pooled_expected = 0;
    int cells = 0;
    double rest = 1;
    for (int k = 0; k <= top + 1; ++k) {
        const double expected = n * (k <= top ? pmf(k) : std::max(rest, 0.0));
        if (k <= top) rest -= pmf(k);
        pooled_expected += expected;
        pooled_seen += seen[static_cast<std::size_t>(k)];
        if (pooled_expected >= 5) {
            statistic += (pooled_seen - pooled_expected) * (pooled_seen - pooled_expected) / pooled_expected;
            pooled_seen = pooled_expected = 0;
            ++cells;
        }
    }
    return boost::math::cdf(boost::math::complement(boost::math::chi_squared(cells - 1), statistic));
}

/// sqrt(n) times the Kolmogorov-Smirnov distance of n draws from `cdf`.
double ks(int n, const std::function<double(Stream&)>& draw, const std::function<double(double)>& cdf) {
    std::vector<double> x;
    Stream g = stream_of(8);
    for (int i = 0; i < n; ++i) x.push_back(draw(g));
    std::sort(x.begin(), x.end());
    double distance = 0;
    for (int i = 0; i < n; ++i) {
        const double p = cdf(x[static_cast<std::size_t>(i)]);
        distance = std::max({distance, p - static_cast<double>(i) / n, (i + 1.0) / n - p});
    }
    return distance * std::sqrt(n);
}
// Kolmogorov's limit law: P(sqrt(n) D > 2.43) = 2 exp(-2 * 2.43^2) = 1.5e-5.
constexpr double ks_limit = 2.43;

}  // namespace

TEST_CASE("Poisson counts follow their law, and a biased twin is rejected") {
    for (const double mean : {0.4, 3.0, 47.0}) {
        const boost::math::poisson law(mean);
        const auto pmf = [&](int k) { return boost::math::pdf(law, k); };
        CHECK(chi_square_p(
                  40000, 120, [&](Stream& g) { return poisson(g, mean); }, pmf) > alpha);
        // n = 40000 sees a bias of 3 % in the mean (6 standard errors at mean 3).
        CHECK(chi_square_p(
                  40000, 120, [&](Stream& g) { return poisson(g, mean * 1.05); }, pmf) < alpha);
    }
}

TEST_CASE("binomial counts follow their law, and a biased twin is rejected") {
    for (const double p : {0.02, 0.3, 0.85}) {
        const boost::math::binomial law(200, p);
        const auto pmf = [&](int k) { return boost::math::pdf(law, k); };
        CHECK(chi_square_p(
                  40000, 200, [&](Stream& g) { return binomial(g, 200, p); }, pmf) > alpha);
        CHECK(chi_square_p(
                  40000, 200, [&](Stream& g) { return binomial(g, 200, p * 0.96); }, pmf) < alpha);
    }
}

TEST_CASE("normal, exponential and gamma draws follow their laws, and a biased twin is rejected") {
    const auto normal_cdf = [](double x) { return 0.5 * std::erfc(-x / std::sqrt(2.0)); };
    CHECK(ks(
              40000, [](Stream& g) { return standard_normal(g); }, normal_cdf) < ks_limit);
    CHECK(ks(
              40000, [](Stream& g) { return standard_normal(g) + 0.05; }, normal_cdf) > ks_limit);
    const auto exponential_cdf = [](double x) { return 1 - std::exp(-x / 3); };
    CHECK(ks(
              40000, [](Stream& g) { return exponential(g, 3); }, exponential_cdf) < ks_limit);
    CHECK(ks(
              40000, [](Stream& g) { return exponential(g, 3.2); }, exponential_cdf) > ks_limit);
    for (const double shape : {0.6, 2.5}) {
        const boost::math::gamma_distribution<> law(shape, 4 / shape);
        const auto cdf = [&](double x) { return boost::math::cdf(law, x); };
        CHECK(ks(
                  40000, [&](Stream& g) { return gamma(g, shape, 4); }, cdf) < ks_limit);
        CHECK(ks(
                  40000, [&](Stream& g) { return gamma(g, shape, 4.3); }, cdf) > ks_limit);
    }
}

TEST_CASE("rounding at random keeps the mean and draws once") {
    test::Scripted half({0.5});
    CHECK(round_at_random(half, 2.3) == 2);
    CHECK(half.used_up());
    test::Scripted high({0.71});
    CHECK(round_at_random(high, 2.3) == 3);
    test::Scripted zero({0.999});
    CHECK(round_at_random(zero, 0) == 0);
}

TEST_CASE("certain and impossible events need no luck") {
    Stream g = stream_of(9);
    for (int i = 0; i < 100; ++i) {
        CHECK(bernoulli(g, 1));
        CHECK_FALSE(bernoulli(g, 0));
        CHECK(binomial(g, 10, 1) == 10);
        CHECK(binomial(g, 10, 0) == 0);
        CHECK(poisson(g, 0) == 0);
    }
}
