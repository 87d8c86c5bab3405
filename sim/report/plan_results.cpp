// The plan in a results file: written, and read back for making its outputs again.
#include "report/result_columns.hpp"
#include "report/whole_file.hpp"

namespace maybough::report {

void write_plan_results(const std::string& path, const Scenario& scenario, const Plan& plan, const Provenance& origin) {
    WholeFile whole(path);
    {
        Hdf5Writer file(whole.temporary());
        begin_results(file, "plan", scenario, origin);
        write_scenario(file, scenario);
        plan_columns().write(file, "/plan/summary", {plan});
        curve_columns().write(file, "/plan/curve", plan.curve);
        std::vector<PlacedTrap> placed;
        std::vector<OddsRow> odds;
        for (std::size_t k = 0; k < plan.curve.size(); ++k) {
            add_placed(placed, k, plan.curve[k].placement);
            add_odds(odds, k, plan.curve[k].odds_at_least);
        }
        placed_trap_columns().write(file, "/plan/curve_traps", placed);
        odds_columns().write(file, "/plan/odds", odds);
        planned_trap_columns().write(file, "/plan/traps", plan.traps);
        tried_columns().write(file, "/plan/tried", plan.tried);
        std::vector<PlacedTrap> tried;
        for (std::size_t i = 0; i < plan.tried.size(); ++i) add_placed(tried, i, plan.tried[i].placement);
        placed_trap_columns().write(file, "/plan/tried_traps", tried);
        sensitivity_columns().write(file, "/plan/sensitivities", plan.sensitivities);
        changed_terms_columns().write(file, "/plan/if_swarm_value", plan.if_swarm_value);
        changed_terms_columns().write(file, "/plan/if_budget", plan.if_budget);
        std::vector<TiedSpot> tied;
        for (std::size_t group = 0; group < plan.tied_spots.size(); ++group) {
            for (const std::size_t spot : plan.tied_spots[group]) tied.push_back({group, spot});
        }
        tied_spot_columns().write(file, "/plan/tied_spots", tied);
        day_columns().write(file, "/plan/days", day_rows(scenario, plan.swarm_days, plan.catch_days));
        swarm_square_columns().write(file, "/plan/swarm_squares", plan.swarm_squares);
        end_results(file);
    }
    whole.keep();
}

namespace {

Plan read_plan(const Hdf5Reader& file) {
    std::vector<Plan> summary = plan_columns().read(file, "/plan/summary");
    if (summary.size() != 1) throw InputError(file.path() + ": /plan/summary", "is not one row");
    Plan plan = std::move(summary.front());
    plan.curve = curve_columns().read(file, "/plan/curve");
    for (const PlacedTrap& row : placed_trap_columns().read(file, "/plan/curve_traps")) {
        plan.curve.at(row.placement).placement.push_back(row.setting);
    }
    for (const OddsRow& row : odds_columns().read(file, "/plan/odds")) {
        plan.curve.at(row.placement).odds_at_least.push_back(row.share);
    }
    plan.traps = planned_trap_columns().read(file, "/plan/traps");
    plan.tried = tried_columns().read(file, "/plan/tried");
    for (const PlacedTrap& row : placed_trap_columns().read(file, "/plan/tried_traps")) {
        plan.tried.at(row.placement).placement.push_back(row.setting);
    }
    plan.sensitivities = sensitivity_columns().read(file, "/plan/sensitivities");
    plan.if_swarm_value = changed_terms_columns().read(file, "/plan/if_swarm_value");
    plan.if_budget = changed_terms_columns().read(file, "/plan/if_budget");
    for (const TiedSpot& row : tied_spot_columns().read(file, "/plan/tied_spots")) {
        if (row.group >= plan.tied_spots.size()) plan.tied_spots.resize(row.group + 1);
        plan.tied_spots[row.group].push_back(row.spot);
    }
    for (const DayRow& row : day_columns().read(file, "/plan/days")) {
        plan.swarm_days.push_back(row.swarms);
        plan.catch_days.push_back(row.catches);
    }
    if (file.has_column("/plan/swarm_squares", "swarms")) {
        plan.swarm_squares = swarm_square_columns().read(file, "/plan/swarm_squares");
    }
    return plan;
}

}  // namespace

PlanResults read_plan_results(const std::string& path) {
    const Hdf5Reader file(path);
    PlanResults results;
    results.origin = check_results(file, "plan");
    try {
        results.scenario = read_scenario_tables(file);
        results.plan = read_plan(file);
    } catch (const std::out_of_range&) {
        throw InputError(path, "points at rows it does not have", "the results file is damaged");
    }
    return results;
}

}  // namespace maybough::report
