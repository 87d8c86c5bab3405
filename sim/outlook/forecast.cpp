// This year's forecast: members lived through, each beside its own normal year, and what they say together.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "outlook/outlook.hpp"

namespace maybough::outlook {

namespace {
/// One member beside its normal year: the same land, beliefs and luck under the climate's own weather.
struct Pair {
    MemberSeason member;
    MemberSeason normal;
};

Pair live_pair(const Scenario& scenario, const ThisYear& weather, const ForecastOptions& options, std::uint32_t seed,
               std::uint32_t index) {
    const Chance chance{seed, index};
    const Parameters parameters = draw_beliefs(scenario, seed, index);
    const int days = scenario.days();
    const WeatherYear usual =
        options.continuation == Continuation::analogue
            ? pick_year(scenario.record, scenario.first_day(), days, scenario.parameters.weather, chance)
            : generate_year(scenario.climate, scenario.first_day(), days, chance);
    return {member_season(scenario, parameters, member_weather(scenario, weather, options.continuation, chance),
                          scenario.placement, chance),
            member_season(scenario, parameters, usual, {}, chance)};
}

double sum_between(const std::vector<int>& on, int from, int until) {
    const int size = static_cast<int>(on.size());
    from = std::clamp(from, 0, size);
    until = std::clamp(until, from, size);
    return std::accumulate(on.begin() + from, on.begin() + until, 0);
}

/// Estimate over members of what `of` makes of each pair.
template <class Of>
Estimate over(const std::vector<Pair>& pairs, Of of) {
    std::vector<double> values;
    values.reserve(pairs.size());
    for (const Pair& pair : pairs) values.push_back(of(pair));
    return estimate(values);
}

template <class Of>
double share(const std::vector<Pair>& pairs, Of of) {
    return over(pairs, [&](const Pair& pair) { return of(pair) ? 1.0 : 0.0; }).mean;
}

void put_dates(Forecast& forecast, const std::vector<Pair>& pairs, Day today) {
    std::vector<SeasonDates> members;
    std::vector<SeasonDates> normals;
    for (const Pair& pair : pairs) {
        members.push_back(dates_of(pair.member.swarms_on));
        normals.push_back(dates_of(pair.normal.swarms_on));
        forecast.members_without_swarms += std::isnan(members.back()[0]) ? 1 : 0;
    }
    for (std::size_t what = 0; what < milestone_kinds; ++what) {
        std::vector<double> dates;
        std::vector<double> usual;
        for (std::size_t i = 0; i < pairs.size(); ++i) {
            dates.push_back(members[i][what]);
            usual.push_back(normals[i][what]);
        }
        forecast.dates[what] = date_odds(dates, usual, today, forecast.days);
    }
}

void put_totals(Forecast& forecast, const std::vector<Pair>& pairs, int today) {
    const int days = forecast.days;
    forecast.swarms = over(pairs, [&](const Pair& p) { return sum_between(p.member.swarms_on, 0, days); });
    forecast.normal = over(pairs, [&](const Pair& p) { return sum_between(p.normal.swarms_on, 0, days); });
    forecast.to_come = over(pairs, [&](const Pair& p) { return sum_between(p.member.swarms_on, today + 1, days); });
    forecast.catches = over(pairs, [&](const Pair& p) { return sum_between(p.member.catches_on, 0, days); });
    forecast.catches_to_come =
        over(pairs, [&](const Pair& p) { return sum_between(p.member.catches_on, today + 1, days); });
    forecast.odds_begun =
        share(pairs, [&](const Pair& p) { return sum_between(p.member.swarms_on, 0, today + 1) > 0; });
    forecast.odds_over =
        share(pairs, [&](const Pair& p) { return sum_between(p.member.swarms_on, today + 1, days) <= 0; });
}

void put_weeks(Forecast& forecast, const std::vector<Pair>& pairs) {
    constexpr int days_a_week = 7;
    const std::chrono::weekday weekday{forecast.first_day};
    const int before = static_cast<int>(weekday.iso_encoding()) - 1;  // days of the first week before the year begins
    std::vector<WeekOdds> weeks;
    for (int from = -before; from < forecast.days; from += days_a_week) {
        const int until = from + days_a_week;
        WeekOdds week;
        week.monday = forecast.first_day + std::chrono::days{from};
        week.swarms = over(pairs, [&](const Pair& p) { return sum_between(p.member.swarms_on, from, until); });
        week.normal = over(pairs, [&](const Pair& p) { return sum_between(p.normal.swarms_on, from, until); });
        week.catches = over(pairs, [&](const Pair& p) { return sum_between(p.member.catches_on, from, until); });
        weeks.push_back(week);
    }
    const auto empty = [](const WeekOdds& week) {
        return week.swarms.mean + week.normal.mean + week.catches.mean <= 0;
    };
    while (!weeks.empty() && empty(weeks.back())) weeks.pop_back();
    const auto begins = std::find_if_not(weeks.begin(), weeks.end(), empty);
    forecast.weeks.assign(begins, weeks.end());
}

/// The day of every swarm of every member.
std::vector<int> swarm_days_of(const std::vector<Pair>& pairs) {
    std::vector<int> days;
    for (const Pair& pair : pairs) {
        for (std::size_t day = 0; day < pair.member.swarms_on.size(); ++day) {
            days.insert(days.end(), static_cast<std::size_t>(pair.member.swarms_on[day]), static_cast<int>(day));
        }
    }
    return days;
}

void put_next_days(Forecast& forecast, const std::vector<Pair>& pairs, int today) {
    for (int day = today + 1; day <= today + next_days && day < forecast.days; ++day) {
        const auto d = static_cast<std::size_t>(day);
        DayOdds odds;
        odds.date = forecast.date({day});
        odds.odds_swarm = share(pairs, [&](const Pair& p) { return p.member.swarms_on[d] > 0; });
        odds.odds_normal = share(pairs, [&](const Pair& p) { return p.normal.swarms_on[d] > 0; });
        odds.odds_fit = share(pairs, [&](const Pair& p) { return p.member.fit[d] != 0; });
        odds.swarms = over(pairs, [&](const Pair& p) { return double(p.member.swarms_on[d]); }).mean;
        odds.tmax_c = over(pairs, [&](const Pair& p) { return p.member.weather.days[d].tmax_c; }).mean;
        odds.rain_mm = over(pairs, [&](const Pair& p) { return p.member.weather.days[d].rain_mm; }).mean;
        const auto& known = forecast.weather.known.days;
        odds.typed = d < known.size() && !std::isnan(known[d].tmax_c) && !std::isnan(known[d].tmin_c);
        forecast.next.push_back(odds);
    }
}
}  // namespace

Forecast make_forecast(const Scenario& scenario, const ThisYear& weather, const Effort& effort,
                       const ForecastOptions& options, const Progress& progress) {
    if (options.members == 0) throw ModelFault("a forecast was asked of no members");
    const Scenario moved = scenario_of_year(scenario, weather.today);
    Forecast forecast;
    forecast.weather = weather;
    forecast.first_day = moved.first_day();
    forecast.days = moved.days();
    forecast.continuation = options.continuation;
    forecast.members = options.members;
    forecast.seed = effort.seed;
    forecast.with_catches = !moved.placement.empty();

    std::vector<Pair> pairs;
    pairs.reserve(options.members);
    run_in_order<Pair>(
        0, options.members, effort.threads,
        [&](std::uint32_t index) { return live_pair(moved, weather, options, effort.seed, index); },
        [&](std::uint32_t, Pair&& pair) { pairs.push_back(std::move(pair)); }, progress);

    const int today = static_cast<int>((weather.today - forecast.first_day).count());
    put_dates(forecast, pairs, {today});
    put_totals(forecast, pairs, today);
    put_weeks(forecast, pairs);
    put_next_days(forecast, pairs, today);
    forecast.agenda = agenda_of(forecast, swarm_days_of(pairs), moved);
    return forecast;
}

}  // namespace maybough::outlook
