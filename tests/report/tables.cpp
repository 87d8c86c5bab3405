// Terminal tables: the answer comes first, nothing is wider than 100 columns, no control character gets through.
#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>

#include "report/words.hpp"
#include "sample.hpp"

using namespace maybough;

namespace {

void check_fits(const std::string& table) {
    std::istringstream lines(table);
    for (std::string line; std::getline(lines, line);) {
        CAPTURE(line);
        CHECK(text_width(line) <= table_width);
        CHECK(line.find('\x1B') == std::string::npos);
        CHECK(line.find('\t') == std::string::npos);
    }
}

/// Whether `part` stands in the text, wherever its lines were broken.
bool holds(std::string text, const std::string& part) {
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("plan_table says the answer first") {
    const std::string table = plan_table(sample_scenario(), sample_plan(), sample_origin());
    if (std::getenv("MAYBOUGH_SHOW") != nullptr) MESSAGE(table);
    check_fits(table);
    const auto answer = table.find("Hang 3 traps: 2 x Deep nest box and 1 x Half box (1 of them there already).");
    CHECK(answer < table.find("The traps\n"));
    CHECK(table.find("The traps\n") < table.find("Catch against cost"));
    CHECK(holds(table, "from 5 Apr to 12 Apr and visit every 14 days"));
    CHECK(
        holds(table, "about 2.6 swarms a season, in 8 seasons of 10 between 1 and 5. Net value EUR 98 +- 4 a season"));
    CHECK(holds(table, "3.5 m (11 ft)"));
    CHECK(holds(table, "A fourth trap would catch 0.23"));
    CHECK(holds(table, "At least 1: 83 % (78 to 88); 2: 60 % (55 to 65); 3: 30 % (25 to 35)."));
    CHECK(holds(table, "20 % is ignorance"));
    CHECK(table.find("second.unknown") < table.find("first.unknown"));
    CHECK(holds(table, "maybough plan scenarios/reedmere --seed 7"));
}

TEST_CASE("plan_table of a plan without traps says so") {
    Plan plan = sample_plan();
    plan.recommended = plan.recommended_low = plan.recommended_high = 0;
    plan.traps.clear();
    const std::string table = plan_table(sample_scenario(), plan);
    check_fits(table);
    CHECK(holds(table, "Hang no trap: "));
    CHECK(!holds(table, "The traps ---"));
    CHECK(!holds(table, "Odds of a season"));
    CHECK(holds(table, "Catch against cost"));
    plan.curve.resize(1);  // no trap could be tried: nothing to set side by side
    const std::string none = plan_table(sample_scenario(), plan);
    CHECK(holds(none, "Hang no trap: "));
    for (const char* empty : {"Catch against cost", "Which unknown", "Under other terms", "How good the search"}) {
        CHECK(!holds(none, empty));
    }
}

TEST_CASE("a plan that recommends what is not on its curve is a fault") {
    Plan plan = sample_plan();
    plan.recommended = 9;
    CHECK_THROWS_AS(plan_table(sample_scenario(), plan), ModelFault);
}

TEST_CASE("season_table and compare_table fit and carry their figures") {
    SeasonSummary summary;
    summary.catches = sample_estimate(2.4, 0.06);
    summary.swarms = sample_estimate(31, 0.5);
    summary.by_trap = {sample_estimate(1.2, 0.04), sample_estimate(0.8, 0.03), sample_estimate(0.4, 0.02)};
    summary.odds_at_least = sample_odds({0.9, 0.6, 0.2});
    const std::string table = season_table(sample_scenario(), summary, sample_placement());
    check_fits(table);
    CHECK(holds(table, "3 traps caught 2.40 +- 0.06 swarms a season over 600 simulated seasons"));
    CHECK(holds(table, "At least 1: 90 % (85 to 95); 2: 60 % (55 to 65); 3: 20 % (15 to 25)."));

    const std::vector<ComparedPlacement> sides{
        {"mine",
         sample_placement(),
         sample_estimate(2.4, 0.06),
         sample_estimate(90, 1),
         sample_estimate(100, 4),
         {},
         {},
         0.5},
        {"all by the hives", sample_placement(), sample_estimate(1.4, 0.05), sample_estimate(90, 1),
         sample_estimate(20, 4), sample_estimate(-1.0, 0.04), sample_estimate(-80, 3), 0.21}};
    const std::string compared = compare_table(sample_scenario(), sides);
    check_fits(compared);
    CHECK(holds(compared, "-1.00 +- 0.04"));
    CHECK(holds(compared, "21 %"));
}
