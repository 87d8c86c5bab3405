// Which columns the tables of a results file have: private to report/. Each list serves writing and reading alike.
#pragma once

#include "report/columns.hpp"

namespace maybough::report {

/// One trap of one placement among several (the curve's, a comparison's): which, and the trap as set.
struct PlacedTrap {
    std::size_t placement = 0;
    TrapSetting setting;
};
/// The chance of at least `swarms` in placement `placement`.
struct OddsRow {
    std::size_t placement = 0;
    std::int64_t swarms = 0;
    SeasonShare share;
};
struct TiedSpot {
    std::size_t group = 0;
    std::size_t spot = 0;
};
/// Means per day of the simulated year.
struct DayRow {
    std::string date;
    double swarms = 0;
    double catches = 0;
};

const Columns<CurvePoint>& curve_columns();
const Columns<PlannedTrap>& planned_trap_columns();
const Columns<TriedDesign>& tried_columns();
const Columns<Sensitivity>& sensitivity_columns();
/// All single figures of a plan: a table of one row.
const Columns<Plan>& plan_columns();
const Columns<PlacedTrap>& placed_trap_columns();
const Columns<OddsRow>& odds_columns();
const Columns<TiedSpot>& tied_spot_columns();
const Columns<ChangedTerms>& changed_terms_columns();
const Columns<DayRow>& day_columns();
const Columns<SwarmSquare>& swarm_square_columns();

std::vector<DayRow> day_rows(const Scenario& scenario, const std::vector<double>& swarms,
                             const std::vector<double>& catches);
/// Appends the traps of `placement` as rows of number `nr`.
void add_placed(std::vector<PlacedTrap>& rows, std::size_t nr, const Placement& placement);
void add_odds(std::vector<OddsRow>& rows, std::size_t nr, const std::vector<SeasonShare>& odds);

/// Scenario, parameters and weather: written with every kind of result, read back for making outputs again.
void write_scenario(Hdf5Writer& file, const Scenario& scenario);
Scenario read_scenario_tables(const Hdf5Reader& file);

/// Root attributes. begin: kind, format, provenance; end: `complete`, last of all.
void begin_results(Hdf5Writer& file, const std::string& kind, const Scenario& scenario, const Provenance& origin);
void end_results(Hdf5Writer& file);
/// Refuses what is no results file of this kind, unfinished, or of a newer format: throws InputError.
Provenance check_results(const Hdf5Reader& file, const std::string& kind);

}  // namespace maybough::report
