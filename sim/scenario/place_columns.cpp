// What people call the columns of a list of places, and our names for them.
#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <set>
#include <sstream>

#include "base/base.hpp"
#include "scenario/places.hpp"
#include "scenario/sheet.hpp"

namespace maybough::scenario {

namespace {

struct Synonym {
    std::string_view theirs;
    std::string_view ours;
};
// Lower case; blanks, dots, hyphens and brackets as _. English first, then German, French, Italian, Spanish, Dutch.
constexpr std::array<Synonym, 62> synonyms{{
    {"site", "name"},
    {"place", "name"},
    {"location", "name"},
    {"spot", "name"},
    {"title", "name"},
    {"label", "name"},
    {"ort", "name"},
    {"lieu", "name"},
    {"nom", "name"},
    {"luogo", "name"},
    {"nombre", "name"},
    {"naam", "name"},
    {"lat", "latitude_deg"},
    {"latitude", "latitude_deg"},
    {"y", "latitude_deg"},
    {"breite", "latitude_deg"},
    {"breitengrad", "latitude_deg"},
    {"lat_deg", "latitude_deg"},
    {"latitud", "latitude_deg"},
    {"gps_latitude", "latitude_deg"},
    {"latitudine", "latitude_deg"},
    {"breedtegraad", "latitude_deg"},
    {"lon", "longitude_deg"},
    {"lng", "longitude_deg"},
    {"long", "longitude_deg"},
    {"longitude", "longitude_deg"},
    {"x", "longitude_deg"},
    {"laenge", "longitude_deg"},
    {"längengrad", "longitude_deg"},
    {"länge", "longitude_deg"},
    {"longitud", "longitude_deg"},
    {"gps_longitude", "longitude_deg"},
    {"longitudine", "longitude_deg"},
    {"lengtegraad", "longitude_deg"},
    {"facing", "facings_deg"},
    {"facings", "facings_deg"},
    {"faces", "facings_deg"},
    {"direction", "facings_deg"},
    {"aspect", "facings_deg"},
    {"height_m", "max_height_m"},
    {"height_ft", "max_height_ft"},
    {"height_feet", "max_height_ft"},
    {"height_metres", "max_height_m"},
    {"height_meters", "max_height_m"},
    {"hoehe_m", "max_height_m"},
    {"note", "notes"},
    {"comment", "notes"},
    {"comments", "notes"},
    {"remarks", "notes"},
    {"description", "notes"},
    {"bemerkung", "notes"},
    {"notizen", "notes"},
    {"remarque", "notes"},
    {"colonies", "hives"},
    {"stocks", "hives"},
    {"number_of_hives", "hives"},
    {"hive_count", "hives"},
    {"no_of_hives", "hives"},
    {"völker", "hives"},
    {"ruches", "hives"},
    {"arnie", "hives"},
    {"colmenas", "hives"},
}};

std::string plain_column(std::string_view text) {
    std::string out;
    for (const char c : trimmed(text)) {
        const auto byte = static_cast<unsigned char>(c);
        const bool letter = std::isalnum(byte) != 0 || byte >= 0x80;
        if (letter) out += static_cast<char>(byte < 0x80 ? std::tolower(byte) : byte);
        if (!letter && !out.empty() && out.back() != '_') out += '_';
    }
    while (!out.empty() && out.back() == '_') out.pop_back();
    return out;
}

const std::vector<std::string>& known_columns(Wanted wanted) {
    static const std::vector<std::string> hives{"id", "name", "latitude_deg", "longitude_deg", "hives", "notes"};
    return wanted == Wanted::spots ? spot_columns() : hives;
}

std::string our_column(const std::string& theirs, const std::vector<std::string>& known) {
    if (std::find(known.begin(), known.end(), theirs) != known.end()) return theirs;
    const std::string plain = plain_column(theirs);
    if (std::find(known.begin(), known.end(), plain) != known.end()) return plain;
    const auto found =
        std::find_if(synonyms.begin(), synonyms.end(), [&](const Synonym& s) { return s.theirs == plain; });
    if (found == synonyms.end()) return theirs;
    const std::string ours(found->ours);
    return std::find(known.begin(), known.end(), ours) != known.end() ? ours : theirs;
}

/// Longitude and latitude out of POINT(x y) (well-known text, OGC 06-103r4) and out of "51.5, -0.1".
bool point_in_text(std::string_view text, SheetRow& row) {
    std::string plain;
    for (const char c : text) plain += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    const std::size_t at = plain.find("POINT");
    const std::size_t open = plain.find('(');
    const std::size_t close = plain.find(')');
    if (at == std::string::npos || open == std::string::npos || close == std::string::npos || close < open)
        return false;
    std::istringstream words(plain.substr(open + 1, close - open - 1));
    return static_cast<bool>(words >> row.cells["longitude_deg"] >> row.cells["latitude_deg"]);
}

void split_pair(std::string_view text, SheetRow& row) {
    const std::size_t parted = text.find(';');
    const std::size_t at = parted == std::string_view::npos ? text.find(',') : parted;
    if (at == std::string_view::npos) return;
    row.cells["latitude_deg"] = std::string(trimmed(text.substr(0, at)));
    row.cells["longitude_deg"] = std::string(trimmed(text.substr(at + 1)));
}

/// What a point says it is, by a property of its own.
bool says_other(const SheetRow& row, Wanted wanted) {
    for (const auto& [column, text] : row.cells) {
        const std::string name = plain_column(column);
        if (name != "kind" && name != "type" && name != "layer" && name != "category") continue;
        const std::string word = plain_column(text);
        const bool hives = word.find("hive") != std::string::npos || word.find("apiar") != std::string::npos;
        const bool spot = word.find("spot") != std::string::npos || word.find("trap") != std::string::npos;
        if (hives != spot && hives == (wanted == Wanted::spots)) return true;
    }
    return false;
}

void put_under_our_names(Sheet& sheet, Wanted wanted) {
    const std::vector<std::string>& known = known_columns(wanted);
    std::map<std::string, std::string> ours;
    std::map<std::string, std::string> taken;
    for (const std::string& column : sheet.columns) {
        const std::string name = our_column(column, known);
        const auto [other, fresh] = taken.emplace(name, column);
        if (!fresh) {
            throw InputError(sheet.file,
                             "the columns \"" + other->second + "\" and \"" + column + "\" both mean " + name,
                             "keep one of the two");
        }
        ours[column] = name;
    }
    for (SheetRow& row : sheet.rows) {
        std::map<std::string, std::string> cells;
        for (auto& [column, text] : row.cells) {
            const auto found = ours.find(column);
            cells[found == ours.end() ? our_column(column, known) : found->second] = text;
        }
        row.cells = std::move(cells);
    }
    for (std::string& column : sheet.columns) column = ours[column];
}

void settle_place(SheetRow& row) {
    for (const char* column : {"wkt", "WKT", "geometry", "geom", "the_geom"}) {
        if (point_in_text(row.text(column), row)) break;
    }
    if (row.text("latitude_deg").empty() && row.text("longitude_deg").empty()) {
        for (const char* column : {"coordinates", "Coordinates", "position", "gps", "GPS", "latlon", "lat/lon"}) {
            split_pair(row.text(column), row);
        }
    }
    for (const auto& [column, axis] : {std::pair{"latitude_deg", 'N'}, std::pair{"longitude_deg", 'E'}}) {
        const std::string_view text = row.text(column);
        if (text.empty()) continue;
        if (const auto degrees = degrees_in(text, axis)) row.cells[column] = shortest(*degrees);
    }
}

/// Ids made from names, and told apart by a number.
void settle_ids(Sheet& sheet, Wanted wanted, bool ids_given) {
    std::set<std::string> taken;
    for (const SheetRow& row : sheet.rows) {
        if (ids_given && !row.text("id").empty()) taken.insert(std::string(row.text("id")));
    }
    int number = 0;
    for (SheetRow& row : sheet.rows) {
        ++number;
        if (ids_given && !row.text("id").empty()) continue;
        std::string wish(row.text("id"));
        if (wish.empty() && !row.text("name").empty()) wish = id_of_name(row.text("name"));
        if (wish.empty()) wish = (wanted == Wanted::spots ? "spot-" : "hives-") + std::to_string(number);
        std::string id = wish;
        for (int again = 2; !taken.insert(id).second; ++again) id = wish + "-" + std::to_string(again);
        row.cells["id"] = id;
    }
}

/// Columns that mean nothing to us go into the notes; one that nearly means something is a slip of the pen.
void settle_foreign(Sheet& sheet, Wanted wanted, bool foreign_form) {
    const std::vector<std::string>& known = known_columns(wanted);
    const std::set<std::string> spent{"wkt",         "WKT",      "geometry", "geom", "the_geom", "coordinates",
                                      "Coordinates", "position", "gps",      "GPS",  "latlon",   "lat/lon"};
    for (const std::string& column : sheet.columns) {
        if (std::find(known.begin(), known.end(), column) != known.end() || spent.count(column) != 0) continue;
        const bool unit_missing =
            column == "min_height" || column == "max_height" || column == "drive" || plain_column(column) == "height";
        if (unit_missing && wanted == Wanted::spots) {
            throw InputError(sheet.file + (foreign_form ? "" : ":1"), "the column \"" + column + "\" has no unit",
                             "name it \"" + column + " (m)\" or \"" + column + " (ft)\"");
        }
        const std::string near = did_you_mean(plain_column(column), known, "");
        if (!foreign_form && !near.empty()) {
            throw InputError(sheet.file + ":1", "the column \"" + column + "\" is not known", near);
        }
        for (SheetRow& row : sheet.rows) {
            const std::string_view text = row.text(column);
            if (text.empty()) continue;
            std::string& notes = row.cells["notes"];
            notes += (notes.empty() ? "" : "; ") + column + ": " + std::string(text);
        }
    }
    std::set<std::string> there{"id", "latitude_deg", "longitude_deg", "notes"};
    there.insert(sheet.columns.begin(), sheet.columns.end());
    sheet.columns.clear();
    std::copy_if(known.begin(), known.end(), std::back_inserter(sheet.columns),
                 [&](const std::string& column) { return there.count(column) != 0; });
}

bool starts_like(std::string_view text, std::string_view mark) {
    return text.substr(0, mark.size()) == mark;
}

/// Throws for forms that are no text at all, each by its own name with the way out.
void refuse_binary(const std::string& bytes, const std::string& path) {
    const std::string way = "convert it: ogr2ogr -f GeoJSON -t_srs EPSG:4326 places.geojson " + path;
    if (starts_like(bytes, "SQLite format 3")) throw InputError(path, "found a GeoPackage or database (SQLite)", way);
    if (starts_like(bytes, std::string_view("\0\0\x27\x0a", 4)))
        throw InputError(path, "found a shapefile (.shp)", way);
    if (starts_like(bytes, "\xD0\xCF\x11\xE0")) {
        throw InputError(path, "found an old workbook (.xls)", "save its sheet as CSV (UTF-8) and give that");
    }
    if (starts_like(bytes, "fgb")) throw InputError(path, "found a FlatGeobuf file", way);
    if (starts_like(bytes, "%PDF")) throw InputError(path, "found a PDF, expected places", "export them as CSV or GPX");
    if (starts_like(bytes, "\xFF\xFE") || starts_like(bytes, "\xFE\xFF")) {
        throw InputError(path, "found text in UTF-16", "save it as CSV in UTF-8");
    }
    if (bytes.find('\0') != std::string::npos) {
        throw InputError(path, "found zero bytes, expected plain text in UTF-8", "save it as text (CSV, UTF-8)");
    }
}

}  // namespace

std::string id_of_name(std::string_view name) {
    std::string id;
    for (const char c : trimmed(name)) {
        const bool plain = std::string_view(" \t\r\n\v\f,;:\"'`|/\\<>=+@()&").find(c) == std::string_view::npos;
        if (plain && !(c == '-' && (id.empty() || id.back() == '-'))) id += c;
        if (!plain && !id.empty() && id.back() != '-') id += '-';
    }
    constexpr std::size_t longest = 36;  // leaves room for a number
    std::size_t characters = 0;
    for (std::size_t i = 0; i < id.size(); ++i) {
        if ((static_cast<unsigned char>(id[i]) & 0xC0U) == 0x80U) continue;
        if (++characters > longest) id.resize(i);
    }
    while (!id.empty() && id.back() == '-') id.pop_back();
    return id;
}

void settle_columns(Sheet& sheet, Wanted wanted) {
    const bool foreign_form = sheet.foreign;
    const auto other = [wanted](const SheetRow& row) { return says_other(row, wanted); };
    sheet.rows.erase(std::remove_if(sheet.rows.begin(), sheet.rows.end(), other), sheet.rows.end());
    if (sheet.rows.empty()) {
        throw InputError(sheet.file, std::string("found no ") + (wanted == Wanted::spots ? "spots" : "hives") +
                                         " among its points: every one says it is the other");
    }
    const bool ids_given = std::find(sheet.columns.begin(), sheet.columns.end(), "id") != sheet.columns.end();
    put_under_our_names(sheet, wanted);
    for (SheetRow& row : sheet.rows) settle_place(row);
    for (const char* column : {"latitude_deg", "longitude_deg"}) {
        if (std::any_of(sheet.rows.begin(), sheet.rows.end(),
                        [&](const SheetRow& r) { return r.cells.count(column) != 0; }))
            continue;
        throw InputError(sheet.file + (foreign_form ? "" : ":1"),
                         "the column \"" + std::string(column) + "\" is missing",
                         "found " + first_listed(sheet.columns, 12));
    }
    settle_foreign(sheet, wanted, foreign_form);
    settle_ids(sheet, wanted, ids_given);
}

namespace {
/// A list of traps that we wrote ourselves, as a list of the spots they hang at; anything else as it is.
Sheet spots_of_traps(Sheet sheet) {
    const auto has = [&](std::string_view column) {
        return std::find(sheet.columns.begin(), sheet.columns.end(), column) != sheet.columns.end();
    };
    const bool our_map = has("number") && has("spot_name");  // there a feature's id is the number of the trap
    if (!has("spot") || !has("kind") || (has("id") && !our_map)) return sheet;
    const std::map<std::string, std::string> kept{{"spot", "id"},
                                                  {"spot_name", "name"},
                                                  {"name", "name"},
                                                  {"latitude_deg", "latitude_deg"},
                                                  {"longitude_deg", "longitude_deg"},
                                                  {"notes", "notes"}};
    Sheet spots{
        sheet.file, {"id", "name", "latitude_deg", "longitude_deg", "notes"}, sheet.decimal_sign, {}, sheet.foreign};
    for (const SheetRow& row : sheet.rows) {
        SheetRow spot{row.place, {}};
        for (const auto& [column, name] : kept) {
            if (!row.text(column).empty()) spot.cells[name] = row.text(column);
        }
        spots.rows.push_back(std::move(spot));
    }
    return spots;
}
}  // namespace

Sheet read_sheet_of_points(const std::string& path, Wanted wanted) {
    std::string bytes = read_bytes(path, most_places_bytes);
    if (bytes.rfind("\xEF\xBB\xBF", 0) == 0) bytes.erase(0, 3);
    const bool packed = is_zip(bytes);
    if (packed) bytes = kml_in_kmz(path);
    refuse_binary(bytes, path);
    bytes = as_utf8(std::move(bytes), path);
    const std::string_view start = trimmed(std::string_view(bytes).substr(0, 4000));
    if (start.empty()) throw InputError(path, "the file is empty, expected places");
    const bool kml =
        packed || start.find("<kml") != std::string_view::npos || start.find(":kml") != std::string_view::npos;
    Sheet sheet = start.front() != '<' ? (start.front() == '{' || start.front() == '[') ? sheet_of_geojson(bytes, path)
                                                                                        : sheet_of_csv(bytes, path)
                  : kml ? sheet_of_kml(bytes, path)
                                       : sheet_of_gpx(bytes, path);
    if (wanted == Wanted::spots) sheet = spots_of_traps(std::move(sheet));
    settle_columns(sheet, wanted);
    return sheet;
}

}  // namespace maybough::scenario
