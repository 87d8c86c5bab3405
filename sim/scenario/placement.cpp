// Traps as set: a CSV of spot, kind, height, facing, dates and visits.
#include "scenario/placement.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "base/base.hpp"

namespace maybough::scenario {

namespace {

template <class Item>
std::size_t index_of(const std::vector<Item>& items, const std::string& id, const std::string& place,
                     const std::string& what) {
    const auto found = std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.id == id; });
    if (found != items.end()) return static_cast<std::size_t>(found - items.begin());
    std::vector<std::string> known;
    for (const Item& item : items) known.push_back(item.id);
    throw InputError(place, "there is no " + what + " \"" + id + "\"",
                     did_you_mean(id, known, "known are " + first_listed(known, 8)));
}

const std::vector<std::string>& placement_columns() {
    static const std::vector<std::string> names{
        "spot",          "kind",      "height_m",         "height_ft", "facing", "facing_deg",
        "hang",          "take_down", "visit_every_days", "lured",     "name",   "latitude_deg",
        "longitude_deg", "notes"};
    return names;
}

void read_height(const Sheet& sheet, const SheetRow& row, const Spot& spot, TrapSetting& trap) {
    const UnitColumn column = find_unit_column(sheet.columns, {"height", height_units()}, sheet.file + ":1");
    trap.height_m = std::clamp(trap.height_m, spot.min_height_m, spot.max_height_m);
    if (column.column.empty() || row.text(column.column).empty()) return;
    constexpr double highest_m = 30;
    trap.height_m =
        column.ours(number_in(row, column.column, sheet.decimal_sign, 0, highest_m / column.unit.factor, 0));
    constexpr double slack_m = 0.005;  // a height rounded to centimetres in a table
    if (trap.height_m < spot.min_height_m - slack_m || trap.height_m > spot.max_height_m + slack_m) {
        throw InputError(row.place, "found a height of " + shortest(trap.height_m) + " m, but the spot " + spot.id +
                                        " allows " + shortest(spot.min_height_m) + " to " +
                                        shortest(spot.max_height_m) + " m");
    }
}

void read_facing(const SheetRow& row, const Spot& spot, TrapSetting& trap) {
    const std::string_view text = row.text("facing").empty() ? row.text("facing_deg") : row.text("facing");
    if (text.empty()) {
        if (!spot.facings_deg.empty()) trap.facing_deg = spot.facings_deg.front();
        return;
    }
    trap.facing_deg = facing_in(text, row.place);
    constexpr double slack_deg = 0.51;  // a direction rounded to whole degrees
    constexpr double full_turn_deg = 360;
    const bool allowed = spot.facings_deg.empty() ||
                         std::any_of(spot.facings_deg.begin(), spot.facings_deg.end(), [&](double facing_deg) {
                             return std::abs(std::remainder(facing_deg - trap.facing_deg, full_turn_deg)) <= slack_deg;
                         });
    if (allowed) return;
    std::vector<std::string> words;
    for (const double facing_deg : spot.facings_deg) words.push_back(shortest(facing_deg));
    throw InputError(row.place, "found the facing " + std::string(text) + ", but the spot " + spot.id + " allows " +
                                    first_listed(words, 16) + " degrees");
}

}  // namespace

std::size_t spot_index(const Scenario& scenario, const std::string& id, const std::string& place) {
    return index_of(scenario.spots, id, place, "spot");
}

std::size_t kind_index(const Scenario& scenario, const std::string& id, const std::string& place) {
    return index_of(scenario.kinds, id, place, "trap kind");
}

Day day_in(const SheetRow& row, const std::string& column, Date first, Day fallback) {
    if (row.text(column).empty()) return fallback;
    const Date date = year_first_date(row.text(column), row.place + ": " + column);
    const Day day{static_cast<int>((date - first).count())};
    const int days = days_in_year_from(first);
    if (day.value < 0 || day.value > days) {
        throw InputError(row.place + ": " + column,
                         "found " + iso(date) + ", expected a day from " + iso(first) + " to " +
                             iso(first + std::chrono::days{days}),
                         "the year of this table is " + std::to_string(year_of(first)));
    }
    return day;
}

int days_between_visits(const SheetRow& row, const std::string& column, int fallback) {
    if (row.text(column).empty()) return fallback;
    constexpr int longest_days = 365;
    const auto days = whole_number(row.text(column));
    if (!days || *days < 1 || *days > longest_days) {
        throw InputError(
            row.place, column + ": found \"" + std::string(row.text(column)) + "\", expected a whole number 1 to 365");
    }
    return *days;
}

void read_trap(const Sheet& sheet, const SheetRow& row, const Scenario& scenario, Date first,
               const DateColumns& columns, TrapSetting& trap) {
    const Spot& spot = scenario.spots[trap.spot];
    trap.lured = scenario.keeper.use_lure;
    read_height(sheet, row, spot, trap);
    read_facing(row, spot, trap);
    trap.hang = day_in(row, columns.hang, first, Day{0});
    trap.take_down = day_in(row, columns.take_down, first, Day{days_in_year_from(first)});
    if (trap.take_down <= trap.hang) {
        throw InputError(row.place, columns.take_down + " is not after " + columns.hang, "exchange the two dates");
    }
    if (!row.text("lured").empty()) trap.lured = yes_no_in(row.text("lured"), row.place + ": lured");
}

void expect_trap_columns(const Sheet& sheet, const std::vector<std::string>& known,
                         const std::vector<std::string>& needed) {
    expect_columns(sheet.columns, known, sheet.file + ":1");
    for (const std::string& column : needed) {
        if (std::find(sheet.columns.begin(), sheet.columns.end(), column) == sheet.columns.end()) {
            throw InputError(sheet.file + ":1", "the column \"" + column + "\" is missing",
                             "found " + first_listed(sheet.columns, 12));
        }
    }
}

Placement read_placement(const std::string& path, const Scenario& scenario) {
    const Sheet sheet = sheet_of_csv(read_text(path), path);
    expect_trap_columns(sheet, placement_columns(), {"spot", "kind"});
    Placement placement;
    std::map<std::size_t, std::string> taken;
    for (const SheetRow& row : sheet.rows) {
        TrapSetting trap;
        trap.spot = spot_index(scenario, std::string(row.text("spot")), row.place);
        trap.kind = kind_index(scenario, std::string(row.text("kind")), row.place);
        const auto [other, fresh] = taken.emplace(trap.spot, row.place);
        if (!fresh) {
            throw InputError(row.place,
                             "the spot \"" + scenario.spots[trap.spot].id + "\" has a trap already at " + other->second,
                             "hang one trap at a spot");
        }
        read_trap(sheet, row, scenario, scenario.first_day(), {"hang", "take_down"}, trap);
        trap.visit_every_days = days_between_visits(row, "visit_every_days", trap.visit_every_days);
        placement.push_back(trap);
    }
    return placement;
}

}  // namespace maybough::scenario
