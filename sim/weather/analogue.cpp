// Analogue years: a whole year of the record drawn at random, likelier the more it was like this year to date.
#include <algorithm>
#include <cmath>

#include "weather/weather.hpp"

namespace maybough::weather {

namespace {
constexpr int step_days = 10;  ///< distance is between means of so many days

/// The same day of the calendar in `years` other years; 29 February becomes 28 February where there is none.
Date shifted(Date date, int years) {
    const std::chrono::year_month_day civil{date};
    const std::chrono::year_month_day other = civil + std::chrono::years{years};
    return other.ok() ? Date{other} : make_date(static_cast<int>(other.year()), month_of(date), 28);
}

/// The record's day of that date, or nullptr where it has none or lacks what the record otherwise has.
const DayOfWeather* day_on(const WeatherRecord& record, Date date, bool has_rain) {
    const auto index = (date - record.first).count();
    if (index < 0 || index >= static_cast<std::ptrdiff_t>(record.days.size())) return nullptr;
    const DayOfWeather& day = record.days[static_cast<std::size_t>(index)];
    const bool whole = !std::isnan(day.tmax_c) && !std::isnan(day.tmin_c) && !(has_rain && std::isnan(day.rain_mm));
    return whole ? &day : nullptr;
}

/// The year of `record` that lies `years` away from `first`, or an empty one where it is not complete.
WeatherYear year_apart(const WeatherRecord& record, Date first, int days, int years, bool has_rain,
                       const WeatherParameters& parameters) {
    WeatherYear year{first, {}};
    for (int index = 0; index < days; ++index) {
        const DayOfWeather* day = day_on(record, shifted(first + std::chrono::days{index}, years), has_rain);
        if (day == nullptr) return {first, {}};
        year.days.push_back(*day);
        if (std::isnan(year.days.back().rain_mm)) year.days.back().rain_mm = 0;
        if (std::isnan(year.days.back().wind_ms)) year.days.back().wind_ms = parameters.wind_ms;
    }
    return year;
}

/// Mean square difference of ten-day mean temperatures over the days of `so_far`.
double distance(const WeatherYear& so_far, const WeatherYear& other) {
    double squares = 0;
    int steps = 0;
    double difference = 0;
    for (std::size_t i = 0; i < so_far.days.size(); ++i) {
        difference += (so_far.days[i].tmax_c + so_far.days[i].tmin_c - other.days[i].tmax_c - other.days[i].tmin_c) / 2;
        if ((i + 1) % step_days == 0) {
            squares += std::pow(difference / step_days, 2);
            ++steps;
            difference = 0;
        }
    }
    return steps > 0 ? squares / steps : 0;
}
}  // namespace

WeatherYear pick_year(const WeatherRecord& record, Date first, int days, const WeatherParameters& parameters,
                      const Chance& chance, const WeatherYear* so_far) {
    const bool has_rain = std::any_of(record.days.begin(), record.days.end(),
                                      [](const DayOfWeather& day) { return !std::isnan(day.rain_mm); });
    std::vector<WeatherYear> years;
    const int record_years = static_cast<int>(record.days.size() / 365) + 1;
    const int start = year_of(record.first) - year_of(first) - 1;
    for (int apart = start; apart <= start + record_years + 2; ++apart) {
        if (so_far != nullptr && apart == 0) continue;
        WeatherYear year = year_apart(record, first, days, apart, has_rain, parameters);
        if (!year.days.empty()) years.push_back(std::move(year));
    }
    if (years.empty()) {
        throw InputError(record.source.empty() ? "weather record" : record.source,
                         "found no complete year of " + std::to_string(days) + " days, expected at least one",
                         "fill or bridge its gaps, or use the generator");
    }

    // Rank by likeness to this year so far; the nearest sqrt(n) are drawn by 1/rank, all alike while nothing is known.
    Stream stream = chance.stream(Purpose::weather_year_pick, 0U);
    const double u = stream.uniform();
    std::size_t chosen = 0;
    if (so_far == nullptr || so_far->days.size() < step_days) {
        chosen = std::min(years.size() - 1, static_cast<std::size_t>(u * static_cast<double>(years.size())));
    } else {
        std::vector<std::pair<double, std::size_t>> ranked;
        for (std::size_t i = 0; i < years.size(); ++i) {
            WeatherYear known = *so_far;
            known.days.resize(std::min(known.days.size(), years[i].days.size()));
            ranked.emplace_back(distance(known, years[i]), i);
        }
        std::sort(ranked.begin(), ranked.end());
        const auto near = static_cast<std::size_t>(std::ceil(std::sqrt(static_cast<double>(years.size()))));
        double whole = 0;
        for (std::size_t rank = 1; rank <= near; ++rank) whole += 1 / static_cast<double>(rank);
        double cumulative = 0;
        std::size_t rank = 0;
        while (rank + 1 < near && u * whole > cumulative + 1 / static_cast<double>(rank + 1)) {
            cumulative += 1 / static_cast<double>(rank + 1);
            ++rank;
        }
        chosen = ranked[rank].second;
    }
    WeatherYear year = std::move(years[chosen]);
    if (so_far != nullptr) {
        std::copy_n(so_far->days.begin(), std::min(so_far->days.size(), year.days.size()), year.days.begin());
    }
    return year;
}

}  // namespace maybough::weather
