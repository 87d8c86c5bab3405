// The backdrop of a replicate: weather, land and the colonies' year, none of which depends on where traps hang.
#include <algorithm>
#include <tuple>

#include "season/process.hpp"

namespace maybough::season {

namespace {
/// The nest of a wild colony that died: a hollow with comb, once its stores are robbed out. Its site is numbered after
/// its colony, above all cavities drawn free.
constexpr std::uint32_t dead_nest_bit = 1U << 25U;
NaturalSite dead_nest(const DrawnColony& drawn) {
    NaturalSite site{{dead_nest_bit | drawn.id.value}, drawn.at, {}};
    site.cavity.volume_l = drawn.volume_l;
    site.cavity.comb = 1;
    return site;
}
}  // namespace

ColonyYear live_and_cast(Colony colony, Day from, const SkyYear& sky, const Parameters& parameters,
                         const Chance& chance, ColonyDiary* diary) {
    ColonyYear year{{}, forever_day};
    const int last = std::min(static_cast<int>(sky.days.size()), last_swarm_day);
    for (Day day = from; day.value < last && colony.alive; day = day + 1) {
        const DayOfColony today = live_one_day(colony, sky[day], day, parameters.colony, chance);
        if (const auto swarm = issue_swarm(colony, sky[day], day, parameters.swarm, chance))
            year.cast.push_back(*swarm);
        if (diary != nullptr) write_diary(*diary, colony, today);
        if (!colony.alive) year.died = day;
    }
    return year;
}

Colony colony_at_start(const Scenario& scenario, const DrawnColony& drawn, const Parameters& parameters,
                       const Chance& chance) {
    const HiveManagement management =
        drawn.origin == ColonyOrigin::managed ? scenario.apiary_management : HiveManagement{};
    return overwintered_colony(drawn, management, parameters.colony, chance);
}

std::vector<SiteOffer> natural_offers(const Backdrop& backdrop, const Swarm& swarm, const ScoutParameters& parameters) {
    std::vector<SiteOffer> offers;
    for (const std::uint32_t index : backdrop.finder.near(swarm.at)) {
        if (backdrop.cavity_free_h[index] > hours_at(swarm.day, swarm.hour)) continue;
        const NaturalSite& site = backdrop.land.cavities[index];
        const double away_m = distance_m(swarm.at, site.at);
        const double weight = stands_for(away_m, parameters) * find_weight(site.cavity, away_m, parameters);
        if (weight > 0) offers.push_back({site.id, away_m, weight, backdrop.cavity_log_odds[index]});
    }
    return offers;
}

Backdrop raise_backdrop(const Scenario& scenario, const Parameters& parameters, const Chance& chance) {
    return raise_backdrop(scenario, parameters, chance,
                          generate_year(scenario.climate, scenario.first_day(), scenario.days(), chance));
}

Backdrop raise_backdrop(const Scenario& scenario, const Parameters& parameters, const Chance& chance,
                        const WeatherYear& year) {
    const double latitude_deg = scenario.land.centre.latitude_deg;
    SkyYear sky = sky_of(year, latitude_deg, parameters.weather);
    DrawnLand land = draw_land(scenario.land, scenario.apiaries, parameters.landscape, chance);
    std::vector<Swarm> swarms;
    std::vector<double> free_h(land.cavities.size(), 0);
    std::int64_t died = 0;
    std::int64_t swarmed = 0;
    // Each colony's year stands alone, so it is lived through in one go.
    for (const DrawnColony& drawn : land.colonies) {
        const auto [cast, died_on] =
            live_and_cast(colony_at_start(scenario, drawn, parameters, chance), {0}, sky, parameters, chance);
        swarmed += cast.empty() ? 0 : 1;
        swarms.insert(swarms.end(), cast.begin(), cast.end());
        if (died_on == forever_day) continue;
        ++died;
        if (drawn.origin != ColonyOrigin::wild) continue;  // a keeper shuts a dead hive
        land.cavities.push_back(dead_nest(drawn));
        free_h.push_back(hours_at(died_on, 0) + 24 * parameters.scouts.robbed_days);
    }
    SiteFinder finder(land.cavities, search_reach_m(parameters.scouts), parameters.scouts.coarse_beyond_m);
    Backdrop backdrop{std::move(sky), std::move(land), std::move(swarms), {}, std::move(free_h), {}, std::move(finder),
                      died,           swarmed};
    for (const NaturalSite& site : backdrop.land.cavities) {
        backdrop.cavity_log_odds.push_back(
            site_log_odds(site.cavity, parameters.scouts, is_southern(scenario.land.centre)));
    }
    std::sort(backdrop.swarms.begin(), backdrop.swarms.end(), hangs_before);
    for (const Swarm& swarm : backdrop.swarms) {
        backdrop.natural_offers.push_back(natural_offers(backdrop, swarm, parameters.scouts));
    }
    return backdrop;
}

bool hangs_before(const Swarm& a, const Swarm& b) {
    return std::tuple(a.day, a.hour, a.id) < std::tuple(b.day, b.hour, b.id);
}

}  // namespace maybough::season
