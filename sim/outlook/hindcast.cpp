// Hindcast: forecasts issued each fortnight of past years, simulated seasons under the years' weather as truth.
#include "outlook/hindcast.hpp"

#include <algorithm>

namespace maybough::outlook {

namespace {
/// Truths take replicates from here on, so that their land, beliefs and luck are none of the members'.
constexpr std::uint32_t first_truth = 1U << 30U;
constexpr int fortnight_days = 14;

SeasonDates dates_under(const Scenario& scenario, const WeatherYear& weather, const Chance& chance) {
    const Parameters parameters = draw_beliefs(scenario, chance.seed, chance.replicate);
    return dates_of(member_season(scenario, parameters, weather, {}, chance).swarms_on);
}

/// One member's or one truth's dates in one year.
struct Task {
    std::size_t year = 0;
    bool truth = false;
    std::uint32_t number = 0;
};
struct TaskDates {
    SeasonDates normal{};  ///< or the truth's
    std::vector<SeasonDates> issued;
};

/// The scenario of each year: its climate, the record's years as analogues, and no traps.
std::vector<Scenario> scenarios_of(const Scenario& scenario, const WeatherRecord& record,
                                   const std::vector<PastYear>& years) {
    std::vector<Scenario> moved;
    for (const PastYear& past : years) {
        moved.push_back(scenario);
        moved.back().year = past.year;
        moved.back().climate = past.climate;
        moved.back().record = record;
        moved.back().placement.clear();
    }
    return moved;
}

/// The year's weather up to the day of issue, as a forecaster had it.
ThisYear known_by(const WeatherYear& weather, int today) {
    ThisYear year;
    year.today = weather.first + std::chrono::days{today};
    year.known.first = weather.first;
    year.known.days.assign(weather.days.begin(), weather.days.begin() + today + 1);
    return year;
}

TaskDates live(const Scenario& scenario, const PastYear& past, const Task& task, std::uint32_t seed,
               const HindcastOptions& options) {
    if (task.truth) {
        // Every year has truths of its own: their land is new each time.
        const auto replicate = first_truth + static_cast<std::uint32_t>(past.year) * 4096U + task.number;
        return {dates_under(scenario, past.weather, {seed, replicate}), {}};
    }
    const Chance chance{seed, task.number};
    TaskDates dates;
    dates.normal = dates_under(
        scenario, generate_year(past.climate, past.weather.first, static_cast<int>(past.weather.days.size()), chance),
        chance);
    const int begin = first_issue_day(past.weather.first, scenario.land.centre.latitude_deg).value;
    for (int issue = 0; issue < options.issues; ++issue) {
        const ThisYear known = known_by(past.weather, begin + issue * fortnight_days);
        dates.issued.push_back(
            dates_under(scenario, member_weather(scenario, known, options.continuation, chance), chance));
    }
    return dates;
}

std::vector<Task> all_tasks(std::size_t years, const HindcastOptions& options) {
    std::vector<Task> tasks;
    for (std::size_t year = 0; year < years; ++year) {
        for (std::uint32_t k = 0; k < options.members; ++k) tasks.push_back({year, false, k});
        for (std::uint32_t k = 0; k < options.truths; ++k) tasks.push_back({year, true, k});
    }
    return tasks;
}

std::vector<YearOfMembers> live_all(const std::vector<Scenario>& scenarios, const std::vector<PastYear>& years,
                                    const Effort& effort, const HindcastOptions& options, const Progress& progress) {
    const std::vector<Task> tasks = all_tasks(years.size(), options);
    std::vector<YearOfMembers> lived(years.size());
    for (YearOfMembers& year : lived) year.issued.resize(static_cast<std::size_t>(options.issues));
    run_in_order<TaskDates>(
        0, static_cast<std::uint32_t>(tasks.size()), effort.threads,
        [&](std::uint32_t i) {
            const Task& task = tasks[i];
            return live(scenarios[task.year], years[task.year], task, effort.seed, options);
        },
        [&](std::uint32_t i, TaskDates&& dates) {
            YearOfMembers& year = lived[tasks[i].year];
            (tasks[i].truth ? year.truths : year.normal).push_back(dates.normal);
            for (std::size_t issue = 0; issue < dates.issued.size(); ++issue) {
                year.issued[issue].push_back(dates.issued[issue]);
            }
        },
        progress);
    return lived;
}

void tell(Hindcast& hindcast, const std::vector<PastYear>& past, const ObservedFirsts& observed) {
    if (!hindcast.left_out) {
        hindcast.notes.emplace_back(
            "the record is too short to fit each year's climate without that year: the scenario's climate is used, "
            "which makes the climatology look a little better than it is");
    }
    std::size_t used = 0;
    for (const PastYear& year : past) used += observed.count(year.year);
    if (used < observed.size()) {
        hindcast.notes.push_back(std::to_string(observed.size() - used) +
                                 " observed years have no complete year in the weather record and are not used");
    }
}
}  // namespace

Hindcast make_hindcast(const Scenario& scenario, const WeatherRecord& record, const ObservedFirsts& observed,
                       const Effort& effort, const HindcastOptions& options, const Progress& progress) {
    if (options.members < 2 || options.truths < 1 || options.issues < 1) {
        throw ModelFault("a hindcast needs two members, one truth and one issue at least");
    }
    Hindcast hindcast;
    hindcast.options = options;
    hindcast.seed = effort.seed;
    hindcast.source = record.source;
    const std::vector<PastYear> past = past_years(scenario, record, options.years, hindcast.left_out);
    for (const PastYear& year : past) hindcast.years.push_back(year.year);
    const Date latest = past.back().weather.first;
    hindcast.first_issue = latest + std::chrono::days{first_issue_day(latest, scenario.land.centre.latitude_deg).value};

    const std::vector<YearOfMembers> lived =
        live_all(scenarios_of(scenario, record, past), past, effort, options, progress);
    for (const YearOfMembers& year : lived) {
        hindcast.truths_without_swarms += static_cast<int>(
            std::count_if(year.truths.begin(), year.truths.end(), [](const auto& d) { return d[0] != d[0]; }));
    }
    constexpr std::array scored{Milestone::first, Milestone::half};
    hindcast.scores = score_truths(lived, scored, options.issues);
    if (!observed.empty()) hindcast.observed = score_observed(lived, past, observed, options.issues);
    tell(hindcast, past, observed);
    return hindcast;
}

}  // namespace maybough::outlook
