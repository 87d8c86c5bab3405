// Bench: what a colony-day costs, beside a minimal array-of-ages loop in the same run. Prints; asserts nothing.
#include <cstdio>
#include <ctime>
#include <vector>

#include "swarm/swarm.hpp"

using namespace maybough;

namespace {

/// Processor time, since a shared machine may hold the program back.
double ns_since(std::clock_t start) {
    return 1e9 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

/// A year of sky with a warm half and flowers, made without a station.
std::vector<DayOfSky> made_year() {
    std::vector<DayOfSky> year(365);
    for (int d = 0; d < 365; ++d) {
        DayOfSky& sky = year[static_cast<std::size_t>(d)];
        const double season = std::sin((d - 105) * 2 * 3.14159265358979 / 365);
        sky.weather = {9 + 15 * season, 1 + 12 * season, d % 3 == 0 ? 6.0 : 0.0, 3};
        sky.sunrise_h = 6 - 1.6 * season;
        sky.sunset_h = 18 + 1.6 * season;
        sky.foraging_h = d % 3 == 0 ? 0 : std::max(0.0, 10 * season);
        for (float& bloom : sky.bloom) bloom = season > 0 ? 0.4F : 0.F;
        for (std::size_t hour = 10; hour < 15; ++hour) sky.departure[hour] = season > 0 && d % 3 != 0 ? 1.F : 0.F;
    }
    return year;
}

/// The least any daily colony could do: 21 ages of brood and 60 of adults moved up by one, with deaths.
struct Minimal {
    std::array<double, 21> brood{};
    std::array<double, 60> adults{};
    void day() {
        for (std::size_t a = adults.size() - 1; a > 0; --a) adults[a] = adults[a - 1] * 0.97;
        adults[0] = brood.back();
        for (std::size_t a = brood.size() - 1; a > 0; --a) brood[a] = brood[a - 1] * 0.99;
        brood[0] = 1000;
    }
};

}  // namespace

int main() {
    constexpr int colonies = 200;
    constexpr int rounds = 20;
    const std::vector<DayOfSky> year = made_year();
    const ColonyParameters parameters;
    const SwarmParameters swarm_parameters;
    std::int64_t swarms = 0;
    std::int64_t days = 0;

    std::clock_t start = std::clock();
    for (std::uint32_t round = 0; round < rounds; ++round) {
        const Chance chance{1, round};
        for (std::uint32_t n = 0; n < colonies; ++n) {
            const DrawnColony drawn{{n}, {}, ColonyOrigin::wild, 42, -1, {1, 1, 1, 1, 1}};
            Colony colony = overwintered_colony(drawn, {}, parameters, chance);
            for (Day day{0}; day.value < 365 && colony.alive; day = day + 1) {
                const DayOfSky& sky = year[static_cast<std::size_t>(day.value)];
                live_one_day(colony, sky, day, parameters, chance);
                swarms += issue_swarm(colony, sky, day, swarm_parameters, chance) ? 1 : 0;
                ++days;
            }
        }
    }
    const double colony_ns = ns_since(start) / static_cast<double>(days);

    start = std::clock();
    double sum = 0;
    for (int n = 0; n < colonies * rounds; ++n) {
        Minimal minimal;
        for (int d = 0; d < 365; ++d) minimal.day();
        sum += minimal.adults[59];
    }
    const double minimal_ns = ns_since(start) / (365.0 * colonies * rounds);

    std::printf("colony-day          %8.1f ns (%lld colony-days, %lld swarms)\n", colony_ns,
                static_cast<long long>(days), static_cast<long long>(swarms));
    std::printf("array-of-ages loop  %8.1f ns (sum %.0f)\n", minimal_ns, sum);
    std::printf("ratio               %8.2f\n", colony_ns / minimal_ns);
    std::printf("200 colonies, a season: %.1f ms\n", colony_ns * 200 * 365 * 1e-6);
}
