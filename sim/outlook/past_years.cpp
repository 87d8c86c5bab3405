// The complete years of a record, each with the climate as known without it.
#include <algorithm>
#include <cmath>
#include <limits>

#include "outlook/hindcast.hpp"

namespace maybough::outlook {

namespace {
/// Fewest other years from which a climate is fitted anew.
constexpr int fewest_other_years = 3;
constexpr double missing = std::numeric_limits<double>::quiet_NaN();

bool whole(const DayOfWeather& day) {
    return !std::isnan(day.tmax_c) && !std::isnan(day.tmin_c);
}

/// Index range of the simulated year that starts at `first`, or an empty one where the record does not hold all of it.
struct Stretch {
    std::size_t from = 0;
    std::size_t length = 0;
};
Stretch stretch_of(const WeatherRecord& record, Date first) {
    const auto from = (first - record.first).count();
    const int length = days_in_year_from(first);
    if (from < 0 || from + length > static_cast<std::ptrdiff_t>(record.days.size())) return {};
    for (int i = 0; i < length; ++i) {
        if (!whole(record.days[static_cast<std::size_t>(from + i)])) return {};
    }
    return {static_cast<std::size_t>(from), static_cast<std::size_t>(length)};
}

WeatherYear year_of_record(const WeatherRecord& record, Date first, Stretch stretch, const WeatherParameters& p) {
    WeatherYear year{first, {}};
    for (std::size_t i = stretch.from; i < stretch.from + stretch.length; ++i) {
        DayOfWeather day = record.days[i];
        if (std::isnan(day.rain_mm)) day.rain_mm = 0;
        if (std::isnan(day.wind_ms)) day.wind_ms = p.wind_ms;
        year.days.push_back(day);
    }
    return year;
}

Climate climate_without(const WeatherRecord& record, Stretch stretch, const WeatherParameters& parameters) {
    WeatherRecord others = record;
    for (std::size_t i = stretch.from; i < stretch.from + stretch.length; ++i) {
        others.days[i] = {missing, missing, missing, missing};
    }
    return fit_climate(others, parameters);
}
}  // namespace

std::vector<PastYear> past_years(const Scenario& scenario, const WeatherRecord& given, int most, bool& left_out) {
    const double latitude_deg = scenario.land.centre.latitude_deg;
    WeatherRecord record = given;
    QualityReport quality = check_record(record, latitude_deg, scenario.parameters.weather);
    fill_gaps(record, quality, scenario.parameters.weather);

    std::vector<Date> starts;
    if (!record.days.empty()) {
        const Date end = record.first + std::chrono::days{static_cast<int>(record.days.size())};
        for (Date first = simulated_year_start(record.first, latitude_deg); first < end;
             first += std::chrono::days{days_in_year_from(first)}) {
            if (stretch_of(record, first).length > 0) starts.push_back(first);
        }
    }
    if (starts.empty()) {
        throw InputError(given.source.empty() ? "weather record" : given.source,
                         "found no complete year, expected at least one with no gap longer than can be filled",
                         "give a record of several years with --weather");
    }
    left_out = static_cast<int>(starts.size()) > fewest_other_years;
    const auto used = static_cast<std::ptrdiff_t>(std::min<std::size_t>(starts.size(), static_cast<std::size_t>(most)));
    starts.erase(starts.begin(), starts.end() - used);

    std::vector<PastYear> years;
    for (const Date first : starts) {
        const Stretch stretch = stretch_of(record, first);
        years.push_back({year_of(first), year_of_record(record, first, stretch, scenario.parameters.weather),
                         left_out ? climate_without(record, stretch, scenario.parameters.weather) : scenario.climate});
    }
    return years;
}

Day first_issue_day(Date first, double latitude_deg) {
    constexpr int march = 3;
    constexpr int september = 9;
    const Date issue = make_date(year_of(first), latitude_deg >= 0 ? march : september, 1);
    return {static_cast<int>((issue - first).count())};
}

}  // namespace maybough::outlook
