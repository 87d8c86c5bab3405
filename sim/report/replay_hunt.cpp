// One house-hunt as a page that plays, alone or beside the same with one thing changed.
#include <algorithm>
#include <cmath>

#include "report/page.hpp"
#include "report/replay.hpp"
#include "report/words.hpp"

namespace maybough::report {

namespace {

using Kind = HuntEvent::Kind;

constexpr double ticks_an_hour = 120;  // half a minute, the step of the hunt itself

/// The number of this kind in the page's script (tools/page/replay_scouts.js).
int code_of(Kind kind) {
    switch (kind) {
        case Kind::found:
            return 0;
        case Kind::visited:
            return 1;
        case Kind::danced:
            return 2;
        case Kind::stopped:
            return 3;
        case Kind::rested:
            return 4;
        case Kind::quorum:
            return 5;
        case Kind::lifted:
            return 6;
        case Kind::arrived:
            return 7;
        case Kind::split:
            return 8;
        case Kind::night:
            return 9;
        case Kind::rain:
            return 10;
        case Kind::followed:
            return 11;
    }
    throw ModelFault("a hunt told of something that the page does not know");
}

bool shown(const HuntRun& run, const SceneSite& site) {
    return is_trap(site.offer.id) || std::any_of(run.trace.begin(), run.trace.end(), [&](const HuntEvent& event) {
               return event.site == site.offer.id && event.kind != Kind::night && event.kind != Kind::rain;
           });
}

Json site_json(const HuntReplay& replay, const SceneSite& site, const std::string& name, Point swarm) {
    const Cavity& cavity = site.cavity;
    const auto tenth = [](double value) { return std::round(10 * value) / 10; };
    return {{"name", name},
            {"trap", is_trap(site.offer.id)},
            {"x", std::lround(site.at.x_m - swarm.x_m)},
            {"y", std::lround(site.at.y_m - swarm.y_m)},
            {"distance_m", std::lround(site.offer.distance_m)},
            {"minutes", std::round(1000 * site.offer.distance_m / replay.scouts.flight_ms / 60) / 1000},
            {"volume_l", tenth(cavity.volume_l)},
            {"entrance_cm2", tenth(cavity.entrance_area_cm2)},
            {"height_m", tenth(cavity.height_m)},
            {"facing_deg", std::lround(cavity.facing_deg)},
            {"lure", std::lround(100 * cavity.lure)},
            {"comb", std::lround(100 * cavity.comb)},
            {"log_odds", std::round(100 * site.offer.log_odds) / 100}};
}

/// Five whole numbers an event: ticks since the last, kind, scout, site on the page (-1 none), amount.
Json events_json(const HuntRun& run, const std::vector<SiteId>& sites) {
    Json list = Json::array();
    std::int64_t last = 0;
    for (const HuntEvent& event : run.trace) {
        const auto tick = std::llround(event.hour * ticks_an_hour);
        const auto site = std::find(sites.begin(), sites.end(), event.site);
        list.push_back(tick - last);
        list.push_back(code_of(event.kind));
        list.push_back(event.scout);
        list.push_back(site == sites.end() ? -1 : site - sites.begin());
        list.push_back(std::lround(event.amount));
        last = tick;
    }
    return list;
}

const char* outcome_word(HuntOutcome outcome) {
    switch (outcome) {
        case HuntOutcome::moved:
            return "moved";
        case HuntOutcome::built_in_open:
            return "built in the open";
        case HuntOutcome::hived:
            return "hived";
        default:
            return "lost";
    }
}

Json run_json(const Scenario& scenario, const HuntReplay& replay, const HuntRun& run) {
    const std::vector<std::string> names = site_names(scenario, replay, run);
    Json sites = Json::array();
    std::vector<SiteId> ids;
    for (std::size_t i = 0; i < run.scene.sites.size(); ++i) {
        const SceneSite& site = run.scene.sites[i];
        if (!shown(run, site)) continue;
        ids.push_back(site.offer.id);
        sites.push_back(site_json(replay, site, names[i], run.scene.swarm.at));
    }
    const auto chosen = std::find(ids.begin(), ids.end(), run.result.site);
    const bool moved = run.result.outcome == HuntOutcome::moved;
    return {{"title", plain_text(run.title)},
            {"scouts", run.result.scouts},
            {"quorum", quorum_of(run.result.scouts, replay.scouts)},
            {"outcome", outcome_word(run.result.outcome)},
            {"chosen", moved ? chosen - ids.begin() : -1},
            {"arrival", std::llround(run.result.arrival_h * ticks_an_hour)},
            {"decision", std::llround(run.result.decision_h * ticks_an_hour)},
            {"sites", std::move(sites)},
            {"events", events_json(run, ids)}};
}

/// Hours fit for scouting, day by day from the day on which the swarm hung: percent of each hour.
Json scouting_json(const HuntReplay& replay, const Swarm& swarm, double until_h) {
    Json list = Json::array();
    const auto days = static_cast<int>((until_h + swarm.hour) / 24) + 1;
    for (int day = swarm.day.value; day < swarm.day.value + days; ++day) {
        if (static_cast<std::size_t>(day) >= replay.sky.days.size()) break;
        for (const float share : replay.sky[Day{day}].scouting) {
            list.push_back(std::lround(100 * static_cast<double>(share)));
        }
    }
    return list;
}

}  // namespace

std::string hunt_replay_page(const Scenario& scenario, const HuntReplay& replay, const Provenance& origin) {
    const Swarm& swarm = replay.runs.front().scene.swarm;
    Json runs = Json::array();
    double until_h = 0;
    for (const HuntRun& run : replay.runs) {
        runs.push_back(run_json(scenario, replay, run));
        until_h = std::max(until_h, run.result.arrival_h);
    }
    std::string answer;
    for (const std::string& line : hunt_words(scenario, replay)) answer += (answer.empty() ? "" : " ") + line;
    Json json{{"origin", json_origin(origin)},
              {"scenario", json_scenario(scenario)},
              {"season", replay.season},
              {"swarm", {{"number", replay.swarm}, {"bees", swarm.bees}, {"prime", swarm.prime}}},
              {"hung_on", iso(date_of(scenario, swarm.day))},
              {"hung_hour", swarm.hour},
              {"run_s", replay.scouts.run_s},
              {"search_min", replay.scouts.search_min},
              {"warm_up_min", replay.scouts.warm_up_min},
              {"swarm_flight_ms", replay.scouts.swarm_flight_ms},
              {"scouting", scouting_json(replay, swarm, until_h)},
              {"runs", std::move(runs)},
              {"reproduction", replay_reproduction(scenario, replay.season, origin)}};
    return page_text({"replay_hunt",
                      "House-hunt of swarm " + std::to_string(replay.swarm) + ", " + scenario.name + ", " +
                          moment_words(scenario, 24.0 * swarm.day.value + swarm.hour),
                      answer, std::move(json)});
}

}  // namespace maybough::report
