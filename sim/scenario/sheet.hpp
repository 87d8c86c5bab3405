// Rows of named texts, whatever file they come from (CSV, GPX, GeoJSON), and columns whose names state a unit.
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "scenario/text_file.hpp"

namespace maybough::scenario {

struct SheetRow {
    std::string place;  ///< "spots.csv:7" or "spots.geojson: /features/3", for messages
    std::map<std::string, std::string> cells;

    /// The text under `name`, empty where there is none.
    std::string_view text(const std::string& name) const;
};

struct Sheet {
    std::string file;
    std::vector<std::string> columns;
    DecimalSign decimal_sign = DecimalSign::point;
    std::vector<SheetRow> rows;
    bool foreign = false;  ///< written by a program for its own ends: what we do not know there is no slip of the pen
};

/// What the points of a file are wanted for: a point that says it is the other is left out.
enum class Wanted : int { spots, hives };

/// Reads places: CSV, GPX, KML, KMZ or GeoJSON, told by content. Columns come under our own names whatever the file
/// calls them; latitude_deg and longitude_deg are plain degrees; every row has an id, made from its name where it has
/// none. Throws InputError, for a workbook, shapefile or GeoPackage with the line that converts it.
Sheet read_sheet_of_points(const std::string& path, Wanted wanted);
Sheet sheet_of_kml(const std::string& text, const std::string& file);

/// The text of the one .kml in a KMZ; at most 64 MB of it. Throws InputError.
std::string kml_in_kmz(const std::string& path);

/// Whether a file's first bytes are those of a ZIP archive.
bool is_zip(std::string_view bytes);

/// Puts a sheet's columns under our names (place_columns.cpp). Throws InputError naming every row at fault.
void settle_columns(Sheet& sheet, Wanted wanted);

/// Degrees from 51.3, 51,3, 51.3 N, 51°18'N, 51 18 00 N, W 0 7 30; nothing where the text is none. `axis` is 'N' for
/// latitudes, 'E' for longitudes: hemispheres of the other axis are refused.
std::optional<double> degrees_in(std::string_view text, char axis);

/// An id from a name: blanks and marks become -; never empty, never begins with = + - @.
std::string id_of_name(std::string_view name);
Sheet sheet_of_csv(const std::string& text, const std::string& file);
Sheet sheet_of_gpx(const std::string& text, const std::string& file);
Sheet sheet_of_geojson(const std::string& text, const std::string& file);

/// A unit as a column name's ending, and how it becomes ours: ours = (value - zero) * factor.
struct Unit {
    std::string_view suffix;
    double factor = 1;
    double zero = 0;
};

/// One quantity that a column may state in several units; the first is ours.
struct Quantity {
    std::string_view name;  ///< "tmax": columns tmax_c, tmax_f
    std::span<const Unit> units;
};

std::span<const Unit> temperature_units();  ///< c, f
std::span<const Unit> height_units();       ///< m, ft
std::span<const Unit> road_units();         ///< km, mi
std::span<const Unit> rain_units();         ///< mm, in
std::span<const Unit> wind_units();         ///< ms, kmh, mph, kn

/// The column that holds a quantity, and its unit.
struct UnitColumn {
    std::string column;  ///< empty where there is none
    Unit unit;
    double ours(double value) const { return (value - unit.zero) * unit.factor; }
};

/// Finds the column of `quantity`; throws InputError at `place` for two of them or for one without a unit.
UnitColumn find_unit_column(const std::vector<std::string>& columns, const Quantity& quantity,
                            const std::string& place);

/// Throws InputError at `place` for a column that is not among `known`, offering the nearest.
void expect_columns(const std::vector<std::string>& columns, const std::vector<std::string>& known,
                    const std::string& place);

/// A number under `column` within min..max; `fallback` where the cell is empty.
double number_in(const SheetRow& row, const std::string& column, DecimalSign sign, double min, double max,
                 double fallback);

/// A compass direction in degrees (0 <= d < 360) from "135", "SE" or "sse". Throws InputError.
double facing_in(std::string_view text, const std::string& place);

/// yes, no, true, false, 1, 0. Throws InputError.
bool yes_no_in(std::string_view text, const std::string& place);

}  // namespace maybough::scenario
