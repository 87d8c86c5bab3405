// A town programme of traps against a published one: catches per trap and year.
#include <doctest/doctest.h>

#include "planner/planner.hpp"

using namespace maybough;

// Source: local press on a city programme in Kansas, USA, read for this project: 19 lured traps caught 23 swarms in
// 2022 (1.21 a trap), 32 traps at about one a square mile (2.6 square km) caught 26 in 2023 (0.81 a trap), visited
// weekly and hung again. Band 0.5 to 1.8, stated before the run. Our area is invented, so only the order of size is
// checked; the standard error of the mean over 100 seasons is near 0.05, far inside the band.
TEST_CASE("a town grid of one lured trap to 2.6 square km catches 0.5 to 1.8 swarms a trap and year") {
    const Scenario scenario = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    const std::size_t full = kind_index(scenario, "full", "test");
    const int traps = 8;  // 2.5 km radius is 19.6 square km
    Effort effort;
    effort.threads = 2;
    effort.confirm_seasons = 100;
    bool found = false;
    for (NamedPlacement& rule : rules_of_thumb(scenario, traps, full, 1)) {
        if (rule.name.find("even") == std::string::npos) continue;
        found = true;
        for (TrapSetting& setting : rule.placement) {
            setting.hang = {105};
            setting.take_down = {240};
            setting.visit_every_days = 7;
            setting.lured = true;
        }
        const double each = simulate_seasons(scenario, rule.placement, effort).catches.mean / traps;
        INFO("swarms a trap and year: ", each);
        CHECK(each >= 0.5);
        CHECK(each <= 1.8);
        // The same bare traps catch clearly fewer: the lure's paired trials say 4 to 5 to 1.
        for (TrapSetting& setting : rule.placement) setting.lured = false;
        CHECK(simulate_seasons(scenario, rule.placement, effort).catches.mean / traps < 0.8 * each);
    }
    CHECK(found);
}
