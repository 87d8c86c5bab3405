// How the cost of a whole plan grows with the number of seasons and of spots, on the demo area with spots sown over it.
#include <sys/resource.h>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>

#include "planner/planner.hpp"

using namespace maybough;

namespace {

/// The demo area with `count` spots on a golden spiral, so that any number fills the area evenly.
Scenario with_spots(Scenario scenario, std::size_t count) {
    const std::vector<Spot> models = scenario.spots;
    constexpr double golden_angle_rad = 2.399963229728653;
    scenario.spots.clear();
    for (std::size_t i = 0; i < count; ++i) {
        Spot spot = models[i % models.size()];
        const double r_m =
            scenario.land.radius_m * std::sqrt((static_cast<double>(i) + 0.5) / static_cast<double>(count));
        const double angle_rad = golden_angle_rad * static_cast<double>(i);
        spot.id = "spot-" + std::to_string(i);
        spot.name = spot.id;
        spot.at = {r_m * std::cos(angle_rad), r_m * std::sin(angle_rad)};
        spot.must = spot.never = false;
        scenario.spots.push_back(spot);
    }
    return scenario;
}

void row(const Scenario& scenario, std::size_t spots, std::uint32_t seasons) {
    Effort effort;
    effort.threads = machine_threads();
    effort.record_seasons = seasons / 2;
    effort.confirm_seasons = seasons;
    Question question;
    question.max_traps = 8;
    const Scenario sown = with_spots(scenario, spots);
    const auto began = std::chrono::steady_clock::now();
    const std::clock_t cpu = std::clock();
    const Plan plan = make_plan(sown, question, effort);
    const double wall_s = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    const double cpu_s = static_cast<double>(std::clock() - cpu) / CLOCKS_PER_SEC;
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    std::printf("%6zu %8u %8.1f %8.1f %10.1f %10.3f %12lld %14.3g %6ld\n", spots, seasons, wall_s, cpu_s,
                1000 * cpu_s / seasons, 1000 * cpu_s / static_cast<double>(spots),
                static_cast<long long>(plan.hunts_run), static_cast<double>(plan.hunts_run) / plan.hunts_exhaustive,
                usage.ru_maxrss / 1024);
    std::fflush(stdout);
}

}  // namespace

int main() {
    const Scenario demo = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    std::puts(" spots  seasons   wall s    cpu s  ms/season    ms/spot    hunts run  of exhaustive    MiB");
    for (const std::uint32_t seasons : {32U, 64U, 128U}) row(demo, 32, seasons);
    for (const std::size_t spots : {75U, 150U, 300U}) row(demo, spots, 64);
    return 0;
}
