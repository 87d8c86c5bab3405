// The generator fitted to a record.
#include <algorithm>
#include <cmath>

#include "weather/fit_days.hpp"

namespace maybough::weather {

namespace {
std::vector<FitDay> days_of(const WeatherRecord& record, const WeatherParameters& p) {
    std::vector<FitDay> days;
    days.reserve(record.days.size());
    Date date = record.first;
    for (const DayOfWeather& weather : record.days) {
        FitDay day;
        day.weather = weather;
        day.month = static_cast<std::size_t>(month_of(date) - 1);
        day.phase = &phases()[static_cast<std::size_t>(day_of_year(date))];
        day.year = year_of(date);
        day.knows_rain = !std::isnan(weather.rain_mm);
        day.wet = day.knows_rain && weather.rain_mm >= p.wet_day_mm;
        days.push_back(day);
        date += std::chrono::days{1};
    }
    return days;
}

void fit_wind(const std::vector<FitDay>& days, const WeatherParameters& p, Climate& climate) {
    constexpr int enough_days = 60;
    climate.wind_mean_ms.mean = p.wind_ms;
    climate.wind_shape = p.wind_shape;
    climate.wind_lag1 = p.wind_lag1;
    HarmonicFit mean;
    for (const FitDay& day : days) {
        if (!std::isnan(day.weather.wind_ms)) mean.add(*day.phase, day.weather.wind_ms);
    }
    if (mean.count() < enough_days) return;
    climate.wind_mean_ms = mean.solve();
    double sum = 0;
    double sum_ln = 0;
    for (const FitDay& day : days) {
        if (std::isnan(day.weather.wind_ms)) continue;
        const double relative = std::max(day.weather.wind_ms, 0.1) / mean_wind(climate, *day.phase);
        sum += relative;
        sum_ln += std::log(relative);
    }
    climate.wind_shape = gamma_shape(sum / mean.count(), sum_ln / mean.count());
    std::vector<FitDay> scored = days;
    for (FitDay& day : scored) {
        day.chi_max = score_of_wind(day.weather.wind_ms, climate.wind_shape, mean_wind(climate, *day.phase));
    }
    climate.wind_lag1 = std::clamp(correlation(scored, &FitDay::chi_max, &FitDay::chi_max, 1), 0.0, 0.95);
}
}  // namespace

Harmonic HarmonicFit::solve() const {
    auto m = left_;
    auto y = right_;
    if (count_ == 0) return {};
    constexpr double pull = 0.5;
    for (std::size_t i = 1; i < 5; ++i) m[i][i] += pull;
    for (std::size_t i = 0; i < 5; ++i) {
        for (std::size_t row = i + 1; row < 5; ++row) {
            const double factor = m[row][i] / m[i][i];
            for (std::size_t j = i; j < 5; ++j) m[row][j] -= factor * m[i][j];
            y[row] -= factor * y[i];
        }
    }
    std::array<double, 5> x{};
    for (std::size_t i = 5; i-- > 0;) {
        double rest = y[i];
        for (std::size_t j = i + 1; j < 5; ++j) rest -= m[i][j] * x[j];
        x[i] = rest / m[i][i];
    }
    return {x[0], {x[1], x[3]}, {x[2], x[4]}};
}

double correlation(const std::vector<FitDay>& days, double FitDay::*today, double FitDay::*before, std::size_t lag) {
    double sum = 0;
    double today_squares = 0;
    double before_squares = 0;
    for (std::size_t i = lag; i < days.size(); ++i) {
        const double x = days[i].*today;
        const double y = days[i - lag].*before;
        if (std::isnan(x) || std::isnan(y)) continue;
        sum += x * y;
        today_squares += x * x;
        before_squares += y * y;
    }
    return today_squares > 0 && before_squares > 0 ? sum / std::sqrt(today_squares * before_squares) : 0;
}

Climate fit_climate(const WeatherRecord& record, const WeatherParameters& parameters) {
    std::vector<FitDay> days = days_of(record, parameters);
    int complete = 0;
    for (const FitDay& day : days)
        complete += !std::isnan(day.weather.tmax_c) && !std::isnan(day.weather.tmin_c) ? 1 : 0;
    constexpr int least_days = 300;
    if (complete < least_days) {
        throw InputError(record.source.empty() ? "weather record" : record.source,
                         "found " + std::to_string(complete) + " days with both temperatures, expected at least " +
                             std::to_string(least_days) + " to fit a climate",
                         "give a longer record or twelve monthly normals");
    }
    Climate climate;
    climate.wet_day_mm = parameters.wet_day_mm;
    climate.least_range_c = parameters.least_range_c;
    climate.years_of_record = complete / 365.25;
    fit_rain(days, parameters, climate);
    fit_temperature(days, parameters, climate);
    fit_wind(days, parameters, climate);
    return climate;
}

}  // namespace maybough::weather
