// Report: results file, terminal tables, plan.json, waypoints, map data, tables, page.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "experiments/experiments.hpp"

namespace maybough::report {

/// What every result file says of its run. Clock time is kept apart: comparisons skip it.
struct Provenance {
    std::string command_line;
    std::string command;  ///< "plan", "season", ...
    std::string version;
    std::string flags;  ///< compiler and build type
    std::uint32_t seed = 1;
    std::string written_at;  ///< ISO 8601, the only clock reading in a result
};

/// The plan for the terminal, at most 100 columns wide: the answer, the traps, the curve, what it rests on.
std::string plan_table(const Scenario& scenario, const Plan& plan, const Provenance& origin = {});
/// An ensemble of seasons for one placement.
std::string season_table(const Scenario& scenario, const SeasonSummary& summary, const Placement& placement);
/// Placements side by side; differences are against the first.
std::string compare_table(const Scenario& scenario, const std::vector<ComparedPlacement>& sides);

/// Writers. Each writes a temporary name beside the target and renames it; throws RunError when the disk refuses.
void write_plan_results(const std::string& path, const Scenario& scenario, const Plan& plan, const Provenance& origin);
void write_season_results(const std::string& path, const Scenario& scenario, const SeasonSummary& summary,
                          const Placement& placement, const Provenance& origin);
void write_compare_results(const std::string& path, const Scenario& scenario,
                           const std::vector<ComparedPlacement>& sides, const Provenance& origin);
/// What a results file of `plan` holds, enough to make every output again (not to simulate again: climate and folder
/// are not in it). Throws InputError where the file is not whole, of a newer format, or of another kind.
struct PlanResults {
    Scenario scenario;
    Plan plan;
    Provenance origin;
};
PlanResults read_plan_results(const std::string& path);
/// The same for a comparison, and for seasons of one placement (catches without the day they were taken).
struct CompareResults {
    Scenario scenario;
    std::vector<ComparedPlacement> sides;
    Provenance origin;
};
CompareResults read_compare_results(const std::string& path);
struct SeasonResults {
    Scenario scenario;
    SeasonSummary summary;
    Placement placement;
    Provenance origin;
};
SeasonResults read_season_results(const std::string& path);
/// What a results file holds: "plan", "season" or "compare". Throws InputError where it is none of ours.
std::string results_kind(const std::string& path);
std::string plan_json(const Scenario& scenario, const Plan& plan, const Provenance& origin);
std::string traps_gpx(const Scenario& scenario, const Placement& placement, const Provenance& origin);
std::string traps_geojson(const Scenario& scenario, const Placement& placement, const Provenance& origin);
std::string traps_csv(const Scenario& scenario, const Placement& placement);
/// RFC 5545 calendar: hang, visits, new lures, take down, as days without hours.
std::string calendar_ics(const Scenario& scenario, const Placement& placement, const Provenance& origin);
/// One HTML file that opens offline, for each command that makes results.
std::string plan_page(const Scenario& scenario, const Plan& plan, const Provenance& origin);
std::string season_page(const Scenario& scenario, const SeasonSummary& summary, const Placement& placement,
                        const Provenance& origin);
std::string compare_page(const Scenario& scenario, const std::vector<ComparedPlacement>& sides,
                         const Provenance& origin);
std::string forecast_page(const Scenario& scenario, const Forecast& forecast, const Provenance& origin);
std::string hindcast_page(const Scenario& scenario, const Hindcast& hindcast, const Provenance& origin);
std::string learn_page(const Scenario& scenario, const Learned& learned, const Provenance& origin);
std::string verify_page(const std::vector<Verified>& verified, std::uint32_t seed, const Provenance& origin);

/// One season as it was lived, for the page that plays it.
struct SeasonReplay {
    std::uint32_t season = 1;  ///< counted from 1
    Placement placement;
    SkyYear sky;
    SeasonRecord record;
    SeasonLog log;
    std::vector<ColonyDiary> diaries;
};
/// One HTML file: map with time slider, strips, each colony's curves and why it swarmed.
std::string season_replay_page(const Scenario& scenario, const SeasonReplay& replay, const Provenance& origin);
/// Swarms of the season in order of hanging, for the terminal: number, date, parent, fate. At most `rows` of those
/// nearest the area's centre; caught ones always.
std::string season_replay_table(const Scenario& scenario, const SeasonReplay& replay, std::size_t rows);

/// One run of a house-hunt.
struct HuntRun {
    std::string title;
    HuntScene scene;
    HuntResult result;
    HuntTrace trace;
};
/// A hunt, and where asked for the same with one thing changed, on the same random numbers.
struct HuntReplay {
    std::uint32_t season = 1;
    std::size_t swarm = 1;  ///< counted from 1, in order of hanging
    Placement placement;
    SkyYear sky;
    ScoutParameters scouts;
    std::vector<HuntRun> runs;
};
/// One HTML file: scouts, dances, quorum, lift-off; two runs side by side.
std::string hunt_replay_page(const Scenario& scenario, const HuntReplay& replay, const Provenance& origin);
/// How each run went, in words, one paragraph each.
std::vector<std::string> hunt_words(const Scenario& scenario, const HuntReplay& replay);
/// "Trap 2 (Old oak)", "Cavity C", "Rival trap".
std::vector<std::string> site_names(const Scenario& scenario, const HuntReplay& replay, const HuntRun& run);

/// Writes text whole or not at all.
void write_text(const std::string& path, const std::string& text);

/// Cautions shown wherever traps are hung: ladders, stings, disease, buildings, law and leave.
std::vector<std::string> cautions();

/// This year's forecast for the terminal; its weeks and next days as CSV; what to do when as an RFC 5545 calendar.
std::string forecast_table(const Scenario& scenario, const Forecast& forecast);
std::string forecast_weeks_csv(const Forecast& forecast);
std::string forecast_days_csv(const Forecast& forecast);
std::string forecast_ics(const Scenario& scenario, const Forecast& forecast, const Provenance& origin);
/// The skill of past forecasts for the terminal, with the statement of what skill it is; and as CSV for a plot.
std::string hindcast_table(const Scenario& scenario, const Hindcast& hindcast);
std::string hindcast_csv(const Hindcast& hindcast);

/// What a catch log taught: for the terminal, as a scenario overlay that every command takes, and as CSV.
std::string learn_table(const Scenario& scenario, const Learned& learned);
std::string learned_overlay(const Learned& learned);
std::string learned_csv(const Learned& learned);

/// How many findings agree, depart as known, and rest on a constant chosen so that they come out.
struct VerifyCount {
    int findings = 0;
    int agree = 0;
    int known = 0;  ///< depart, and it is said why
    int calibrated = 0;
};
VerifyCount count_verdicts(const std::vector<Verified>& verified);
/// The same in a sentence or two, and the verdict on one finding: "agrees", "departs, known", "DEPARTS".
std::string verdicts_in_words(const VerifyCount& count);
std::string verdict_of(const Finding& finding);
/// Published beside simulated for the terminal, and as CSV.
std::string verify_table(const std::vector<Verified>& verified);
std::string verify_csv(const std::vector<Verified>& verified);

}  // namespace maybough::report

namespace maybough {
using namespace report;  // so that rooms to the right need no prefix
}
