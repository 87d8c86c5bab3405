// Small made-up results of every other kind, for the tests of the report: names that need care in every format.
#pragma once

#include <cmath>
#include <limits>

#include "sample.hpp"

namespace maybough {

inline constexpr const char* hostile =
    "<img src=x onerror=alert(1)> </script><script>alert(2)</script> {{data}} & \"co\"";

inline SeasonSummary sample_seasons() {
    SeasonSummary summary;
    summary.catches = sample_estimate(2.6, 0.1);
    summary.swarms = sample_estimate(31, 1.2);
    summary.swarms_in_area = sample_estimate(18, 0.9);
    summary.prime_share = sample_estimate(0.6, 0.01);
    summary.settled_in_cavities = sample_estimate(9, 0.4);
    summary.hived_by_others = sample_estimate(1.5, 0.1);
    summary.lost = sample_estimate(7, 0.3);
    summary.cost = sample_estimate(111, 1);
    summary.value = sample_estimate(208, 8);
    summary.net = sample_estimate(97, 8);
    for (int i = 0; i < 3; ++i) summary.by_trap.push_back(sample_estimate(1.2 - 0.3 * i, 0.06));
    summary.odds_at_least = sample_odds({0.8, 0.5, 0.2, 0.001});
    for (int season = 0; season < 8; ++season) {
        SeasonRecord record;
        record.swarms = 20 + season;
        record.in_area = 12;
        record.cost = 100 + season;
        record.value = 60.0 * season;
        for (int k = 0; k < season / 2; ++k) {
            Catch caught;
            caught.trap = static_cast<std::size_t>(k) % 3;
            caught.caught = Day{130 + 3 * k};
            caught.prime = k % 2 == 0;
            caught.origin = k == 0 ? ColonyOrigin::managed : ColonyOrigin::wild;
            caught.distance_m = 200.0 + 150 * k + season;
            record.catches.push_back(caught);
        }
        summary.seasons.push_back(record);
    }
    summary.swarm_days = sample_plan().swarm_days;
    summary.catch_days = sample_plan().catch_days;
    summary.swarm_squares = sample_plan().swarm_squares;
    return summary;
}

inline std::vector<ComparedPlacement> sample_sides() {
    std::vector<ComparedPlacement> sides;
    const char* names[] = {"the plan", hostile, "near the apiaries"};
    for (int i = 0; i < 3; ++i) {
        ComparedPlacement side;
        side.name = names[i];
        side.placement = sample_placement();
        if (i == 1) side.placement[2].spot = 4;
        if (i == 2) side.placement.pop_back();
        side.catches = sample_estimate(2.6 - 0.5 * i, 0.08);
        side.cost = sample_estimate(110 - 5 * i, 1);
        side.net = sample_estimate(98 - 30 * i, 6);
        side.catches_less_first = sample_estimate(-0.5 * i, 0.05);
        side.net_less_first = sample_estimate(-30.0 * i, 3);
        side.odds_better_than_first = i == 0 ? 0.5 : 0.3;
        sides.push_back(side);
    }
    return sides;
}

inline Forecast sample_forecast() {
    Forecast forecast;
    forecast.first_day = make_date(2026, 1, 1);
    forecast.weather.today = make_date(2026, 4, 20);
    forecast.weather.known_until = make_date(2026, 4, 19);
    forecast.weather.recorded_days = 109;
    forecast.weather.typed_days = 3;
    forecast.weather.notes = {hostile};
    forecast.members = 200;
    forecast.seed = 7;
    forecast.with_catches = true;
    for (std::size_t m = 0; m < milestone_kinds; ++m) {
        DateOdds& odds = forecast.dates[m];
        const int middle = 118 + 12 * static_cast<int>(m);
        odds.day_10 = Day{middle - 8};
        odds.day_50 = Day{middle};
        odds.day_90 = Day{middle + 9};
        odds.normal_day_50 = Day{middle - 6};
        odds.days_late = sample_estimate(6.2, 0.6);
        odds.odds_past = m == 0 ? 0.2 : 0;
        odds.odds_later = 0.8;
        for (int day = 0; day < 365; ++day) odds.by_day.push_back(1 / (1 + std::exp(-(day - middle) / 4.0)));
    }
    forecast.swarms = sample_estimate(18, 0.9);
    forecast.normal = sample_estimate(20, 0.9);
    forecast.to_come = sample_estimate(17.5, 0.9);
    forecast.catches = sample_estimate(2.6, 0.1);
    forecast.catches_to_come = sample_estimate(2.5, 0.1);
    forecast.odds_begun = 0.2;
    for (int week = 0; week < 52; ++week) {
        const double x = (7 * week - 140) / 18.0;
        forecast.weeks.push_back({make_date(2026, 1, 5) + std::chrono::days{7 * week},
                                  sample_estimate(3 * std::exp(-x * x / 2), 0.1),
                                  sample_estimate(3.2 * std::exp(-(x + 0.4) * (x + 0.4) / 2), 0.1),
                                  sample_estimate(0.5 * std::exp(-x * x / 2), 0.02)});
    }
    for (int day = 1; day <= next_days; ++day) {
        forecast.next.push_back({forecast.weather.today + std::chrono::days{day}, 0.05 * day, 0.06 * day, 0.4, 0.1,
                                 14.5 + day, 1.5, day <= 3});
    }
    forecast.agenda = {{Task::hang, make_date(2026, 4, 12), true},
                       {Task::visit_from, make_date(2026, 4, 28), false},
                       {Task::visit_until, make_date(2026, 7, 4), false},
                       {Task::take_down, make_date(2026, 7, 20), false}};
    return forecast;
}

inline Hindcast sample_hindcast() {
    Hindcast hindcast;
    hindcast.years = {2018, 2019, 2020, 2021};
    hindcast.source = hostile;
    hindcast.seed = 7;
    hindcast.first_issue = make_date(2021, 3, 1);
    hindcast.notes = {hostile};
    for (const Milestone what : {Milestone::first, Milestone::half}) {
        for (int fortnight = 0; fortnight < 6; ++fortnight) {
            HindcastScore score;
            score.what = what;
            score.fortnight = fortnight;
            score.truths = 32;
            score.crps_normal_days = 5.5;
            score.skill = 0.1 * fortnight + 0.01 * static_cast<double>(what);
            score.crps_days = score.crps_normal_days * (1 - score.skill);
            score.skill_se = 0.05;
            score.bias_days = 0.4;
            score.width_days = 14;
            score.coverage_80 = 0.75 + 0.01 * fortnight;
            score.ranks = {0.13, 0.1, 0.1, 0.09, 0.08, 0.09, 0.1, 0.1, 0.1, 0.11};
            hindcast.scores.push_back(score);
        }
    }
    hindcast.observed = {{0, 4, -6, 5, 6, 5.5, 0.16, 0.1, 0.09}};
    return hindcast;
}

inline Learned sample_learned() {
    Learned learned;
    learned.log = "log.csv";
    learned.outcome = LearnOutcome::learnt;
    learned.unknowns = {{"first.unknown", hostile, "1/km2", {0.5, 0.1, 2}, true, {0.8, 0.3, 1.9}, 0.4, 0.02, 0.6, 0.2},
                        {"second.unknown", "another", "1", {0.5, 0.3, 0.7}, false, {0.5, 0.3, 0.7}, 0.1, 0.02, 0.1, 0}};
    learned.traps = {{"spot-1", 3, 4, 2.4, 2.9, 0.93, 0.2}, {"spot-2", 3, 0, 1.1, 0.9, 0.4, 1}};
    learned.years = {{2023, 2, 1, 1.2, 1.3, true}, {2024, 2, 3, 1.1, 1.2, false}};
    learned.swarms = 4;
    learned.trap_years = 6;
    learned.before = 3.5;
    learned.odds_so_few = 0.7;
    learned.odds_so_many = 0.45;
    learned.effective_draws = 4100;
    learned.next_before = {1.2, 0.5, 2.1, 0.4, 0.3};
    learned.next_after = {1.4, 0.8, 2.0, 0.3, 0.4};
    learned.next_overlay = {1.4, 0.7, 2.1, 0.32, 0.39};
    learned.notes = {hostile};
    learned.seed = 7;
    return learned;
}

/// Findings of every verdict, interval and footing.
inline std::vector<Verified> sample_verified() {
    const double open = std::numeric_limits<double>::infinity();
    const auto finding = [](double simulated, double se, double low, double high, Footing footing,
                            const std::string& departure) {
        Finding f;
        f.what = "share of workers that leave";
        f.unit = "";
        f.published = "0.75";
        f.simulated = simulated;
        f.simulated_se = se;
        f.low = low;
        f.high = high;
        f.why_interval = "stated spread";
        f.source = "Author 1990, A title";
        f.footing = footing;
        f.known_departure = departure;
        return f;
    };
    std::vector<Finding> leaving{finding(0.74, 0.01, 0.7, 0.8, Footing::calibrated, ""),
                                 finding(0.9, 0, 0.7, 0.8, Footing::independent, "the model has no rain"),
                                 finding(0.2, 0.02, 0.7, 0.8, Footing::independent, "")};
    leaving[1].source = hostile;
    std::vector<Finding> open_ended{finding(12, 1, -open, 20, Footing::independent, ""),
                                    finding(5, 0, 3, open, Footing::independent, ""),
                                    finding(std::nan(""), 0, 3, 4, Footing::independent, "nothing to measure")};
    return {{"leaving", "colony", "Workers that leave", leaving}, {"open", "scouts", hostile, open_ended}};
}

}  // namespace maybough
