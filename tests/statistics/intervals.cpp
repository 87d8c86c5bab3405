// Coverage of the printed 95 % intervals over repeated made-up runs, and a twin that must fail.
#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "ensemble/ensemble.hpp"
#include "planner/gap.hpp"

using namespace maybough;
using namespace maybough::planner;

namespace {
constexpr int repeats = 1000;
constexpr double true_mean = 2;

/// Seasons whose beliefs shift whole groups (sd 1) and whose luck is Poisson about exp-free mean: counts like catches.
std::vector<double> made_up_run(std::uint32_t run, std::uint32_t seasons) {
    std::vector<double> values;
    double mean = 0;
    Stream luck = Chance{31, run}.stream(Purpose::planner_bootstrap, 0U);
    for (std::uint32_t s = 0; s < seasons; ++s) {
        if (s % seasons_per_belief == 0) mean = gamma(luck, 4, true_mean);
        values.push_back(static_cast<double>(poisson(luck, mean)));
    }
    return values;
}
}  // namespace

TEST_CASE("clustered intervals cover the truth, independent-season ones do not") {
    int covered = 0;
    int covered_by_naive = 0;
    for (std::uint32_t run = 0; run < repeats; ++run) {
        const std::vector<double> values = made_up_run(run, 120);
        const Estimate e = estimate(values);
        covered += std::abs(e.mean - true_mean) <= e.half_width_95 ? 1 : 0;
        const double sd = std::hypot(e.sd_chance, e.sd_ignorance);
        covered_by_naive += std::abs(e.mean - true_mean) <= 1.96 * sd / std::sqrt(120.0) ? 1 : 0;
    }
    // Binomial sd at 95 % over 1000 runs: 0.0069; skewness of 15 clusters costs about 1 %: 92 to 98 % is 3.9 of them.
    CHECK(covered >= 920);
    CHECK(covered <= 980);
    CHECK(covered_by_naive < 900);
}

TEST_CASE("the split into chance and ignorance is unbiased") {
    double within = 0;
    double between = 0;
    for (std::uint32_t run = 0; run < repeats; ++run) {
        const Estimate e = estimate(made_up_run(10000 + run, 400));
        within += e.sd_chance * e.sd_chance / repeats;
        between += e.sd_ignorance * e.sd_ignorance / repeats;
    }
    // Within: the Poisson mean, 2; its sd over runs of 300 degrees of freedom is about 0.2, so 0.0063 in the mean.
    CHECK(within == doctest::Approx(2).epsilon(0.0126));
    // Between: the gamma's variance 2^2 / 4 = 1; sd over runs about 0.25, so 0.008 in the mean; four of them.
    CHECK(std::abs(between - 1) < 0.032);
}

TEST_CASE("the gap's limit lies above the true gap in 95 % of runs") {
    int covered = 0;
    for (std::uint32_t run = 0; run < repeats; ++run) {
        Stream luck = Chance{37, run}.stream(Purpose::planner_bootstrap, 0U);
        std::vector<double> gaps;
        for (int batch = 0; batch < 10; ++batch) gaps.push_back(gamma(luck, 8, 1.0));
        covered += gap_of(gaps).limit_95 >= 1.0 ? 1 : 0;
    }
    // 95 % nominal; batch gaps skewed to the right cost up to 2 %, three binomial sds (0.0069) more.
    CHECK(covered >= 910);
    CHECK(covered <= 975);
}

TEST_CASE("one batch or none") {
    CHECK(gap_of({}).limit_95 == 0);
    CHECK(gap_of({2}).limit_95 == 2);
}
