// Whole scenarios: values read, defaults kept, overlays put over, faults told with file and path.
#include <doctest/doctest.h>

#include "scenario/folder.hpp"
#include "scenario/records.hpp"

using namespace maybough;

namespace {
/// The refusal of the good scenario with one text replaced in scenario.json.
std::string refused(const std::string& from, const std::string& to) {
    const ScratchFolder folder;
    folder.put_good_scenario();
    folder.put("scenario.json", changed(good_scenario, from, to));
    return refusal([&] { read_scenario(folder.path()); });
}

const ParameterEntry& first_entry(bool drawn) {
    for (const ParameterEntry& entry : parameter_table()) {
        if ((entry.row.spread != Spread::fixed) == drawn && entry.row.min < entry.row.value &&
            entry.row.value < entry.row.max)
            return entry;
    }
    throw ModelFault("no such row");
}
}  // namespace

TEST_CASE("a good scenario is read with its values and the defaults") {
    const ScratchFolder folder;
    folder.put_good_scenario();
    const Scenario s = read_scenario(folder.path());
    CHECK(s.name == "Test meadow");
    CHECK(s.land.radius_m == 2000);
    CHECK(s.spots.size() == 3);
    CHECK(s.kinds.front().name == "box");
    CHECK(s.kinds.front().entrance_area_cm2 == TrapKind{}.entrance_area_cm2);
    CHECK(s.keeper.budget == 300);
    CHECK(s.keeper.late_month == 7);
    CHECK(s.keeper.late_day == 15);
    CHECK(s.keeper.km_cost == Keeper{}.km_cost);
    CHECK(s.apiary_management.managed);
    CHECK(iso(s.first_day()) == "2026-01-01");
    CHECK(s.days() == 365);
    CHECK(s.given.count("/keeper/budget") == 1);
    CHECK(s.given.count("/keeper/km_cost") == 0);
    CHECK(read_scenario(folder.path("scenario.json")).text == s.text);
}

TEST_CASE("south of the equator the simulated year starts in July") {
    const ScratchFolder folder;
    folder.put("scenario.json", changed(good_scenario, "\"latitude_deg\": 47.5", "\"latitude_deg\": -33.9"));
    folder.put("spots.csv", "id,latitude_deg,longitude_deg\na,-33.9,8.5\n");
    CHECK(iso(read_scenario(folder.path()).first_day()) == "2026-07-01");
}

TEST_CASE("faults of scenario.json are told with their path") {
    CHECK(says(refused("\"radius_m\": 2000", "\"radius_m\": 2000, \"radius\": 1"), "scenario.json: /place/radius: "));
    CHECK(says(refused("\"radius_m\": 2000", "\"radius_m\": \"2000\""),
               "/place/radius_m: found the text \"2000\", expected a number"));
    CHECK(says(refused("\"radius_m\": 2000", "\"radius_m\": -5"), "/place/radius_m: found -5, expected 100 to 30000"));
    CHECK(says(refused("\"latitude_deg\": 47.5, ", ""), "/place: the key \"latitude_deg\" is missing"));
    CHECK(says(refused("\"budget\": 300", "\"budget\": 0"), "/keeper/budget: found 0, expected above 0"));
    CHECK(says(refused("\"budget\": 300", "\"budget\": -1"), "/keeper/budget"));
    CHECK(says(refused("\"max_traps\": 4", "\"max_traps\": 4.0"),
               "/keeper/max_traps: found 4.0, expected a whole number"));
    CHECK(says(refused("\"max_traps\": 4", "\"max_traps\": 0"), "/keeper/max_traps"));
    CHECK(says(refused("07-15", "02-30"), "/keeper/late_from"));
    CHECK(says(refused("07-15", "7/15"), "/keeper/late_from"));
    CHECK(says(refused("farmland", "farm-land"), "/place/elsewhere: found the text \"farm-land\""));
    CHECK(says(refused("\"volume_l\": 40", "\"volume_gal\": 10"), "/trap_kinds/0/volume_gal"));
    CHECK(says(refused("{\"id\": \"box\", \"volume_l\": 40}", ""), "/trap_kinds: the list is empty"));
    CHECK(says(refused("{\"id\": \"box\", \"volume_l\": 40}",
                       "{\"id\": \"box\", \"volume_l\": 40}, {\"id\": \"box\", \"volume_l\": 20}"),
               "stands twice"));
    CHECK(says(refused("\"format\": 1", "\"format\": 2, \"something\": 3"),
               "/format: found format 2, expected 1; the file is of a newer"));
    CHECK(says(refused("\"format\": 1", "\"format\": 0"), "/format"));
    CHECK(says(refused("\"format\": 1,", ""), "the key \"format\" is missing"));
    CHECK(says(refused("[3, 5, 10,", "[5, 10,"), "/weather/monthly_normals/tmax_c: found 11 values"));
    CHECK(says(refused("[-3, -2,", "[4, -2,"), "/weather/monthly_normals/tmin_c/0: found 4, above tmax_c 3"));
    CHECK(says(refused("\"spots.csv\"", "\"spot.csv\""), "did you mean spots.csv?"));
}

TEST_CASE("a parameter set is known and drawn no more; a belief is a belief") {
    const ParameterEntry& unknown = first_entry(true);
    const std::string key(unknown.row.key);
    const ScratchFolder folder;
    folder.put_good_scenario();
    const Scenario plain = read_scenario(folder.path());
    CHECK(plain.beliefs.empty());
    const double value = (unknown.row.value + unknown.row.max) / 2;
    const std::string overlay =
        folder.put("over.json", "{\"format\": 1, \"parameters\": {\"" + key + "\": " + Json(value).dump() + "}}");
    const Scenario set = read_scenario(folder.path(), {overlay});
    CHECK(unknown.get(set.parameters) == value);
    CHECK(set.beliefs.at(key).low == value);
    CHECK(belief_quantile(unknown.row, set.beliefs.at(key), 0.9) == value);
    CHECK(set.given.at(key) == overlay);
    CHECK(says(describe(set), key));

    const double low = (unknown.row.value + unknown.row.min) / 2;
    const std::string learnt = folder.put(
        "learnt.json", "{\"format\": 1, \"beliefs\": {\"" + key + "\": {\"median\": " + Json(unknown.row.value).dump() +
                           ", \"low\": " + Json(low).dump() + ", \"high\": " + Json(value).dump() + "}}}");
    const Scenario later = read_scenario(folder.path(), {overlay, learnt});
    CHECK(unknown.get(later.parameters) == unknown.row.value);
    CHECK(later.beliefs.at(key).low == low);
    CHECK(later.beliefs.at(key).high == value);
}

TEST_CASE("faults of parameters and beliefs are told") {
    const std::string unknown(first_entry(true).row.key);
    const std::string fixed(first_entry(false).row.key);
    const ScratchFolder folder;
    folder.put_good_scenario();
    const auto refused_overlay = [&](const std::string& text) {
        const std::string file = folder.put("over.json", "{\"format\": 1, " + text + "}");
        return refusal([&] { read_scenario(folder.path(), {file}); });
    };
    CHECK(says(refused_overlay("\"parameters\": {\"" + unknown + "x\": 1}"), "did you mean " + unknown));
    CHECK(says(refused_overlay("\"parameters\": {\"" + unknown + "\": 1e12}"),
               "over.json: /parameters/" + unknown + ": found 1e+12"));
    CHECK(says(refused_overlay("\"parameters\": {\"" + unknown + "\": null}"), "expected a number"));
    CHECK(says(refused_overlay("\"beliefs\": {\"" + fixed + "\": {\"median\": 1, \"low\": 1, \"high\": 1}}"),
               "taken as known"));
    CHECK(says(refused_overlay("\"beliefs\": {\"" + unknown + "\": {\"median\": 1, \"low\": 1}}"),
               "the key \"high\" is missing"));
    const std::string value = Json(first_entry(true).row.value).dump();
    const std::string least = Json(first_entry(true).row.min).dump();
    CHECK(says(refused_overlay("\"beliefs\": {\"" + unknown + "\": {\"median\": " + least + ", \"low\": " + value +
                               ", \"high\": " + value + "}}"),
               "expected them to rise"));
    CHECK(says(refused_overlay("\"spots\": \"x.csv\""), "over.json: /spots: this key is not known here"));
    CHECK(says(refused_overlay("\"parameters\": {\"" + unknown + "\": " + value + "}, \"beliefs\": {\"" + unknown +
                               "\": {\"median\": " + value + ", \"low\": " + value + ", \"high\": " + value + "}}"),
               "keep one"));
}

TEST_CASE("a placement is read against the scenario") {
    const ScratchFolder folder;
    folder.put_good_scenario();
    const Scenario s = read_scenario(folder.path());
    const std::string head = "spot,kind,height_m,facing,hang,take_down,visit_every_days,lured\n";
    const Placement placement =
        read_placement(folder.put("t.csv", head + "oak,box,4,S,2026-04-10,2026-08-01,10,no\nbarn,box,,,,,,\n"), s);
    REQUIRE(placement.size() == 2);
    CHECK(placement[0].height_m == 4);
    CHECK(placement[0].facing_deg == 180);
    CHECK(placement[0].hang == Day{99});
    CHECK(placement[0].visit_every_days == 10);
    CHECK_FALSE(placement[0].lured);
    CHECK(placement[1].hang == Day{0});
    CHECK(placement[1].take_down == Day{365});
    CHECK(placement[1].lured);
    const auto refused_traps = [&](const std::string& row) {
        return refusal([&] { read_placement(folder.put("t.csv", head + row), s); });
    };
    CHECK(says(refused_traps("oka,box,,,,,,\n"), "t.csv:2: there is no spot \"oka\"; did you mean oak?"));
    CHECK(says(refused_traps("oak,bx,,,,,,\n"), "t.csv:2: there is no trap kind \"bx\""));
    CHECK(says(refused_traps("oak,box,9,,,,,\n"), "t.csv:2: found a height of 9 m"));
    CHECK(says(refused_traps("oak,box,,N,,,,\n"), "t.csv:2: found the facing N"));
    CHECK(says(refused_traps("oak,box,,,2025-04-10,,,\n"), "t.csv:2: hang: found 2025-04-10"));
    CHECK(says(refused_traps("oak,box,,,2026-08-10,2026-04-10,,\n"), "take_down is not after hang"));
    CHECK(says(refused_traps("oak,box,,,,,0,\n"), "visit_every_days"));
    CHECK(says(refused_traps("oak,box,,,,,7,perhaps\n"), "expected yes or no"));
    CHECK(says(refused_traps("oak,box,,,,,,\noak,box,,,,,,\n"), "t.csv:3: the spot \"oak\" has a trap already"));
}

TEST_CASE("a value set outside its plausible range is told by check") {
    for (const ParameterEntry& entry : parameter_table()) {
        if (!(entry.row.max > entry.row.high)) continue;
        const ScratchFolder folder;
        folder.put_good_scenario();
        const std::string over =
            folder.put("over.json", "{\"format\": 1, \"parameters\": {\"" + std::string(entry.row.key) +
                                        "\": " + Json(entry.row.max).dump() + "}}");
        std::string text;
        const std::string message = refusal([&] { text = describe(read_scenario(folder.path(), {over})); });
        if (!message.empty()) continue;  // a rule across rows forbids this one alone
        CHECK(says(text, "outside the plausible"));
        return;
    }
    FAIL("no row has a plausible range within its limits");
}
