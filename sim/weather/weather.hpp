// Weather: records and quality, the generator, and the sky a colony sees: hours fit for flight, degree-days, bloom.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "base/base.hpp"
#include "chance/chance.hpp"
#include "parameters/weather.hpp"

namespace maybough::weather {

/// One day as a station reports it. In a WeatherRecord a missing value is NaN; in a WeatherYear nothing is missing.
struct DayOfWeather {
    double tmax_c = 0;
    double tmin_c = 0;
    double rain_mm = 0;
    double wind_ms = 0;  ///< daily mean at 10 m
};

/// A station's daily series as read: consecutive days from `first`, NaN where missing.
struct WeatherRecord {
    std::string source;  ///< file and station, for print
    Date first;
    std::vector<DayOfWeather> days;
};

/// What was odd in a record, and what was done about it. Printed by `check`, counted in every result.
struct QualityReport {
    int days = 0;
    int missing_days = 0;  ///< days with any of tmax, tmin missing
    int gaps = 0;          ///< runs of missing days
    int longest_gap_days = 0;
    int filled_days = 0;   ///< filled by interpolation
    int swapped_days = 0;  ///< tmin above tmax
    int spike_days = 0;    ///< rejected as impossible jumps or extremes
    int stuck_runs = 0;    ///< five or more equal values in a row
    bool has_rain = false;
    bool has_wind = false;
    std::vector<std::string> warnings;
    int rain_missing_days = 0;  ///< with temperatures but no rain; 0 where the record has no rain at all
    int unfilled_days = 0;      ///< in gaps too long to fill
    int bridged_days = 0;       ///< of them, made by the generator
    std::string fill_method;    ///< in words, set by fill_gaps
};

/// Checks a record; values that fail are set missing. Deterministic.
QualityReport check_record(WeatherRecord& record, double latitude_deg, const WeatherParameters& parameters);

/// Fills gaps of up to `fill_days` days and counts what was filled and what was left in `report`: temperatures and wind
/// by a straight line between the neighbouring days, rain from the nearer of them. Longer gaps stay missing. Variables
/// that the record does not have at all stay missing.
void fill_gaps(WeatherRecord& record, QualityReport& report, const WeatherParameters& parameters);

/// Consecutive days without gaps.
struct WeatherYear {
    Date first;
    std::vector<DayOfWeather> days;
};

/// Twelve monthly means, January first.
struct MonthlyNormals {
    std::array<double, 12> tmax_c{};
    std::array<double, 12> tmin_c{};
    std::array<double, 12> rain_mm{};
    std::array<double, 12> wet_days{};  ///< days with at least 1 mm
    double wind_ms = 3;
};

/// A constant and two yearly harmonics.
struct Harmonic {
    double mean = 0;
    std::array<double, 2> cosine{};
    std::array<double, 2> sine{};
    double at(int day_of_year) const;
};

/// The fitted daily generator (Richardson 1981 class).
struct Climate {
    std::array<double, 12> wet_after_dry{};  ///< P(wet | dry) by month
    std::array<double, 12> wet_after_wet{};
    std::array<double, 12> amount_shape{};  ///< gamma law of wet-day amounts by month
    std::array<double, 12> amount_mean_mm{};
    std::array<Harmonic, 2> tmax_mean_c;  ///< [0] dry days, [1] wet days
    std::array<Harmonic, 2> tmax_sd_c;
    Harmonic tmin_mean_c;
    Harmonic tmin_sd_c;
    std::array<double, 4> a{};  ///< 2 x 2 lag-1 matrix of (tmax, tmin) residuals, row by row
    std::array<double, 4> b{};  ///< 2 x 2 innovation matrix, lower triangular
    Harmonic wind_mean_ms;
    double wind_shape = 4;  ///< gamma shape of daily mean wind about its mean
    double wind_lag1 = 0.3;
    double year_sd_c = 0;        ///< spread of a year's whole temperature offset
    double years_of_record = 0;  ///< 0 when from normals
    double wet_day_mm = 1;       ///< least rain of a wet day; amounts are this plus a gamma draw
    double least_range_c = 0.5;  ///< least range from minimum to maximum of a generated day
};

Climate fit_climate(const WeatherRecord& record, const WeatherParameters& parameters);
Climate climate_from_normals(const MonthlyNormals& normals, const WeatherParameters& parameters);

/// `days` generated days from `first`. The same chance gives the same year.
WeatherYear generate_year(const Climate& climate, Date first, int days, const Chance& chance);

/// A year that follows `so_far` (this year to date, no gaps, starting at `first`) and goes on from its last days.
WeatherYear continue_year(const WeatherYear& so_far, const Climate& climate, int days, const Chance& chance);

/// The record with every day that is still missing made by the generator, each gap going on from the days before it.
/// Counts the made days in `report`. The same chance gives the same days.
WeatherRecord bridge_gaps(const WeatherRecord& record, const Climate& climate, const Chance& chance,
                          QualityReport& report);

/// An analogue year: `days` days from `first`, taken whole from a year of `record` drawn at random. With `so_far` (this
/// year to date, starting at `first`) its days come first, and years that were most like it to date are likelier: of
/// the n complete years the nearest sqrt(n) are drawn with weights 1/rank (Lall and Sharma 1996), by the root mean
/// square distance of ten-day mean temperatures. Throws InputError where the record has no complete year. Wind or rain
/// that the record does not have at all are the default mean and none.
/// With `so_far`, the record's own copy of that year is left out.
WeatherYear pick_year(const WeatherRecord& record, Date first, int days, const WeatherParameters& parameters,
                      const Chance& chance, const WeatherYear* so_far = nullptr);

/// One kind of flowering; a habitat offers each in its own measure.
enum class Bloom { early_pollen, fruit, spring_trees, summer, late };
inline constexpr std::size_t bloom_kinds = 5;

/// One day of sky, with all that a bee notices of it. Hours are local solar time.
struct DayOfSky {
    DayOfWeather weather;
    double sunrise_h = 6;
    double sunset_h = 18;
    double radiation_mj_m2 = 0;
    double foraging_h = 0;                   ///< hours' worth of full foraging
    double degree_days_c = 0;                ///< this day, base 10 degrees C, single sine
    double degree_days_sum_c = 0;            ///< since the first day of the simulated year, this day included
    std::array<float, bloom_kinds> bloom{};  ///< flowering of each kind, 0..1
    std::array<float, 24> scouting{};        ///< share of each solar hour in which scouts can fly
    std::array<float, 24> departure{};       ///< how fit each solar hour is for a swarm to leave, 0..1
    double daylight_h() const { return sunset_h - sunrise_h; }
};

struct SkyYear {
    Date first;
    double latitude_deg = 0;
    std::vector<DayOfSky> days;
    const DayOfSky& operator[](Day day) const { return days[static_cast<std::size_t>(day.value)]; }
};

/// The sky of each day of `year` at `latitude_deg`.
SkyYear sky_of(const WeatherYear& year, double latitude_deg, const WeatherParameters& parameters);

/// Sunrise and sunset in hours of local solar time and the day's length; 0 and 24 h at high latitudes.
struct SunDay {
    double sunrise_h = 6;
    double sunset_h = 18;
    double declination_rad = 0;
    double sunset_angle_rad = 0;        ///< of the sun's centre on an airless horizon, FAO-56 eq. 25
    double extraterrestrial_mj_m2 = 0;  ///< daily radiation at the top of the atmosphere, FAO-56 eq. 21
};
/// Of a mean calendar year, to half a day of the sun's course.
SunDay sun_day(double latitude_deg, int day_of_year);
/// Of that very date at the Greenwich meridian; within 60 s of the day's true length up to 66 degrees of latitude.
SunDay sun_day(double latitude_deg, Date date);

/// Degree-days of one day above `base_c`, single sine (Baskerville and Emin 1969), with horizontal cutoff `upper_c`.
double degree_days_sine(double tmin_c, double tmax_c, double base_c, double upper_c = 1e9);
/// The same by the simple average of extremes, floored at zero.
double degree_days_average(double tmin_c, double tmax_c, double base_c);

}  // namespace maybough::weather

namespace maybough {
using namespace weather;  // so that rooms to the right need no prefix
}
