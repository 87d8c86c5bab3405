// The generator against published constants, and against parameters it was given.
#include <boost/math/special_functions/trigamma.hpp>
#include <cmath>
#include <cstdio>

#include "experiments/weather.hpp"

namespace maybough::experiments {

namespace {
/// A mild inland climate in round numbers of our own.
MonthlyNormals inland_normals() {
    return {{3, 5, 10, 15, 19, 22, 25, 24, 20, 14, 8, 4},
            {-2, -2, 1, 4, 8, 12, 14, 13, 10, 6, 2, -1},
            {50, 45, 50, 55, 75, 80, 75, 70, 60, 60, 60, 55},
            {10, 9, 10, 10, 12, 11, 10, 10, 9, 10, 11, 11},
            3};
}

std::string shown(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.3f", value);
    return text;
}

/// A published figure, and what it is once radiation is regressed out.
std::string regressed(const std::string& published, double without_radiation) {
    return published + " (" + shown(without_radiation) + " without radiation)";
}
}  // namespace

// Radiation is a third variable in the source; without it, its regression on the two temperatures takes its place: its
// same-day correlations are .186 with the maximum and -.193 with the minimum.
std::vector<Finding> memory_of_days(const Parameters& parameters, std::uint32_t) {
    const Climate climate = climate_from_normals(inland_normals(), parameters.weather);
    constexpr double determinant = 1 - 0.633 * 0.633;
    constexpr double on_max = (0.186 + 0.633 * 0.193) / determinant;
    constexpr double on_min = (-0.193 - 0.633 * 0.186) / determinant;
    constexpr double left_of_radiation = 1 - 0.186 * on_max + 0.193 * on_min;
    constexpr double tolerance = 0.003;
    const Origin origin{
        "Richardson and Wright 1984, WGEN: a model for generating daily weather variables, means of 31 US stations",
        "three rounded digits through one matrix inverse", Footing::calibrated};
    const double last = std::sqrt(0.637 * 0.637 + 0.050 * 0.050 * left_of_radiation);
    return {
        within_range("A: maximum on the day before's maximum", "", regressed("0.567", 0.567 - 0.002 * on_max),
                     0.567 - 0.002 * on_max, tolerance, climate.a[0], origin),
        within_range("A: maximum on the day before's minimum", "", regressed("0.086", 0.086 - 0.002 * on_min),
                     0.086 - 0.002 * on_min, tolerance, climate.a[1], origin),
        within_range("A: minimum on the day before's maximum", "", regressed("0.253", 0.253 - 0.050 * on_max),
                     0.253 - 0.050 * on_max, tolerance, climate.a[2], origin),
        within_range("A: minimum on the day before's minimum", "", regressed("0.504", 0.504 - 0.050 * on_min),
                     0.504 - 0.050 * on_min, tolerance, climate.a[3], origin),
        within_range("B: maximum's own noise", "", "0.781", 0.781, tolerance, climate.b[0], origin),
        within_range("B: minimum's share of it", "", "0.328", 0.328, tolerance, climate.b[2], origin),
        within_range("B: minimum's own noise", "", regressed("0.637", last), last, tolerance, climate.b[3], origin),
    };
}

std::vector<Finding> given_back(const Parameters& parameters, std::uint32_t seed) {
    constexpr int years = 200;
    // 11 figures, together wrong by chance in 1 of 1000 runs.
    constexpr double z = 3.9;
    Climate truth = climate_from_normals(inland_normals(), parameters.weather);
    truth.tmin_mean_c.mean -= 6;  // far below the maximum, so that no day is cut at the least range
    WeatherRecord record{"generated", make_date(1901, 1, 1), {}};
    for (int year = 0; year < years; ++year) {
        const Date first = make_date(1901 + year, 1, 1);
        const WeatherYear made =
            generate_year(truth, first, days_in_year_from(first), {seed, static_cast<std::uint32_t>(year)});
        record.days.insert(record.days.end(), made.days.begin(), made.days.end());
    }
    const Climate fitted = fit_climate(record, parameters.weather);
    const Origin origin{"parameters of our own, put in and asked back",
                        "3.9 asymptotic standard errors of 200 years; all together miss once in 1000"};
    std::vector<Finding> findings;
    const auto add = [&](const std::string& what, const std::string& unit, double given, double got, double error) {
        Finding finding = within_range(what, unit, shown(given), given, z * error, got, origin);
        finding.simulated_se = error;
        findings.push_back(finding);
    };
    for (const std::size_t month : {std::size_t{0}, std::size_t{6}}) {
        const std::string name = month == 0 ? "January" : "July";
        const double days = 31.0 * years;
        const double dry = truth.wet_after_dry[month];
        const double wet = truth.wet_after_wet[month];
        const double wet_days = days * dry / (1 + dry - wet);
        add(name + ", chance of a wet day after a dry one", "", dry, fitted.wet_after_dry[month],
            std::sqrt(dry * (1 - dry) / (days - wet_days)));
        add(name + ", chance of a wet day after a wet one", "", wet, fitted.wet_after_wet[month],
            std::sqrt(wet * (1 - wet) / wet_days));
        const double shape = truth.amount_shape[month];
        const double excess = truth.amount_mean_mm[month] - truth.wet_day_mm;
        add(name + ", rain of a wet day", "mm", truth.amount_mean_mm[month], fitted.amount_mean_mm[month],
            excess / std::sqrt(shape * wet_days));
        // Maximum likelihood; Thom's closed form, used here, lies within 1.5 % of it.
        const double information = shape * boost::math::trigamma(shape) - 1;
        add(name + ", gamma shape of rain", "", shape, fitted.amount_shape[month],
            std::sqrt(shape / (wet_days * information)) + 0.015 * shape / z);
    }
    add("spread of whole years", "C", truth.year_sd_c, fitted.year_sd_c, truth.year_sd_c / std::sqrt(2.0 * years));
    const double n = 365.25 * years;
    // A lag-1 coefficient's error is at most 1 / sqrt(n) times the spread of the other's part left: 1.5 here.
    add("A: maximum on the day before's maximum", "", truth.a[0], fitted.a[0], 1.5 / std::sqrt(n));
    add("A: minimum on the day before's minimum", "", truth.a[3], fitted.a[3], 1.5 / std::sqrt(n));
    add("day-to-day correlation of wind", "", truth.wind_lag1, fitted.wind_lag1, 1 / std::sqrt(n));
    return findings;
}

}  // namespace maybough::experiments
