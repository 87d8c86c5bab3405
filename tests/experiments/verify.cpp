// Running experiments: order, judgement, limits of a counted share.
#include <doctest/doctest.h>

#include <cmath>
#include <limits>

#include "experiments/experiments.hpp"

using namespace maybough;

TEST_CASE("a finding agrees inside its interval, ends included, and never where nothing was measured") {
    Finding finding;
    finding.low = 1;
    finding.high = 2;
    for (const double inside : {1.0, 1.5, 2.0}) {
        finding.simulated = inside;
        CHECK(agrees(finding));
    }
    for (const double outside : {0.99, 2.01, std::numeric_limits<double>::quiet_NaN()}) {
        finding.simulated = outside;
        CHECK_FALSE(agrees(finding));
    }
}

TEST_CASE("experiments come back in order for any number of threads") {
    std::vector<Experiment> many;
    for (const auto* name : {"a", "b", "c", "d", "e"}) {
        many.push_back({name, "colony", "", [](const Parameters&, std::uint32_t seed) {
                            Finding finding;
                            finding.simulated = seed;
                            return std::vector<Finding>{finding};
                        }});
    }
    for (const unsigned threads : {1U, 4U}) {
        const std::vector<Verified> done = verify(many, {}, 7, threads);
        REQUIRE(done.size() == 5);
        CHECK(done[0].name == "a");
        CHECK(done[4].name == "e");
        CHECK(done[4].findings[0].simulated == 7);
    }
}

// Source: Clopper and Pearson 1934, "The use of confidence or fiducial limits illustrated in the case of the binomial";
// closed forms at the ends: 0 of n gives 1 - 0.025^(1/n).
TEST_CASE("exact limits of a counted share") {
    const Interval none = binomial_interval_95(0, 11);
    CHECK(none.low == 0);
    CHECK(none.high == doctest::Approx(1 - std::pow(0.025, 1.0 / 11)));
    const Interval all = binomial_interval_95(7, 7);
    CHECK(all.low == doctest::Approx(std::pow(0.025, 1.0 / 7)));
    CHECK(all.high == 1);
}
