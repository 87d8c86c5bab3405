// Spots where a trap may hang: one record a column, rows of any of the three file forms.
#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <regex>
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

/// Reads every row, then tells all that is wrong at once: the first in full, the others behind it.
template <class ReadRow>
void read_rows(const Sheet& sheet, ReadRow read_row) {
    std::vector<std::string> faults;
    for (const SheetRow& row : sheet.rows) {
        try {
            read_row(row);
        } catch (const InputError& fault) {
            faults.emplace_back(fault.what());
        }
    }
    if (faults.empty()) return;
    if (faults.size() == 1) throw InputError(faults.front());
    constexpr std::size_t most_told = 12;
    std::string text = faults.front() + " -- and " + std::to_string(faults.size() - 1) + " more: ";
    for (std::size_t i = 1; i < faults.size() && i < most_told; ++i) {
        const bool same_file = faults[i].rfind(sheet.file, 0) == 0;
        text += (i > 1 ? " | " : "") + (same_file ? "at " + faults[i].substr(sheet.file.size()) : faults[i]);
    }
    if (faults.size() > most_told) text += " | ...";
    throw InputError(text);
}

/// The number of hives in plain words: "4", "4 hives", "about 4 colonies" in `text`; nothing where none is said.
std::optional<int> hives_in_words(std::string_view text) {
    static const std::regex said(R"((\d{1,3})\s*(bee)?(hives?|colon(y|ies)|stocks?|nucs?)\b)", std::regex::icase);
    std::match_results<std::string_view::const_iterator> match;
    constexpr std::size_t longest = 500;
    const std::string_view start = text.substr(0, longest);
    if (!std::regex_search(start.begin(), start.end(), match, said)) return {};
    return whole_number(match[1].str());
}

/// Hives at a row: its own column, else its notes or name; nothing where nobody says.
std::optional<int> hives_at(const SheetRow& row) {
    constexpr int most_hives = 500;
    const std::string_view text = row.text("hives");
    std::optional<int> hives = whole_number(text);
    if (!text.empty() && !hives) hives = hives_in_words(text);
    if (!text.empty() && (!hives || *hives < 1 || *hives > most_hives)) {
        throw InputError(row.place, "hives: found \"" + std::string(text.substr(0, 60)) +
                                        "\", expected a whole number 1 to " + std::to_string(most_hives));
    }
    if (!hives) hives = hives_in_words(row.text("notes"));
    if (!hives) hives = hives_in_words(row.text("name"));
    if (hives && (*hives < 1 || *hives > most_hives)) return {};
    return hives;
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
    const Sheet sheet = read_sheet_of_points(path, Wanted::spots);
    std::vector<Spot> spots;
    std::map<std::string, std::string> ids;
    std::map<SiteId, std::string> squares;
    read_rows(sheet, [&](const SheetRow& row) {
        Spot spot;
        spot.id = id_in(row, ids);
        spot.name = row.text("name").empty() ? spot.id : row.text("name");
        spot.place = place_in(sheet, row);
        spot.at = point_within(spot.place, land, land.radius_m, row.place + ": spot " + spot.id);
        read_numbers(sheet, row, spot);
        read_heights(sheet, row, spot);
        spot.facings_deg = facings_in(row);
        spot.notes = row.text("notes");
        read_use(row, spot);
        const auto [other, fresh] = squares.emplace(trap_site(spot.at), spot.id);
        if (!fresh) {
            throw InputError(row.place,
                             "the spots " + other->second + " and " + spot.id + " lie in the same square of " +
                                 shortest(trap_square_m) + " m",
                             "keep one of them or move one");
        }
        spots.push_back(std::move(spot));
    });
    return spots;
}

std::vector<Apiary> read_apiaries(const std::string& path, const Land& land, std::optional<int> hives_each) {
    const Sheet sheet = read_sheet_of_points(path, Wanted::hives);
    std::vector<Apiary> apiaries;
    std::map<std::string, std::string> ids;
    read_rows(sheet, [&](const SheetRow& row) {
        Apiary apiary;
        apiary.id = id_in(row, ids);
        apiary.at =
            point_within(place_in(sheet, row), land, farthest_from_centre_m, row.place + ": apiary " + apiary.id);
        const std::optional<int> hives = hives_at(row);
        if (!hives && !hives_each) {
            throw InputError(row.place, "nobody says how many hives stand at " + apiary.id,
                             "give a column hives, or one number for all with --hives-each");
        }
        apiary.hives = hives ? *hives : *hives_each;
        apiaries.push_back(std::move(apiary));
    });
    return apiaries;
}

std::vector<LatLon> places_in(const std::string& path, Wanted wanted) {
    const Sheet sheet = read_sheet_of_points(path, wanted);
    std::vector<LatLon> places;
    read_rows(sheet, [&](const SheetRow& row) { places.push_back(place_in(sheet, row)); });
    return places;
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
