// Tells the form of a weather file by its content and reads it.
#include <algorithm>
#include <cctype>
#include <cmath>

#include "base/base.hpp"
#include "scenario/text_file.hpp"
#include "scenario/weather_file.hpp"

namespace maybough::scenario {

namespace {

bool digits(std::string_view text) {
    for (const char c : text) {
        if (std::isdigit(static_cast<unsigned char>(c)) == 0) return false;
    }
    return !text.empty();
}

/// Station of 11, year and month of 6, element of 4 characters, without a delimiter among them.
bool looks_fixed_width(std::string_view line) {
    return line.size() > 21 && line.substr(0, 21).find_first_of(",;\t\"") == std::string_view::npos &&
           digits(line.substr(11, 6));
}

/// ID,YYYYMMDD,ELEMENT,VALUE, with or without a header.
bool looks_long(std::string_view line) {
    if (line.rfind("ID,DATE,ELEMENT", 0) == 0 || line.rfind("STATION,DATE,ELEMENT", 0) == 0) return true;
    const std::size_t first = line.find(',');
    if (first == std::string_view::npos || line.size() < first + 14) return false;
    return digits(line.substr(first + 1, 8)) && line[first + 9] == ',' && line[first + 14] == ',';
}

bool looks_wide(std::string_view line) {
    return line.find("STATION") != std::string_view::npos && line.find("DATE") != std::string_view::npos &&
           (line.find("TMAX") != std::string_view::npos || line.find("PRCP") != std::string_view::npos);
}

}  // namespace

void check_whole_year(const WeatherRecord& record, const std::string& file) {
    const auto whole = std::count_if(record.days.begin(), record.days.end(), [](const DayOfWeather& day) {
        return std::isfinite(day.tmax_c) && std::isfinite(day.tmin_c);
    });
    constexpr std::ptrdiff_t fewest_days = 360;
    if (whole < fewest_days) {
        throw InputError(file,
                         "found " + std::to_string(whole) + " days with both temperatures, expected a year at least",
                         "is the file cut off? Give monthly_normals where there is no record");
    }
}

WeatherReading read_weather_file(const std::string& path, const std::string& station,
                                 const std::map<std::string, std::string>& columns) {
    const std::string text = read_text(path);
    const WeatherSource source{path, station, columns};
    std::string_view first;
    for (const std::string_view line : lines_of(text)) {
        first = trimmed(line);
        if (!first.empty()) break;
    }
    if (first.empty()) throw InputError(path, "the file is empty, expected daily weather");
    if (!columns.empty()) return read_weather_table(text, source);
    if (first.rfind("LOCATION,", 0) == 0) return read_epw(text, source);
    if (looks_fixed_width(first)) return read_ghcn_fixed(text, source);
    if (looks_long(first)) return read_ghcn_long(text, source);
    if (looks_wide(first)) return read_ghcn_wide(text, source);
    return read_weather_table(text, source);
}

WeatherRecord read_weather(const std::string& path, const std::string& station) {
    return read_weather_file(path, station, {}).record;
}

}  // namespace maybough::scenario
