// The pages: whole, closed against markup in names, figures those of the results; written for the browser test to open.
#include <doctest/doctest.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "sample_results.hpp"

using namespace maybough;

namespace {

std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size())) ++found;
    return found;
}

/// The page's data as its script will read it.
nlohmann::json island(const std::string& page) {
    const std::string open = "<script type=\"application/json\" id=\"data\">";
    const std::size_t from = page.find(open) + open.size();
    return nlohmann::json::parse(page.substr(from, page.find("</script>", from) - from));
}

/// A scenario whose every name would be markup.
Scenario hostile_scenario() {
    Scenario scenario = sample_scenario();
    scenario.name = hostile;
    for (Spot& spot : scenario.spots) spot.name = hostile;
    for (TrapKind& kind : scenario.kinds) kind.name = hostile;
    for (HabitatPatch& patch : scenario.land.patches) patch.name = hostile;
    scenario.apiaries[0].id = hostile;
    return scenario;
}

/// Every page by the name of its file.
std::vector<std::pair<std::string, std::string>> all_pages(const Scenario& scenario) {
    const Provenance origin = sample_origin();
    return {{"plan", plan_page(scenario, sample_plan(), origin)},
            {"season", season_page(scenario, sample_seasons(), sample_placement(), origin)},
            {"compare", compare_page(scenario, sample_sides(), origin)},
            {"forecast", forecast_page(scenario, sample_forecast(), origin)},
            {"hindcast", hindcast_page(scenario, sample_hindcast(), origin)},
            {"learn", learn_page(scenario, sample_learned(), origin)},
            {"verify", verify_page(sample_verified(), 7, origin)}};
}

}  // namespace

TEST_CASE("sample pages are written for the browser to open") {
    const auto folder = std::filesystem::path(MAYBOUGH_BUILD_DIR) / "report_sample";
    std::filesystem::create_directories(folder);
    for (const auto& [name, page] : all_pages(sample_scenario())) {
        CAPTURE(name);
        write_text((folder / (name + ".html")).string(), page);
        CHECK(page.size() < 1'000'000);
        CHECK(page.ends_with("</html>\n"));
    }
    for (const auto& [name, page] : all_pages(hostile_scenario())) {
        write_text((folder / ("hostile-" + name + ".html")).string(), page);
    }
    write_season_results((folder / "season.h5").string(), sample_scenario(), sample_seasons(), sample_placement(),
                         sample_origin());
    write_compare_results((folder / "compare.h5").string(), sample_scenario(), sample_sides(), sample_origin());
    write_text((folder / "weeks.csv").string(), forecast_weeks_csv(sample_forecast()));
    write_text((folder / "days.csv").string(), forecast_days_csv(sample_forecast()));
    write_text((folder / "hindcast.csv").string(), hindcast_csv(sample_hindcast()));
    write_text((folder / "verify.csv").string(), verify_csv(sample_verified()));
    write_text((folder / "agenda.ics").string(), forecast_ics(sample_scenario(), sample_forecast(), sample_origin()));
}

TEST_CASE("no name can become markup in a page, nor be taken for a mark of its frame") {
    const auto harmless = all_pages(sample_scenario());
    const auto spoilt = all_pages(hostile_scenario());
    for (std::size_t i = 0; i < spoilt.size(); ++i) {
        const auto& [name, page] = spoilt[i];
        CAPTURE(name);
        for (const char* markup : {"<script", "</script", "<!--", "<img"}) {
            CAPTURE(markup);
            CHECK(count(page, markup) == count(harmless[i].second, markup));
        }
    }
    CHECK(spoilt[0].second.find("<title>Traps for &lt;img src=x onerror=alert(1)&gt; &lt;/script&gt;") !=
          std::string::npos);
    CHECK(spoilt[0].second.find("{{data}} &amp; &quot;co&quot;, 2026</title>") != std::string::npos);
    CHECK(island(spoilt[0].second)["traps"][0]["spot_name"] == hostile);
}

TEST_CASE("the plan page's data are those of plan.json, with the map") {
    const std::string page = plan_page(sample_scenario(), sample_plan(), sample_origin());
    nlohmann::json data = island(page);
    CHECK(data["map"]["habitats"].size() == 3);
    CHECK(data["map"]["spots"].size() == 3);  // six, less three with traps
    CHECK(data["map"]["apiaries"][0]["hives"] == 6);
    // 900 m north and 400 m east of the centre.
    CHECK(data["map"]["apiaries"][0]["latitude_deg"].get<double>() == doctest::Approx(48.2581).epsilon(1e-5));
    data.erase("map");
    data.erase("prose");
    // Every unknown that is drawn stands with its range and its source.
    std::size_t drawn = 0;
    for (const ParameterEntry& entry : parameter_table()) drawn += entry.row.spread != Spread::fixed;
    CHECK(data["beliefs"].size() == drawn);
    for (const auto& belief : data["beliefs"]) {
        CHECK(belief["low"] < belief["high"]);
        CHECK((!belief["source"].get<std::string>().empty() || belief["standing"] == word(Standing::assumed)));
    }
    data.erase("beliefs");
    CHECK(data == nlohmann::json::parse(plan_json(sample_scenario(), sample_plan(), sample_origin())));
}

TEST_CASE("the season page tells shares of seasons by catch, and where the swarms came from") {
    const auto data = island(season_page(sample_scenario(), sample_seasons(), sample_placement(), sample_origin()));
    // Eight seasons with 0, 0, 1, 1, 2, 2, 3, 3 catches.
    CHECK(data["share_of_seasons_with"] == nlohmann::json({0.25, 0.25, 0.25, 0.25}));
    CHECK(data["traps"].size() == 3);
    // The first catch of each of six seasons is of a managed hive, of 12 in all.
    CHECK(data["where_from"].get<std::string>().find("50 % came from managed hives") != std::string::npos);
    const auto bare = island(season_page(sample_scenario(), {}, {}, sample_origin()));
    CHECK(bare["traps"].empty());
    CHECK(bare["where_from"] == "No swarm was caught in any simulated season.");
}

TEST_CASE("the compare page says whether the seasons can tell the placements apart") {
    auto sides = sample_sides();
    const auto answer_of = [&] {
        const std::string page = compare_page(sample_scenario(), sides, sample_origin());
        const std::size_t from = page.find("class=\"answer\">");
        return page.substr(from, page.find("</p>", from) - from);
    };
    CHECK(answer_of().find("EUR 30 a season less than \u201cthe plan\u201d (\u00b1 3)") != std::string::npos);
    sides[1].net_less_first.half_width_95 = 31;
    CHECK(answer_of().find("These seasons cannot tell") != std::string::npos);
    CHECK(compare_page(sample_scenario(), {}, sample_origin()).find("nothing to compare") != std::string::npos);
}

TEST_CASE("a page allows no script or style but its own and asks for nothing") {
    for (const auto& [name, page] : all_pages(sample_scenario())) {
        CAPTURE(name);
        CHECK(page.find("default-src 'none'; style-src 'sha256-") != std::string::npos);
        CHECK(page.find("unsafe-eval") == std::string::npos);
        CHECK(page.find("unsafe-inline") == std::string::npos);
        CHECK(page.find("sourceMappingURL") == std::string::npos);
        CHECK(page.find("<link") == std::string::npos);
        CHECK(page.find(" src=\"") == std::string::npos);
    }
    // Only a page with a map may fetch a picture, when the reader turns a base map on.
    CHECK(verify_page(sample_verified(), 7, sample_origin()).find("img-src data:;") != std::string::npos);
}
