// Placemarks of KML 2.2 with a point as rows, and the one .kml that a KMZ (a ZIP archive) holds.
#include <zip.h>

#include <algorithm>
#include <array>
#include <memory>
#include <pugixml.hpp>
#include <sstream>

#include "base/base.hpp"
#include "scenario/sheet.hpp"

namespace maybough::scenario {

namespace {

std::string_view plain_name(const pugi::xml_node& node) {
    const std::string_view name = node.name();
    const std::size_t colon = name.find(':');
    return colon == std::string_view::npos ? name : name.substr(colon + 1);
}

std::string clean(const char* text) {
    return one_line(std::string(trimmed(text)));
}

/// One placemark's cells; false where it has no point.
bool read_placemark(const pugi::xml_node& mark, SheetRow& row) {
    const pugi::xml_node point = mark.find_node([](const pugi::xml_node& node) { return plain_name(node) == "Point"; });
    if (!point) return false;
    const pugi::xml_node coordinates =
        point.find_node([](const pugi::xml_node& node) { return plain_name(node) == "coordinates"; });
    std::istringstream words(coordinates.text().as_string());
    std::getline(words, row.cells["longitude_deg"], ',');
    std::getline(words, row.cells["latitude_deg"], ',');
    for (const pugi::xml_node& child : mark.children()) {
        if (plain_name(child) == "name") row.cells["name"] = clean(child.text().as_string());
        if (plain_name(child) == "description") row.cells["notes"] = clean(child.text().as_string());
        if (plain_name(child) != "ExtendedData") continue;
        for (const pugi::xml_node& data : child.children()) {
            const std::string key = clean(data.attribute("name").as_string());
            const std::string value = clean(data.first_child().text().as_string());
            if (!key.empty() && !value.empty()) row.cells.emplace(key, value);
        }
    }
    return true;
}

struct CloseZip {
    void operator()(zip_t* archive) const { zip_discard(archive); }
};
struct CloseEntry {
    void operator()(zip_file_t* entry) const { zip_fclose(entry); }
};

}  // namespace

Sheet sheet_of_kml(const std::string& text, const std::string& file) {
    pugi::xml_document document;
    const pugi::xml_parse_result parsed =
        document.load_buffer(text.data(), text.size(), pugi::parse_default, pugi::encoding_utf8);
    if (!parsed) throw InputError(file, std::string("not valid XML: ") + parsed.description());
    Sheet sheet{file, {"latitude_deg", "longitude_deg"}, DecimalSign::point, {}, true};
    int marks = 0;
    // Walked without recursion of our own: folders may nest as deep as a stranger likes.
    for (pugi::xml_node node = document.document_element(); node;) {
        const bool mark = plain_name(node) == "Placemark";
        if (mark) {
            SheetRow row{file + ": placemark " + std::to_string(++marks), {}};
            if (read_placemark(node, row)) {
                for (const auto& [name, cell] : row.cells) {
                    if (std::find(sheet.columns.begin(), sheet.columns.end(), name) == sheet.columns.end()) {
                        sheet.columns.push_back(name);
                    }
                }
                sheet.rows.push_back(std::move(row));
            }
        }
        if (!mark && node.first_child()) {
            node = node.first_child();
            continue;
        }
        while (node && !node.next_sibling()) node = node.parent();
        node = node.next_sibling();
    }
    if (sheet.rows.empty()) {
        throw InputError(file,
                         marks == 0 ? "found no placemark"
                                    : "found " + std::to_string(marks) + " placemarks but no point among them",
                         "mark each place as a point");
    }
    return sheet;
}

bool is_zip(std::string_view bytes) {
    return bytes.substr(0, 4) == std::string_view("PK\x03\x04", 4);
}

std::string kml_in_kmz(const std::string& path) {
    int error = 0;
    const std::unique_ptr<zip_t, CloseZip> archive(zip_open(path.c_str(), ZIP_RDONLY, &error));
    if (!archive) throw InputError(path, "the archive cannot be opened", "is it whole?");
    const zip_int64_t count = zip_get_num_entries(archive.get(), 0);
    constexpr zip_int64_t most_entries = 10000;
    for (zip_int64_t i = 0; i < std::min(count, most_entries); ++i) {
        zip_stat_t about;
        if (zip_stat_index(archive.get(), static_cast<zip_uint64_t>(i), 0, &about) != 0) continue;
        const std::string_view name = about.name;
        if (name.starts_with("xl/")) {
            throw InputError(path, "found a workbook (.xlsx)", "save its sheet as CSV (UTF-8) and give that");
        }
        if (name == "content.xml") {
            throw InputError(path, "found an office document (.ods)", "save its sheet as CSV (UTF-8) and give that");
        }
        if (name.ends_with(".shp")) {
            throw InputError(path, "found a zipped shapefile",
                             "convert it: ogr2ogr -f GeoJSON -t_srs EPSG:4326 places.geojson /vsizip/FILE.zip");
        }
        if (!name.ends_with(".kml")) continue;
        const std::unique_ptr<zip_file_t, CloseEntry> entry(
            zip_fopen_index(archive.get(), static_cast<zip_uint64_t>(i), 0));
        if (!entry) throw InputError(path, "the archive's " + one_line(std::string(name)) + " cannot be opened");
        std::string text;
        std::array<char, 65536> part{};
        for (zip_int64_t got = 0; (got = zip_fread(entry.get(), part.data(), part.size())) > 0;) {
            text.append(part.data(), static_cast<std::size_t>(got));
            if (text.size() > most_places_bytes) {
                throw InputError(path, "unpacks to more than 64 MB", "is this the file you mean?");
            }
        }
        return text;
    }
    throw InputError(path, "found a ZIP archive without a .kml inside", "give CSV, GPX, KML, KMZ or GeoJSON");
}

}  // namespace maybough::scenario
