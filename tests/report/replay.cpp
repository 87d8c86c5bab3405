// The replay pages: what they hold is what the season and the hunt were, and no name becomes markup.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "report/report.hpp"

using namespace maybough;

namespace {

/// The demo's third season with a hostile spot name, lived once.
struct Played {
    Scenario scenario;
    Parameters parameters;
    Chance chance{1, 2};
    Backdrop backdrop;
    SeasonReplay replay;
    HuntReplay hunt;
    SiteId chosen;

    Played()
        : scenario(named()),
          parameters(draw_beliefs(scenario, 1, 2)),
          backdrop(raise_backdrop(scenario, parameters, chance)) {
        replay.season = 3;
        replay.placement = scenario.placement;
        replay.sky = backdrop.sky;
        replay.record =
            run_season(scenario, parameters, backdrop, replay.placement, chance, nullptr, nullptr, &replay.log);
        replay.diaries = keep_diaries(scenario, parameters, backdrop, replay.log, chance);
        play_hunt();
    }

    static Scenario named() {
        Scenario read = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
        read.name = "Brindle <img src=x onerror=alert(1)> </script> & Ferry";
        for (Spot& spot : read.spots) spot.name = "Oak <img src=x onerror=alert(2)> </script>";
        return read;
    }

    void play_hunt() {
        const auto& swarms = replay.log.swarms;
        // The quickest of the swarms caught: no days of foul weather in which there is nothing to look at.
        const auto hours = [](const LoggedSwarm& swarm) {
            return swarm.fate == SeasonEvent::Kind::caught ? swarm.ended_h - swarm.hung_h : 1e9;
        };
        const auto caught = std::min_element(swarms.begin(), swarms.end(),
                                             [&](const auto& a, const auto& b) { return hours(a) < hours(b); });
        REQUIRE(caught != swarms.end());
        REQUIRE(caught->fate == SeasonEvent::Kind::caught);
        hunt = {
            3, static_cast<std::size_t>(caught - swarms.begin()) + 1, replay.placement, backdrop.sky, parameters.scouts,
            {}};
        chosen = caught->hunt.site;
        HuntScene scene = hunt_scene(scenario, parameters, backdrop, replay.placement, *caught, chance);
        std::size_t trap = 0;
        while (scene.sites[trap].offer.id != chosen) ++trap;
        for (const bool small : {false, true}) {
            HuntRun run{small ? "trap with volume_l = 10" : "as it was",
                        small ? with_change(scene, trap, "volume_l", 10, scenario, parameters) : scene,
                        {},
                        {}};
            run.result = hunt_again(run.scene, backdrop, parameters, chance, &run.trace);
            hunt.runs.push_back(std::move(run));
        }
    }
};

const Played& played() {
    static const Played once;
    return once;
}

nlohmann::json island(const std::string& page) {
    const std::string open = "<script type=\"application/json\" id=\"data\">";
    const std::size_t from = page.find(open) + open.size();
    return nlohmann::json::parse(page.substr(from, page.find("</script>", from) - from));
}

Provenance origin() {
    Provenance made;
    made.command_line = "maybough replay scenarios/brindle-ferry --season 3";
    made.command = "replay";
    made.version = "0.1.0";
    return made;
}

std::filesystem::path sample_folder() {
    const auto folder = std::filesystem::path(MAYBOUGH_BUILD_DIR) / "report_sample";
    std::filesystem::create_directories(folder);
    return folder;
}

}  // namespace

TEST_CASE("sample replays are written for the browser to open, the season's under 5 MB") {
    const Played& p = played();
    const std::string season = season_replay_page(p.scenario, p.replay, origin());
    const std::string hunt = hunt_replay_page(p.scenario, p.hunt, origin());
    CHECK(season.size() < 5'000'000);
    CHECK(hunt.size() < 5'000'000);
    CHECK(season.find("<img") == std::string::npos);
    CHECK(hunt.find("<img") == std::string::npos);
    write_text((sample_folder() / "replay_season.html").string(), season);
    write_text((sample_folder() / "replay_hunt.html").string(), hunt);
}

TEST_CASE("the season's page holds every catch of the record, and each swarm with its one fate") {
    const Played& p = played();
    const nlohmann::json data = island(season_replay_page(p.scenario, p.replay, origin()));
    std::size_t caught = 0;
    for (const auto& swarm : data["swarms"]) {
        const std::string fate = swarm["fate"];
        CHECK((fate == "caught" || fate == "settled" || fate == "hived" || fate == "lost"));
        caught += fate == "caught" ? 1 : 0;
        CHECK(swarm["hung"] <= swarm["ended"]);
        const LoggedSwarm& logged = p.replay.log.swarms.at(swarm["number"].get<std::size_t>() - 1);
        CHECK(swarm["bees"] == logged.swarm.bees);
        const auto& colony = data["colonies"].at(swarm["colony"].get<std::size_t>());
        const auto day = static_cast<std::size_t>(logged.swarm.day.value - colony["first"].get<int>());
        CHECK(day < colony["bees"].size());
    }
    CHECK(caught == p.replay.record.catches.size());
    CHECK(data["sky"]["tmax"].size() == p.replay.sky.days.size());
    CHECK(data["sky"]["tmax"][100].get<double>() / 10 ==
          doctest::Approx(p.replay.sky[Day{100}].weather.tmax_c).epsilon(0.01));
}

TEST_CASE("the parts of a colony's hazard on the page multiply to its odds") {
    const Played& p = played();
    const nlohmann::json data = island(season_replay_page(p.scenario, p.replay, origin()));
    int looked = 0;
    for (const auto& colony : data["colonies"]) {
        const auto& parts = colony["hazard"]["parts"];
        REQUIRE(parts.size() == 8);
        for (std::size_t day = 0; day < parts[0].size(); ++day) {
            double product = p.parameters.colony.prepare_per_day;
            for (std::size_t part = 0; part < 7; ++part) product *= parts[part][day].get<double>() / 100;
            if (product < 0.05) continue;
            ++looked;
            // Each of seven factors is rounded to 0.01: below 0.5 none of them here, so 7 * 0.005 / 0.3 at most.
            CHECK(parts[7][day].get<double>() / 1000 == doctest::Approx(product).epsilon(0.12));
        }
    }
    CHECK(looked > 20);
}

TEST_CASE("the hunt's page holds the trace whole, and the second run is of the trap changed") {
    const Played& p = played();
    const nlohmann::json data = island(hunt_replay_page(p.scenario, p.hunt, origin()));
    REQUIRE(data["runs"].size() == 2);
    for (std::size_t i = 0; i < 2; ++i) {
        const auto& run = data["runs"][i];
        CHECK(run["events"].size() == 5 * p.hunt.runs[i].trace.size());
        std::int64_t tick = 0;
        for (std::size_t e = 0; e < run["events"].size(); e += 5) tick += run["events"][e].get<std::int64_t>();
        CHECK(tick == std::llround(p.hunt.runs[i].trace.back().hour * 120));
    }
    const auto& first = data["runs"][0];
    const auto chosen = first["chosen"].get<std::size_t>();
    CHECK(first["sites"][chosen]["trap"] == true);
    for (const auto& site : data["runs"][1]["sites"]) {
        if (site["name"] == first["sites"][chosen]["name"]) CHECK(site["volume_l"] == 10);
    }
}

TEST_CASE("a hunt in words says who moved where; the season's table names the caught") {
    const Played& p = played();
    const auto words = hunt_words(p.scenario, p.hunt);
    REQUIRE(words.size() == 2);
    CHECK(words[0].starts_with("As it was: "));
    CHECK(words[0].find("moved into Trap ") != std::string::npos);
    const std::string table = season_replay_table(p.scenario, p.replay, 5);
    std::size_t caught = 0;
    for (std::size_t at = table.find("caught in trap"); at != std::string::npos;
         at = table.find("caught in trap", at + 1)) {
        ++caught;
    }
    CHECK(caught == p.replay.record.catches.size());
}
