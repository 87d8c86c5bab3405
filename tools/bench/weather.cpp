// Cost of a thousand generated years, of the hours of one year, and of a fit.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <vector>

#include "scenario/scenario.hpp"

using namespace maybough;

namespace {

double seconds_of(const std::function<void()>& work) {
    const auto began = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
}

/// Median of some tries.
double typical_seconds(int tries, const std::function<void()>& work) {
    std::vector<double> seconds;
    for (int i = 0; i < tries; ++i) seconds.push_back(seconds_of(work));
    std::nth_element(seconds.begin(), seconds.begin() + tries / 2, seconds.end());
    return seconds[static_cast<std::size_t>(tries / 2)];
}

}  // namespace

int main(int argc, char** argv) {
    const Scenario scenario = read_scenario(argc > 1 ? argv[1] : MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    const Date first = scenario.first_day();
    double kept = 0;  // so that nothing is left out as unused
    const double thousand = typical_seconds(5, [&] {
        for (std::uint32_t year = 0; year < 1000; ++year) {
            kept += generate_year(scenario.climate, first, 365, {1, year}).days.back().tmax_c;
        }
    });
    const WeatherYear year = generate_year(scenario.climate, first, 365, {1, 0});
    const double hours = typical_seconds(101, [&] {
        kept += sky_of(year, scenario.land.centre.latitude_deg, scenario.parameters.weather).days.back().foraging_h;
    });
    const double fit =
        typical_seconds(5, [&] { kept += fit_climate(scenario.record, scenario.parameters.weather).year_sd_c; });
    std::printf("1000 generated years   %8.3f s   (wanted: under 1)\n", thousand);
    std::printf("hours of one year      %8.3f ms  (wanted: under 1)\n", hours * 1e3);
    std::printf("fit to the record      %8.3f ms  (%zu days)\n", fit * 1e3, scenario.record.days.size());
    return kept == 0 ? 1 : 0;
}
