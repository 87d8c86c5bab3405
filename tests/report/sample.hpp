// A small made-up plan for the tests of the report: every field filled, names that need care in every format.
#pragma once

#include <algorithm>
#include <cmath>

#include "report/report.hpp"

namespace maybough {

inline Estimate sample_estimate(double mean, double se) {
    return {.mean = mean,
            .se = se,
            .half_width_95 = 1.98 * se,
            .sd_chance = 1.4 * mean,
            .sd_ignorance = 0.7 * mean,
            .low = 0.3 * mean,
            .high = 1.9 * mean,
            .n = 600};
}

/// Six spots, two kinds; spot 1's name is hostile to XML, HTML, JSON and CSV at once.
inline Scenario sample_scenario() {
    Scenario scenario;
    scenario.name = "Reedmere & Hollow <east>";
    scenario.description = "A sample.";
    scenario.text = "{\"format\": 1, \"name\": \"Reedmere\"}\n";
    scenario.land.centre = {48.25, 9.5};
    scenario.land.radius_m = 2500;
    scenario.land.patches = {
        {Habitat::woodland, "Beech & oak", {{-2000, -500}, {-500, -500}, {-500, 900}, {-2000, 900}}},
        {Habitat::town, "Reedmere", {{200, -600}, {1300, -600}, {1300, 500}, {200, 500}}},
        {Habitat::water, "Mere", {{-300, -1800}, {900, -1700}, {600, -1200}, {-200, -1300}}}};
    scenario.apiaries = {{"mill", {400, 900}, 6}, {"school", {900, -200}, 3}};
    const char* names[] = {"Mill orchard",
                           "Anna's \"barn\" <img src=x onerror=alert(1)> </script> & co, north;\\side",
                           "Z\xC3\xBC"
                           "ndel \xE2\x80\x93 gate",
                           "Quarry\tedge\x1B[31m",
                           "",
                           "Far oak"};
    for (int i = 0; i < 6; ++i) {
        Spot spot;
        spot.id = "spot-" + std::to_string(i + 1);
        spot.name = names[i];
        spot.place = {48.25 + 0.004 * (i - 2), 9.5 + 0.006 * ((i * 2) % 5 - 2)};
        spot.at = {600.0 * ((i * 2) % 5 - 2), 445.0 * (i - 2)};
        spot.max_height_m = 5;
        spot.facings_deg = {90, 180};
        scenario.spots.push_back(spot);
    }
    TrapKind box;
    box.id = "box";
    box.name = "Deep nest box";
    box.owned = 1;
    TrapKind half;
    half.id = "half";
    half.name = "Half box";
    half.volume_l = 22;
    half.cost = 25.5;
    scenario.kinds = {box, half};
    scenario.keeper.budget = 400;
    scenario.keeper.relure_after_days = 60;
    scenario.record.source = "weather.csv";
    scenario.record.first = make_date(2020, 1, 1);
    scenario.record.days = {{4, -2, 1.5, 3}, {6, 0, 0, 2.5}, {std::nan(""), std::nan(""), 0, 2}};
    scenario.weather_quality.days = 3;
    scenario.weather_quality.missing_days = 1;
    scenario.weather_quality.warnings = {"one day is missing"};
    scenario.parameters.keeper = {};
    return scenario;
}

inline std::vector<SeasonShare> sample_odds(const std::vector<double>& shares) {
    std::vector<SeasonShare> odds;
    for (const double share : shares) odds.push_back({share, std::max(0.0, share - 0.05), std::min(1.0, share + 0.05)});
    return odds;
}

inline TrapSetting sample_trap(std::size_t spot, std::size_t kind, double height_m, double facing_deg, int hang) {
    return {spot, kind, height_m, facing_deg, Day{hang}, Day{210}, 14, true};
}

inline Placement sample_placement() {
    return {sample_trap(0, 0, 3.5, 135, 94), sample_trap(1, 0, 4.25, 180, 94), sample_trap(2, 1, 2, 100, 101)};
}

inline Plan sample_plan() {
    Plan plan;
    const Placement all = [] {
        Placement traps = sample_placement();
        traps.push_back(sample_trap(5, 1, 2.5, 225, 101));
        return traps;
    }();
    const double catches[] = {0, 1.12, 1.95, 2.61, 2.84};
    for (int k = 0; k <= 4; ++k) {
        CurvePoint point;
        point.traps = k;
        point.placement.assign(all.begin(), all.begin() + k);
        point.catches = sample_estimate(catches[k], 0.05);
        point.cost = sample_estimate(k == 0 ? 0 : 18 + 31 * k, 0.4);
        point.value = sample_estimate(80 * catches[k], 4);
        point.net = sample_estimate(80 * catches[k] - point.cost.mean, 4.1);
        point.marginal_catches = sample_estimate(k == 0 ? 0 : catches[k] - catches[k - 1], 0.03);
        point.marginal_net = sample_estimate(k == 0 ? 0 : 80 * (catches[k] - catches[k - 1]) - 31, 2.6);
        point.outlay = 40.0 * std::max(0, k - 1);
        point.hours = 5.5 * k;
        if (k > 0) point.odds_at_least = sample_odds({1 - 0.5 / k, 0.2 * k, 0.1 * k, 0.001});
        point.worst_tenth_catches = 0.1 * k;
        plan.curve.push_back(point);
    }
    plan.recommended = 3;
    plan.recommended_low = 3;
    plan.recommended_high = 4;
    plan.why_it_stops = "A fourth trap would catch 0.23 +- 0.03 more swarms a season, worth EUR 18, and cost EUR 31.";
    for (std::size_t i = 0; i < 3; ++i) {
        PlannedTrap trap;
        trap.setting = all[i];
        trap.catches = sample_estimate(1.1 - 0.2 * static_cast<double>(i), 0.04);
        trap.lost_without = sample_estimate(0.8 - 0.1 * static_cast<double>(i), 0.03);
        trap.rank = static_cast<int>(i) + 1;
        trap.next_spot = i < 2 ? 3 + i : 6;
        trap.next_setting = sample_trap(3, 0, 2, 90, 94);
        if (i < 2) trap.next_difference = sample_estimate(0.11, 0.04);
        if (i < 2) trap.next_net_loss = sample_estimate(9, 3);
        plan.traps.push_back(trap);
    }
    plan.tied_spots = {{2, 3}};
    plan.search_catches = 2.55;
    plan.bound_catches = 2.9;
    plan.gap_net = 14;
    plan.gap_found_net = 6;
    plan.tried = {{plan.curve.back().placement, 160, plan.curve.back().catches, plan.curve.back().net, 2.7, 41, true},
                  {plan.curve.at(1).placement, 32, plan.curve.at(1).catches, plan.curve.at(1).net, 1.4, 20, false}};
    plan.contest_end = ContestEnd::one_left;
    plan.indifference = 9.5;
    plan.catches_calibration = 0.97;
    plan.worth_calibration = 0.95;
    plan.hunts_exhaustive = 4.2e9;
    plan.surrogate = {4200, 0.031, 0.962, 0.286, 0.279};
    plan.sensitivities = {{"first.unknown", 0.5, 2, 2.5, 2.7, 3, 3, 0.02, 0.01, 0.4},
                          {"second.unknown", 100, 900, 1.2, 4.4, 2, 6, 0.7, 0.8, 11}};
    plan.worth_knowing_all = 14;
    plan.expected_regret = 12;
    plan.worst_regret = 70;
    plan.if_swarm_value = {{0.5, 1, 20}, {2, 4, 400}};
    plan.if_budget = {{100, 2, 90}};
    for (int day = 0; day < 365; ++day) {
        const double x = (day - 140) / 18.0;
        plan.swarm_days.push_back(0.22 * std::exp(-x * x / 2));
        plan.catch_days.push_back(0.05 * std::exp(-x * x / 2));
    }
    plan.swarm_squares = {{{-150, 150}, 300, 1.5}, {{450, -750}, 300, 0.25}};
    plan.hunts_asked = 90000;
    plan.hunts_run = 31000;
    plan.effort.seed = 7;
    plan.question.budget = 400;
    return plan;
}

inline Provenance sample_origin() {
    return {
        "maybough plan scenarios/reedmere --seed 7", "plan", "0.1.0", "g++ 12.2 Release", 7, "2026-01-31T09:30:00Z"};
}

}  // namespace maybough
