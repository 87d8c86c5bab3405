// An ensemble of seasons for one placement, summed up.
#include <algorithm>

#include "planner/swarm_squares.hpp"
#include "planner/trials.hpp"

namespace maybough::planner {

namespace {
struct LivedSeason {
    SeasonRecord record;
    std::vector<int> swarm_days;
    std::vector<Point> swarm_places;
};

LivedSeason live_season(const Scenario& scenario, const Placement& placement, const Chance& chance) {
    const Parameters parameters = draw_beliefs(scenario, chance.seed, chance.replicate);
    const Backdrop backdrop = raise_backdrop(scenario, parameters, chance);
    LivedSeason lived{run_season(scenario, parameters, backdrop, placement, chance), {}, {}};
    for (const Swarm& swarm : backdrop.swarms) {
        if (distance_m(swarm.at, {}) > scenario.land.radius_m) continue;
        lived.swarm_days.push_back(swarm.day.value);
        lived.swarm_places.push_back(swarm.at);
    }
    return lived;
}

Estimate over(const std::vector<SeasonRecord>& seasons, double (*of)(const SeasonRecord&)) {
    std::vector<double> values;
    for (const SeasonRecord& season : seasons) values.push_back(of(season));
    return estimate(values);
}

Estimate count_over(const std::vector<SeasonRecord>& seasons, double (*of)(const SeasonRecord&)) {
    std::vector<double> values;
    for (const SeasonRecord& season : seasons) values.push_back(of(season));
    return estimate_count(values);
}

double as_double(std::int64_t count) {
    return static_cast<double>(count);
}

std::vector<Estimate> per_trap(const std::vector<SeasonRecord>& seasons, std::size_t traps) {
    std::vector<Estimate> result;
    for (std::size_t t = 0; t < traps; ++t) {
        std::vector<double> counts;
        for (const SeasonRecord& season : seasons) {
            counts.push_back(as_double(std::count_if(season.catches.begin(), season.catches.end(),
                                                     [t](const Catch& caught) { return caught.trap == t; })));
        }
        result.push_back(estimate_count(counts));
    }
    return result;
}

void fill_estimates(SeasonSummary& summary, std::size_t traps) {
    const std::vector<SeasonRecord>& s = summary.seasons;
    summary.catches = count_over(s, [](const SeasonRecord& r) { return static_cast<double>(r.catches.size()); });
    summary.swarms = count_over(s, [](const SeasonRecord& r) { return as_double(r.swarms); });
    summary.swarms_in_area = count_over(s, [](const SeasonRecord& r) { return as_double(r.in_area); });
    summary.prime_share = over(
        s, [](const SeasonRecord& r) { return r.swarms > 0 ? as_double(r.prime_swarms) / as_double(r.swarms) : 0.0; });
    summary.settled_in_cavities = count_over(s, [](const SeasonRecord& r) { return as_double(r.settled_in_cavities); });
    summary.hived_by_others = count_over(s, [](const SeasonRecord& r) { return as_double(r.hived_by_others); });
    summary.lost = count_over(s, [](const SeasonRecord& r) { return as_double(r.lost); });
    summary.cost = over(s, [](const SeasonRecord& r) { return r.cost; });
    summary.value = over(s, [](const SeasonRecord& r) { return r.value; });
    summary.net = over(s, [](const SeasonRecord& r) { return r.net(); });
    summary.by_trap = per_trap(s, traps);
    std::vector<double> counts;
    for (const SeasonRecord& season : s) counts.push_back(static_cast<double>(season.catches.size()));
    summary.odds_at_least = odds_at_least(counts);
}
}  // namespace

SeasonSummary simulate_seasons(const Scenario& scenario, const Placement& placement, const Effort& effort,
                               const Progress& progress) {
    SeasonSummary summary;
    const std::uint32_t count = std::max<std::uint32_t>(1, effort.confirm_seasons);
    const auto days = static_cast<std::size_t>(scenario.days());
    summary.swarm_days.assign(days, 0);
    summary.catch_days.assign(days, 0);
    std::vector<std::vector<Point>> places;
    run_in_order<LivedSeason>(
        0, count, effort.threads,
        [&](std::uint32_t season) {
            const Chance chance{effort.seed, season};
            return live_season(scenario, placement, chance);
        },
        [&](std::uint32_t, LivedSeason&& lived) {
            for (const int day : lived.swarm_days) summary.swarm_days[static_cast<std::size_t>(day)] += 1.0 / count;
            for (const Catch& caught : lived.record.catches) {
                const std::size_t day = std::min(days - 1, static_cast<std::size_t>(caught.caught.value));
                summary.catch_days[day] += 1.0 / count;
            }
            places.push_back(std::move(lived.swarm_places));
            summary.seasons.push_back(std::move(lived.record));
        },
        progress, season_of(effort.seed));
    fill_estimates(summary, placement.size());
    summary.swarm_squares = swarm_squares(places, scenario.land.radius_m);
    return summary;
}

}  // namespace maybough::planner
