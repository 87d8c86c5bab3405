// Stop signals break ties: Pais, Hogan, Schlegel, Franks, Leonard and Marshall 2013, "A mechanism for value-sensitive
// decision-making", and Seeley et al. 2012, "Stop signals provide cross inhibition in collective decision-making by
// honeybee swarms". The published rate equations, integrated by Boost's fourth-order Runge-Kutta; thresholds and end
// states derived from those equations.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "published/scouts/integrate.hpp"

namespace {

using State = std::array<double, 2>;  // shares committed to sites A and B

struct Rates {
    State discovery;
    State abandonment;
    State recruitment;
    double stop = 0;
    bool cross = true;  // stop signals go to the rivals only
};

State integrate(const Rates& r, State state, double time) {
    const auto flow = [&](const State& x, State& change, double) {
        const double uncommitted = 1 - x[0] - x[1];
        for (std::size_t i = 0; i < 2; ++i) {
            const double stopped = r.stop * x[i] * (r.cross ? x[1 - i] : x[0] + x[1]);
            change[i] = r.discovery[i] * uncommitted - r.abandonment[i] * x[i] + r.recruitment[i] * x[i] * uncommitted -
                        stopped;
        }
    };
    return maybough::test::integrate(flow, state, time, 0.01);
}

/// Pais 2013: discovery and recruitment at the value of the site, abandonment at its inverse.
Rates by_value(double a, double b, double stop) {
    return {{a, b}, {1 / a, 1 / b}, {a, b}, stop};
}

/// The stop rate at which a small difference between equal sites begins to grow, by bisection.
double threshold(Rates rates, double low, double high) {
    for (int step = 0; step < 34; ++step) {
        rates.stop = 0.5 * (low + high);
        State state = integrate(rates, {0.1, 0.1}, 200);
        state[0] += 1e-6;
        const double before = state[0] - state[1];
        state = integrate(rates, state, 10);
        (state[0] - state[1] > before ? high : low) = rates.stop;
    }
    return 0.5 * (low + high);
}

void check_state(const State& state, double a, double b, double tolerance = 1e-3) {
    CHECK(std::abs(state[0] - a) < tolerance);
    CHECK(std::abs(state[1] - b) < tolerance);
}

}  // namespace

TEST_CASE("Pais 2013: the stop rate that breaks a tie, 4 v^3 / (v^2 - 1)^2") {
    for (const auto& [v, expected] : {std::pair{2.0, 3.55556}, {3.0, 1.68750}, {5.0, 0.868056}}) {
        CHECK(4 * v * v * v / std::pow(v * v - 1, 2) == doctest::Approx(expected).epsilon(1e-5));
        CHECK(std::abs(threshold(by_value(v, v, 0), 0.2 * expected, 3 * expected) - expected) < 1e-4);
    }
}

TEST_CASE("Pais 2013: end states of equal and of unequal sites") {
    const auto end = [](double a, double b, double stop) { return integrate(by_value(a, b, stop), {0.001, 0}, 400); };
    const double at3 = 1.6875;
    check_state(end(3, 3, 0.9 * at3), 0.44776, 0.44776);
    check_state(end(3, 3, 1.5 * at3), 0.70104, 0.18784);
    check_state(end(2, 2, 1.1 * 3.55556), 0.48806, 0.26194);
    check_state(end(2, 2, 3 * 3.55556), 0.68119, 0.06881);
    check_state(end(5, 5, 1.5 * 0.868056), 0.75713, 0.20287);
    check_state(integrate(by_value(5, 4.5, 1), {0, 0}, 300), 0.7986, 0.1686);
    check_state(integrate(by_value(3, 2, 2), {0, 0}, 300), 0.8564, 0.0706);
    check_state(integrate(by_value(3, 2.9, 2), {0, 0}, 300), 0.6950, 0.2037);
}

TEST_CASE("Seeley et al. 2012: the general threshold 4 g a r / (r - a)^2") {
    const auto found = [](double g, double a, double r, double near) {
        return threshold({{g, g}, {a, a}, {r, r}}, 0.2 * near, 3 * near);
    };
    CHECK(std::abs(found(0.1, 0.1, 1, 0.04938) - 0.04938) < 1e-4);
    CHECK(std::abs(found(0.1, 0.4, 2, 0.125) - 0.125) < 1e-4);
}

TEST_CASE("Seeley et al. 2012: cross inhibition settles a tie, indiscriminate stopping never does") {
    const auto end = [](double stop, bool cross) {
        return integrate({{0.1, 0.1}, {0.1, 0.1}, {1, 1}, stop, cross}, {0.011, 0.010}, 400);
    };
    check_state(end(0, true), 0.4589, 0.4589);
    check_state(end(0.5, true), 0.8772, 0.0228);
    check_state(end(4, true), 0.8972, 0.0028);
    for (const double stop : {0.5, 1.0, 2.0, 4.0, 8.0}) {
        const State state = end(stop, false);
        CHECK(std::abs(state[0] - state[1]) < 1e-6);
    }
    check_state(end(0.5, false), 0.3333, 0.3333);
    check_state(end(4, false), 0.1409, 0.1409);
}
