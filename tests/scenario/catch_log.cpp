// Catch logs: what a keeper writes down becomes seasons; slips are told with their line.
#include <doctest/doctest.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>

#include "scenario/scenario.hpp"

using namespace maybough;

namespace {
const Scenario& area() {
    static const Scenario scenario = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    return scenario;
}
CatchLog log_of(const std::string& text) {
    // Cases run beside each other, each in a process of its own.
    const std::string name = "maybough-catch-log-" + std::to_string(getpid()) + ".csv";
    const std::string path = (std::filesystem::temp_directory_path() / name).string();
    std::ofstream(path) << text;
    CatchLog log = read_catch_log(path, area());
    std::filesystem::remove(path);
    return log;
}
std::string refusal(const std::string& text) {
    try {
        log_of(text);
    } catch (const InputError& e) {
        return e.what();
    }
    return "";
}
}  // namespace

TEST_CASE("the demonstration's log is read, years in order") {
    const CatchLog log = read_catch_log(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry/catch-log.csv", area());
    REQUIRE(log.seasons.size() == 3);
    CHECK(log.seasons[0].year == 2023);
    CHECK(log.seasons[2].placement.size() == 5);
    CHECK(log.seasons[2].swarms == std::vector<int>{2, 0, 1, 0, 0});
    CHECK(log.seasons[2].caught[0].size() == 2);
    CHECK(log.seasons[0].placement[0].hang == Day{111});  // 22 April 2023
    CHECK(log.seasons[1].placement[0].hang == Day{110});  // 20 April of a leap year
    CHECK(log.seasons[1].placement[3].visit_every_days == 14);
}

TEST_CASE("a bare log takes defaults; visits become days between them") {
    const CatchLog log = log_of(
        "spot,year,swarms,kind,visits,hung,taken_down\n"
        "mill-oak,2024,0,nuc,9,2024-04-20,2024-07-29\nmill-oak,2022,1,nuc,,,\n");
    REQUIRE(log.seasons.size() == 2);
    CHECK(log.seasons[0].year == 2022);
    CHECK(log.seasons[0].placement[0].hang == Day{0});
    CHECK(log.seasons[0].placement[0].take_down == Day{365});
    CHECK(log.seasons[1].placement[0].visit_every_days == 10);  // 100 days, ten stretches
}

TEST_CASE("a log that notes no kind takes that of the trap set at the spot, else the scenario's first") {
    REQUIRE(area().kinds.size() > 1);
    REQUIRE_FALSE(area().placement.empty());
    const TrapSetting& set = area().placement.back();
    const CatchLog log = log_of("spot,year,swarms\n" + area().spots[set.spot].id + ",2024,1\n");
    CHECK(log.seasons.at(0).placement.at(0).kind == set.kind);
    for (const Spot& spot : area().spots) {
        const auto here = [&](const TrapSetting& trap) { return area().spots[trap.spot].id == spot.id; };
        if (std::any_of(area().placement.begin(), area().placement.end(), here)) continue;
        CHECK(log_of("spot,year,swarms\n" + spot.id + ",2024,1\n").seasons.at(0).placement.at(0).kind == 0);
        break;
    }
}

TEST_CASE("slips in a log are told with line and matter") {
    const std::string head = "year,spot,kind,hung,taken_down,swarms,caught\n";
    const auto says = [](const std::string& text, const std::string& part) {
        CAPTURE(text);
        return text.find(part) != std::string::npos;
    };
    CHECK(says(refusal(head + "2024,mill-oka,nuc,,,0,\n"), "mill-oak"));
    CHECK(says(refusal(head + "2024,mill-oka,nuc,,,0,\n"), ":2"));
    CHECK(says(refusal(head + "24,mill-oak,nuc,,,0,\n"), "year"));
    CHECK(says(refusal(head + "2024,mill-oak,nuc,,,-1,\n"), "swarms"));
    CHECK(says(refusal(head + "2024,mill-oak,nuc,,,,\n"), "swarms"));
    CHECK(says(refusal(head + "2024,mill-oak,nuc,2023-04-20,,0,\n"), "2023-04-20"));
    CHECK(says(refusal(head + "2024,mill-oak,nuc,2024-07-20,2024-05-01,0,\n"), "taken_down"));
    CHECK(says(refusal(head + "2024,mill-oak,nuc,2024-04-20,2024-07-20,1,2024-08-01\n"), "2024-08-01"));
    CHECK(says(refusal(head + "2024,mill-oak,nuc,,,0,2024-06-01\n"), "1 dates"));
    CHECK(says(refusal(head + "2024,mill-oak,nuc,,,0,\n2024,mill-oak,nuc,,,1,\n"), "already"));
    CHECK(says(refusal("year,spot\n2024,mill-oak\n"), "swarms"));
    CHECK(says(refusal("year,spot,swarms,swarm\n2024,mill-oak,1,1\n"), "swarm"));
}
