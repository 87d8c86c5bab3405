// This year's weather to date: taken from a record, checked, filled, with the typed outlook; and a member's whole year.
#include <algorithm>
#include <cmath>
#include <limits>

#include "outlook/outlook.hpp"

namespace maybough::outlook {

namespace {
constexpr double missing = std::numeric_limits<double>::quiet_NaN();
constexpr DayOfWeather unknown{missing, missing, missing, missing};

bool has_both(const DayOfWeather& day) {
    return !std::isnan(day.tmax_c) && !std::isnan(day.tmin_c);
}

/// The record's day of that date, unknown where it has none.
DayOfWeather day_on(const WeatherRecord& record, Date date) {
    const auto index = (date - record.first).count();
    const bool inside = index >= 0 && index < static_cast<std::ptrdiff_t>(record.days.size());
    return inside ? record.days[static_cast<std::size_t>(index)] : unknown;
}

std::string days_text(int days) {
    return std::to_string(days) + (days == 1 ? " day" : " days");
}

/// Days from `first` until `today` as the record has them, without what comes after the last day that is whole.
WeatherRecord clipped(const WeatherRecord& record, Date first, Date today) {
    WeatherRecord part{record.source, first, {}};
    for (Date date = first; date <= today; date += std::chrono::days{1}) part.days.push_back(day_on(record, date));
    return part;
}

void trim(WeatherRecord& part) {
    while (!part.days.empty() && !has_both(part.days.back())) part.days.pop_back();
}

void require_some(const WeatherRecord& record, const WeatherRecord& part, Date first, Date today) {
    if (!part.days.empty()) return;
    const std::string place = record.source.empty() ? "weather record" : record.source;
    if (record.days.empty()) throw InputError(place, "found no days, expected this year's weather to date");
    const Date last = record.first + std::chrono::days{static_cast<int>(record.days.size()) - 1};
    throw InputError(place,
                     "knows nothing of this year: it runs from " + iso(record.first) + " to " + iso(last) +
                         ", expected days from " + iso(first) + " to " + iso(today),
                     "give this year's record, or another day with --today");
}

void add_outlook(ThisYear& year, const WeatherRecord& outlook, Date last_day) {
    const Date furthest = std::min(last_day, year.today + std::chrono::days{longest_outlook_days});
    int unused = 0;
    std::vector<DayOfWeather>& days = year.known.days;
    for (std::size_t i = 0; i < outlook.days.size(); ++i) {
        const Date date = outlook.first + std::chrono::days{static_cast<int>(i)};
        if (!has_both(outlook.days[i])) continue;
        if (date <= year.today || date > furthest) {
            ++unused;
            continue;
        }
        const auto index = static_cast<std::size_t>((date - year.known.first).count());
        if (days.size() <= index) days.resize(index + 1, unknown);
        days[index] = outlook.days[i];
        ++year.typed_days;
    }
    if (unused > 0) {
        year.notes.push_back(days_text(unused) + " of the outlook not used: it counts from the day after today to " +
                             std::to_string(longest_outlook_days) + " days ahead");
    }
    if (year.typed_days == 0) {
        throw InputError(outlook.source.empty() ? "outlook" : outlook.source,
                         "found no day after " + iso(year.today) + " with both tmax and tmin",
                         "give the days that follow --today");
    }
}

void tell_what_is_made_up(ThisYear& year, int missing_inside, int missing_at_end) {
    if (missing_inside > 0) {
        year.notes.push_back(days_text(missing_inside) +
                             " of this year missing in the record or in gaps too long to fill: made by the generator, "
                             "anew for each member");
    }
    if (missing_at_end > 0) {
        year.notes.push_back("the record ends " + days_text(missing_at_end) +
                             " before the end of today: those days are made by the generator too");
    }
    const auto lacks = [&](double DayOfWeather::*what) {
        return std::all_of(year.known.days.begin(), year.known.days.end(),
                           [what](const DayOfWeather& day) { return std::isnan(day.*what); });
    };
    if (lacks(&DayOfWeather::rain_mm)) year.notes.emplace_back("the record has no rain: rain is made by the generator");
    if (lacks(&DayOfWeather::wind_ms)) year.notes.emplace_back("the record has no wind: wind is made by the generator");
}
}  // namespace

ThisYear this_year(const WeatherRecord& record, Date today, double latitude_deg, const WeatherParameters& parameters,
                   const WeatherRecord* outlook) {
    const Date first = simulated_year_start(today, latitude_deg);
    ThisYear year;
    year.today = today;
    year.known = clipped(record, first, today);
    trim(year.known);
    require_some(record, year.known, first, today);

    // A day that fails the checks may be the last one: trim again, then fill.
    year.quality = check_record(year.known, latitude_deg, parameters);
    trim(year.known);
    require_some(record, year.known, first, today);
    fill_gaps(year.known, year.quality, parameters);

    const int to_date = static_cast<int>((today - first).count()) + 1;
    const int length = static_cast<int>(year.known.days.size());
    year.known_until = first + std::chrono::days{length - 1};
    year.recorded_days = static_cast<int>(std::count_if(year.known.days.begin(), year.known.days.end(), has_both));
    year.missing_days = to_date - year.recorded_days;
    tell_what_is_made_up(year, length - year.recorded_days, to_date - length);
    const Date last_day = first + std::chrono::days{days_in_year_from(first) - 1};
    if (outlook != nullptr) add_outlook(year, *outlook, last_day);
    return year;
}

WeatherYear member_weather(const Scenario& scenario, const ThisYear& year, Continuation continuation,
                           const Chance& chance) {
    const int days = days_in_year_from(year.known.first);
    QualityReport unused;
    WeatherRecord whole = bridge_gaps(year.known, scenario.climate, chance, unused);
    const WeatherYear so_far{whole.first, std::move(whole.days)};
    if (continuation == Continuation::analogue) {
        return pick_year(scenario.record, so_far.first, days, scenario.parameters.weather, chance, &so_far);
    }
    return continue_year(so_far, scenario.climate, days, chance);
}

Scenario scenario_of_year(const Scenario& scenario, Date today) {
    Scenario moved = scenario;
    moved.year = year_of(simulated_year_start(today, scenario.land.centre.latitude_deg));
    return moved;
}

}  // namespace maybough::outlook
