// Weather tables with units, and EPW.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <map>

#include "scenario/folder.hpp"
#include "scenario/text_file.hpp"

using namespace maybough;

namespace {
std::string refused(const std::string& text) {
    const ScratchFolder folder;
    const std::string file = folder.put("w.csv", text);
    return refusal([&] { read_weather(file); });
}
}  // namespace

TEST_CASE("gaps, traces and missing marks of a table") {
    const ScratchFolder folder;
    const WeatherReading reading = read_weather_file(folder.put(
        "w.csv",
        "\xEF\xBB\xBF"
        "date,tmax_c,tmin_c,rain_mm,events\r\n2016-1-1,5,1,T,fog\r\n2016/01/02,,NA,2,\r\n2016-01-05,7,3,,\r\n"));
    REQUIRE(reading.record.days.size() == 5);
    CHECK(reading.traces == 1);
    CHECK(reading.record.days[0].rain_mm == 0);
    CHECK(std::isnan(reading.record.days[1].tmax_c));
    CHECK(reading.record.days[1].rain_mm == 2);
    CHECK(std::isnan(reading.record.days[2].tmin_c));
    CHECK(reading.record.days[4].tmin_c == 3);
    CHECK(std::isnan(reading.record.days[4].wind_ms));
}

TEST_CASE("columns of no concern are passed over") {
    const ScratchFolder folder;
    const WeatherRecord record = read_weather(folder.put(
        "w.csv", "name,date,tmax_c,tmean_c,tmin_c,rain_mm,wind_ms,wind_gust_ms\nx,2020-01-01,5,3,1,0,2,9\n"));
    CHECK(record.days.front().wind_ms == 2);
}

TEST_CASE("one station of several is picked by name") {
    const ScratchFolder folder;
    const std::string file = folder.put(
        "w.csv",
        "station,date,tmax_c,tmin_c\nA,2020-01-01,5,1\nB,2020-01-01,9,2\nA,2020-01-02,6,1\nB,2020-01-02,8,2\n");
    CHECK(read_weather(file, "B").days[1].tmax_c == 8);
    CHECK(says(refusal([&] { read_weather(file); }), "holds 2 stations (A, B)"));
    CHECK(says(refusal([&] { read_weather(file, "C"); }), "\"C\" is not in the file"));
}

TEST_CASE("faults of a weather table name their line") {
    const std::string head = "date,tmax_c,tmin_c,rain_mm\n";
    CHECK(says(refused(head + "2020-01-02,5,1,0\n2020-01-01,5,1,0\n"), "w.csv:3: found 2020-01-01 after 2020-01-02"));
    CHECK(says(refused(head + "2020-01-02,5,1,0\n2020-01-02,5,1,0\n"), "w.csv:3: "));
    CHECK(says(refused(head + "2020-02-30,5,1,0\n"), "w.csv:2: found \"2020-02-30\""));
    CHECK(says(refused(head + "01/02/2020,5,1,0\n"), "w.csv:2: found \"01/02/2020\""));
    CHECK(says(refused(head + "2020-01-02,75,41,0\n"), "w.csv:2: tmax_c: found 75, which no weather station has seen"));
    CHECK(says(refused(head + "2020-01-02,5,1,-3\n"), "w.csv:2: rain_mm: found -3"));
    CHECK(says(refused(head + "2020-01-02,nan,1,0\n"), "w.csv:2: tmax_c: found \"nan\""));
    CHECK(says(refused(head + "2020-01-02,5\n"), "w.csv:2: found 2 cells, expected 4"));
    CHECK(says(refused("date,tmax,tmin_c\n2020-01-02,5,1\n"), "\"tmax\" has no unit; name it tmax_c or tmax_f"));
    CHECK(says(refused("date,tmax_c\n2020-01-02,5\n"), "tmin_c (or tmin_f) is missing"));
    CHECK(says(refused("date,tmax_c,tmin_c,rain_mn\n2020-01-02,5,1,0\n"), "did you mean rain_in or rain_mm"));
    CHECK(says(refused("day,tmax_c,tmin_c\n2020-01-02,5,1\n"), "\"date\" is missing"));
    CHECK(says(refused("date|tmax_c|tmin_c\n2020-01-02|5|1\n"), "one column only"));
    CHECK(says(refused(""), "empty"));
    CHECK(says(refused(head), "without any row"));
    CHECK(says(refused(head + "2020-01-01,,,\n"), "no temperature"));
    CHECK(says(refused(head + "2020-01-01,5,1,0\n2920-01-01,5,1,0\n"), "mistyped"));
}

namespace {
/// An EPW file of 2010 with these hourly temperatures, month by month of different years as typical years are.
std::string epw_of(const std::map<int, double>& temperature_by_hour, int hours) {
    std::string out =
        "LOCATION,A Town,-,USA,made from normals,999999,47.6,-122.3,-8.0,5\nDESIGN CONDITIONS,0\nTYPICAL/EXTREME "
        "PERIODS,0\n"
        "GROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1,\nCOMMENTS 2,\nDATA "
        "PERIODS,1,1,Data,Friday,1/1,12/31\n";
    const Date first = make_date(2010, 1, 1);
    for (int hour = 0; hour < hours; ++hour) {
        const Date date = first + std::chrono::days{hour / 24};
        const auto found = temperature_by_hour.find(hour);
        std::array<char, 400> row{};
        std::snprintf(row.data(), row.size(),
                      "%d,%d,%d,%d,60,?9?9,%.1f,99.9,999,999999,9999,9999,9999,9999,9999,9999,999999,999999,999999,"
                      "9999,999,%s,99,99,9999,"
                      "99999,9,999999999,999,.999,999,99,999,%s,99\n",
                      1990 + month_of(date), month_of(date), day_of_month(date), hour % 24 + 1,
                      found == temperature_by_hour.end() ? 99.9 : found->second, hour % 24 < 12 ? "2.0" : "4.0",
                      hour % 24 == 3 ? "1.5" : "0.0");
        out += row.data();
    }
    return out;
}
}  // namespace

TEST_CASE("hours of an EPW file become days; a real year of hourly normals gives its known degree-days") {
    // Hourly normals of Seattle (NOAA, public domain) as Debian's python3-vega-datasets ships them, in degrees F; one
    // hour is missing there. Expected values by an independent program from the same file: 1045.80 degree-days above 10
    // C by the average of extremes, 15 July 13.7 to 23.4 C.
    const std::string text = read_text("/usr/lib/python3/dist-packages/vega_datasets/_data/seattle-temps.csv");
    std::map<int, double> temperatures;
    for (const std::string_view line : lines_of(text)) {
        if (line.size() < 18 || line.substr(0, 4) != "2010") continue;
        const Date date = year_first_date(line.substr(0, 10), "series");
        const int hour = whole_number(line.substr(11, 2)).value_or(0);
        const double fahrenheit = decimal_number(line.substr(17)).value_or(0);
        temperatures[24 * (day_of_year(date) - 1) + hour] = std::round((fahrenheit - 32) * 50 / 9) / 10;
    }
    REQUIRE(temperatures.size() == 8759);
    const ScratchFolder folder;
    const WeatherReading reading = read_weather_file(folder.put("typical.epw", epw_of(temperatures, 8760)));
    REQUIRE(reading.record.days.size() == 365);
    double degree_days = 0;
    for (const DayOfWeather& day : reading.record.days) degree_days += degree_days_average(day.tmin_c, day.tmax_c, 10);
    CHECK(degree_days == doctest::Approx(1045.80).epsilon(1e-6));
    const DayOfWeather& mid_july = reading.record.days[195];
    CHECK(mid_july.tmin_c == doctest::Approx(13.7));
    CHECK(mid_july.tmax_c == doctest::Approx(23.4));
    CHECK(mid_july.wind_ms == doctest::Approx(3));
    CHECK(mid_july.rain_mm == doctest::Approx(1.5));
    CHECK(month_of(reading.record.first) == 1);
}

TEST_CASE("an EPW file that is cut off or out of order is refused with its line") {
    std::map<int, double> warm;
    for (int hour = 0; hour < 48; ++hour) warm[hour] = 15;
    const ScratchFolder folder;
    const auto refused_epw = [&](const std::string& text) {
        return refusal([&] { read_weather(folder.put("a.epw", text)); });
    };
    CHECK(refused_epw(epw_of(warm, 48)).empty());
    CHECK(says(refused_epw(epw_of(warm, 47)), "a.epw:55: found 47 hours"));
    CHECK(says(refused_epw(changed(epw_of(warm, 48), "1991,1,1,5,", "1991,1,1,6,")),
               "a.epw:13: found month 1 day 1 hour 6"));
    CHECK(says(refused_epw(changed(epw_of(warm, 48), "1991,1,2,1,60,?9?9,15.0", "1991,1,2,1,60,?9?9,warm")),
               "a.epw:33: field 7"));
    CHECK(says(refused_epw("LOCATION,A\nDESIGN\n"), "8 header lines"));
    std::map<int, double> cold = warm;
    for (int hour = 0; hour < 10; ++hour) cold.erase(hour);
    const WeatherRecord gappy = read_weather(folder.put("b.epw", epw_of(cold, 48)));
    CHECK(std::isnan(gappy.days[0].tmax_c));
    CHECK(gappy.days[1].tmax_c == 15);
}
