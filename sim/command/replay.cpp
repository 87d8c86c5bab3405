// maybough replay: one season, or one swarm's house-hunt, as a page that plays, for teaching.
#include <algorithm>
#include <boost/program_options/value_semantic.hpp>
#include <iostream>
#include <optional>
#include <set>
#include <sstream>

#include "command/command_line.hpp"

namespace maybough::command {

namespace {

std::string change_help() {
    std::string text =
        "play the same hunt again beside it with one thing of a trap changed, such as volume_l=10, lure=0 "
        "or rival_m=50 (a second trap like it, so many metres east); it knows ";
    for (const std::string& key : hunt_changes()) text += (text.back() == ' ' ? "" : ", ") + key;
    return text;
}

void add_options(po::options_description& options) {
    add_scenario_options(options);
    options.add_options()("placement", po::value<std::string>()->value_name("FILE"),
                          "traps as set (CSV); default the scenario's own");
    options.add_options()(
        "season", po::value<std::int64_t>()->value_name("K"),
        "which of the simulated seasons, counted from 1; default 1, and with --hunt caught --change the "
        "first in which the change shows");
    options.add_options()("hunt", po::value<std::string>()->value_name("SWARM"),
                          "play this swarm's house-hunt instead of the season: its number, as in the season's list, or "
                          "'caught' for the first that a trap caught");
    options.add_options()("trap", po::value<std::string>()->value_name("SPOT"),
                          "spot of the trap to change; default the one chosen, else the nearest");
    options.add_options()("change", po::value<std::string>()->value_name("KEY=VALUE"), change_help().c_str());
    add_run_options(options);
    add_output_options(options);
}

/// KEY=VALUE of --change, the key known.
struct Change {
    std::string key;
    double value = 0;
};
Change change_of(const Request& request) {
    const auto text = request.get<std::string>("change");
    const std::size_t sign = text.find('=');
    const std::string key = text.substr(0, sign);
    const std::vector<std::string> known = hunt_changes();
    if (std::find(known.begin(), known.end(), key) == known.end()) {
        std::string all;
        for (const std::string& each : known) all += (all.empty() ? "" : ", ") + each;
        const std::vector<std::string> near = nearest_keys(key, known);
        throw InputError("command line", "--change knows no '" + key + "'",
                         near.empty() ? "it knows " + all : "did you mean " + near.front() + "?");
    }
    Change change{key, 0};
    std::istringstream number(sign == std::string::npos ? "" : text.substr(sign + 1));
    if (!(number >> change.value) || !(number >> std::ws).eof()) {
        throw InputError("command line", "--change is '" + text + "', expected a number after " + key + "=",
                         "try --change " + key + "=10");
    }
    check_hunt_change(key, change.value);
    return change;
}

std::uint32_t season_asked(const Request& request) {
    return request.has("season") ? static_cast<std::uint32_t>(whole(request, "season", 1, 1000000)) : 1;
}

/// The season asked for, lived with its log.
struct Lived {
    Scenario scenario;
    Parameters parameters;
    Chance chance;
    Backdrop backdrop;
    SeasonReplay replay;
};

Lived live(Scenario scenario, Placement placement, const Effort& effort, std::uint32_t season) {
    const Chance chance{effort.seed, season - 1};
    const Parameters parameters = draw_beliefs(scenario, effort.seed, season - 1);
    Backdrop backdrop = raise_backdrop(scenario, parameters, chance);
    Lived lived{std::move(scenario), parameters, chance, std::move(backdrop), {}};
    lived.replay.season = season;
    lived.replay.placement = std::move(placement);
    lived.replay.sky = lived.backdrop.sky;
    lived.replay.record = run_season(lived.scenario, lived.parameters, lived.backdrop, lived.replay.placement, chance,
                                     nullptr, nullptr, &lived.replay.log);
    lived.replay.diaries = keep_diaries(lived.scenario, parameters, lived.backdrop, lived.replay.log, chance);
    return lived;
}

/// Index into the log of the swarm asked for.
std::size_t swarm_asked(const Request& request, const SeasonReplay& replay) {
    const auto text = request.get<std::string>("hunt");
    const auto& swarms = replay.log.swarms;
    if (swarms.empty()) {
        throw InputError("command line", "no swarm hung in season " + std::to_string(replay.season),
                         "try another with --season");
    }
    if (text == "caught") {
        const auto caught = std::find_if(swarms.begin(), swarms.end(), [](const LoggedSwarm& swarm) {
            return swarm.fate == SeasonEvent::Kind::caught;
        });
        if (caught == swarms.end()) {
            throw InputError("command line",
                             "--hunt caught: no trap caught a swarm in season " + std::to_string(replay.season),
                             "try another with --season, or a swarm's number");
        }
        return static_cast<std::size_t>(caught - swarms.begin());
    }
    std::istringstream number(text);
    std::size_t nr = 0;
    if (text.find('-') != std::string::npos || !(number >> nr) || !number.eof() || nr < 1 || nr > swarms.size()) {
        throw InputError("command line",
                         "--hunt is '" + text + "', expected a swarm of season " + std::to_string(replay.season) +
                             ": a number from 1 to " + std::to_string(swarms.size()) + ", or 'caught'",
                         "'maybough replay SCENARIO' lists them");
    }
    return nr - 1;
}

/// The trap to change: the one named, the one the swarm chose, or the nearest its scouts can find.
std::size_t trap_asked(const Request& request, const Lived& lived, const HuntScene& scene, SiteId chosen) {
    std::optional<std::size_t> best;
    std::optional<std::size_t> spot;
    if (request.has("trap")) spot = spot_index(lived.scenario, request.get<std::string>("trap"), "command line");
    for (std::size_t i = 0; i < scene.sites.size(); ++i) {
        const SceneSite& site = scene.sites[i];
        if (site.trap < 0) continue;
        if (spot && lived.replay.placement[static_cast<std::size_t>(site.trap)].spot != *spot) continue;
        if (!spot && site.offer.id == chosen) return i;
        if (!best || site.offer.distance_m < scene.sites[*best].offer.distance_m) best = i;
    }
    if (!best) {
        throw InputError("command line",
                         spot ? "--trap: no trap hangs there within reach of this swarm's scouts"
                              : "--change: no trap is within reach of this swarm's scouts",
                         "'--hunt caught' plays one that was caught");
    }
    return *best;
}

HuntRun run_hunt(const Lived& lived, HuntScene scene, const std::string& title) {
    HuntRun run{title, std::move(scene), {}, {}};
    run.result = hunt_again(run.scene, lived.backdrop, lived.parameters, lived.chance, &run.trace);
    return run;
}

std::string number_text(double value) {
    std::ostringstream text;
    text << value;
    return text.str();
}

/// The change in words: "with 10 l", "1 m up", "beside a rival 60 m away".
std::string change_words(const Change& change) {
    const std::string value = number_text(change.value);
    if (change.key == "volume_l") return "of " + value + " l";
    if (change.key == "height_m") return value + " m up";
    if (change.key == "rival_m") return "beside a rival " + value + " m away";
    if (change.key == "entrance_area_cm2") return "with an entrance of " + value + " cm2";
    if (change.key == "facing_deg") return "facing " + value + " degrees";
    if (change.value == 0 && (change.key == "lure" || change.key == "comb")) return "without " + change.key;
    return "with " + change.key + " " + value;
}

HuntReplay hunt_replay(const Request& request, const Lived& lived, std::size_t asked,
                       const std::optional<Change>& change) {
    const LoggedSwarm& logged = lived.replay.log.swarms[asked];
    HuntReplay replay{lived.replay.season,     asked + 1, lived.replay.placement, lived.backdrop.sky,
                      lived.parameters.scouts, {}};
    const HuntScene scene =
        hunt_scene(lived.scenario, lived.parameters, lived.backdrop, lived.replay.placement, logged, lived.chance);
    replay.runs.push_back(run_hunt(lived, scene, "as it was"));
    if (change) {
        const std::size_t trap = trap_asked(request, lived, scene, logged.hunt.site);
        const std::string where = "trap " + std::to_string(scene.sites[trap].trap + 1);
        replay.runs.push_back(
            run_hunt(lived, with_change(scene, trap, change->key, change->value, lived.scenario, lived.parameters),
                     where + ", " + change_words(*change)));
    }
    return replay;
}

/// A hunt to play: its season and its swarm in that season's log.
struct Picked {
    Lived lived;
    std::size_t swarm = 0;
};

/// The first season in which a swarm was caught that goes elsewhere, or nowhere, once the change is made; the first
/// with a catch where there is none of that kind within the seasons looked at.
Picked where_it_shows(const Request& request, const Scenario& scenario, const Placement& placement,
                      const Effort& effort, const Change& change) {
    constexpr std::uint32_t most_seasons = 100;
    std::optional<Picked> any;
    for (std::uint32_t season = 1; season <= most_seasons; ++season) {
        Lived lived = live(scenario, placement, effort, season);
        const auto& swarms = lived.replay.log.swarms;
        for (std::size_t i = 0; i < swarms.size(); ++i) {
            if (swarms[i].fate != SeasonEvent::Kind::caught) continue;
            const HuntReplay replay = hunt_replay(request, lived, i, change);
            const HuntResult& before = replay.runs.front().result;
            const HuntResult& after = replay.runs.back().result;
            const bool shows = before.outcome != after.outcome || !(before.site == after.site);
            if (shows) return {std::move(lived), i};
            if (!any) any = Picked{live(scenario, placement, effort, season), i};
        }
    }
    if (any) return std::move(*any);
    throw InputError("command line",
                     "--hunt caught: no trap caught a swarm in " + std::to_string(most_seasons) + " seasons",
                     "name a season with --season and a swarm by its number");
}

Picked picked_hunt(const Request& request, const Scenario& scenario, const Placement& placement, const Effort& effort,
                   const std::optional<Change>& change) {
    if (change && !request.has("season") && request.get<std::string>("hunt") == "caught") {
        return where_it_shows(request, scenario, placement, effort, *change);
    }
    Lived lived = live(scenario, placement, effort, season_asked(request));
    const std::size_t swarm = swarm_asked(request, lived.replay);
    return {std::move(lived), swarm};
}

int run_replay(const Request& request) {
    const Effort effort = effort_of(request);
    std::optional<Change> change;
    if (request.has("change")) change = change_of(request);
    if (!request.has("hunt") && (change || request.has("trap"))) {
        throw InputError("command line", "--change and --trap are of a house-hunt", "name the swarm with --hunt");
    }
    Scenario scenario = scenario_of(request);
    Placement placement =
        request.has("placement") ? read_placement(request.get<std::string>("placement"), scenario) : scenario.placement;
    season_asked(request);
    constexpr std::size_t rows = 25;
    if (!request.has("hunt")) {
        const Lived lived = live(std::move(scenario), std::move(placement), effort, season_asked(request));
        const OutputFolder folder(request, lived.scenario, {"season.html"});
        write_text(folder.path("season.html"),
                   season_replay_page(lived.scenario, lived.replay, provenance_of(request)));
        std::cout << season_replay_table(lived.scenario, lived.replay, rows) << "\nWritten:\n  "
                  << folder.path("season.html") << "\n";
        return 0;
    }
    const Picked picked = picked_hunt(request, scenario, placement, effort, change);
    const Lived& lived = picked.lived;
    const HuntReplay replay = hunt_replay(request, lived, picked.swarm, change);
    const OutputFolder folder(request, lived.scenario, {"hunt.html"});
    write_text(folder.path("hunt.html"), hunt_replay_page(lived.scenario, replay, provenance_of(request)));
    for (const std::string& line : hunt_words(lived.scenario, replay)) std::cout << line << "\n";
    std::cout << "\nWritten:\n  " << folder.path("hunt.html") << "\n";
    return 0;
}

}  // namespace

const Command replay_command{
    "replay",
    "one season, or one swarm's house-hunt, as a page that plays",
    "SCENARIO [--season K] [--hunt SWARM [--change KEY=VALUE]] [options]",
    "Plays one simulated season on a page that opens offline: colonies grow, prepare and swarm, swarms\n"
    "hang, choose and settle; click a colony for its own curves and for why it swarmed. With --hunt it\n"
    "plays one swarm's house-hunt instead: scouts, dances, quorum, lift-off; with --change the same hunt\n"
    "again beside it, on the same random numbers, with one thing of a trap changed.\n",
    "scenario",
    "",
    add_options,
    run_replay};

}  // namespace maybough::command
