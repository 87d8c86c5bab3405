// The plan as JSON: every number of it, keys with units.
#include "report/page.hpp"
#include "report/sections.hpp"
#include "report/work_days.hpp"

namespace maybough::report {
namespace {

Json curve_json(const Scenario& scenario, const Plan& plan) {
    Json curve = Json::array();
    for (const CurvePoint& point : plan.curve) {
        Json spots = Json::array();
        for (const TrapSetting& set : point.placement) spots.push_back(plain_text(scenario.spots.at(set.spot).id));
        curve.push_back({{"traps", point.traps},
                         {"spots", std::move(spots)},
                         {"catches", json_estimate(point.catches)},
                         {"cost", json_estimate(point.cost)},
                         {"value", json_estimate(point.value)},
                         {"net", json_estimate(point.net)},
                         {"marginal_catches", json_estimate(point.marginal_catches)},
                         {"marginal_net", json_estimate(point.marginal_net)},
                         {"outlay", json_number(point.outlay)},
                         {"hours", json_number(point.hours)},
                         {"odds_at_least", odds_json(point.odds_at_least)},
                         {"worst_tenth_catches", json_number(point.worst_tenth_catches)}});
    }
    return curve;
}

Json traps_json(const Scenario& scenario, const Plan& plan) {
    Json traps = Json::array();
    for (std::size_t i = 0; i < plan.traps.size(); ++i) {
        const PlannedTrap& planned = plan.traps[i];
        Json trap = json_trap(scenario, planned.setting, i + 1);
        trap["rank"] = planned.rank;
        trap["catches"] = json_estimate(planned.catches);
        const double all = recommended_point(plan).catches.mean;
        trap["share"] = json_number(all > 0 ? planned.catches.mean / all : 0);
        trap["lost_without"] = json_estimate(planned.lost_without);
        const bool has_next = planned.next_spot < scenario.spots.size();
        trap["next_spot"] = has_next ? Json(plain_text(scenario.spots.at(planned.next_spot).id)) : Json(nullptr);
        trap["next_spot_name"] = has_next ? Json(spot_name(scenario, planned.next_spot)) : Json(nullptr);
        trap["lost_at_next_spot"] = has_next ? json_estimate(planned.next_difference) : Json(nullptr);
        trap["net_lost_at_next_spot"] = has_next ? json_estimate(planned.next_net_loss) : Json(nullptr);
        traps.push_back(std::move(trap));
    }
    return traps;
}

Json kinds_json(const Scenario& scenario, const Placement& placement) {
    Json kinds = Json::array();
    for (const KindNeed& need : kinds_needed(scenario, placement)) {
        kinds.push_back({{"kind", plain_text(scenario.kinds.at(need.kind).id)},
                         {"name", kind_name(scenario, need.kind)},
                         {"used", need.used},
                         {"to_build", need.to_build},
                         {"material", json_number(need.material)},
                         {"build_hours", json_number(need.build_hours)}});
    }
    return kinds;
}

Json tried_json(const Scenario& scenario, const Plan& plan) {
    Json list = Json::array();
    for (const TriedDesign& tried : plan.tried) {
        Json spots = Json::array();
        for (const TrapSetting& set : tried.placement) spots.push_back(plain_text(scenario.spots.at(set.spot).id));
        list.push_back({{"spots", std::move(spots)},
                        {"seasons", tried.seasons},
                        {"catches", json_estimate(tried.catches)},
                        {"net", json_estimate(tried.net)},
                        {"foretold_catches", json_number(tried.foretold_catches)},
                        {"foretold_net", json_number(tried.foretold_net)},
                        {"left", tried.left}});
    }
    return list;
}

Json search_json(const Scenario& scenario, const Plan& plan) {
    Json tied = Json::array();
    for (const auto& group : plan.tied_spots) {
        Json spots = Json::array();
        for (const std::size_t spot : group) spots.push_back(plain_text(scenario.spots.at(spot).id));
        tied.push_back(std::move(spots));
    }
    return {{"search_catches", json_number(plan.search_catches)},
            {"bound_catches", json_number(plan.bound_catches)},
            {"gap_net", json_number(plan.gap_net)},
            {"gap_found_net", json_number(plan.gap_found_net)},
            {"surrogate",
             {{"hunts", plan.surrogate.hunts},
              {"rms_error", json_number(plan.surrogate.rms_error)},
              {"r_squared", json_number(plan.surrogate.r_squared)},
              {"predicted_share_in_traps", json_number(plan.surrogate.predicted_in_traps)},
              {"seen_share_in_traps", json_number(plan.surrogate.seen_in_traps)}}},
            {"catches_calibration", json_number(plan.catches_calibration)},
            {"worth_calibration", json_number(plan.worth_calibration)},
            {"tried", tried_json(scenario, plan)},
            {"contest_end", contest_words(scenario, plan)},
            {"indifference", json_number(plan.indifference)},
            {"hunts_exhaustive", json_number(plan.hunts_exhaustive)},
            {"hunts_asked", plan.hunts_asked},
            {"hunts_run", plan.hunts_run},
            {"tied_spots", std::move(tied)}};
}

Json sensitivities_json(const Plan& plan) {
    Json list = Json::array();
    for (const Sensitivity& s : ranked(plan.sensitivities)) {
        const ParameterEntry* entry = find_parameter(s.key);
        list.push_back({{"key", plain_text(s.key)},
                        {"unit", entry == nullptr ? "" : std::string(entry->row.unit)},
                        {"low", json_number(s.low)},
                        {"high", json_number(s.high)},
                        {"catches_at_low", json_number(s.catches_at_low)},
                        {"catches_at_high", json_number(s.catches_at_high)},
                        {"best_traps_at_low", s.best_traps_at_low},
                        {"best_traps_at_high", s.best_traps_at_high},
                        {"share_of_catch", json_number(s.share_of_catch)},
                        {"share_of_catch_se", json_number(s.share_of_catch_se)},
                        {"share_of_decision", json_number(s.share_of_decision)},
                        {"worth_knowing", json_number(s.worth_knowing)}});
    }
    return list;
}

Json terms_json(const std::vector<ChangedTerms>& terms, const char* amount) {
    Json list = Json::array();
    for (const ChangedTerms& changed : terms) {
        list.push_back({{amount, json_number(changed.amount)},
                        {"best_traps", changed.best_traps},
                        {"net", json_number(changed.net)}});
    }
    return list;
}

Json regret_json(const Plan& plan) {
    return {{"worth_knowing_all", json_number(plan.worth_knowing_all)},
            {"expected_regret", json_number(plan.expected_regret)},
            {"worst_regret", json_number(plan.worst_regret)},
            {"if_swarm_value", terms_json(plan.if_swarm_value, "times_swarm_value")},
            {"if_budget", terms_json(plan.if_budget, "budget")}};
}

Json work_json(const Scenario& scenario, const Placement& placement) {
    Json days = Json::array();
    for (const auto& [day, work] : work_days(scenario, placement)) {
        days.push_back({{"date", iso(date_of(scenario, day))}, {"work", work_numbers(work)}});
    }
    return days;
}

Json effort_json(const Plan& plan) {
    return {{"seed", plan.effort.seed},
            {"record_seasons", plan.effort.record_seasons},
            {"confirm_seasons", plan.effort.confirm_seasons},
            {"question",
             {{"max_traps", plan.question.max_traps},
              {"budget", json_number(plan.question.budget)},
              {"hours", json_number(plan.question.hours)},
              {"exactly", plan.question.exactly},
              {"at_least_swarms", plan.question.at_least_swarms},
              {"at_least_odds", json_number(plan.question.at_least_odds)}}}};
}

}  // namespace

Json plan_as_json(const Scenario& scenario, const Plan& plan, const Provenance& origin) {
    const CurvePoint& best = recommended_point(plan);
    Json json;
    json["file_kind"] = "maybough plan";
    json["format"] = 1;
    json["origin"] = json_origin(origin);
    json["scenario"] = json_scenario(scenario);
    json["answer"] = plan_answer(scenario, plan);
    json["recommended_traps"] = best.traps;
    json["recommended_low"] = plan.recommended_low;
    json["recommended_high"] = plan.recommended_high;
    json["why_it_stops"] = stop_words(plan);
    json["kinds"] = kinds_json(scenario, best.placement);
    json["traps"] = traps_json(scenario, plan);
    json["curve"] = curve_json(scenario, plan);
    json["calendar"] = calendar_json(scenario, plan.swarm_days, plan.catch_days);
    json["work"] = work_json(scenario, best.placement);
    json["sensitivities"] = sensitivities_json(plan);
    json["robustness"] = regret_json(plan);
    json["search"] = search_json(scenario, plan);
    json["effort"] = effort_json(plan);
    json["assumptions"] = assumptions(scenario);
    json["cautions"] = cautions();
    return json;
}

std::string plan_json(const Scenario& scenario, const Plan& plan, const Provenance& origin) {
    return json_text(plan_as_json(scenario, plan, origin), 1) + "\n";
}

}  // namespace maybough::report
