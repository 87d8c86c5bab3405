// Exports for other tools: escaping, order and units; and the sample files that general tools read back in CTest.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>
#include <nlohmann/json.hpp>

#include "report/words.hpp"
#include "sample.hpp"
#include "scenario/places.hpp"

using namespace maybough;

namespace {

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("sample files are written for general tools to read back") {
    const auto folder = std::filesystem::path(MAYBOUGH_BUILD_DIR) / "report_sample";
    std::filesystem::create_directories(folder);
    const auto write = [&](const char* name, const std::string& text) { write_text((folder / name).string(), text); };
    const Scenario scenario = sample_scenario();
    const Plan plan = sample_plan();
    const Placement chosen = sample_placement();
    write("plan.json", plan_json(scenario, plan, sample_origin()));
    write("traps.gpx", traps_gpx(scenario, chosen, sample_origin()));
    write("traps.geojson", traps_geojson(scenario, chosen, sample_origin()));
    write("traps.csv", traps_csv(scenario, chosen));
    write("calendar.ics", calendar_ics(scenario, chosen, sample_origin()));
    write_plan_results((folder / "results.h5").string(), scenario, plan, sample_origin());
    CHECK(std::filesystem::file_size(folder / "results.h5") > 1000);
}

TEST_CASE("GPX escapes what XML would read as markup and drops control characters") {
    const std::string gpx = traps_gpx(sample_scenario(), sample_placement(), sample_origin());
    CHECK(
        holds(gpx, "<name>2 Anna&#39;s &quot;barn&quot; &lt;img src=x onerror=alert(1)&gt; &lt;/script&gt; &amp; co"));
    CHECK(!holds(gpx, "<img"));
    CHECK(holds(gpx, "<wpt lat=\"48.2420000\" lon=\"9.4880000\">"));
    CHECK(gpx.find("<name>1 ") < gpx.find("<cmt>"));
    CHECK(holds(gpx, "Hang by 2026-04-05, visit every 14 days, take down 2026-07-30, with a lure."));
}

TEST_CASE("CSV is in the form placements are read from") {
    const std::string csv = traps_csv(sample_scenario(), sample_placement());
    CHECK(csv.rfind("spot,kind,height_m,facing,hang,take_down,visit_every_days,lured,name,latitude_deg,longitude_deg\n",
                    0) == 0);
    CHECK(holds(csv, "\nspot-1,box,3.5,SE,2026-04-05,2026-07-30,14,yes,Mill orchard,48.2420000,9.4880000\n"));
    CHECK(holds(csv, "\nspot-3,half,2,100,2026-04-12,2026-07-30,14,yes,"));
}

TEST_CASE("what we write of traps we read as the spots they hang at") {
    Scenario scenario = sample_scenario();
    for (Spot& spot : scenario.spots) spot.name = "Far oak " + spot.id;
    const Placement traps = sample_placement();
    const auto folder = std::filesystem::path(MAYBOUGH_BUILD_DIR) / "report_own_files";
    std::filesystem::create_directories(folder);
    const std::map<std::string, std::string> files{{"traps.gpx", traps_gpx(scenario, traps, sample_origin())},
                                                   {"traps.geojson", traps_geojson(scenario, traps, sample_origin())},
                                                   {"traps.csv", traps_csv(scenario, traps)}};
    for (const auto& [name, text] : files) {
        CAPTURE(name);
        write_text((folder / name).string(), text);
        const std::vector<Spot> spots = read_spots((folder / name).string(), scenario.land);
        REQUIRE(spots.size() == traps.size());
        for (std::size_t i = 0; i < traps.size(); ++i) {
            const Spot& meant = scenario.spots[traps[i].spot];
            CHECK(spots[i].name == meant.name);
            CHECK(spots[i].id == (name == "traps.gpx" ? "Far-oak-" + meant.id : meant.id));
            CHECK(std::abs(spots[i].place.latitude_deg - meant.place.latitude_deg) < 1e-6);
            CHECK(std::abs(spots[i].place.longitude_deg - meant.place.longitude_deg) < 1e-6);
        }
    }
    // What is meant to be passed on says neither how nor where on this machine it was made.
    for (const auto& [name, text] : files) CHECK(!holds(text, sample_origin().command_line));
    CHECK(!holds(calendar_ics(scenario, traps, sample_origin()), sample_origin().command_line));
}

TEST_CASE("JSON carries the plan's figures; what is no number is null") {
    Plan plan = sample_plan();
    plan.gap_net = std::nan("");
    const auto json = nlohmann::json::parse(plan_json(sample_scenario(), plan, sample_origin()));
    CHECK(json["recommended_traps"] == 3);
    CHECK(json["curve"].size() == 5);
    CHECK(json["curve"][3]["catches"]["mean"] == 2.61);
    CHECK(json["traps"][0]["height_m"] == 3.5);
    CHECK(json["traps"][0]["next_spot"] == "spot-4");
    CHECK(json["traps"][2]["next_spot"].is_null());
    CHECK(json["search"]["gap_net"].is_null());
    CHECK(json["kinds"][0]["to_build"] == 1);
    CHECK(json["sensitivities"][0]["key"] == "second.unknown");
}

TEST_CASE("bytes that are no UTF-8 do not stop an export") {
    Scenario scenario = sample_scenario();
    scenario.spots[0].name = "caf\xE9";
    const auto json = nlohmann::json::parse(traps_geojson(scenario, sample_placement(), sample_origin()));
    CHECK(json["features"][0]["properties"]["spot_name"] == "caf\xEF\xBF\xBD");
}

TEST_CASE("the calendar shows the rounds that are simulated and billed, each trap's with its place") {
    const Scenario scenario = sample_scenario();
    const std::string ics = calendar_ics(scenario, sample_placement(), sample_origin());
    std::map<std::string, int> expected;
    for (const TrapSetting& set : sample_placement()) {
        const Rounds rounds = visits_of(set, scenario.keeper);
        for (const Day day : rounds.visits) ++expected[iso(date_of(scenario, day))];
        ++expected[iso(date_of(scenario, set.hang))];
        ++expected[iso(date_of(scenario, set.take_down))];
        REQUIRE(rounds.lures.size() == 2);
        // Visited every 14 days; 60 days on from hanging the vial is spent.
        CHECK(rounds.lures[1] - set.hang >= 60);
        CHECK(rounds.lures[1] - set.hang < 60 + 14);
        CHECK(std::count(rounds.visits.begin(), rounds.visits.end(), rounds.lures[1]) == 1);
    }
    std::map<std::string, int> shown;
    const std::string start = "DTSTART;VALUE=DATE:";
    for (std::size_t at = ics.find(start); at != std::string::npos; at = ics.find(start, at + 1)) {
        const std::string day = ics.substr(at + start.size(), 8);
        ++shown[day.substr(0, 4) + "-" + day.substr(4, 2) + "-" + day.substr(6, 2)];
    }
    CHECK(shown == expected);
    const auto times = [&](const std::string& what) {
        int n = 0;
        for (std::size_t at = ics.find(what); at != std::string::npos; at = ics.find(what, at + 1)) ++n;
        return n;
    };
    const int events = times("BEGIN:VEVENT");
    for (const char* part : {"BEGIN:VALARM", "TRIGGER:-PT6H", "GEO:", "LOCATION:", "SEQUENCE:", "UID:"}) {
        CHECK(times(part) == events);
    }
    CHECK(times("METHOD") == 0);
    CHECK(times("X-WR-CALNAME:") == 1);
    for (std::size_t at = 0; at < ics.size();) {
        const std::size_t end = ics.find("\r\n", at);
        REQUIRE(end != std::string::npos);
        CHECK(end - at <= 75);
        at = end + 2;
    }
}
