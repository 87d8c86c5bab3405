// Worth of knowing and regret on made-up seasons whose answers are known in closed form.
#include "planner/information.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace maybough;

namespace {
/// Placement 0 nets nothing; placement 1 nets the unknown, drawn normal (mean, 1) once a belief, and luck.
struct MadeUp {
    std::vector<SampledUnknown> unknowns;
    Trials trials;
};

MadeUp two_acts(std::uint32_t seed, double mean, std::size_t seasons) {
    MadeUp made;
    made.unknowns = {{"known", 0, 0, {}}, {"idle", 0, 0, {}}};
    made.trials.outcomes.resize(2);
    Stream luck = Chance{seed, 0}.stream(Purpose::planner_bootstrap, 0U);
    double theta = 0;
    double idle = 0;
    for (std::size_t s = 0; s < seasons; ++s) {
        if (s % seasons_per_belief == 0) {
            theta = mean + standard_normal(luck);
            idle = standard_normal(luck);
        }
        made.unknowns[0].values.push_back(theta);
        made.unknowns[1].values.push_back(idle);
        made.trials.outcomes[0].push_back({0, 0, 0, 0});
        const double noise = standard_normal(luck);
        made.trials.outcomes[1].push_back({0, theta + noise, 0, 0});
    }
    return made;
}
}  // namespace

TEST_CASE("the worth of knowing one of two acts is phi(0) where they are level, and nothing for an idle unknown") {
    // max(0, N(0,1)) has mean 1/sqrt(2 pi) = 0.3989 (Raiffa and Schlaifer 1961, the unit normal loss at 0). Error over
    // 2000 beliefs: sd 0.58/sqrt(2000) = 0.013, and of the luck in the gained seasons 0.011: 3 of both.
    const MadeUp made = two_acts(5, 0, 8000);
    const auto columns = standardised(made.unknowns);
    CHECK(std::abs(worth_of_knowing({columns[0]}, made.trials, 0) - 0.39894) < 0.05);
    CHECK(worth_of_knowing({columns[1]}, made.trials, 0) < 0.06);
    const Regret regret = regret_of(made.unknowns, made.trials, 0);
    CHECK(std::abs(regret.expected - 0.39894) < 0.05);
    CHECK(regret.worst > 2.5);
}

TEST_CASE("knowing is worth nothing where one act is best under every belief") {
    const MadeUp made = two_acts(6, 8, 4000);
    CHECK(worth_of_knowing(standardised(made.unknowns), made.trials, 1) == 0);
    CHECK(regret_of(made.unknowns, made.trials, 1).expected == doctest::Approx(0));
}

TEST_CASE("an emulator returns the curve it was made from") {
    std::vector<std::vector<double>> columns(2);
    std::vector<double> y;
    for (int i = 0; i < 200; ++i) {
        columns[0].push_back(-2 + 0.02 * i);
        columns[1].push_back(std::sin(i));
        const double a = columns[0].back();
        const double b = columns[1].back();
        y.push_back(3 + 2 * a - b + 0.5 * (a * a - 1));
    }
    const Emulator emulator = fit_emulator(columns, y);
    CHECK(emulator.at({1.5, -0.3}) == doctest::Approx(3 + 3 + 0.3 + 0.5 * 1.25).epsilon(1e-4));
}
