// Cost of one season by stage, of a changed placement with and without reused hunts, and of two threads against one.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <vector>

#include "planner/planner.hpp"

using namespace maybough;

namespace {

double seconds_of(const std::function<void()>& work) {
    const auto began = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
}

double median_of(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2), values.end());
    return values[values.size() / 2];
}

Placement some_traps(const Scenario& scenario, std::size_t count) {
    Placement placement;
    for (std::size_t i = 0; i < std::min(count, scenario.spots.size()); ++i) {
        TrapSetting setting;
        setting.spot = i;
        setting.height_m = scenario.spots[i].max_height_m;
        setting.hang = {90};
        setting.take_down = {230};
        placement.push_back(setting);
    }
    return placement;
}

}  // namespace

int main(int argc, char** argv) {
    const Scenario scenario = read_scenario(argc > 1 ? argv[1] : MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    const Placement ten = some_traps(scenario, 10);
    Placement moved = ten;
    moved.back().spot = scenario.spots.size() - 1;

    std::vector<double> weather, land, raised, fresh, reused;
    std::int64_t swarms = 0, colonies = 0, hunts = 0;
    const std::uint32_t seasons = 40;
    for (std::uint32_t r = 0; r < seasons; ++r) {
        const Chance chance{1, r};
        const Parameters parameters = draw_beliefs(scenario, 1, r);
        weather.push_back(seconds_of([&] {
            const auto year = generate_year(scenario.climate, scenario.first_day(), scenario.days(), chance);
            sky_of(year, scenario.land.centre.latitude_deg, parameters.weather);
        }));
        land.push_back(seconds_of([&] { draw_land(scenario.land, scenario.apiaries, parameters.landscape, chance); }));
        Backdrop backdrop = raise_backdrop(scenario, parameters, chance);
        raised.push_back(seconds_of([&] { backdrop = raise_backdrop(scenario, parameters, chance); }));
        HuntMemo memo;
        fresh.push_back(seconds_of([&] { run_season(scenario, parameters, backdrop, ten, chance, &memo); }));
        hunts += memo.run;
        reused.push_back(seconds_of([&] { run_season(scenario, parameters, backdrop, moved, chance, &memo); }));
        swarms += static_cast<std::int64_t>(backdrop.swarms.size());
        colonies += static_cast<std::int64_t>(backdrop.land.colonies.size());
    }
    std::printf(
        "per season (medians of %u): weather %.2f ms, land %.2f ms, backdrop in all %.2f ms, hunts over ten traps "
        "%.2f ms\n",
        seasons, 1e3 * median_of(weather), 1e3 * median_of(land), 1e3 * median_of(raised), 1e3 * median_of(fresh));
    std::printf("size: %.1f colonies, %.1f swarms, %.1f hunts a season; %.0f us a hunt\n",
                static_cast<double>(colonies) / seasons, static_cast<double>(swarms) / seasons,
                static_cast<double>(hunts) / seasons, 1e6 * median_of(fresh) / (static_cast<double>(hunts) / seasons));
    std::printf("one trap moved, hunts reused / run anew: %.3f\n", median_of(reused) / median_of(fresh));

    Effort effort;
    effort.confirm_seasons = 40;
    std::vector<double> ratios;
    double two_s = 0;
    for (int pair = 0; pair < 3; ++pair) {
        effort.threads = 1;
        const double one = seconds_of([&] { simulate_seasons(scenario, ten, effort); });
        effort.threads = 2;
        two_s = seconds_of([&] { simulate_seasons(scenario, ten, effort); });
        ratios.push_back(one / two_s);
    }
    std::printf("seasons a second: two threads / one thread %.2f; 200 seasons on two threads %.1f s\n",
                median_of(ratios), two_s * 200 / effort.confirm_seasons);
    return 0;
}
