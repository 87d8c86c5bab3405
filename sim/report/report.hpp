// Report: results file, terminal tables, plan.json, waypoints, map data, tables, page.
#pragma once

#include <string>
#include <vector>

#include "outlook/outlook.hpp"

namespace maybough {

/// What every result file says of its run. Clock time is kept apart: comparisons skip it.
struct Provenance {
    std::string command_line;
    std::string command;          ///< "plan", "season", ...
    std::string version;
    std::string flags;            ///< compiler and build type
    std::uint32_t seed = 1;
    std::string written_at;       ///< ISO 8601, the only clock reading in a result
};

/// The plan as a readable table, with `width` columns at most.
std::string plan_table(const Scenario& scenario, const Plan& plan);
std::string season_table(const Scenario& scenario, const SeasonSummary& summary, const Placement& placement);
std::string compare_table(const Scenario& scenario, const std::vector<ComparedPlacement>& sides);

/// Writers. Each writes a temporary name beside the target and renames it; throws RunError when the disk refuses.
void write_plan_results(const std::string& path, const Scenario& scenario, const Plan& plan, const Provenance& origin);
void write_season_results(const std::string& path, const Scenario& scenario, const SeasonSummary& summary,
                          const Placement& placement, const Provenance& origin);
void write_compare_results(const std::string& path, const Scenario& scenario,
                           const std::vector<ComparedPlacement>& sides, const Provenance& origin);
std::string plan_json(const Scenario& scenario, const Plan& plan, const Provenance& origin);
std::string traps_gpx(const Scenario& scenario, const Placement& placement, const Provenance& origin);
std::string traps_geojson(const Scenario& scenario, const Placement& placement, const Provenance& origin);
std::string traps_csv(const Scenario& scenario, const Placement& placement);
std::string plan_page(const Scenario& scenario, const Plan& plan, const Provenance& origin);

/// Writes text whole or not at all.
void write_text(const std::string& path, const std::string& text);

/// Cautions shown wherever traps are hung: ladders, stings, disease, buildings, law and leave.
std::vector<std::string> cautions();

}  // namespace maybough
