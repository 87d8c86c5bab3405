// Exports for other tools: escaping, order and units; and the sample files that general tools read back in CTest.
#include <doctest/doctest.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "sample.hpp"

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
    CHECK(csv ==
          "spot,kind,height_m,facing,hang,take_down,visit_every_days,lured\n"
          "spot-1,box,3.5,SE,2026-04-05,2026-07-30,14,yes\n"
          "spot-2,box,4.25,S,2026-04-05,2026-07-30,14,yes\n"
          "spot-3,half,2,100,2026-04-12,2026-07-30,14,yes\n");
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

TEST_CASE("the calendar renews lures on the first visit after they are spent") {
    const std::string ics = calendar_ics(sample_scenario(), sample_placement(), sample_origin());
    // Hung 5 Apr, visited every 14 days; 60 days on is 4 Jun, so the visit of 14 Jun (70 days on) brings a new lure.
    const auto day = ics.find("DTSTART;VALUE=DATE:20260614");
    REQUIRE(day != std::string::npos);
    CHECK(ics.find("new lure in 2 traps", day) < ics.find("END:VEVENT", day));
    CHECK(ics.find("new lure") > ics.find("DTSTART;VALUE=DATE:20260531"));
    for (std::size_t at = 0; at < ics.size();) {
        const std::size_t end = ics.find("\r\n", at);
        REQUIRE(end != std::string::npos);
        CHECK(end - at <= 75);
        at = end + 2;
    }
}
