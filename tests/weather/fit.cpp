// Fit: a record generated from known parameters gives them back; a wrong one does not pass; short or bare records.
#include <doctest/doctest.h>

#include <boost/math/special_functions/trigamma.hpp>
#include <cmath>
#include <limits>

#include "climates.hpp"
#include "weather/seasons.hpp"

using namespace maybough;

namespace {
const WeatherParameters defaults;
constexpr int years = 100;
/// About 90 checks a comparison, family-wise 1e-4: each beyond 4.9 standard errors.
constexpr double z = 4.9;

Climate true_climate() {
    Climate climate = test::cool_climate();
    for (std::size_t month = 0; month < 12; ++month) {
        climate.wet_after_dry[month] = 0.2 + 0.01 * static_cast<double>(month);
        climate.wet_after_wet[month] = 0.6 - 0.02 * static_cast<double>(month);
        climate.amount_shape[month] = 0.7 + 0.03 * static_cast<double>(month);
        climate.amount_mean_mm[month] = 5 + 0.4 * static_cast<double>(month);
    }
    climate.tmax_sd_c[0] = {4, {0.6, 0}, {0.3, 0}};
    climate.tmax_sd_c[1] = {3.5, {0.6, 0}, {0.3, 0}};
    climate.wind_mean_ms = {3.5, {0.5, 0}, {0.2, 0}};
    climate.tmin_mean_c.mean -= 6;  // far below the maximum, so that no day is cut at the least range
    climate.year_sd_c = 0.8;
    return climate;
}

int missed(double found, double truth, double standard_error) {
    return std::abs(found - truth) > z * standard_error ? 1 : 0;
}

int rain_misses(const Climate& fitted, const Climate& truth) {
    int count = 0;
    for (std::size_t month = 0; month < 12; ++month) {
        const double days = 30 * years;
        const double dry = truth.wet_after_dry[month];
        const double wet = truth.wet_after_wet[month];
        const double wet_days = days * dry / (1 + dry - wet);
        count += missed(fitted.wet_after_dry[month], dry, std::sqrt(dry * (1 - dry) / (days - wet_days)));
        count += missed(fitted.wet_after_wet[month], wet, std::sqrt(wet * (1 - wet) / wet_days));
        const double shape = truth.amount_shape[month];
        const double excess = truth.amount_mean_mm[month] - 1;
        count += missed(fitted.amount_mean_mm[month] - 1, excess, excess / std::sqrt(shape * wet_days));
        // Maximum likelihood: Var(shape) = shape / (n (shape trigamma(shape) - 1)); Thom's form is within 1.5 % of it.
        const double information = shape * boost::math::trigamma(shape) - 1;
        count +=
            missed(fitted.amount_shape[month], shape, std::sqrt(shape / (wet_days * information)) + 0.015 * shape / z);
    }
    return count;
}

int temperature_misses(const Climate& fitted, const Climate& truth) {
    int count = 0;
    const double days = 365.25 * years;
    // A mean of residuals with persistence: their sum's variance grows by about (1 + r) / (1 - r) with r = 0.65, and
    // the years' own offsets add theirs.
    const double grown = (1 + 0.65) / (1 - 0.65);
    for (int day = 10; day < 366; day += 50) {
        for (std::size_t wet = 0; wet < 2; ++wet) {
            const double share = wet == 1 ? 0.25 : 0.5;
            const double sd = truth.tmax_sd_c[wet].at(day);
            // Five coefficients: the fit at one day has five times the variance of a mean.
            const double of_mean = std::sqrt(5 * grown * sd * sd / (days * share) + 0.64 / years);
            count += missed(fitted.tmax_mean_c[wet].at(day), truth.tmax_mean_c[wet].at(day), of_mean);
            count += missed(fitted.tmax_sd_c[wet].at(day), sd, sd * std::sqrt(5 * grown / (2 * days * share)));
        }
        const double sd = truth.tmin_sd_c.at(day);
        count += missed(fitted.tmin_mean_c.at(day), truth.tmin_mean_c.at(day),
                        std::sqrt(5 * grown * sd * sd / days + 0.64 / years));
        count += missed(fitted.tmin_sd_c.at(day), sd, sd * std::sqrt(5 * grown / (2 * days)));
    }
    // Regression of residuals on the day before: Var(A_ij) = (B B')_ii (M0^-1)_jj / n.
    const Matrix m0 = stationary_covariance(truth.a, truth.b);
    const double inverse = m0[0] / (m0[0] * m0[3] - m0[1] * m0[2]);
    const std::array<double, 2> noise{truth.b[0] * truth.b[0], truth.b[2] * truth.b[2] + truth.b[3] * truth.b[3]};
    for (std::size_t i = 0; i < 4; ++i) {
        count += missed(fitted.a[i], truth.a[i], std::sqrt(noise[i / 2] * inverse / days));
    }
    count += missed(fitted.b[0], truth.b[0], truth.b[0] / std::sqrt(2 * days));
    count += missed(fitted.b[3], truth.b[3], truth.b[3] / std::sqrt(2 * days));
    // Spread of the spread of 100 years' offsets.
    count += missed(fitted.year_sd_c, truth.year_sd_c, truth.year_sd_c / std::sqrt(2.0 * years));
    return count;
}

int wind_misses(const Climate& fitted, const Climate& truth) {
    const double days = 365.25 * years;
    const double grown = (1 + truth.wind_lag1) / (1 - truth.wind_lag1);
    int count = 0;
    for (int day = 10; day < 366; day += 50) {
        const double mean = truth.wind_mean_ms.at(day);
        count += missed(fitted.wind_mean_ms.at(day), mean, mean * std::sqrt(5 * grown / (truth.wind_shape * days)));
    }
    // Shape: relative spread about sqrt(2/n); the cube-root normal form is within 1 % of the gamma law.
    count += missed(fitted.wind_shape, truth.wind_shape, truth.wind_shape * (std::sqrt(2 * grown / days) + 0.01 / z));
    count += missed(fitted.wind_lag1, truth.wind_lag1,
                    std::sqrt((1 - truth.wind_lag1 * truth.wind_lag1) / days) + 0.005 / z);
    return count;
}
}  // namespace

TEST_CASE("a record generated from known parameters gives them back") {
    const Climate truth = true_climate();
    const Climate fitted = fit_climate(test::made_record(truth, 1900, years, 17), defaults);
    CHECK(rain_misses(fitted, truth) == 0);
    CHECK(temperature_misses(fitted, truth) == 0);
    CHECK(wind_misses(fitted, truth) == 0);
    CHECK(fitted.years_of_record == doctest::Approx(100).epsilon(0.001));
}

TEST_CASE("the same comparison rejects a climate that is a little off") {
    const Climate truth = true_climate();
    Climate wrong = truth;
    for (double& chance : wrong.wet_after_wet) chance += 0.1;
    wrong.a[0] += 0.05;
    wrong.wind_shape *= 1.1;
    const Climate fitted = fit_climate(test::made_record(wrong, 1900, years, 17), defaults);
    CHECK(rain_misses(fitted, truth) > 0);
    CHECK(temperature_misses(fitted, truth) > 0);
    CHECK(wind_misses(fitted, truth) > 0);
}

TEST_CASE("gaps in a record cost precision, not truth") {
    const Climate truth = true_climate();
    WeatherRecord record = test::made_record(truth, 1900, years, 18);
    constexpr double missing = std::numeric_limits<double>::quiet_NaN();
    for (std::size_t i = 0; i + 40 < record.days.size(); i += 400) {
        for (std::size_t k = 0; k < 40; ++k) record.days[i + k] = {missing, missing, missing, missing};
    }
    const Climate fitted = fit_climate(record, defaults);
    CHECK(rain_misses(fitted, truth) == 0);
    CHECK(temperature_misses(fitted, truth) == 0);
    CHECK(wind_misses(fitted, truth) == 0);
}

TEST_CASE("bare and short records: no rain, no wind, too few days") {
    WeatherRecord record = test::made_record(test::cool_climate(), 2018, 4, 3);
    for (DayOfWeather& day : record.days) day.rain_mm = day.wind_ms = std::numeric_limits<double>::quiet_NaN();
    const Climate climate = fit_climate(record, defaults);
    CHECK(climate.wind_mean_ms.mean == defaults.wind_ms);
    CHECK(climate.year_sd_c == defaults.year_sd_c);
    for (const DayOfWeather& day : generate_year(climate, make_date(2026, 1, 1), 365, Chance{1, 0}).days) {
        REQUIRE(day.rain_mm == 0);
        REQUIRE(std::isfinite(day.tmax_c));
    }
    record.days.resize(200);
    CHECK_THROWS_AS(fit_climate(record, defaults), InputError);
}

TEST_CASE("normals alone give back their own monthly means") {
    const MonthlyNormals normals = test::cool_normals();
    const Climate climate = climate_from_normals(normals, defaults);
    const int count = 400;
    std::array<double, 12> days{};
    std::array<double, 12> tmax{};
    std::array<double, 12> tmin{};
    std::array<double, 12> rain{};
    std::array<double, 12> wet{};
    for (std::uint32_t k = 0; k < count; ++k) {
        const WeatherYear year = generate_year(climate, make_date(2025, 1, 1), 365, Chance{31, k});
        for (std::size_t i = 0; i < 365; ++i) {
            const auto month =
                static_cast<std::size_t>(month_of(year.first + std::chrono::days{static_cast<int>(i)}) - 1);
            days[month] += 1;
            tmax[month] += year.days[i].tmax_c;
            tmin[month] += year.days[i].tmin_c;
            rain[month] += year.days[i].rain_mm;
            wet[month] += year.days[i].rain_mm > 0 ? 1 : 0;
        }
    }
    for (std::size_t month = 0; month < 12; ++month) {
        CAPTURE(month);
        // Two harmonics bend past a month's mean by up to 1.0 degrees here; sampling adds less than 0.15.
        CHECK(std::abs(tmax[month] / days[month] - normals.tmax_c[month]) < 1.2);
        CHECK(std::abs(tmin[month] / days[month] - normals.tmin_c[month]) < 1.2);
        // Wet days: binomial with persistence over 400 months, z = 4.4; rain: gamma amounts besides.
        const double expected = normals.wet_days[month];
        CHECK(std::abs(wet[month] / count - expected) < 4.4 * std::sqrt(expected * 0.65 * 1.7 / count) + 0.15);
        CHECK(std::abs(rain[month] / count - normals.rain_mm[month]) < 0.06 * normals.rain_mm[month] + 2);
    }
}
