// The results file: what is written is read back, reruns give the same bytes, what is not whole or too new is refused.
#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "report/hdf5_file.hpp"
#include "sample_results.hpp"

using namespace maybough;

namespace {

std::string scratch(const std::string& name) {
    const auto folder = std::filesystem::path(MAYBOUGH_BUILD_DIR) / "report_scratch";
    std::filesystem::create_directories(folder);
    return (folder / name).string();
}

std::string bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// The message of the InputError that `act` throws, "" where it throws none.
template <class Act>
std::string refusal(Act act) {
    try {
        act();
    } catch (const InputError& e) {
        return e.what();
    }
    return "";
}

}  // namespace

TEST_CASE("a plan read back from its results file makes the same outputs") {
    const Scenario scenario = sample_scenario();
    const Plan plan = sample_plan();
    const Provenance origin = sample_origin();
    const std::string path = scratch("back.h5");
    write_plan_results(path, scenario, plan, origin);
    const PlanResults back = read_plan_results(path);
    CHECK(plan_json(back.scenario, back.plan, back.origin) == plan_json(scenario, plan, origin));
    CHECK(plan_table(back.scenario, back.plan, back.origin) == plan_table(scenario, plan, origin));
    const Placement chosen = back.plan.curve.at(3).placement;
    CHECK(chosen == sample_placement());
    CHECK(traps_gpx(back.scenario, chosen, back.origin) == traps_gpx(scenario, sample_placement(), origin));
    CHECK(traps_csv(back.scenario, chosen) == traps_csv(scenario, sample_placement()));
    CHECK(back.scenario.text == scenario.text);
    CHECK(back.scenario.spots.at(1).facings_deg == scenario.spots.at(1).facings_deg);
    CHECK(back.scenario.land.patches.at(2).ring == scenario.land.patches.at(2).ring);
    CHECK(back.scenario.land.patches.at(2).habitat == Habitat::water);
    CHECK(std::isnan(back.scenario.record.days.at(2).tmax_c));
    CHECK(back.plan.tied_spots == plan.tied_spots);
    CHECK_FALSE(std::filesystem::exists(path + ".tmp"));
}

TEST_CASE("only the clock attribute changes the bytes of a rerun") {
    const std::string first = scratch("first.h5");
    const std::string second = scratch("second.h5");
    write_plan_results(first, sample_scenario(), sample_plan(), sample_origin());
    write_plan_results(second, sample_scenario(), sample_plan(), sample_origin());
    const std::string bytes = bytes_of(first);
    CHECK(bytes.size() > 1000);
    CHECK(bytes == bytes_of(second));
    Provenance later = sample_origin();
    later.written_at = "2026-02-01T10:31:07Z";
    write_plan_results(second, sample_scenario(), sample_plan(), later);
    std::string other = bytes_of(second);
    CHECK(other != bytes);
    const auto clock = other.find(later.written_at);
    REQUIRE(clock != std::string::npos);
    other.replace(clock, later.written_at.size(), sample_origin().written_at);
    CHECK(other == bytes);
}

TEST_CASE("what is no whole results file of a known format is refused in one line") {
    const std::string path = scratch("odd.h5");
    const auto write = [&](const std::string& kind, std::int64_t format, bool complete) {
        Hdf5Writer file(path);
        file.attribute("file_kind", kind);
        file.attribute("format_version", format);
        if (complete) file.attribute("complete", 1);
        file.finish();
    };
    const auto read = [&] { read_plan_results(path); };
    write("maybough plan", 3, true);
    CHECK(refusal(read).find("is of format 3, this program reads up to 2") != std::string::npos);
    write("maybough plan", 0, true);
    CHECK(refusal(read).find("is of format 0") != std::string::npos);
    write("maybough plan", 2, false);
    CHECK(refusal(read).find("is not complete") != std::string::npos);
    write("maybough season", 2, true);
    CHECK(refusal(read).find("expected \"maybough plan\"") != std::string::npos);
    write("maybough plan", 2, true);
    CHECK(refusal(read).find("program_version: is missing") != std::string::npos);
    std::ofstream(path) << "no HDF5 at all";
    CHECK(refusal(read).find("cannot be opened as a results file") != std::string::npos);
    CHECK(refusal([] { read_plan_results("/nowhere/at/all.h5"); }).find("/nowhere/at/all.h5") == 0);
    const std::string whole = scratch("cut.h5");
    write_plan_results(whole, sample_scenario(), sample_plan(), sample_origin());
    std::filesystem::resize_file(whole, std::filesystem::file_size(whole) / 2);
    CHECK_FALSE(refusal([&] { read_plan_results(whole); }).empty());
}

TEST_CASE("a file that cannot be written leaves nothing behind") {
    CHECK_THROWS_AS(write_text("/nowhere/at/all.txt", "x"), RunError);
    CHECK_THROWS_AS(write_plan_results("/nowhere/at/all.h5", sample_scenario(), sample_plan(), sample_origin()),
                    RunError);
    const std::string folder = scratch("a_folder");
    std::filesystem::create_directories(folder);
    CHECK_THROWS_AS(write_text(folder, "x"), RunError);
    CHECK_FALSE(std::filesystem::exists(folder + ".tmp"));
    const std::string path = scratch("text.txt");
    write_text(path, "old");
    write_text(path, "new");
    CHECK(bytes_of(path) == "new");
}

TEST_CASE("season and comparison files carry a row a replicate and a row a side") {
    SeasonSummary summary;
    summary.catches = sample_estimate(2.4, 0.06);
    for (int i = 0; i < 100; ++i) {
        SeasonRecord season;
        season.swarms = 20 + i % 7;
        season.value = 90.0 * (i % 3);
        season.cost = 50;
        for (int k = 0; k < i % 3; ++k) {
            Catch caught;
            caught.trap = static_cast<std::size_t>(k);
            caught.caught = Day{130 + k};
            caught.taking.taken = Day{137};
            season.catches.push_back(caught);
        }
        summary.seasons.push_back(season);
    }
    summary.swarm_days.assign(365, 0.1);
    summary.catch_days.assign(365, 0.01);
    const std::string path = scratch("season.h5");
    write_season_results(path, sample_scenario(), summary, sample_placement(), sample_origin());
    const Hdf5Reader file(path);
    CHECK(file.text_attribute("file_kind") == "maybough season");
    CHECK(file.wholes("/replicates", "catches").at(2) == 2);
    CHECK(file.numbers("/replicates", "net").at(2) == 130);
    CHECK(file.wholes("/events/catches", "replicate").size() == 99);
    CHECK(file.texts("/events/catches", "date").front() == "2026-05-11");
    CHECK(file.numbers("/season/estimates", "estimate_mean").front() == 2.4);

    const std::vector<ComparedPlacement> sides{{"mine", sample_placement(), {}, {}, {}, {}, {}, 0.5},
                                               {"none", {}, {}, {}, {}, {}, {}, 0.2}};
    write_compare_results(path, sample_scenario(), sides, sample_origin());
    const Hdf5Reader compared(path);
    CHECK(compared.texts("/compare/sides", "name") == std::vector<std::string>{"mine", "none"});
    CHECK(compared.wholes("/compare/traps", "placement") == std::vector<std::int64_t>{0, 0, 0});
}

TEST_CASE("seasons and comparisons read back from their results file make the same outputs") {
    const Scenario scenario = sample_scenario();
    const Provenance origin = sample_origin();
    const std::string seasons = scratch("seasons.h5");
    write_season_results(seasons, scenario, sample_seasons(), sample_placement(), origin);
    CHECK(results_kind(seasons) == "season");
    const SeasonResults season = read_season_results(seasons);
    CHECK(season_page(season.scenario, season.summary, season.placement, season.origin) ==
          season_page(scenario, sample_seasons(), sample_placement(), origin));
    CHECK(season_table(season.scenario, season.summary, season.placement) ==
          season_table(scenario, sample_seasons(), sample_placement()));
    const std::string compared = scratch("compared.h5");
    write_compare_results(compared, scenario, sample_sides(), origin);
    CHECK(results_kind(compared) == "compare");
    const CompareResults compare = read_compare_results(compared);
    CHECK(compare_page(compare.scenario, compare.sides, compare.origin) ==
          compare_page(scenario, sample_sides(), origin));
    CHECK(compare_table(compare.scenario, compare.sides) == compare_table(scenario, sample_sides()));
    CHECK(refusal([&] { read_plan_results(seasons); }).find("maybough season") != std::string::npos);
}
