// Scenario: files become values. JSON, CSV, GHCN-Daily, GPX, GeoJSON in; one checked Scenario out; schema; starters.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "keeper/keeper.hpp"
#include "landscape/landscape.hpp"
#include "parameters/parameters.hpp"
#include "scouts/scouts.hpp"
#include "weather/weather.hpp"

namespace maybough::scenario {

/// Everything one run needs, read and checked.
struct Scenario {
    std::string name;
    std::string description;
    std::string folder;  ///< where its files lie
    std::string text;    ///< scenario.json as read, for provenance
    int year = 2026;     ///< the season planned for
    Land land;
    std::vector<Apiary> apiaries;
    HiveManagement apiary_management;
    std::vector<Spot> spots;
    std::vector<TrapKind> kinds;
    Keeper keeper;
    Placement placement;   ///< traps as set, for `season` and as one side of `compare`; may be empty
    WeatherRecord record;  ///< empty days where the scenario gives normals instead
    QualityReport weather_quality;
    Climate climate;
    Parameters parameters;                     ///< defaults, with the scenario's own values put over them
    std::map<std::string, Belief> beliefs;     ///< by key; rows not named keep belief_of(row)
    std::map<std::string, std::string> given;  ///< key -> where it was set, for `check`

    Date first_day() const;  ///< of the simulated year
    int days() const;
};

/// Reads and checks a scenario: a folder with scenario.json, or that file. `overlays` are scenario files with only
/// `parameters` and `beliefs`, put over it in turn. Throws InputError.
Scenario read_scenario(const std::string& path, const std::vector<std::string>& overlays = {});

/// A weather file in any form we know, told by its content: GHCN-Daily fixed width or CSV, EPW, CSV with units.
/// `station` picks one of several. Throws InputError with file and line.
WeatherRecord read_weather(const std::string& path, const std::string& station = "");

/// The same with what was met on the way. `columns` gives our column names (with unit) to a CSV file's own headers.
struct WeatherReading {
    WeatherRecord record;
    std::string form;  ///< which of the forms it was
    int traces = 0;    ///< rain marked as a trace, taken as 0 mm
    int flagged = 0;   ///< values that had failed the archive's own checks, taken as missing
};
WeatherReading read_weather_file(const std::string& path, const std::string& station = "",
                                 const std::map<std::string, std::string>& columns = {});

/// A placement file: CSV with spot,kind,height_m,facing,hang,take_down,visit_every_days,lured.
Placement read_placement(const std::string& path, const Scenario& scenario);

/// One year of a keeper's catch log: traps as they hung, in days of that simulated year, and what each took.
struct LoggedSeason {
    int year = 0;  ///< in which the simulated year begins, as Scenario::year
    Placement placement;
    std::vector<int> swarms;               ///< by trap
    std::vector<std::vector<Day>> caught;  ///< by trap: days on which swarms moved in, as far as noted
};
struct CatchLog {
    std::string file;
    std::vector<LoggedSeason> seasons;  ///< in rising order of years
};
/// A catch log: CSV with year,spot,swarms and, where known, kind,height_m,facing,hung,taken_down,visited_every_days,
/// visits,lured,caught,notes. Where the kind is not noted, it is that of the trap set at the spot now, else the
/// scenario's first. Throws InputError with file and line, also for spots and kinds of another place.
CatchLog read_catch_log(const std::string& path, const Scenario& scenario);

/// JSON Schema (2020-12) of scenario.json, generated from the declarations the reader itself uses.
std::string scenario_schema();

/// Finds the spot or kind of this id; throws InputError at `place` with the nearest known.
std::size_t spot_index(const Scenario& scenario, const std::string& id, const std::string& place);
std::size_t kind_index(const Scenario& scenario, const std::string& id, const std::string& place);

/// What a starter scenario is made from.
struct Starter {
    std::string name = "New place";
    LatLon centre;
    double radius_m = 3000;
    std::string country = "farmland";  ///< a habitat name for what lies everywhere
    std::string spots_file;            ///< CSV, GPX or GeoJSON; empty: a few example spots
    std::string hives_file;
    std::string weather_file;  ///< empty: twelve normals to be corrected by the user
};
/// Writes a scenario folder; refuses one that exists and is not empty.
void write_starter(const std::string& folder, const Starter& starter);

/// What `check` prints: what will be assumed, where each value came from, and what is implausible.
std::string describe(const Scenario& scenario);

}  // namespace maybough::scenario

namespace maybough {
using namespace scenario;  // so that rooms to the right need no prefix
}
