// Spots where a trap may hang: one record a column, rows of any of the three file forms.
#include <algorithm>
#include <array>
#include <map>
#include <sstream>

#include "base/base.hpp"
#include "scenario/places.hpp"
#include "scenario/sheet.hpp"

namespace maybough::scenario {

namespace {

/// One number of a spot: its column, units where it may state several, limits, and where it goes.
struct SpotNumber {
    std::string_view column;
    std::span<const Unit> units;  ///< empty: the column's name is complete
    double min;
    double max;
    double Spot::*to;
};

const std::vector<SpotNumber>& spot_numbers() {
    static const std::vector<SpotNumber> numbers{
        {"min_height", height_units(), 0, 30, &Spot::min_height_m},
        {"max_height", height_units(), 0, 30, &Spot::max_height_m},
        {"shade", {}, 0, 1, &Spot::shade},
        {"visibility", {}, 0, 1, &Spot::visibility},
        {"minutes_to_reach", {}, 0, 600, &Spot::minutes_to_reach},
        {"drive", road_units(), 0, 500, &Spot::drive_km},
    };
    return numbers;
}

void read_numbers(const Sheet& sheet, const SheetRow& row, Spot& spot) {
    for (const SpotNumber& number : spot_numbers()) {
        double& value = spot.*(number.to);
        UnitColumn column{std::string(number.column), {}};
        if (!number.units.empty()) column = find_unit_column(sheet.columns, {number.column, number.units}, sheet.file);
        if (column.column.empty() || row.text(column.column).empty()) continue;
        const double given = number_in(row, column.column, sheet.decimal_sign, 0, number.max / column.unit.factor, 0);
        value = column.ours(given);
    }
}

void read_heights(const Sheet& sheet, const SheetRow& row, Spot& spot) {
    const bool low_given = !find_unit_column(sheet.columns, {"min_height", height_units()}, sheet.file).column.empty();
    if (spot.max_height_m < spot.min_height_m && !low_given) spot.min_height_m = spot.max_height_m;
    if (spot.min_height_m > spot.max_height_m) {
        throw InputError(row.place, "found min_height " + shortest(spot.min_height_m) + " m above max_height " +
                                        shortest(spot.max_height_m) + " m");
    }
}

std::vector<double> facings_in(const SheetRow& row) {
    std::vector<double> facings;
    std::istringstream words{std::string(row.text("facings_deg"))};
    for (std::string word; words >> word;) {
        if (word == "any" || word == "ANY") return {};
        facings.push_back(facing_in(word, row.place + " facings_deg"));
    }
    std::sort(facings.begin(), facings.end());
    facings.erase(std::unique(facings.begin(), facings.end()), facings.end());
    return facings;
}

void read_use(const SheetRow& row, Spot& spot) {
    const std::string_view use = row.text("use");
    if (use.empty() || use == "may") return;
    if (use != "must" && use != "never") {
        throw InputError(row.place, "use: found \"" + std::string(use) + "\", expected may, must or never");
    }
    spot.must = use == "must";
    spot.never = use == "never";
}

LatLon place_in(const Sheet& sheet, const SheetRow& row) {
    for (const char* column : {"latitude_deg", "longitude_deg"}) {
        if (row.text(column).empty()) throw InputError(row.place, std::string(column) + " is missing");
    }
    constexpr double most_latitude_deg = 90;
    constexpr double most_longitude_deg = 180;
    const double latitude_deg =
        number_in(row, "latitude_deg", sheet.decimal_sign, -most_latitude_deg, most_latitude_deg, 0);
    const double longitude_deg =
        number_in(row, "longitude_deg", sheet.decimal_sign, -most_longitude_deg, most_longitude_deg, 0);
    return {latitude_deg, longitude_deg};
}

/// The id of a row, checked, and not one that stood before.
std::string id_in(const SheetRow& row, std::map<std::string, std::string>& seen) {
    const std::string id(row.text("id"));
    if (id.empty()) throw InputError(row.place, "the id is missing", "give every row an id of its own");
    check_id(id, row.place);
    const auto [other, fresh] = seen.emplace(id, row.place);
    if (!fresh) throw InputError(row.place, "the id \"" + id + "\" stands already at " + other->second, "rename one");
    return id;
}

void expect_needed(const Sheet& sheet, const std::vector<std::string>& known) {
    const std::string place =
        sheet.rows.front().place.find(": /") == std::string::npos ? sheet.file + ":1" : sheet.file;
    expect_columns(sheet.columns, known, place);
    for (const char* column : {"id", "latitude_deg", "longitude_deg"}) {
        if (std::find(sheet.columns.begin(), sheet.columns.end(), column) == sheet.columns.end()) {
            throw InputError(place, "the column \"" + std::string(column) + "\" is missing",
                             "found " + listed(sheet.columns, 12));
        }
    }
}

}  // namespace

const std::vector<std::string>& spot_columns() {
    static const std::vector<std::string> names{"id",           "name",         "latitude_deg",  "longitude_deg",
                                                "min_height_m", "max_height_m", "min_height_ft", "max_height_ft",
                                                "facings_deg",  "shade",        "visibility",    "minutes_to_reach",
                                                "drive_km",     "drive_mi",     "use",           "notes"};
    return names;
}

Point point_within(const LatLon& at, const Land& land, double reach_m, const std::string& place) {
    const LocalPlane plane(land.centre);
    const Point point = plane.to_plane(at);
    const double away_m = distance_m(point, {});
    if (away_m <= reach_m) return point;
    const bool swapped = distance_m(plane.to_plane({at.longitude_deg, at.latitude_deg}), {}) <= reach_m;
    std::ostringstream problem;
    problem.precision(0);
    problem << std::fixed << "lies " << away_m << " m from the centre, expected at most " << reach_m << " m";
    throw InputError(place, problem.str(), swapped ? "latitude and longitude look swapped" : "check its position");
}

std::vector<Spot> read_spots(const std::string& path, const Land& land) {
    const Sheet sheet = read_sheet_of_points(path);
    expect_needed(sheet, spot_columns());
    std::vector<Spot> spots;
    std::map<std::string, std::string> ids;
    std::map<SiteId, std::string> squares;
    for (const SheetRow& row : sheet.rows) {
        Spot spot;
        spot.id = id_in(row, ids);
        spot.name = row.text("name").empty() ? spot.id : row.text("name");
        spot.place = place_in(sheet, row);
        spot.at = point_within(spot.place, land, land.radius_m, row.place + ": spot " + spot.id);
        read_numbers(sheet, row, spot);
        read_heights(sheet, row, spot);
        spot.facings_deg = facings_in(row);
        read_use(row, spot);
        const auto [other, fresh] = squares.emplace(trap_site(spot.at), spot.id);
        if (!fresh) {
            throw InputError(row.place,
                             "the spots " + other->second + " and " + spot.id + " lie in the same square of " +
                                 shortest(trap_square_m) + " m",
                             "keep one of them or move one");
        }
        spots.push_back(std::move(spot));
    }
    return spots;
}

std::vector<Apiary> read_apiaries(const std::string& path, const Land& land) {
    const Sheet sheet = read_sheet_of_points(path);
    expect_needed(sheet, {"id", "name", "latitude_deg", "longitude_deg", "hives", "notes"});
    std::vector<Apiary> apiaries;
    std::map<std::string, std::string> ids;
    constexpr int most_hives = 500;
    for (const SheetRow& row : sheet.rows) {
        Apiary apiary;
        apiary.id = id_in(row, ids);
        apiary.at =
            point_within(place_in(sheet, row), land, farthest_from_centre_m, row.place + ": apiary " + apiary.id);
        if (const std::string_view text = row.text("hives"); !text.empty()) {
            const auto hives = whole_number(text);
            if (!hives || *hives < 1 || *hives > most_hives) {
                throw InputError(row.place, "hives: found \"" + std::string(text) +
                                                "\", expected a whole number 1 to " + std::to_string(most_hives));
            }
            apiary.hives = *hives;
        }
        apiaries.push_back(std::move(apiary));
    }
    return apiaries;
}

std::vector<Apiary> apiaries_in(const JsonAt& list, const Land& land, Given& given) {
    std::vector<Apiary> apiaries;
    std::map<std::string, std::string> ids;
    for (std::size_t i = 0; i < expect_array(list).size(); ++i) {
        const JsonAt item = list.at(i);
        WrittenApiary written;
        read_fields(item, apiary_fields(), written, given);
        const auto [other, fresh] = ids.emplace(written.id, item.place());
        if (!fresh) throw InputError(item.place(), "the id \"" + written.id + "\" stands already at " + other->second);
        const LatLon at{written.latitude_deg, written.longitude_deg};
        apiaries.push_back({written.id, point_within(at, land, farthest_from_centre_m, item.place()), written.hives});
    }
    return apiaries;
}

}  // namespace maybough::scenario
