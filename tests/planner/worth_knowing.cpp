// Tornado of the catch and of the decision on made-up seasons whose answer is known.
#include "planner/worth_knowing.hpp"

#include <doctest/doctest.h>

#include "chance/chance.hpp"

using namespace maybough;

TEST_CASE("least squares finds exact coefficients") {
    const std::vector<std::vector<double>> columns{{1, -1, 0, 2, 0}, {0, 1, -1, 1, -2}};
    std::vector<double> y;
    for (std::size_t s = 0; s < 5; ++s) y.push_back(3 + 2 * columns[0][s] - columns[1][s]);
    const std::vector<double> b = least_squares(columns, y);
    CHECK(b[0] == doctest::Approx(3).epsilon(1e-4));
    CHECK(b[1] == doctest::Approx(2).epsilon(1e-4));
    CHECK(b[2] == doctest::Approx(-1).epsilon(1e-4));
}

TEST_CASE("the unknown that moves the catch comes first, and the decision follows it") {
    // Catches with one trap: swarms / 4; with two: swarms / 2.5. A trap costs 3, a swarm is worth 1. At 4 swarms no
    // trap pays, at 40 both do.
    std::vector<SampledUnknown> unknowns{{"idle", -1, 1, {}}, {"swarms", 4, 40, {}}};
    Trials trials;
    trials.outcomes.resize(3);
    for (std::uint32_t s = 0; s < 200; ++s) {
        Stream luck = Chance{9, s}.stream(Purpose::planner_bootstrap, 0U);
        const double idle = standard_normal(luck);
        const double swarms = 4 + 36 * luck.uniform();
        unknowns[0].values.push_back(idle);
        unknowns[1].values.push_back(swarms);
        trials.outcomes[0].push_back({0, 0, 0, 0});
        trials.outcomes[1].push_back({swarms / 4, swarms / 4, 3, 0});
        trials.outcomes[2].push_back({swarms / 2.5, swarms / 2.5, 6, 0});
    }
    const std::vector<Sensitivity> tornado = sensitivities_of(unknowns, trials, 2);
    REQUIRE(tornado.size() == 2);
    CHECK(tornado[0].key == "swarms");
    CHECK(tornado[0].catches_at_low == doctest::Approx(1.6).epsilon(1e-3));
    CHECK(tornado[0].catches_at_high == doctest::Approx(16).epsilon(1e-3));
    CHECK(tornado[0].best_traps_at_low == 0);
    CHECK(tornado[0].best_traps_at_high == 2);
    CHECK(tornado[1].catches_at_low == doctest::Approx(tornado[1].catches_at_high).epsilon(1e-3));
}

TEST_CASE("too few seasons for the unknowns give no tornado") {
    Trials trials;
    trials.outcomes.assign(1, {{1, 1, 0, 0}, {1, 1, 0, 0}});
    CHECK(sensitivities_of({{"a", 0, 1, {0.2, 0.4}}}, trials, 0).empty());
}
