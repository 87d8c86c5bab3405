// Sheets from CSV, units told by column names, and the plain words in cells.
#include "scenario/sheet.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

#include "base/base.hpp"
#include "scenario/csv.hpp"
#include "scenario/scenario.hpp"

namespace maybough::scenario {

std::string_view SheetRow::text(const std::string& name) const {
    const auto found = cells.find(name);
    return found == cells.end() ? std::string_view{} : std::string_view(found->second);
}

Sheet sheet_of_csv(const std::string& bytes, const std::string& file) {
    const std::string text = as_utf8(bytes, file);
    // Some spreadsheets write "sep=;" as a first line of their own.
    const bool marked = text.rfind("sep=", 0) == 0 && text.find('\n') != std::string::npos;
    const CsvTable table = parse_csv(marked ? text.substr(text.find('\n')) : text, file);
    Sheet sheet{file, table.header, table.decimal_sign(), {}};
    for (std::string& column : sheet.columns) column = one_line(column);
    for (const CsvRow& row : table.rows) {
        SheetRow named{table.place(row), {}};
        for (std::size_t i = 0; i < sheet.columns.size(); ++i) named.cells[sheet.columns[i]] = one_line(row.cells[i]);
        sheet.rows.push_back(std::move(named));
    }
    return sheet;
}

std::vector<PlacedCells> read_columns(const std::string& path, const std::vector<std::string>& columns) {
    const Sheet sheet = sheet_of_csv(read_text(path), path);
    expect_columns(sheet.columns, columns, path + ":1");
    std::vector<PlacedCells> rows;
    for (const SheetRow& row : sheet.rows) {
        rows.push_back({row.place, {}});
        for (const std::string& column : columns) rows.back().cells.emplace_back(row.text(column));
    }
    return rows;
}

// Exact by definition: foot 0.3048 m, inch 25.4 mm, mile 1.609344 km, knot 1852 m/h (international yard and pound
// agreement, 1959; nautical mile, 1929).
namespace {
constexpr std::array<Unit, 2> temperature_list{Unit{"c"}, Unit{"f", 5.0 / 9.0, 32}};
constexpr std::array<Unit, 2> height_list{Unit{"m"}, Unit{"ft", 0.3048}};
constexpr std::array<Unit, 2> road_list{Unit{"km"}, Unit{"mi", 1.609344}};
constexpr std::array<Unit, 2> rain_list{Unit{"mm"}, Unit{"in", 25.4}};
constexpr std::array<Unit, 4> wind_list{Unit{"ms"}, Unit{"kmh", 1 / 3.6}, Unit{"mph", 0.44704},
                                        Unit{"kn", 1852.0 / 3600.0}};

std::string lower(std::string_view text) {
    std::string small(text);
    std::transform(small.begin(), small.end(), small.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return small;
}
}  // namespace

std::span<const Unit> temperature_units() {
    return temperature_list;
}
std::span<const Unit> height_units() {
    return height_list;
}
std::span<const Unit> road_units() {
    return road_list;
}
std::span<const Unit> rain_units() {
    return rain_list;
}
std::span<const Unit> wind_units() {
    return wind_list;
}

UnitColumn find_unit_column(const std::vector<std::string>& columns, const Quantity& quantity,
                            const std::string& place) {
    UnitColumn found;
    std::string choices;
    for (const Unit& unit : quantity.units) {
        const std::string name = std::string(quantity.name) + "_" + std::string(unit.suffix);
        choices += (choices.empty() ? "" : " or ") + name;
        if (std::find(columns.begin(), columns.end(), name) == columns.end()) continue;
        if (!found.column.empty()) {
            throw InputError(place, "found both " + found.column + " and " + name, "keep one of the two columns");
        }
        found = {name, unit};
    }
    if (std::find(columns.begin(), columns.end(), quantity.name) != columns.end()) {
        throw InputError(place, "the column \"" + std::string(quantity.name) + "\" has no unit", "name it " + choices);
    }
    return found;
}

void expect_columns(const std::vector<std::string>& columns, const std::vector<std::string>& known,
                    const std::string& place) {
    for (const std::string& column : columns) {
        if (std::find(known.begin(), known.end(), column) != known.end()) continue;
        throw InputError(place, "the column \"" + column + "\" is not known",
                         did_you_mean(lower(column), known, "known here: " + first_listed(known, 30)));
    }
}

double number_in(const SheetRow& row, const std::string& column, DecimalSign sign, double min, double max,
                 double fallback) {
    const std::string_view text = row.text(column);
    if (text.empty()) return fallback;
    const auto value = decimal_number(text, sign);
    if (!value) {
        throw InputError(row.place, column + ": found \"" + std::string(text) + "\", expected a number",
                         "write it without a unit; leave the cell empty for the default");
    }
    if (!(*value >= min && *value <= max)) {
        throw InputError(row.place, column + ": found " + std::string(text) + ", expected " + shortest(min) + " to " +
                                        shortest(max));
    }
    return *value;
}

double facing_in(std::string_view text, const std::string& place) {
    static constexpr std::array<std::string_view, 16> winds{"n", "nne", "ne", "ene", "e", "ese", "se", "sse",
                                                            "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw"};
    constexpr double full_turn_deg = 360;
    const std::string word = lower(trimmed(text));
    const auto found = std::find(winds.begin(), winds.end(), word);
    if (found != winds.end()) {
        return full_turn_deg / static_cast<double>(winds.size()) * static_cast<double>(found - winds.begin());
    }
    const auto degrees = decimal_number(word);
    if (!degrees || !(*degrees >= 0 && *degrees <= full_turn_deg)) {
        throw InputError(
            place, "found the direction \"" + std::string(text) + "\", expected degrees 0 to 360 or N, NE, E ...");
    }
    return std::fmod(*degrees, full_turn_deg);
}

bool yes_no_in(std::string_view text, const std::string& place) {
    const std::string word = lower(trimmed(text));
    if (word == "yes" || word == "true" || word == "1") return true;
    if (word == "no" || word == "false" || word == "0") return false;
    throw InputError(place, "found \"" + std::string(text) + "\", expected yes or no");
}

}  // namespace maybough::scenario
