// EPW: hours of a typical year (or of real years) gathered into days. Field numbers are those of the format's
// dictionary.
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "base/base.hpp"
#include "scenario/csv.hpp"
#include "scenario/weather_file.hpp"

namespace maybough::scenario {

namespace {
constexpr double missing = std::numeric_limits<double>::quiet_NaN();
constexpr std::size_t header_lines = 8;
constexpr std::size_t hours_in_day = 24;
constexpr std::size_t fewest_hours_of_temperature = 18;

/// A number of an hour and the value from which on it means "missing".
struct EpwField {
    std::size_t index;
    double missing_from;
    std::string_view name;
};
constexpr EpwField dry_bulb{6, 99.9, "field 7, dry bulb temperature"};
constexpr EpwField wind_speed{21, 999, "field 22, wind speed"};
constexpr EpwField liquid_depth{33, 999, "field 34, liquid precipitation depth"};

double value_of(const CsvRow& row, const EpwField& field, const std::string& place) {
    const auto value = decimal_number(row.cells[field.index]);
    if (!value)
        throw InputError(place,
                         std::string(field.name) + ": found \"" + row.cells[field.index] + "\", expected a number");
    return *value >= field.missing_from ? missing : *value;
}

/// The hours of one day, gathered.
class HoursOfDay {
  public:
    void add(const CsvRow& row, const std::string& place) {
        const double temperature_c = value_of(row, dry_bulb, place);
        const double wind = value_of(row, wind_speed, place);
        if (std::isfinite(temperature_c)) {
            low_c_ = std::min(low_c_, temperature_c);
            high_c_ = std::max(high_c_, temperature_c);
            ++temperatures_;
        }
        if (std::isfinite(wind)) {
            wind_sum_ms_ += wind;
            ++winds_;
        }
        rain_mm_ += value_of(row, liquid_depth, place);
    }
    void give(DayGatherer& days, Date date, const std::string& place) const {
        const bool enough = temperatures_ >= fewest_hours_of_temperature;
        days.take(date, Sky::tmax, enough ? high_c_ : missing, place);
        days.take(date, Sky::tmin, enough ? low_c_ : missing, place);
        days.take(date, Sky::rain, rain_mm_, place);
        days.take(date, Sky::wind, winds_ > 0 ? wind_sum_ms_ / static_cast<double>(winds_) : missing, place);
    }

  private:
    double low_c_ = std::numeric_limits<double>::infinity();
    double high_c_ = -std::numeric_limits<double>::infinity();
    double wind_sum_ms_ = 0;
    double rain_mm_ = 0;
    std::size_t temperatures_ = 0;
    std::size_t winds_ = 0;
};

int whole_cell(const CsvRow& row, std::size_t index, int min, int max, const std::string& place) {
    const auto value = whole_number(row.cells[index]);
    if (value && *value >= min && *value <= max) return *value;
    throw InputError(place, "field " + std::to_string(index + 1) + ": found \"" + row.cells[index] + "\", expected " +
                                std::to_string(min) + " to " + std::to_string(max));
}

/// The table of hours, with lines counted from the file's first.
CsvTable hours_of(const std::string& text, const WeatherSource& source) {
    std::size_t start = 0;
    for (std::size_t line = 0; line < header_lines; ++line) {
        const std::size_t end = text.find('\n', start);
        if (end == std::string::npos)
            throw InputError(source.file, "the file ends within the 8 header lines of an EPW file");
        start = end + 1;
    }
    CsvTable table = parse_csv(text.substr(start), source.file, Header::none);
    for (CsvRow& row : table.rows) row.line += static_cast<int>(header_lines);
    constexpr std::size_t fewest_fields = 34;
    if (table.rows.front().cells.size() < fewest_fields) {
        throw InputError(table.place(table.rows.front()), "found " + std::to_string(table.rows.front().cells.size()) +
                                                              " fields, expected 35 of an EPW hour");
    }
    if (table.rows.size() % hours_in_day != 0) {
        throw InputError(table.place(table.rows.back()),
                         "found " + std::to_string(table.rows.size()) + " hours, expected whole days",
                         "is the file cut off?");
    }
    return table;
}

}  // namespace

WeatherReading read_epw(const std::string& text, const WeatherSource& source) {
    const CsvTable table = hours_of(text, source);
    DayGatherer days(source);
    // A typical year mixes the years of its months, so the days are dated in one nominal year, by their order.
    constexpr int common_year = 2001;
    constexpr int leap_year = 2000;
    constexpr std::size_t days_of_leap_year = 366;
    const bool leap = table.rows.size() / hours_in_day == days_of_leap_year;
    Date date = make_date(leap ? leap_year : common_year,
                          whole_cell(table.rows.front(), 1, 1, 12, table.place(table.rows.front())),
                          whole_cell(table.rows.front(), 2, 1, 31, table.place(table.rows.front())));
    for (std::size_t start = 0; start < table.rows.size(); start += hours_in_day, date += std::chrono::days{1}) {
        HoursOfDay hours;
        for (std::size_t hour = 0; hour < hours_in_day; ++hour) {
            const CsvRow& row = table.rows[start + hour];
            const std::string place = table.place(row);
            const bool expected = whole_cell(row, 1, 1, 12, place) == month_of(date) &&
                                  whole_cell(row, 2, 1, 31, place) == day_of_month(date) &&
                                  whole_cell(row, 3, 1, 24, place) == static_cast<int>(hour) + 1;
            if (!expected) {
                throw InputError(place,
                                 "found month " + row.cells[1] + " day " + row.cells[2] + " hour " + row.cells[3] +
                                     ", expected " + short_date(date) + " hour " + std::to_string(hour + 1),
                                 "are hours missing or out of order?");
            }
            hours.add(row, place);
        }
        hours.give(days, date, table.place(table.rows[start]));
    }
    return days.finish("EPW, dated in the nominal year " + std::to_string(leap ? leap_year : common_year));
}

}  // namespace maybough::scenario
