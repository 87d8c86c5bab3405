// The plan page: whole, closed against markup in names, and written for the browser test to open.
#include <doctest/doctest.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "sample.hpp"

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

}  // namespace

TEST_CASE("a sample page is written for the browser to open") {
    const auto folder = std::filesystem::path(MAYBOUGH_BUILD_DIR) / "report_sample";
    std::filesystem::create_directories(folder);
    const std::string page = plan_page(sample_scenario(), sample_plan(), sample_origin());
    write_text((folder / "plan.html").string(), page);
    CHECK(page.size() < 1'000'000);
    CHECK(page.ends_with("</html>\n"));
}

TEST_CASE("no name can become markup in the page, nor be taken for a mark of its frame") {
    Scenario scenario = sample_scenario();
    const std::string harmless = plan_page(scenario, sample_plan(), sample_origin());
    scenario.name = "{{data}}</title><script>alert(1)</script>";
    scenario.spots[0].name = "</script><script>alert(2)</script><!--";
    Plan plan = sample_plan();
    plan.why_it_stops = "<b onclick='x'>{{answer}}</b>";
    const std::string page = plan_page(scenario, plan, sample_origin());
    CHECK(count(page, "<script") == count(harmless, "<script"));
    CHECK(count(page, "</script") == count(harmless, "</script"));
    CHECK(count(page, "<!--") == count(harmless, "<!--"));
    CHECK(count(page, "<b ") == count(harmless, "<b "));
    const nlohmann::json data = island(page);
    CHECK(data["traps"][0]["spot_name"] == scenario.spots[0].name);
    CHECK(data["why_it_stops"] == plan.why_it_stops);
    CHECK(page.find("<title>Traps for {{data}}&lt;/title&gt;&lt;script&gt;") != std::string::npos);
}

TEST_CASE("the page's data are those of plan.json, with the map") {
    const std::string page = plan_page(sample_scenario(), sample_plan(), sample_origin());
    nlohmann::json data = island(page);
    CHECK(data["map"]["habitats"].size() == 3);
    CHECK(data["map"]["spots"].size() == 3);  // six, less three with traps
    CHECK(data["map"]["apiaries"][0]["hives"] == 6);
    // 900 m north and 400 m east of the centre.
    CHECK(data["map"]["apiaries"][0]["latitude_deg"].get<double>() == doctest::Approx(48.2581).epsilon(1e-5));
    data.erase("map");
    data.erase("prose");
    CHECK(data == nlohmann::json::parse(plan_json(sample_scenario(), sample_plan(), sample_origin())));
}

TEST_CASE("the page allows no script or style but its own and asks for nothing") {
    const std::string page = plan_page(sample_scenario(), sample_plan(), sample_origin());
    CHECK(page.find("default-src 'none'; style-src 'sha256-") != std::string::npos);
    CHECK(page.find("unsafe-eval") == std::string::npos);
    CHECK(page.find("unsafe-inline") == std::string::npos);
    CHECK(page.find("sourceMappingURL") == std::string::npos);
    CHECK(page.find("<link") == std::string::npos);
    CHECK(page.find(" src=\"") == std::string::npos);
}
