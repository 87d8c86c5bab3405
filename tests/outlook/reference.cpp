// Scores against numbers made with SciPy 1.10.1: integrals and sums of (F - [x >= y])^2 over its distribution
// functions, and its energy distance for ensembles. Laws and observations were chosen before looking.
#include <doctest/doctest.h>

#include "outlook/outlook.hpp"

using namespace maybough;

TEST_CASE("CRPS of laws against SciPy") {
    CHECK(crps_normal(10, 3, 4) == doctest::Approx(4.3583754650577085).epsilon(1e-9));
    CHECK(crps_normal(-2, 0.5, -1) == doctest::Approx(0.7263959108429514).epsilon(1e-9));
    CHECK(crps_normal(120, 12, 131.5) == doctest::Approx(6.893062604662692).epsilon(1e-9));
    CHECK(crps_poisson(0.4, 1) == doctest::Approx(0.45318103795739606).epsilon(1e-10));
    CHECK(crps_poisson(55, 70) == doctest::Approx(10.97349418036632).epsilon(1e-10));
    CHECK(crps_poisson(12, 3) == doctest::Approx(7.057067422719173).epsilon(1e-10));
    CHECK(crps_negative_binomial(5, 12, 30) == doctest::Approx(14.591146336037404).epsilon(1e-10));
    CHECK(crps_negative_binomial(0.7, 4, 0) == doctest::Approx(1.543441744411126).epsilon(1e-10));
    CHECK(crps_negative_binomial(2.5, 60, 20) == doctest::Approx(20.81198385538737).epsilon(1e-10));
}

TEST_CASE("log scores against SciPy") {
    CHECK(log_score_poisson(0.4, 1) == doctest::Approx(1.316290731874155).epsilon(1e-12));
    CHECK(log_score_poisson(55, 70) == doctest::Approx(4.925720599503933).epsilon(1e-12));
    CHECK(log_score_negative_binomial(5, 12, 30) == doctest::Approx(5.8235406231374895).epsilon(1e-12));
    CHECK(log_score_negative_binomial(0.7, 4, 0) == doctest::Approx(1.3329662168583216).epsilon(1e-12));
}

TEST_CASE("CRPS of an ensemble against SciPy's energy distance") {
    // Half the squared energy distance to a point is the score that takes its members for the whole law; the fair one
    // is less by the mean difference of members over 2 (m - 1) m: here 1/9 of 4.5.
    const std::vector<double> x{12, 15, 15, 18, 21, 30, 9, 14, 16, 40};
    CHECK(crps_ensemble(x, 15) == doctest::Approx(1.5 - 0.5));
    CHECK(crps_ensemble(x, 25.5) == doctest::Approx(5.8 - 0.5));
    CHECK(crps_ensemble(x, 3) == doctest::Approx(11.5 - 0.5));
    CHECK(crps_ensemble(x, 60) == doctest::Approx(36.5 - 0.5));
}
