// The seasons a catch log is weighed by: every year of the log, and next year, lived under many draws of the unknowns.
#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "outlook/learn.hpp"

namespace maybough::outlook {

namespace {
/// Replicates of the log's years, so that no two years share their luck; next year keeps the plain ones.
constexpr std::uint32_t replicates_a_year = 1U << 20U;

/// The year of the record, from its first day, with NaN where nothing is known.
WeatherRecord year_of_record(const WeatherRecord& record, Date first) {
    constexpr double missing = std::numeric_limits<double>::quiet_NaN();
    WeatherRecord year{record.source, first, {}};
    const auto from = (first - record.first).count();
    for (int i = 0; i < days_in_year_from(first); ++i) {
        const auto at = from + i;
        const bool inside = at >= 0 && at < static_cast<std::ptrdiff_t>(record.days.size());
        year.days.push_back(inside ? record.days[static_cast<std::size_t>(at)]
                                   : DayOfWeather{missing, missing, missing, missing});
    }
    return year;
}

/// One season to live: the scenario in its year, and that year's weather where it is known.
struct SeasonToLive {
    Scenario scenario;
    WeatherRecord known;  ///< no days where the year has to be generated
    Placement placement;
    std::uint32_t first_replicate = 0;
};

std::vector<SeasonToLive> seasons_to_live(const Scenario& scenario, const CatchLog& log, const Placement& next) {
    std::vector<SeasonToLive> seasons;
    for (const LoggedSeason& logged : log.seasons) {
        SeasonToLive season{scenario, {}, logged.placement, 0};
        season.scenario.year = logged.year;
        season.first_replicate = static_cast<std::uint32_t>(seasons.size() + 1) * replicates_a_year;
        const Date first = season.scenario.first_day();
        if (record_knows(scenario.record, first)) season.known = year_of_record(scenario.record, first);
        seasons.push_back(std::move(season));
    }
    seasons.push_back({scenario, {}, next, 0});
    for (SeasonToLive& season : seasons) season.scenario.record = {};
    return seasons;
}

std::vector<int> counts_of(const SeasonToLive& season, const Parameters& parameters, const Chance& chance) {
    const Scenario& scenario = season.scenario;
    QualityReport unused;
    const WeatherYear weather =
        season.known.days.empty()
            ? generate_year(scenario.climate, scenario.first_day(), scenario.days(), chance)
            : WeatherYear{season.known.first, bridge_gaps(season.known, scenario.climate, chance, unused).days};
    std::vector<int> counts(season.placement.size(), 0);
    if (season.placement.empty()) return counts;
    const Backdrop backdrop = raise_backdrop(scenario, parameters, chance, weather);
    for (const Catch& caught : run_season(scenario, parameters, backdrop, season.placement, chance).catches) {
        ++counts[caught.trap];
    }
    return counts;
}

void number_cells(CatchTable& table, const std::vector<SeasonToLive>& seasons) {
    std::map<std::size_t, std::size_t> place_of_spot;
    for (std::size_t season = 0; season < seasons.size(); ++season) {
        for (std::size_t trap = 0; trap < seasons[season].placement.size(); ++trap) {
            const auto [found, fresh] =
                place_of_spot.emplace(seasons[season].placement[trap].spot, place_of_spot.size());
            table.cells.push_back({season, trap, found->second});
        }
    }
    table.places = place_of_spot.size();
}
}  // namespace

bool record_knows(const WeatherRecord& record, Date first) {
    constexpr double nearly_all = 0.9;
    if (record.days.empty()) return false;
    const WeatherRecord year = year_of_record(record, first);
    const auto known = std::count_if(year.days.begin(), year.days.end(), [](const DayOfWeather& day) {
        return !std::isnan(day.tmax_c) && !std::isnan(day.tmin_c);
    });
    return static_cast<double>(known) >= nearly_all * static_cast<double>(year.days.size());
}

CatchTable simulate_catches(const Scenario& scenario, const CatchLog& log, const Placement& next, const Effort& effort,
                            const LearnOptions& options, const Progress& progress) {
    const std::vector<SeasonToLive> seasons = seasons_to_live(scenario, log, next);
    const std::vector<Unknown> unknowns = unknowns_of(scenario);
    CatchTable table;
    number_cells(table, seasons);
    const auto years = static_cast<std::uint32_t>(seasons.size());
    run_in_order<std::vector<int>>(
        0, options.seasons * years, effort.threads,
        [&](std::uint32_t job) {
            const SeasonToLive& season = seasons[job % years];
            const std::uint32_t row = job / years;
            // Every row has a draw of the unknowns to itself: more is learnt of effects than from repeats.
            const Parameters parameters = draw_beliefs(scenario, effort.seed, row * seasons_per_belief);
            return counts_of(season, parameters, {effort.seed, season.first_replicate + row});
        },
        [&](std::uint32_t job, std::vector<int>&& counts) {
            if (job % years == 0) {
                const Parameters parameters = draw_beliefs(scenario, effort.seed, job / years * seasons_per_belief);
                table.counts.emplace_back();
                table.scores.emplace_back();
                for (const Unknown& unknown : unknowns) {
                    table.scores.back().push_back(
                        score_of(unknown.entry->row, unknown.prior, unknown.entry->get(parameters)));
                }
            }
            table.counts.back().insert(table.counts.back().end(), counts.begin(), counts.end());
        },
        progress);
    return table;
}

}  // namespace maybough::outlook
