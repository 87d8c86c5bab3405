// Nest bees and foragers against the models of Khoury, Myerscough and Barron 2011 (PLoS ONE 6:e18491) and Khoury,
// Barron and Myerscough 2013 (PLoS ONE 8:e59084), solved by an independent integrator. Constants of the papers from
// memory.
#include <doctest/doctest.h>

#include <array>
#include <boost/numeric/odeint.hpp>
#include <cmath>

#include "colony/colony.hpp"

using namespace maybough;

namespace {

constexpr double plenty_g = 1e9;  // with food for ever the onset of foraging is that of the 2011 model
constexpr double laying = 2000;
constexpr double half_2011 = 27000;

using Two = std::array<double, 2>;  // nest bees, foragers

/// The 2011 equations as printed.
struct Printed2011 {
    double m;
    void operator()(const Two& x, Two& dx, double /*t*/) const {
        const double n = x[0] + x[1];
        const double emergence = laying * n / (half_2011 + n);
        const double r = 0.25 - 0.75 * (n > 0 ? x[1] / n : 0);
        dx = {emergence - x[0] * r, x[0] * r - m * x[1]};
    }
};

Two printed_2011(double m, Two start, double days) {
    namespace ode = boost::numeric::odeint;
    ode::integrate_adaptive(ode::make_controlled<ode::runge_kutta_dopri5<Two>>(1e-8, 1e-8), Printed2011{m}, start, 0.0,
                            days, 0.1);
    return start;
}

/// Our own functions, in steps of a hundredth of a day.
Two ours_2011(double m, Two x, double days) {
    const ColonyParameters p;
    constexpr double step = 0.01;
    for (int i = 0; i < static_cast<int>(days / step); ++i) {
        const double emergence = laying * share_reared(x[0] + x[1], half_2011);
        const double onset = foraging_onset(x[0], x[1], plenty_g, p) * x[0];
        x = {x[0] + step * (emergence - onset), x[1] + step * (onset - m * x[1])};
    }
    return x;
}

double foragers_per_nest_bee(double m) {
    const double alpha = 0.25;
    const double sigma = 0.75;
    const double b = alpha - sigma - m;
    return (b + std::sqrt(b * b + 4 * m * alpha)) / (2 * m);
}

}  // namespace

TEST_CASE("two-equation limit: equilibrium at forager loss 0.24 (check 2)") {
    const Two x = printed_2011(0.24, {16000, 8000}, 3000);
    CHECK(x[0] == doctest::Approx(6470.04).epsilon(0.001));
    CHECK(x[1] == doctest::Approx(1987.76).epsilon(0.001));
    const Two y = ours_2011(0.24, {16000, 8000}, 1500);
    CHECK(y[0] == doctest::Approx(x[0]).epsilon(0.001));
    CHECK(y[1] == doctest::Approx(x[1]).epsilon(0.001));
}

TEST_CASE("two-equation limit: transients (check 3)") {
    for (const auto& [m, days, bees] : {std::array{0.24, 100.0, 10352.9}, std::array{0.24, 200.0, 8857.0},
                                        std::array{0.40, 50.0, 5382.3}, std::array{0.40, 100.0, 2441.0}}) {
        const Two x = printed_2011(m, {16000, 8000}, days);
        CHECK(x[0] + x[1] == doctest::Approx(bees).epsilon(0.001));
        const Two y = ours_2011(m, {16000, 8000}, days);
        CHECK(y[0] + y[1] == doctest::Approx(bees).epsilon(0.002));
    }
}

TEST_CASE("two-equation limit: the critical forager loss is 0.355197 a day (check 1)") {
    const double k = laying / half_2011;
    const double sum = 0.25 + 0.75;
    const double critical = k * (sum + std::sqrt(sum * sum - 4 * 0.75 * (0.25 - k))) / (2 * (0.25 - k));
    CHECK(critical == doctest::Approx(0.355197).epsilon(1e-5 / 0.355));
    // By bisection on runs of our own functions from a small colony: does it grow or shrink?
    double low = 0.30;
    double high = 0.40;
    while (high - low > 0.0005) {
        const double m = (low + high) / 2;
        const Two early = ours_2011(m, {7.5, 2.0}, 100);
        const Two late = ours_2011(m, early, 50);
        (late[0] + late[1] > early[0] + early[1] ? low : high) = m;
    }
    CHECK((low + high) / 2 == doctest::Approx(critical).epsilon(0.002 / critical));
}

TEST_CASE("two-equation limit: mean age at first foraging (check 4)") {
    const ColonyParameters p;
    for (const auto& [m, age] : {std::array{0.24, 13.562}, std::array{0.355197, 10.685}, std::array{0.154, 18.399}}) {
        const double j = foragers_per_nest_bee(m);
        CHECK(1 / foraging_onset(1, j, plenty_g, p) == doctest::Approx(age).epsilon(0.001));
    }
}

TEST_CASE("two-equation limit: whole bees agree in the mean (check 2, agents)") {
    // 24 runs; a run's spread about the mean is near sqrt(N) of bees, far inside the 5 % allowed.
    const ColonyParameters p;
    double nest_sum = 0;
    constexpr int runs = 24;
    for (std::uint32_t run = 0; run < runs; ++run) {
        Stream luck = Chance{11, run}.stream(Purpose::colony_day, 1U);
        std::int64_t nest = 16000;
        std::int64_t foragers = 8000;
        constexpr double step = 0.25;
        for (int i = 0; i < 4 * 800; ++i) {
            const auto n = static_cast<double>(nest + foragers);
            const double onset = foraging_onset(static_cast<double>(nest), static_cast<double>(foragers), plenty_g, p);
            const std::int64_t born = round_at_random(luck, step * laying * share_reared(n, half_2011));
            const std::int64_t begun = round_at_random(luck, step * onset * static_cast<double>(nest));
            const std::int64_t died = binomial(luck, foragers, step * 0.24);
            nest += born - begun;
            foragers += begun - died;
        }
        nest_sum += static_cast<double>(nest);
    }
    CHECK(nest_sum / runs == doctest::Approx(6470.04).epsilon(0.05));
}

namespace {

using Four = std::array<double, 4>;  // food g, open brood, nest bees, foragers

/// The 2013 equations without the sealed delay, which moves no equilibrium; rates from our own functions.
struct Ours2013 {
    double m;
    ColonyParameters p;
    void operator()(const Four& x, Four& dx, double /*t*/) const {
        const double food = std::max(0.0, x[0]);
        const double reared =
            laying * share_fed(food, p.laying_half_food_g) * share_reared(x[2], p.laying_half_nest_bees);
        const double onset = x[2] * foraging_onset(x[2], x[3], food, p);
        dx = {0.1 * x[3] - 0.007 * (x[2] + x[3]) - 0.018 * x[1], reared - x[1] / 9, x[1] / 9 - onset, onset - m * x[3]};
    }
};

Four settle_2013(double m, Four start, double days) {
    namespace ode = boost::numeric::odeint;
    ode::integrate_adaptive(ode::make_controlled<ode::runge_kutta_dopri5<Four>>(1e-7, 1e-7), Ours2013{m, {}}, start,
                            0.0, days, 0.1);
    return start;
}

}  // namespace

TEST_CASE("brood and food limit: finite food at forager loss 0.44 (check 5)") {
    const Four x = settle_2013(0.44, {1000, 6000, 5000, 1600}, 6000);
    CHECK(x[2] + x[3] == doctest::Approx(6472.65).epsilon(0.005));
    CHECK(x[0] == doctest::Approx(766.65).epsilon(0.005));
    CHECK(x[1] == doctest::Approx(6247.28).epsilon(0.005));
}

TEST_CASE("brood and food limit: regimes switch at 0.40103 and 0.46241 (check 5)") {
    const Four below = settle_2013(0.395, {50000, 13500, 15000, 3750}, 2000);
    const Four later = settle_2013(0.395, below, 500);
    CHECK(later[0] > below[0]);  // food grows without limit
    const Four above = settle_2013(0.407, {50000, 13500, 15000, 3750}, 2000);
    CHECK(settle_2013(0.407, above, 500)[0] < above[0]);  // food settles
    const Four starving = settle_2013(0.50, {1000, 0, 16000, 8000}, 1500);
    CHECK(starving[2] + starving[3] < 100);  // collapse
    const Four rich = settle_2013(0.154, {50000, 15000, 31000, 11000}, 3000);
    CHECK(rich[2] + rich[3] == doctest::Approx(43019.8).epsilon(0.005));
}
