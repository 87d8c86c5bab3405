// One member of a forecast: its year of weather lived by the colonies, its swarms and catches by day.
#include <algorithm>
#include <cmath>

#include "outlook/outlook.hpp"

namespace maybough::outlook {

namespace {
/// Beyond this many spreads of the hanging distance no swarm hangs (1 in 30 000 would).
constexpr double furthest_spreads = 4;

/// Parameters under which only colonies whose swarms can hang in the area are drawn, and no cavities: what remains is
/// drawn as before, since land is drawn square by square.
Parameters colonies_near_area(Parameters parameters) {
    const SwarmParameters& swarm = parameters.swarm;
    const double reach_m = swarm.hang_distance_m * std::exp(furthest_spreads * swarm.hang_distance_sd_ln);
    parameters.landscape.margin_m = std::min(parameters.landscape.margin_m, reach_m);
    parameters.landscape.cavity_margin_m = 0;
    parameters.landscape.cavity_density_factor = 0;
    return parameters;
}
}  // namespace

MemberSeason member_season(const Scenario& scenario, const Parameters& parameters, const WeatherYear& weather,
                           const Placement& placement, const Chance& chance) {
    const bool hunts = !placement.empty();
    const Backdrop backdrop =
        raise_backdrop(scenario, hunts ? parameters : colonies_near_area(parameters), chance, weather);
    MemberSeason season;
    const std::size_t days = backdrop.sky.days.size();
    season.weather = weather;
    season.swarms_on.assign(days, 0);
    for (const Swarm& swarm : backdrop.swarms) {
        if (distance_m(swarm.at, {}) > scenario.land.radius_m) continue;
        ++season.swarms_on[static_cast<std::size_t>(swarm.day.value)];
    }
    for (const DayOfSky& day : backdrop.sky.days) {
        season.fit.push_back(std::any_of(day.departure.begin(), day.departure.end(), [](float f) { return f > 0; }));
    }
    if (!hunts) return season;
    season.catches_on.assign(days, 0);
    const SeasonRecord record = run_season(scenario, parameters, backdrop, placement, chance);
    for (const Catch& caught : record.catches) {
        ++season.catches_on[std::min(days - 1, static_cast<std::size_t>(caught.caught.value))];
    }
    return season;
}

}  // namespace maybough::outlook
