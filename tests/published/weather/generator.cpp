// The generator against the real series it was fitted to, closely; the wide table is in published/experiments.
#include <doctest/doctest.h>

#include <cmath>

#include "series.hpp"

using namespace maybough;

namespace {
/// What is compared: shares and chances of wet days, spells, temperatures, fit hours.
struct Summary {
    double days = 0;
    double wet = 0;
    double after_wet = 0;
    double wet_after_wet = 0;
    double wet_after_dry = 0;
    double rain_mm = 0;
    double tmax_c = 0;
    double tmin_c = 0;
    double wind_ms = 0;
    double fair_days = 0;  ///< April to July, at least 12 C, less than 1 mm, wind below 7 m/s
    double spring_days = 0;
    double foraging_h = 0;  ///< April to July
    double degree_days = 0;
};

void add(Summary& sum, const WeatherYear& year, double latitude_deg) {
    const SkyYear sky = sky_of(year, latitude_deg, WeatherParameters{});
    for (std::size_t i = 0; i < year.days.size(); ++i) {
        const DayOfWeather& day = year.days[i];
        const int month = month_of(year.first + std::chrono::days{static_cast<int>(i)});
        const bool wet = day.rain_mm >= 1;
        sum.days += 1;
        sum.wet += wet ? 1 : 0;
        if (i > 0) {
            const bool before = year.days[i - 1].rain_mm >= 1;
            sum.after_wet += before ? 1 : 0;
            (before ? sum.wet_after_wet : sum.wet_after_dry) += wet ? 1 : 0;
        }
        sum.rain_mm += day.rain_mm;
        sum.tmax_c += day.tmax_c;
        sum.tmin_c += day.tmin_c;
        sum.wind_ms += day.wind_ms;
        sum.degree_days += sky.days[i].degree_days_c;
        if (month >= 4 && month <= 7) {
            sum.spring_days += 1;
            sum.fair_days += day.tmax_c >= 12 && day.rain_mm < 1 && day.wind_ms < 7 ? 1 : 0;
            sum.foraging_h += sky.days[i].foraging_h;
        }
    }
}

double persistent_se(double sd, double lag1, double n) {
    return sd * std::sqrt((1 + lag1) / (1 - lag1) / n);
}
}  // namespace

// Source: NOAA daily series of Seattle, 2012 to 2015. Observed figures computed for this test by an independent script:
// P(wet) .3463, P(wet|wet) .6067, P(wet|dry) .2086, 377 fair days of 488 in April to July.
TEST_CASE("the figures of the real series are those of an independent script") {
    const WeatherRecord record = test::seattle_record();
    Summary seen;
    add(seen, {record.first, record.days}, 47.6);
    CHECK(std::abs(seen.wet / seen.days - 0.3463) < 0.0001);
    CHECK(std::abs(seen.wet_after_wet / seen.after_wet - 0.6067) < 0.0005);
    CHECK(std::abs(seen.wet_after_dry / (seen.days - 1 - seen.after_wet) - 0.2086) < 0.0005);
    CHECK(seen.fair_days == 377);
    CHECK(seen.spring_days == 488);
    CHECK(std::abs(seen.tmax_c / seen.days - 16.439) < 0.001);
}

// Tolerance throughout: 1.5 standard errors of the four observed years (what four such years tell of their climate),
// against 300 generated years whose own error is a tenth of that.
TEST_CASE("generated years have the real series' wet days, temperatures, fair days and foraging hours") {
    const WeatherRecord record = test::seattle_record();
    const Climate climate = fit_climate(record, WeatherParameters{});
    Summary seen;
    for (int year = 2012; year < 2016; ++year) add(seen, test::year_of_record(record, year), 47.6);
    Summary made;
    for (std::uint32_t k = 0; k < 300; ++k) {
        add(made, generate_year(climate, make_date(2025, 1, 1), 365, Chance{41, k}), 47.6);
    }
    const double n = seen.days;
    const double wet = seen.wet / n;
    const double after_wet = seen.wet_after_wet / seen.after_wet;
    const double after_dry = seen.wet_after_dry / (n - 4 - seen.after_wet);
    const auto close = [](double a, double b, double standard_error) { return std::abs(a - b) < 1.5 * standard_error; };
    CHECK(close(made.wet / made.days, wet, persistent_se(std::sqrt(wet * (1 - wet)), after_wet - after_dry, n)));
    CHECK(close(made.wet_after_wet / made.after_wet, after_wet, std::sqrt(after_wet * (1 - after_wet) / (n * wet))));
    CHECK(close(made.wet_after_dry / (made.days - 300 - made.after_wet), after_dry,
                std::sqrt(after_dry * (1 - after_dry) / (n * (1 - wet)))));
    // Spread of a wet day's rain about 8 mm; of temperatures 3.5 and 2.5 with lag 0.67; of wind 1.4 with lag 0.4.
    CHECK(close(made.rain_mm / made.days, seen.rain_mm / n, persistent_se(6.7, after_wet - after_dry, n)));
    CHECK(close(made.tmax_c / made.days, seen.tmax_c / n, persistent_se(3.5, 0.67, n)));
    CHECK(close(made.tmin_c / made.days, seen.tmin_c / n, persistent_se(2.5, 0.65, n)));
    CHECK(close(made.wind_ms / made.days, seen.wind_ms / n, persistent_se(1.4, 0.4, n)));
    const double fair = seen.fair_days / seen.spring_days;
    CHECK(close(made.fair_days / made.spring_days, fair,
                persistent_se(std::sqrt(fair * (1 - fair)), 0.4, seen.spring_days)));
    // Foraging hours a day in April to July: spread about 4 h, lag 0.5.
    CHECK(close(made.foraging_h / made.spring_days, seen.foraging_h / seen.spring_days,
                persistent_se(4, 0.5, seen.spring_days)));
    // Degree-days of a whole year: years differ by about 185 (the four observed).
    CHECK(close(made.degree_days / 300, seen.degree_days / 4, 185 / std::sqrt(4.0)));
}

TEST_CASE("a generator whose wet days do not persist is found out by the same comparison") {
    const WeatherRecord record = test::seattle_record();
    Climate climate = fit_climate(record, WeatherParameters{});
    for (std::size_t month = 0; month < 12; ++month) {
        const double wet =
            climate.wet_after_dry[month] / (1 + climate.wet_after_dry[month] - climate.wet_after_wet[month]);
        climate.wet_after_dry[month] = wet;
        climate.wet_after_wet[month] = wet;
    }
    Summary made;
    for (std::uint32_t k = 0; k < 100; ++k) {
        add(made, generate_year(climate, make_date(2025, 1, 1), 365, Chance{41, k}), 47.6);
    }
    // Same share of wet days, but far from .6067 after a wet one (standard error .022).
    CHECK(std::abs(made.wet / made.days - 0.3463) < 0.019 * 1.5);
    CHECK(std::abs(made.wet_after_wet / made.after_wet - 0.6067) > 5 * 0.022);
}
