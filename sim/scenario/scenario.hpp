// Scenario: files become values. JSON, CSV, GHCN-Daily, GPX, GeoJSON in; one checked Scenario out; schema; starters.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
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
    std::string map;     ///< streets, water, buildings and names to draw, as JSON text; empty: none
    std::string credit;  ///< whom the makers of land data want named
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
    std::string habitats_file;         ///< GeoJSON, as `land` writes it; empty: none
    std::string map_file;              ///< the map that `land` writes beside it
    std::string country = "farmland";  ///< a habitat name for what lies everywhere
    std::string spots_file;            ///< CSV, GPX or GeoJSON; empty: a few example spots
    std::string hives_file;
    std::optional<int> hives_each;  ///< where neither a column nor a note of hives_file says how many
    std::string weather_file;       ///< empty: twelve normals to be corrected by the user
};
/// The centre of the places of files, and a radius in metres that holds them with some room (a whole 100 m, at least
/// 1 km). Throws InputError where there are none, or where they lie farther apart than one area may be.
struct Surroundings {
    LatLon centre;
    double radius_m = 0;
};
Surroundings surroundings_of(const std::string& spots_file, const std::string& hives_file);

/// Whether a scenario's spots are the examples of a starter.
bool has_example_spots(const Scenario& scenario);

/// Writes a scenario folder; refuses one that exists and is not empty.
void write_starter(const std::string& folder, const Starter& starter);

// For rooms that read further forms and for command lines.
/// "46.8,-6.0", "46,8; -6,0", "46°48'N, 6°W". Throws InputError at `place`.
LatLon place_in_words(const std::string& text, const std::string& place);
/// Metres from "3km", "2500 m", "2mi", "800ft" or "3000", within min..max metres. Throws InputError at `place`.
double metres_in_words(const std::string& text, const std::string& place, double min, double max);
/// Throws InputError unless `path` is a regular file of at most `most_bytes`.
void check_regular_file(const std::string& path, std::uintmax_t most_bytes = std::uintmax_t{4} << 30);
/// One clean line of at most `longest` bytes, cut between characters.
std::string short_line(const std::string& text, std::size_t longest);
/// Rows of a CSV file that has these columns: where each stands, and its cells in the order asked for.
struct PlacedCells {
    std::string place;
    std::vector<std::string> cells;
};
std::vector<PlacedCells> read_columns(const std::string& path, const std::vector<std::string>& columns);

/// What `check` prints: what will be assumed, where each value came from, and what is implausible.
std::string describe(const Scenario& scenario);

}  // namespace maybough::scenario

namespace maybough {
using namespace scenario;  // so that rooms to the right need no prefix
}
