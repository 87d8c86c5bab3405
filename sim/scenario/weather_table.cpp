// A CSV table of days whose column names state their units.
#include <algorithm>
#include <array>
#include <limits>

#include "base/base.hpp"
#include "scenario/sheet.hpp"
#include "scenario/weather_file.hpp"

namespace maybough::scenario {

namespace {
constexpr double missing = std::numeric_limits<double>::quiet_NaN();

/// One of the four quantities, with limits in our unit that no place on earth passes: beyond them the unit is wrong.
struct WeatherQuantity {
    Quantity quantity;
    Sky what;
    double min;
    double max;
    bool required;
};

std::array<WeatherQuantity, 4> quantities() {
    return {WeatherQuantity{{"tmax", temperature_units()}, Sky::tmax, -95, 60, true},
            WeatherQuantity{{"tmin", temperature_units()}, Sky::tmin, -95, 60, true},
            WeatherQuantity{{"rain", rain_units()}, Sky::rain, 0, 2000, false},
            WeatherQuantity{{"wind", wind_units()}, Sky::wind, 0, 80, false}};
}

struct TableColumn {
    WeatherQuantity quantity;
    UnitColumn column;
};

/// Gives the file's own columns our names, as weather.columns asks.
void rename_columns(Sheet& sheet, const WeatherSource& source) {
    for (const auto& [ours, theirs] : source.columns) {
        const auto found = std::find(sheet.columns.begin(), sheet.columns.end(), theirs);
        if (found == sheet.columns.end()) {
            throw InputError(source.file + ":1", "there is no column \"" + theirs + "\", which weather.columns names",
                             did_you_mean(theirs, sheet.columns, "found " + first_listed(sheet.columns, 12)));
        }
        *found = ours;
        for (SheetRow& row : sheet.rows) row.cells[ours] = row.cells[theirs];
    }
}

/// Rain and wind may be left out, but not by a slip of the pen: a column whose name is nearly theirs is refused.
void refuse_slips(const Sheet& sheet, const Quantity& quantity, const std::string& place) {
    std::vector<std::string> known;
    for (const Unit& unit : quantity.units)
        known.push_back(std::string(quantity.name) + "_" + std::string(unit.suffix));
    for (const std::string& column : sheet.columns) {
        if (column.find('_') == std::string::npos) continue;
        const std::string near = did_you_mean(column, known, "");
        if (!near.empty()) throw InputError(place, "the column \"" + column + "\" is not known", near);
    }
}

std::vector<TableColumn> columns_of(const Sheet& sheet) {
    const std::string place = sheet.file + ":1";
    if (std::find(sheet.columns.begin(), sheet.columns.end(), "date") == sheet.columns.end()) {
        throw InputError(place, "the column \"date\" is missing", "found " + first_listed(sheet.columns, 12));
    }
    std::vector<TableColumn> columns;
    for (const WeatherQuantity& quantity : quantities()) {
        const UnitColumn column = find_unit_column(sheet.columns, quantity.quantity, place);
        if (!column.column.empty()) columns.push_back({quantity, column});
        if (column.column.empty() && !quantity.required) refuse_slips(sheet, quantity.quantity, place);
        if (column.column.empty() && quantity.required) {
            const std::string name(quantity.quantity.name);
            throw InputError(place, "the column " + name + "_c (or " + name + "_f) is missing",
                             "found " + first_listed(sheet.columns, 12) + "; rename it or map it in weather.columns");
        }
    }
    return columns;
}

double cell_value(const SheetRow& row, const TableColumn& column, DecimalSign sign, int& traces) {
    const std::string_view text = row.text(column.column.column);
    if (text.empty() || text == "NA") return missing;
    if (column.quantity.what == Sky::rain && (text == "T" || text == "t")) {
        ++traces;
        return 0;
    }
    const std::string name = row.place + ": " + column.column.column;
    const auto number = decimal_number(text, sign);
    if (!number) {
        throw InputError(name, "found \"" + std::string(text) + "\", expected a number",
                         "leave missing values empty or write NA");
    }
    const double value = column.column.ours(*number);
    if (!(value >= column.quantity.min && value <= column.quantity.max)) {
        throw InputError(name, "found " + std::string(text) + ", which no weather station has seen",
                         "is the unit in the column's name right?");
    }
    return value;
}

}  // namespace

WeatherReading read_weather_table(const std::string& text, const WeatherSource& source) {
    Sheet sheet = sheet_of_csv(text, source.file);
    rename_columns(sheet, source);
    const std::vector<TableColumn> columns = columns_of(sheet);
    const bool stations = std::find(sheet.columns.begin(), sheet.columns.end(), "station") != sheet.columns.end();
    if (!stations && !source.station.empty()) {
        throw InputError(source.file + ":1", "a station is named, but there is no column \"station\"");
    }
    DayGatherer days(source);
    std::map<std::string, Date> last;
    for (const SheetRow& row : sheet.rows) {
        const std::string station(row.text("station"));
        if (stations && !days.wants(station)) continue;
        const Date date = year_first_date(row.text("date"), row.place);
        const auto before = last.find(station);
        if (before != last.end() && date <= before->second) {
            throw InputError(row.place,
                             "found " + iso(date) + " after " + iso(before->second) + ", expected rising dates",
                             date == before->second ? "the day stands twice" : "sort the rows by date");
        }
        last[station] = date;
        for (const TableColumn& column : columns) {
            days.take(date, column.quantity.what, cell_value(row, column, sheet.decimal_sign, days.traces), row.place);
        }
    }
    return days.finish("table of days");
}

}  // namespace maybough::scenario
