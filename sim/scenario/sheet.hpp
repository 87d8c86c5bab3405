// Rows of named texts, whatever file they come from (CSV, GPX, GeoJSON), and columns whose names state a unit.
#pragma once

#include <map>
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
};

/// Reads places: CSV by its header, GPX 1.1 waypoints (name -> id, desc -> name), GeoJSON point features (properties).
/// Every row has latitude_deg and longitude_deg as far as the file gives them.
Sheet read_sheet_of_points(const std::string& path);
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
