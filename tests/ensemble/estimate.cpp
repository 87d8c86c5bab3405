// Means with clusters, against analyses of variance worked by hand.
#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "ensemble/ensemble.hpp"

using namespace maybough;

TEST_CASE("two clusters of four agree with the analysis of variance worked by hand") {
    // Cluster means 2.5 and 6.5; within sums of squares 5 + 5, so the within mean square is 10 / 6.
    // Between mean square 4 * ((2.5 - 4.5)^2 + (6.5 - 4.5)^2) / 1 = 32; ignorance (32 - 10/6) / 4.
    const std::vector<double> values{1, 2, 3, 4, 5, 6, 7, 8};
    const Estimate e = estimate(values);
    CHECK(e.mean == doctest::Approx(4.5));
    CHECK(e.sd_chance == doctest::Approx(std::sqrt(10.0 / 6)));
    CHECK(e.sd_ignorance == doctest::Approx(std::sqrt((32 - 10.0 / 6) / 4)));
    CHECK(e.se == doctest::Approx(2.0));  // sd of the two cluster means 2.828, over root 2
    CHECK(e.half_width_95 == doctest::Approx(12.7062 * 2).epsilon(1e-5));  // t with one degree of freedom
    CHECK(e.low == doctest::Approx(1.7));
    CHECK(e.high == doctest::Approx(7.3));
    CHECK(e.n == 8);
}

TEST_CASE("errors count blocks of two beliefs, the spread counts beliefs") {
    // Beliefs of means 1, 5, 2 and 4 in blocks of mean 3: each block makes up for its own, and nothing is left to err.
    const std::vector<double> values{1, 1, 1, 1, 5, 5, 5, 5, 2, 2, 2, 2, 4, 4, 4, 4};
    const Estimate e = estimate(values);
    CHECK(e.se == doctest::Approx(0));
    CHECK(e.sd_chance == doctest::Approx(0));
    CHECK(e.sd_ignorance == doctest::Approx(std::sqrt((4.0 + 4 + 1 + 1) / 3)));
    // Blocks of means 2 and 4, each of equal beliefs: sd of block means root 2, over root 2.
    const Estimate apart = estimate(std::vector<double>{2, 2, 2, 2, 2, 2, 2, 2, 4, 4, 4, 4, 4, 4, 4, 4});
    CHECK(apart.se == doctest::Approx(1));
    CHECK(apart.half_width_95 == doctest::Approx(12.7062).epsilon(1e-5));
}

TEST_CASE("clusters that do not differ show no ignorance") {
    const Estimate e = estimate(std::vector<double>{0, 1, 0, 1, 1, 0, 1, 0});
    CHECK(e.sd_ignorance == 0);
    CHECK(e.se == doctest::Approx(0));
    CHECK(e.sd_chance == doctest::Approx(std::sqrt(2.0 / 6)));
}

TEST_CASE("a last cluster that is short counts by its seasons") {
    // Sums less n times the mean 2: cluster 1 gives 4 - 8 = -4, cluster 2 gives 8 - 4 = 4: se = sqrt(32 * 2 / 1) / 6.
    const Estimate e = estimate(std::vector<double>{1, 1, 1, 1, 4, 4});
    CHECK(e.mean == doctest::Approx(2));
    CHECK(e.se == doctest::Approx(std::sqrt(64.0) / 6));
}

TEST_CASE("no season and one season give no error rather than nonsense") {
    CHECK(estimate({}).n == 0);
    const Estimate one = estimate(std::vector<double>{3});
    CHECK(one.mean == 3);
    CHECK(one.se == 0);
    CHECK(one.low == 3);
    const Estimate few = estimate(std::vector<double>{1, 3});  // one cluster: seasons stand for themselves
    CHECK(few.se == doctest::Approx(1));
}

TEST_CASE("t quantile") {
    CHECK(t_quantile_95(9) == doctest::Approx(2.2621571627982));
    CHECK(t_quantile_95(0) == 0);
}
