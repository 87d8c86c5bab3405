// GHCN-Daily in its three published layouts: fixed width, one value a row, and wide with attributes.
// Layouts: NOAA, GHCN-Daily readme (III. format of data files) and by-station and access documentation.
#include <array>
#include <cctype>
#include <limits>

#include "base/base.hpp"
#include "scenario/csv.hpp"
#include "scenario/weather_file.hpp"

namespace maybough::scenario {

namespace {
constexpr double missing = std::numeric_limits<double>::quiet_NaN();
constexpr int missing_mark = -9999;
constexpr std::size_t days_in_line = 31;

struct Element {
    std::string_view name;
    Sky what;
};
constexpr std::array<Element, 4> elements{Element{"TMAX", Sky::tmax}, Element{"TMIN", Sky::tmin},
                                          Element{"PRCP", Sky::rain}, Element{"AWND", Sky::wind}};

const Element* element_of(std::string_view name) {
    for (const Element& element : elements) {
        if (element.name == name) return &element;
    }
    return nullptr;
}
}  // namespace

void take_ghcn(DayGatherer& days, Date date, const GhcnValue& value, const std::string& place) {
    const Element* element = element_of(value.element);
    if (element == nullptr || value.tenths == missing_mark) return;
    const bool failed = value.quality != ' ';
    if (failed) ++days.flagged;
    if (!failed && value.measured == 'T' && element->what == Sky::rain) ++days.traces;
    constexpr double units_in_tenth = 10;
    days.take(date, element->what, failed ? missing : value.tenths / units_in_tenth, place);
}

namespace {
constexpr std::size_t head_width = 21;
constexpr std::size_t group_width = 8;
constexpr std::size_t value_width = 5;

struct MonthLine {
    std::string_view text;
    std::string place;
    int year = 0;
    int month = 0;
};

MonthLine month_line(std::string_view line, const std::string& place) {
    constexpr std::size_t shortest_line = head_width + group_width * (days_in_line - 1) + value_width;
    if (line.size() < shortest_line) {
        throw InputError(place, "the line is cut off: found " + std::to_string(line.size()) +
                                    " characters, expected 269 of a GHCN-Daily line");
    }
    const auto year = whole_number(line.substr(11, 4));
    const auto month = whole_number(line.substr(15, 2));
    if (!year || !month || *year < 1600 || *month < 1 || *month > 12) {
        throw InputError(place,
                         "found \"" + std::string(line.substr(11, 6)) + "\" in columns 12 to 17, expected YYYYMM");
    }
    return {line, place, *year, *month};
}

void take_month(DayGatherer& days, const MonthLine& line) {
    for (std::size_t day = 0; day < days_in_line; ++day) {
        const std::size_t from = head_width + group_width * day;
        const auto value = whole_number(line.text.substr(from, value_width));
        const std::string place = line.place + ": day " + std::to_string(day + 1);
        if (!value) {
            throw InputError(
                place, "found \"" + std::string(line.text.substr(from, value_width)) + "\", expected a whole number");
        }
        const std::chrono::year_month_day civil{std::chrono::year{line.year},
                                                std::chrono::month{static_cast<unsigned>(line.month)},
                                                std::chrono::day{static_cast<unsigned>(day + 1)}};
        if (!civil.ok()) {
            if (*value != missing_mark) throw InputError(place, "there is no such day, expected -9999");
            continue;
        }
        const auto flag = [&](std::size_t at) { return at < line.text.size() ? line.text[at] : ' '; };
        take_ghcn(days, Date{civil},
                  {line.text.substr(17, 4), *value, flag(from + value_width), flag(from + value_width + 1)}, place);
    }
}
}  // namespace

WeatherReading read_ghcn_fixed(const std::string& text, const WeatherSource& source) {
    DayGatherer days(source);
    int number = 0;
    for (const std::string_view line : lines_of(text)) {
        ++number;
        if (trimmed(line).empty()) continue;
        const MonthLine month = month_line(line, source.file + ":" + std::to_string(number));
        if (element_of(line.substr(17, 4)) == nullptr) continue;
        if (days.wants(std::string(trimmed(line.substr(0, 11))))) take_month(days, month);
    }
    return days.finish("GHCN-Daily, fixed width");
}

namespace {
/// YYYYMMDD, or a date with the year first.
Date compact_date(std::string_view text, const std::string& place) {
    if (text.size() != 8) return year_first_date(text, place);
    const std::string spread =
        std::string(text.substr(0, 4)) + "-" + std::string(text.substr(4, 2)) + "-" + std::string(text.substr(6, 2));
    return year_first_date(spread, place);
}

int tenths_in(std::string_view text, const std::string& place) {
    const auto value = whole_number(text);
    if (value) return *value;
    throw InputError(place, "found \"" + std::string(text) + "\", expected a whole number of tenths");
}

char flag_in(const std::string& cell) {
    return cell.empty() ? ' ' : cell.front();
}
}  // namespace

WeatherReading read_ghcn_long(const std::string& text, const WeatherSource& source) {
    const std::string_view first = lines_of(text).front();
    const bool headed = first.find("ELEMENT") != std::string_view::npos;
    const CsvTable table = parse_csv(text, source.file, headed ? Header::first_line : Header::none);
    DayGatherer days(source);
    for (const CsvRow& row : table.rows) {
        const std::string place = table.place(row);
        constexpr std::size_t fewest_cells = 4;
        if (row.cells.size() < fewest_cells)
            throw InputError(place, "the row is cut off, expected station,date,element,value");
        const std::string& element = row.cells[2];
        if (element_of(element) == nullptr || !days.wants(row.cells[0])) continue;
        const auto cell = [&](std::size_t i) { return i < row.cells.size() ? row.cells[i] : std::string(); };
        take_ghcn(days, compact_date(row.cells[1], place),
                  {element, tenths_in(row.cells[3], place), flag_in(cell(4)), flag_in(cell(5))}, place);
    }
    return days.finish("GHCN-Daily, one value a row");
}

namespace {
/// Positions of the columns of the wide layout.
struct WideColumns {
    std::size_t station = 0;
    std::size_t date = 0;
    struct Pair {
        std::string element;
        std::size_t value = 0;
        std::size_t attributes = 0;
    };
    std::vector<Pair> pairs;
};

WideColumns wide_columns(const CsvTable& table) {
    const auto find = [&](const std::string& name) {
        for (std::size_t i = 0; i < table.header.size(); ++i) {
            if (table.header[i] == name) return i;
        }
        return std::string::npos;
    };
    WideColumns columns{find("STATION"), find("DATE"), {}};
    for (const Element& element : elements) {
        const std::string name(element.name);
        if (find(name) == std::string::npos) continue;
        if (find(name + "_ATTRIBUTES") == std::string::npos) {
            throw InputError(
                table.file + ":1",
                "the column " + name + " has no " + name + "_ATTRIBUTES beside it, so its unit is not told",
                "rename the columns with units (tmax_c, tmax_f, rain_mm ...) or map them in weather.columns");
        }
        columns.pairs.push_back({name, find(name), find(name + "_ATTRIBUTES")});
    }
    if (columns.date == std::string::npos || columns.station == std::string::npos || columns.pairs.empty()) {
        throw InputError(table.file + ":1", "expected the columns STATION, DATE and TMAX with TMAX_ATTRIBUTES");
    }
    return columns;
}

/// Values are raw tenths only where no value has a decimal point and the cells are padded as the archive writes them,
/// or a temperature exceeds any in degrees.
bool surely_tenths(const std::string& text, const CsvTable& table, const WideColumns& columns) {
    constexpr int hotter_than_any_degree = 140;
    bool large = false;
    for (const CsvRow& row : table.rows) {
        for (const auto& pair : columns.pairs) {
            const std::string& cell = row.cells[pair.value];
            if (cell.find('.') != std::string::npos) return false;
            if (pair.element.front() == 'T' && whole_number(cell).value_or(0) > hotter_than_any_degree) large = true;
        }
    }
    return large || text.find("\"  ") != std::string::npos;
}
}  // namespace

WeatherReading read_ghcn_wide(const std::string& text, const WeatherSource& source) {
    const CsvTable table = parse_csv(text, source.file);
    const WideColumns columns = wide_columns(table);
    if (!surely_tenths(text, table, columns)) {
        throw InputError(source.file, "these values are not the archive's tenths, so their units are not told",
                         "rename the columns with units (tmax_c, tmax_f, rain_mm ...) or map them in weather.columns");
    }
    DayGatherer days(source);
    for (const CsvRow& row : table.rows) {
        const std::string place = table.place(row);
        if (!days.wants(row.cells[columns.station])) continue;
        const Date date = year_first_date(row.cells[columns.date], place);
        for (const auto& pair : columns.pairs) {
            if (row.cells[pair.value].empty()) continue;
            const std::string& attributes = row.cells[pair.attributes];
            const std::size_t comma = attributes.find(',');
            const std::string quality = comma == std::string::npos ? "" : attributes.substr(comma + 1, 1);
            const char measured = comma == 0 ? ' ' : flag_in(attributes);
            take_ghcn(days, date,
                      {pair.element, tenths_in(row.cells[pair.value], place), measured,
                       quality == "," ? ' ' : flag_in(quality)},
                      place);
        }
    }
    return days.finish("GHCN-Daily, one day a row");
}

}  // namespace maybough::scenario
