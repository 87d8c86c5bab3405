// Weather forms of the archives: golden lines, and one real series through every form to the same record.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <sstream>

#include "scenario/folder.hpp"
#include "scenario/text_file.hpp"

using namespace maybough;

namespace {

double sum_of(const WeatherRecord& record, double DayOfWeather::*what) {
    double sum = 0;
    for (const DayOfWeather& day : record.days) sum += day.*what;
    return sum;
}

// Two lines of NOAA's GHCN-Daily as shown with its readme: Barbuda, January 1949 (public domain, work of the US
// government).
const char* barbuda =
    "ACW00011604194901TMAX  289  X  289  X  283  X  283  X  289  X  289  X  278  X  267  X  272  X  278  X  267  X  "
    "278  X"
    "  267  X  267  X  278  X  267  X  267  X  272  X  272  X  272  X  278  X  272  X  267  X  267  X  267  X  278  X  "
    "272  X"
    "  272  X  272  X  272  X  272  X\n"
    "ACW00011604194901PRCP    0  X   30  X    0  X    0  X   25  X   41  X    0  X    0T X    0  X    0  X   56  X    "
    "0T X"
    "    8  X    0  X    0  X    0  X    0  X    0T X    3  X    0T X   51  X    0  X   53  X    0  X   10  X   15  X  "
    " 41  X"
    "    0T X   86  X   28  X   15  X\n";

}  // namespace

TEST_CASE("golden lines of GHCN-Daily give their known sums") {
    // Source: NOAA, GHCN-Daily readme, III. Format of data files; sums by hand from the lines above.
    const ScratchFolder folder;
    const WeatherReading reading = read_weather_file(folder.put("ACW00011604.dly", barbuda));
    REQUIRE(reading.record.days.size() == 31);
    CHECK(iso(reading.record.first) == "1949-01-01");
    CHECK(sum_of(reading.record, &DayOfWeather::tmax_c) == doctest::Approx(851.3).epsilon(1e-12));
    CHECK(sum_of(reading.record, &DayOfWeather::rain_mm) == doctest::Approx(46.2).epsilon(1e-12));
    CHECK(reading.traces == 5);
    CHECK(reading.flagged == 0);
    CHECK(std::isnan(reading.record.days[0].wind_ms));
}

TEST_CASE("a failed quality flag makes a value missing; blanks cut off a line's end do no harm; a cut value does") {
    const ScratchFolder folder;
    const std::string text = barbuda;
    const WeatherReading flagged = read_weather_file(folder.put("a.dly", changed(text, "  283  X", "  283 GX")));
    CHECK(flagged.flagged == 1);
    CHECK(std::isnan(flagged.record.days[2].tmax_c));
    const std::string first_line = text.substr(0, text.find('\n'));
    CHECK(read_weather_file(folder.put("b.dly", first_line.substr(0, 266) + "\n")).record.days.back().tmax_c == 27.2);
    CHECK(says(refusal([&] { read_weather_file(folder.put("c.dly", first_line.substr(0, 200))); }),
               "c.dly:1: the line is cut off"));
    CHECK(says(refusal([&] { read_weather_file(folder.put("d.dly", changed(text, "  283  X", "  2x3  X"))); }),
               "d.dly:1: day 3"));
    CHECK(says(refusal([&] { read_weather_file(folder.put("e.dly", text + first_line + "\n")); }),
               "e.dly:3: day 1: the day 1949-01-01 stands twice"));
    CHECK(says(refusal([&] { read_weather_file(folder.put("f.dly", changed(text, "194901", "194913"))); }), "f.dly:1"));
    const std::string two = text + changed(text, "ACW00011604", "XXT00000009");
    CHECK(says(refusal([&] { read_weather_file(folder.put("g.dly", two)); }), "holds 2 stations"));
    CHECK(read_weather_file(folder.put("g.dly", two), "ACW00011604").record.days.size() == 31);
    CHECK(says(refusal([&] { read_weather_file(folder.path("g.dly"), "ACW00011605"); }), "did you mean ACW00011604?"));
}

namespace {

/// Seattle 2012 to 2015, daily, as Debian's python3-vega-datasets ships it (NOAA, public domain).
struct Seattle {
    std::vector<Date> dates;
    std::vector<std::array<int, 4>> tenths;  ///< rain, tmax, tmin, wind
};

Seattle seattle() {
    const std::string path = "/usr/lib/python3/dist-packages/vega_datasets/_data/seattle-weather.csv";
    Seattle series;
    bool header = true;
    const std::string text = read_text(path);
    for (const std::string_view line : lines_of(text)) {
        if (header || line.empty()) {
            header = false;
            continue;
        }
        std::istringstream cells{std::string(line)};
        std::string cell;
        std::getline(cells, cell, ',');
        series.dates.push_back(year_first_date(cell, "series"));
        std::array<int, 4> row{};
        for (int& value : row) {
            std::getline(cells, cell, ',');
            value = static_cast<int>(std::lround(10 * std::stod(cell)));
        }
        series.tenths.push_back(row);
    }
    return series;
}

template <class... Values>
std::string printed(const char* format, Values... values) {
    std::array<char, 200> text{};
    std::snprintf(text.data(), text.size(), format, values...);
    return text.data();
}

constexpr std::array<const char*, 4> element_names{"PRCP", "TMAX", "TMIN", "AWND"};

std::string as_fixed_width(const Seattle& s) {
    std::string out;
    std::size_t month_start = 0;
    while (month_start < s.dates.size()) {
        std::size_t month_end = month_start;
        while (month_end < s.dates.size() && month_of(s.dates[month_end]) == month_of(s.dates[month_start]))
            ++month_end;
        for (std::size_t e = 0; e < element_names.size(); ++e) {
            out += printed("XXT00000001%04d%02d%s", year_of(s.dates[month_start]), month_of(s.dates[month_start]),
                           element_names.at(e));
            for (std::size_t day = 0; day < 31; ++day) {
                out += printed("%5d   ", month_start + day < month_end ? s.tenths[month_start + day].at(e) : -9999);
            }
            out += "\n";
        }
        month_start = month_end;
    }
    return out;
}

std::string as_long(const Seattle& s) {
    std::string out;
    for (std::size_t i = 0; i < s.dates.size(); ++i) {
        for (std::size_t e = 0; e < element_names.size(); ++e) {
            out += printed("XXT00000001,%04d%02d%02d,%s,%d,,,W,2400\n", year_of(s.dates[i]), month_of(s.dates[i]),
                           day_of_month(s.dates[i]), element_names.at(e), s.tenths[i].at(e));
        }
    }
    return out;
}

std::string as_wide(const Seattle& s) {
    std::string out = "\"STATION\",\"DATE\",\"LATITUDE\",\"LONGITUDE\",\"ELEVATION\",\"NAME\"";
    for (const char* name : element_names) out += printed(",\"%s\",\"%s_ATTRIBUTES\"", name, name);
    out += "\n";
    for (std::size_t i = 0; i < s.dates.size(); ++i) {
        out += printed("\"XXT00000001\",\"%s\",\"47.4\",\"-122.3\",\"112.8\",\"A TOWN, IN A STATE\"",
                       iso(s.dates[i]).c_str());
        for (const int value : s.tenths[i]) out += printed(",\"%5d\",\",,W\"", value);
        out += "\n";
    }
    return out;
}

std::string as_metric_table(const Seattle& s) {
    std::string out = "date;tmax_c;tmin_c;rain_mm;wind_ms\n";
    for (std::size_t i = 0; i < s.dates.size(); ++i) {
        const auto& t = s.tenths[i];
        std::string row = printed("%s;%.1f;%.1f;%.1f;%.1f\n", iso(s.dates[i]).c_str(), t[1] / 10.0, t[2] / 10.0,
                                  t[0] / 10.0, t[3] / 10.0);
        for (char& c : row) c = c == '.' ? ',' : c;
        out += row;
    }
    return out;
}

std::string as_us_table(const Seattle& s) {
    std::string out = "date,tmax_f,tmin_f,rain_in,wind_mph\n";
    for (std::size_t i = 0; i < s.dates.size(); ++i) {
        const auto& t = s.tenths[i];
        out += printed("%s,%.8f,%.8f,%.8f,%.8f\n", iso(s.dates[i]).c_str(), 32 + 1.8 * t[1] / 10, 32 + 1.8 * t[2] / 10,
                       t[0] / 254.0, t[3] / 4.4704);
    }
    return out;
}

double worst_difference(const WeatherRecord& a, const WeatherRecord& b) {
    REQUIRE(a.first == b.first);
    REQUIRE(a.days.size() == b.days.size());
    double worst = 0;
    for (std::size_t i = 0; i < a.days.size(); ++i) {
        worst = std::max(
            {worst, std::abs(a.days[i].tmax_c - b.days[i].tmax_c), std::abs(a.days[i].tmin_c - b.days[i].tmin_c),
             std::abs(a.days[i].rain_mm - b.days[i].rain_mm), std::abs(a.days[i].wind_ms - b.days[i].wind_ms)});
    }
    return worst;
}

std::string sha256(const std::string& path) {
    std::array<char, 65> digest{};
    FILE* pipe = popen(("sha256sum '" + path + "'").c_str(), "r");
    const std::size_t read = pipe == nullptr ? 0 : std::fread(digest.data(), 1, 64, pipe);
    if (pipe != nullptr) pclose(pipe);
    return {digest.data(), read};
}

}  // namespace

TEST_CASE("a real series read from five forms is the same record") {
    // Source of the series: NOAA GHCN-Daily, Seattle 2012 to 2015. The digest is of the .dly file made by an
    // independent script from the same series.
    const ScratchFolder folder;
    const Seattle series = seattle();
    REQUIRE(series.dates.size() == 1461);
    const std::string fixed_width = folder.put("s.dly", as_fixed_width(series));
    CHECK(sha256(fixed_width) == "0fba725e3e37bf03e342cf300a40779fe1024d55a618e00dd9cc1c103b295553");
    const WeatherRecord record = read_weather(fixed_width);
    REQUIRE(record.days.size() == 1461);
    CHECK(worst_difference(record, read_weather(folder.put("long.csv", as_long(series)))) == 0);
    CHECK(worst_difference(record, read_weather(folder.put(
                                       "long2.csv", "ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n" +
                                                        as_long(series)))) == 0);
    CHECK(worst_difference(record, read_weather(folder.put("wide.csv", as_wide(series)))) == 0);
    CHECK(worst_difference(record, read_weather(folder.put("metric.csv", as_metric_table(series)))) == 0);
    CHECK(worst_difference(record, read_weather(folder.put("us.csv", as_us_table(series)))) < 1e-6);
    const WeatherReading named = read_weather_file(
        "/usr/lib/python3/dist-packages/vega_datasets/_data/seattle-weather.csv", "",
        {{"tmax_c", "temp_max"}, {"tmin_c", "temp_min"}, {"rain_mm", "precipitation"}, {"wind_ms", "wind"}});
    CHECK(worst_difference(record, named.record) == 0);
}

TEST_CASE("the real series has its known yearly figures") {
    // Computed from the same published series with an independent program: mean maximum and minimum, rain, mean wind.
    const ScratchFolder folder;
    const WeatherRecord record = read_weather(folder.put("s.dly", as_fixed_width(seattle())));
    struct Year {
        int year;
        double tmax_c, tmin_c, rain_mm, wind_ms;
    };
    const Date first = record.first;
    for (const Year& y : {Year{2012, 15.277, 7.290, 1226.0, 3.401}, Year{2013, 16.059, 8.154, 828.0, 3.016},
                          Year{2014, 16.996, 8.662, 1232.8, 3.388}, Year{2015, 17.428, 8.836, 1139.2, 3.160}}) {
        WeatherRecord year;
        for (std::size_t i = 0; i < record.days.size(); ++i) {
            if (year_of(first + std::chrono::days{static_cast<int>(i)}) == y.year) year.days.push_back(record.days[i]);
        }
        const auto n = static_cast<double>(year.days.size());
        CHECK(std::abs(sum_of(year, &DayOfWeather::tmax_c) / n - y.tmax_c) < 0.0006);
        CHECK(std::abs(sum_of(year, &DayOfWeather::tmin_c) / n - y.tmin_c) < 0.0006);
        CHECK(std::abs(sum_of(year, &DayOfWeather::rain_mm) - y.rain_mm) < 0.05);
        CHECK(std::abs(sum_of(year, &DayOfWeather::wind_ms) / n - y.wind_ms) < 0.0006);
    }
}

TEST_CASE("a wide table in unknown units is refused, never guessed") {
    const ScratchFolder folder;
    const std::string head = "STATION,DATE,TMAX,TMAX_ATTRIBUTES,PRCP,PRCP_ATTRIBUTES\n";
    CHECK(says(refusal([&] { read_weather(folder.put("a.csv", head + "X,2020-01-01,51,\",,W\",0.12,\",,W\"\n")); }),
               "units are not told"));
    CHECK(says(refusal([&] { read_weather(folder.put("b.csv", head + "X,2020-01-01,51,\",,W\",0,\",,W\"\n")); }),
               "units are not told"));
    CHECK(says(refusal([&] { read_weather(folder.put("c.csv", "STATION,DATE,TMAX,PRCP\nX,2020-01-01,51,0\n")); }),
               "its unit is not told"));
    const WeatherReading traced = read_weather_file(
        folder.put("d.csv", head + "X,2020-07-01,281,\",,W\",0,\"T,,W\"\nX,2020-07-02,290,\",,W\",5,\",X,W\"\n"));
    CHECK(traced.traces == 1);
    CHECK(traced.flagged == 1);
    CHECK(traced.record.days[0].tmax_c == 28.1);
    CHECK(std::isnan(traced.record.days[1].rain_mm));
}
