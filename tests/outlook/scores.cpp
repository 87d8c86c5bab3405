// Scores against closed forms and against numbers of an outside library; ranks and their ties.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "outlook/outlook.hpp"

using namespace maybough;

namespace {
/// The fair ensemble score by its definition, all pairs.
double crps_by_pairs(const std::vector<double>& x, double y) {
    double miss = 0;
    double spread = 0;
    for (const double a : x) miss += std::abs(a - y);
    for (const double a : x) {
        for (const double b : x) spread += std::abs(a - b);
    }
    const auto m = static_cast<double>(x.size());
    return miss / m - (x.size() > 1 ? spread / (2 * m * (m - 1)) : 0);
}
}  // namespace

TEST_CASE("CRPS of the normal law: closed form") {
    // Gneiting, Raftery, Westveld and Goldman 2005, Mon. Weather Rev. 133:1098, eq. 5; values computed from it.
    CHECK(crps_normal(0, 1, 0) == doctest::Approx(0.23369498).epsilon(1e-7));
    CHECK(crps_normal(0, 1, 0.5) == doctest::Approx(0.33140353).epsilon(1e-7));
    CHECK(crps_normal(0, 1, 1) == doctest::Approx(0.60244136).epsilon(1e-7));
    CHECK(crps_normal(0, 1, 2) == doctest::Approx(1.45279182).epsilon(1e-7));
    CHECK(crps_normal(10, 3, 11.5) == doctest::Approx(3 * crps_normal(0, 1, 0.5)).epsilon(1e-12));
    CHECK(crps_normal(4, 0, 7) == doctest::Approx(3));
}

TEST_CASE("CRPS of the normal law expected under itself is 1 / sqrt(pi)") {
    // Trapezes of 0.001 over eight spreads: the error is far below the tolerance.
    double expected = 0;
    for (int i = -8000; i <= 8000; ++i) {
        const double y = i * 1e-3;
        expected += crps_normal(0, 1, y) * std::exp(-y * y / 2) / std::sqrt(2 * std::acos(-1.0)) * 1e-3;
    }
    CHECK(expected == doctest::Approx(0.56418958).epsilon(1e-7));
}

TEST_CASE("CRPS and log score of counts: closed forms") {
    CHECK(crps_poisson(3, 2) == doctest::Approx(0.54174401).epsilon(1e-7));
    CHECK(crps_poisson(3, 0) == doctest::Approx(2.04387332).epsilon(1e-7));
    CHECK(log_score_poisson(3, 2) == doctest::Approx(1.49592260).epsilon(1e-8));
    CHECK(crps_negative_binomial(2, 3, 2) == doctest::Approx(0.58845312).epsilon(1e-7));
    // A gamma prior (2, 1), three swarms in four seasons: posterior gamma (5, 5), and for one season more a negative
    // binomial with r = 5 and mean 1, whose chance of none is (5/6)^5.
    CHECK(std::exp(-log_score_negative_binomial(5, 1, 0)) == doctest::Approx(0.401878).epsilon(1e-6));
    CHECK(std::exp(-log_score_negative_binomial(5, 1, 0)) == doctest::Approx(std::pow(5.0 / 6, 5)).epsilon(1e-12));
}

TEST_CASE("a law of counts with no spread left is scored by its distance") {
    CHECK(crps_poisson(0, 4) == doctest::Approx(4));
    CHECK(crps_negative_binomial(3, 0, 2) == doctest::Approx(2));
}

TEST_CASE("a negative binomial of great size is a Poisson") {
    CHECK(crps_negative_binomial(1e8, 3, 2) == doctest::Approx(crps_poisson(3, 2)).epsilon(1e-6));
    CHECK(log_score_negative_binomial(1e6, 3, 2) == doctest::Approx(log_score_poisson(3, 2)).epsilon(1e-5));
}

TEST_CASE("the sorted form of the ensemble score is the double sum") {
    const std::vector<double> x{12, 15, 15, 18, 21, 30, 9, 14, 16, 40};
    for (const double y : {15.0, 25.5, 3.0, 60.0}) {
        CHECK(crps_ensemble(x, y) == doctest::Approx(crps_by_pairs(x, y)).epsilon(1e-12));
    }
    CHECK(crps_ensemble({7}, 4) == doctest::Approx(3));
    CHECK(crps_ensemble({1, 3}, 2) == doctest::Approx(0));
    CHECK_THROWS_AS(crps_ensemble({}, 4), ModelFault);
}

TEST_CASE("the fair ensemble score has no bias from few members") {
    // Members and truth from the standard normal law: the mean score must be 1 / sqrt(pi), with five members too.
    // sd of one score is below 0.6; n = 40000, z = 4: tolerance 4 * 0.6 / 200 = 0.012. Left biased, five members would
    // score 1/sqrt(pi) * (1 + 1/5), off by 0.11.
    Stream stream = Chance{20, 0}.stream(Purpose::weather_generate, 0U);
    double sum = 0;
    double biased = 0;
    constexpr int n = 40000;
    for (int i = 0; i < n; ++i) {
        std::vector<double> x;
        for (int k = 0; k < 5; ++k) x.push_back(standard_normal(stream));
        const double y = standard_normal(stream);
        sum += crps_ensemble(x, y);
        double miss = 0;
        for (const double a : x) miss += std::abs(a - y) / 5;
        biased += miss - (miss - crps_ensemble(x, y)) * 4 / 5;
    }
    CHECK(std::abs(sum / n - 0.56418958) < 0.012);
    CHECK(std::abs(biased / n - 0.56418958) > 0.012);
}

TEST_CASE("ranks of the truth share ties out, so that whole days that hold give equal shares") {
    const std::vector<double> nine{1, 2, 3, 4, 5, 6, 7, 8, 9};
    for (int c = 0; c < 10; ++c) {
        const RankHistogram shares = rank_shares(nine, c + 0.5);
        CHECK(shares[static_cast<std::size_t>(c)] == doctest::Approx(1));
    }
    const RankHistogram level = rank_shares(std::vector<double>(9, 4.0), 4);
    for (const double share : level) CHECK(share == doctest::Approx(0.1));

    // Dice as members and truth: shares must be level within z * sigma / sqrt(n) = 4 * 0.3 / sqrt(20000) = 0.0085
    // (sigma of a share in 0..1 with mean 0.1 is at most 0.3). With ties counted always low they would not be.
    Stream stream = Chance{21, 0}.stream(Purpose::weather_generate, 0U);
    RankHistogram mean{};
    RankHistogram low{};
    constexpr int n = 20000;
    for (int i = 0; i < n; ++i) {
        std::vector<double> x;
        for (int k = 0; k < 19; ++k) x.push_back(std::floor(6 * stream.uniform()));
        const double y = std::floor(6 * stream.uniform());
        const RankHistogram shares = rank_shares(x, y);
        const RankHistogram ties_low = rank_shares(x, y - 0.5);
        for (std::size_t c = 0; c < 10; ++c) {
            mean[c] += shares[c] / n;
            low[c] += ties_low[c] / n;
        }
    }
    for (const double share : mean) CHECK(std::abs(share - 0.1) < 0.0085);
    CHECK(low[0] > 0.12);
}
