// One season as a page that plays: what happened to colonies and swarms, in whole numbers, a day a value.
#include <algorithm>
#include <cmath>
#include <map>

#include "report/page.hpp"
#include "report/replay.hpp"
#include "report/words.hpp"

namespace maybough::report {

namespace {

using Kind = SeasonEvent::Kind;

// Steps of the numbers on the page: finer than a pixel of any curve there.
constexpr double bees_step = 100;
constexpr double honey_step_g = 100;
constexpr double percent_step = 0.01;
constexpr double hazard_step = 0.001;
constexpr double temperature_step_c = 0.1;
constexpr double hour_step = 0.1;

std::int64_t steps(double value, double step) {
    return std::isfinite(value) ? std::llround(value / step) : 0;
}

template <class Of>
Json series(const std::vector<ColonyDay>& days, double step, Of of) {
    Json list = Json::array();
    for (const ColonyDay& day : days) list.push_back(steps(static_cast<double>(of(day)), step));
    return list;
}

/// Parts of the daily hazard in percent, from the first day on which there was any to the last.
Json parts_json(const std::vector<ColonyDay>& days) {
    static constexpr double Preparation::*parts[]{
        &Preparation::crowding,   &Preparation::young_bees, &Preparation::thin_scent, &Preparation::forage,
        &Preparation::day_length, &Preparation::queen_age,  &Preparation::readiness,  &Preparation::per_day};
    const auto any = [](const ColonyDay& day) { return steps(day.preparation.per_day, hazard_step) > 0; };
    const auto first = std::find_if(days.begin(), days.end(), any);
    const auto last = std::find_if(days.rbegin(), days.rend(), any).base();
    Json lists = Json::array();
    for (const auto part : parts) {
        Json list = Json::array();
        const double step = part == &Preparation::per_day ? hazard_step : percent_step;
        for (auto day = first; day < last; ++day) list.push_back(steps(day->preparation.*part, step));
        lists.push_back(std::move(list));
    }
    return {{"from", first - days.begin()}, {"parts", std::move(lists)}};
}

Json place_json(const LocalPlane& plane, Point at) {
    const LatLon place = plane.to_earth(at);
    const auto rounded = [](double degrees) { return std::round(degrees * 1e5) / 1e5; };  // about a metre
    return Json::array({rounded(place.latitude_deg), rounded(place.longitude_deg)});
}

Json colony_json(const ColonyDiary& diary, const std::string& name, const LocalPlane& plane) {
    const auto& days = diary.days;
    return {{"name", name},
            {"at", place_json(plane, diary.at)},
            {"kind", is_founder(diary.id)                    ? "founded"
                     : diary.origin == ColonyOrigin::managed ? "hive"
                                                             : "wild"},
            {"volume_l", std::lround(diary.volume_l)},
            {"first", diary.first.value},
            {"died", diary.died},
            {"bees", series(days, bees_step, [](const ColonyDay& day) { return day.bees; })},
            {"brood", series(days, bees_step, [](const ColonyDay& day) { return day.brood; })},
            {"honey", series(days, honey_step_g, [](const ColonyDay& day) { return day.honey_g; })},
            {"urge", series(days, percent_step, [](const ColonyDay& day) { return day.urge; })},
            {"cells", series(days, 1, [](const ColonyDay& day) { return day.queen_cells; })},
            {"hazard", parts_json(days)}};
}

Json sky_json(const SkyYear& sky) {
    Json tmax = Json::array();
    Json tmin = Json::array();
    Json rain = Json::array();
    Json flight = Json::array();
    for (const DayOfSky& day : sky.days) {
        tmax.push_back(steps(day.weather.tmax_c, temperature_step_c));
        tmin.push_back(steps(day.weather.tmin_c, temperature_step_c));
        rain.push_back(steps(day.weather.rain_mm, 1));
        flight.push_back(steps(day.foraging_h, hour_step));
    }
    return {{"tmax", std::move(tmax)}, {"tmin", std::move(tmin)}, {"rain", std::move(rain)}, {"flight", flight}};
}

/// Means a colony over all that live on a day: bees, brood, honey brought home.
Json means_json(const std::vector<const ColonyDiary*>& diaries, std::size_t days) {
    Json bees = Json::array();
    Json brood = Json::array();
    Json forage = Json::array();
    for (std::size_t day = 0; day < days; ++day) {
        double alive = 0;
        double sums[3] = {0, 0, 0};
        for (const ColonyDiary* diary : diaries) {
            const auto at = static_cast<std::ptrdiff_t>(day) - diary->first.value;
            if (at < 0 || at >= static_cast<std::ptrdiff_t>(diary->days.size())) continue;
            const ColonyDay& lived = diary->days[static_cast<std::size_t>(at)];
            alive += 1;
            sums[0] += static_cast<double>(lived.bees);
            sums[1] += static_cast<double>(lived.brood);
            sums[2] += lived.honey_in_g;
        }
        bees.push_back(alive > 0 ? steps(sums[0] / alive, 1) : 0);
        brood.push_back(alive > 0 ? steps(sums[1] / alive, 1) : 0);
        forage.push_back(alive > 0 ? steps(sums[2] / alive, 1) : 0);
    }
    return {{"bees", std::move(bees)}, {"brood", std::move(brood)}, {"forage", std::move(forage)}};
}

/// What the page shows: all within the area, and parents of swarms that came into it.
std::vector<const ColonyDiary*> shown_colonies(const Scenario& scenario, const SeasonReplay& replay) {
    std::vector<const ColonyDiary*> shown;
    for (const ColonyDiary& diary : replay.diaries) {
        const auto comes_in = [&](const LoggedSwarm& swarm) {
            return swarm.swarm.parent == diary.id && shown_on_page(scenario, swarm);
        };
        const bool within = distance_m(diary.at, {}) <= scenario.land.radius_m;
        if (within || std::any_of(replay.log.swarms.begin(), replay.log.swarms.end(), comes_in)) {
            shown.push_back(&diary);
        }
    }
    return shown;
}

Json swarms_json(const Scenario& scenario, const SeasonReplay& replay, const std::map<ColonyId, std::size_t>& index,
                 const LocalPlane& plane) {
    Json list = Json::array();
    for (std::size_t i = 0; i < replay.log.swarms.size(); ++i) {
        const LoggedSwarm& logged = replay.log.swarms[i];
        const auto parent = index.find(logged.swarm.parent);
        if (!shown_on_page(scenario, logged) || parent == index.end()) continue;
        Json swarm{{"number", i + 1},
                   {"colony", parent->second},
                   {"prime", logged.swarm.prime},
                   {"bees", logged.swarm.bees},
                   {"at", place_json(plane, logged.swarm.at)},
                   {"hung", steps(logged.hung_h, hour_step)},
                   {"ended", steps(logged.ended_h, hour_step)},
                   {"fate", fate_word(logged.fate)},
                   {"to", place_json(plane, logged.ended_at)},
                   {"sites_found", logged.hunt.sites_found},
                   {"scouts", logged.hunt.scouts}};
        for (const Catch& caught : replay.record.catches) {
            if (caught.swarm != logged.swarm.id) continue;
            swarm["trap"] = caught.trap;
            swarm["taken_day"] = caught.taking.taken.value;
        }
        list.push_back(std::move(swarm));
    }
    return list;
}

Json traps_json(const Scenario& scenario, const SeasonReplay& replay) {
    Json list = Json::array();
    for (std::size_t i = 0; i < replay.placement.size(); ++i) {
        Json trap = json_trap(scenario, replay.placement[i], i + 1);
        trap["hang_day"] = replay.placement[i].hang.value;
        trap["take_down_day"] = replay.placement[i].take_down.value;
        list.push_back(std::move(trap));
    }
    return list;
}

}  // namespace

std::string season_replay_page(const Scenario& scenario, const SeasonReplay& replay, const Provenance& origin) {
    const LocalPlane plane(scenario.land.centre);
    const std::vector<const ColonyDiary*> shown = shown_colonies(scenario, replay);
    const std::map<ColonyId, std::string> names = colony_names(scenario, replay.diaries);
    std::map<ColonyId, std::size_t> index;
    Json colonies = Json::array();
    for (const ColonyDiary* diary : shown) {
        index[diary->id] = colonies.size();
        colonies.push_back(colony_json(*diary, names.at(diary->id), plane));
    }
    Json map = map_json(scenario, replay.placement);
    map["spots"] = Json::array();  // the map is full enough
    Json json{{"origin", json_origin(origin)},
              {"scenario", json_scenario(scenario)},
              {"season", replay.season},
              {"first_day", iso(date_of(scenario, Day{0}))},
              {"map", std::move(map)},
              {"traps", traps_json(scenario, replay)},
              {"sky", sky_json(replay.sky)},
              {"means", means_json(shown, replay.sky.days.size())},
              {"swarms", swarms_json(scenario, replay, index, plane)},
              {"colonies", std::move(colonies)},
              {"reproduction", replay_reproduction(scenario, replay.season, origin)}};
    return page_text(
        {"replay_season",
         "Season " + std::to_string(replay.season) + " of " + scenario.name + ", " + std::to_string(scenario.year),
         season_answer(scenario, replay), std::move(json)});
}

}  // namespace maybough::report
