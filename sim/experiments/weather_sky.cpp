// Sun, light, flight and degree-days against worked examples.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <limits>
#include <numbers>

#include "experiments/weather.hpp"

namespace maybough::experiments {

namespace {
const std::string fao_56 =
    "Allen, Pereira, Raes and Smith 1998, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56";
constexpr double endless = std::numeric_limits<double>::infinity();

std::string decimals(double value, int places) {
    char text[32];
    std::snprintf(text, sizeof text, "%.*f", places, value);
    return text;
}

/// The middle one of three like days.
DayOfSky day_like(const DayOfWeather& day, Date date, double latitude_deg, const WeatherParameters& parameters) {
    return sky_of({date - std::chrono::days{1}, {day, day, day}}, latitude_deg, parameters).days[1];
}

/// Day lengths of one latitude on four dates of 2024.
struct DayLengths {
    double latitude_deg;
    std::array<double, 4> hours;
};

double furthest_day_length_s(const DayLengths& row) {
    const std::array<Date, 4> dates{make_date(2024, 3, 20), make_date(2024, 6, 20), make_date(2024, 9, 22),
                                    make_date(2024, 12, 21)};
    constexpr double seconds_an_hour = 3600;
    double furthest = 0;
    for (std::size_t i = 0; i < dates.size(); ++i) {
        const SunDay sun = sun_day(row.latitude_deg, dates[i]);
        furthest = std::max(furthest, std::abs(sun.sunset_h - sun.sunrise_h - row.hours[i]) * seconds_an_hour);
    }
    return furthest;
}

constexpr double hms(int hours, int minutes, int seconds) {
    return hours + minutes / 60.0 + seconds / 3600.0;
}

void add_day_lengths(std::vector<Finding>& findings) {
    const Origin ephemeris{"PyEphem 4.1.4 (horizon -0:34, pressure 0, upper limb, sea level, longitude 0)",
                           "one minute, the accuracy the model claims"};
    constexpr std::array<DayLengths, 8> table{{
        {-45, {hms(12, 8, 4), hms(8, 45, 48), hms(12, 9, 6), hms(15, 37, 21)}},
        {-33.9, {hms(12, 7, 4), hms(9, 53, 39), hms(12, 7, 45), hms(14, 25, 0)}},
        {0, {hms(12, 6, 30), hms(12, 7, 19), hms(12, 6, 28), hms(12, 7, 32)}},
        {20, {hms(12, 7, 22), hms(13, 20, 32), hms(12, 6, 56), hms(10, 55, 26)}},
        {35, {hms(12, 8, 48), hms(14, 30, 46), hms(12, 8, 0), hms(9, 48, 8)}},
        {47.6, {hms(12, 11, 1), hms(15, 59, 8), hms(12, 9, 47), hms(8, 25, 36)}},
        {60, {hms(12, 15, 13), hms(18, 51, 57), hms(12, 13, 18), hms(5, 52, 16)}},
        {66, {hms(12, 18, 53), hms(24, 0, 0), hms(12, 16, 24), hms(2, 46, 39)}},
    }};
    constexpr double minute_s = 60;
    for (const DayLengths& row : table) {
        findings.push_back(within_range(
            "furthest from the ephemeris in day length on four days of 2024, latitude " + decimals(row.latitude_deg, 1),
            "s", "0", 0, minute_s, furthest_day_length_s(row), ephemeris));
    }
}
}  // namespace

std::vector<Finding> sun_and_light(const Parameters&, std::uint32_t) {
    const Origin rounding{fao_56, "the printed figure's rounding"};
    const Origin memory{fao_56 + " (from memory of annex 2, table 2.6)",
                        "the printed figure's rounding, and the middle of a month"};
    const SunDay september = sun_day(-20, 246);
    std::vector<Finding> findings{
        within_range("radiation at the top of the air, 20 S on 3 September (example 8)", "MJ/m2 d", "32.2", 32.2, 0.05,
                     september.extraterrestrial_mj_m2, rounding),
        within_range("sunset angle, 20 S on 3 September (example 9)", "rad", "1.527", 1.527, 0.0005,
                     september.sunset_angle_rad, rounding),
        within_range("daylight of an airless day, 20 S on 3 September (example 9)", "h", "11.7", 11.7, 0.05,
                     24 / std::numbers::pi * september.sunset_angle_rad, rounding),
        within_range("radiation at the top of the air, equator in March", "MJ/m2 d", "37.9", 37.9, 0.15,
                     sun_day(0, 74).extraterrestrial_mj_m2, memory),
        within_range("radiation at the top of the air, equator in June", "MJ/m2 d", "33.4", 33.4, 0.15,
                     sun_day(0, 166).extraterrestrial_mj_m2, memory),
    };
    WeatherParameters inland;
    inland.radiation_coefficient = 0.16;
    constexpr double lyon_deg = 45.0 + 43.0 / 60;
    findings.push_back(
        within_range("light from the range of temperature, Lyon in July, inland (example 15)", "MJ/m2 d", "22.3", 22.3,
                     0.1, day_like({26.6, 14.8, 0, 0}, make_date(1997, 7, 15), lyon_deg, inland).radiation_mj_m2,
                     {fao_56, "the printed figure's rounding, and that of the step before it"}));
    // Our days are taken at noon: the mean of the noons on either side stands for midnight to 0.0005 degrees.
    const double noons =
        sun_day(0, make_date(1992, 10, 12)).declination_rad + sun_day(0, make_date(1992, 10, 13)).declination_rad;
    findings.push_back(
        within_range("declination at 0 h on 13 October 1992 (example 25.a)", "deg", "-7.78507", -7.78507, 0.001,
                     noons / 2 * 180 / std::numbers::pi,
                     {"Meeus 1998, Astronomical Algorithms", "0.001 degrees: the mean of two noons for a midnight"}));
    add_day_lengths(findings);
    return findings;
}

std::vector<Finding> flight_weather(const Parameters& parameters, std::uint32_t) {
    const auto fair = [&](double tmax_c) {
        return day_like({tmax_c, tmax_c - 9, 0, 2}, make_date(2026, 5, 20), 45, parameters.weather);
    };
    const Origin burrill{
        "Burrill and Dietz 1981, The response of honey bees to variations in solar radiation and temperature",
        "as the source words it", Footing::calibrated};
    std::vector<Finding> findings;
    findings.push_back(within_range("foraging on a day that reaches 11.9 C", "h", "hardly any below 12 C", 0, 0,
                                    fair(11.9).foraging_h, burrill));
    Finding ratio = within_range("foraging on a day that reaches 20 C against one that reaches 13 C", "",
                                 "at least 4 (a straight rise from 12 to 20 C)", 4, 0,
                                 fair(20).foraging_h / fair(13).foraging_h, burrill);
    ratio.high = endless;
    findings.push_back(ratio);

    const DayOfSky warm = fair(26);
    double sum = 0;
    double mean_h = 0;
    double before_14 = 0;
    for (std::size_t hour = 0; hour < warm.departure.size(); ++hour) {
        const double fit = static_cast<double>(warm.departure[hour]);
        sum += fit;
        mean_h += fit * (static_cast<double>(hour) + 0.5);
        before_14 += hour < 14 ? fit : 0;
    }
    const Origin burgett{"Burgett and Morse 1974, The time of natural swarming in honey bees (from memory)",
                         "as the source words it", Footing::calibrated};
    findings.push_back(within_range("mean hour fit for leaving on a warm day", "solar h", "near noon, within 1.5 h", 12,
                                    1.5, mean_h / sum, burgett));
    Finding early = within_range("share of the fitness for leaving before 14 h", "", "most between 10 and 14 h", 0.5, 0,
                                 before_14 / sum, burgett);
    early.high = 1;
    findings.push_back(early);
    const DayOfSky cool = fair(14.5);
    findings.push_back(within_range(
        "best hour for leaving on a day that reaches 14.5 C", "", "none below 15 C (60 F)", 0, 0,
        static_cast<double>(*std::max_element(cool.departure.begin(), cool.departure.end())),
        {"common practice, no published source: extension texts", "as the texts word it", Footing::calibrated}));
    return findings;
}

std::vector<Finding> degree_days(const Parameters&, std::uint32_t) {
    struct Row {
        double tmin;
        double tmax;
        double base;
        double upper;
        double published;
        int places;
    };
    const auto add = [](std::vector<Finding>& findings, const auto& rows, const std::string& unit,
                        const Origin& origin) {
        for (const Row& row : rows) {
            const std::string upper = row.upper < 1000 ? ", upper " + decimals(row.upper, 0) : "";
            findings.push_back(within_range(
                decimals(row.tmin, 0) + " to " + decimals(row.tmax, 0) + " above " + decimals(row.base, 0) + upper,
                unit, decimals(row.published, row.places), row.published, 0.51 * std::pow(10, -row.places),
                degree_days_sine(row.tmin, row.tmax, row.base, row.upper), origin));
        }
    };
    std::vector<Finding> findings;
    constexpr double none = 1e9;
    add(findings,
        std::array<Row, 6>{{{38, 55, 55, none, 0, 7},
                            {36, 67, 55, none, 3.3101298, 7},
                            {33, 59, 55, none, 0.6766645, 7},
                            {37, 59, 55, none, 0.7378844, 7},
                            {38, 63, 55, none, 1.9896042, 7},
                            {36, 58, 55, none, 0.4768866, 7}}},
        "F d", {"documentation of the R package degday 0.4.0, single sine", "the printed figure's rounding"});
    // Its fourth example (35 to 40 C gives 5) is not a horizontal cutoff, which gives 21, and is left out.
    add(findings, std::array<Row, 3>{{{7, 14, 12, 33, 0.47, 2}, {13, 40, 12, 33, 12.94, 2}, {7, 40, 12, 33, 10.94, 2}}},
        "C d",
        {"documentation of the R package TrenchR, single sine with horizontal cutoff",
         "the printed figure's rounding"});
    add(findings,
        std::array<Row, 4>{{{5, 20, 10, none, 3.771224, 6},
                            {0, 30, 10, 30, 7.542449, 6},
                            {15, 36, 10, 30, 14.095824, 6},
                            {5, 35, 10, 30, 10, 6}}},
        "C d",
        {"Baskerville and Emin 1969, Rapid estimation of heat accumulation; its integral in two million steps",
         "the figure's rounding"});
    return findings;
}

}  // namespace maybough::experiments
