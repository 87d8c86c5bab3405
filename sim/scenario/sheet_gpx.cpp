// Waypoints of GPX 1.1 (and 1.0, whose waypoints read the same) as rows.
#include <algorithm>
#include <pugixml.hpp>

#include "base/base.hpp"
#include "scenario/sheet.hpp"

namespace maybough::scenario {

namespace {

std::string line_of(const std::string& text, std::ptrdiff_t offset) {
    const auto end = text.begin() + std::clamp<std::ptrdiff_t>(offset, 0, static_cast<std::ptrdiff_t>(text.size()));
    return std::to_string(1 + std::count(text.begin(), end, '\n'));
}

/// The name without a prefix: "wpt" of <gpx:wpt>.
std::string_view plain_name(const pugi::xml_node& node) {
    const std::string_view name = node.name();
    const std::size_t colon = name.find(':');
    return colon == std::string_view::npos ? name : name.substr(colon + 1);
}

/// The name of a waypoint without the number that our own list of traps puts before it: "2 Barn" is the spot Barn.
std::string without_number(const std::string& name) {
    const std::size_t end = name.find_first_not_of("0123456789");
    return end == 0 || end == std::string::npos || name[end] != ' ' ? name : name.substr(end + 1);
}

std::string child_text(const pugi::xml_node& node, std::string_view name) {
    for (const pugi::xml_node& child : node.children()) {
        if (plain_name(child) == name) return child.text().as_string();
    }
    return {};
}

}  // namespace

Sheet sheet_of_gpx(const std::string& text, const std::string& file) {
    pugi::xml_document document;
    const pugi::xml_parse_result parsed =
        document.load_buffer(text.data(), text.size(), pugi::parse_default, pugi::encoding_utf8);
    if (!parsed) {
        throw InputError(file + ":" + line_of(text, parsed.offset),
                         std::string("not valid XML: ") + parsed.description());
    }
    const pugi::xml_node root = document.document_element();
    const std::string_view version = root.attribute("version").as_string();
    if (plain_name(root) != "gpx" || (version != "1.1" && version != "1.0")) {
        throw InputError(
            file, "found <" + std::string(root.name()) + " version=\"" + std::string(version) + "\">, expected GPX 1.1",
            "export the waypoints as GPX 1.1");
    }
    Sheet sheet{file, {"name", "latitude_deg", "longitude_deg", "notes"}, DecimalSign::point, {}, true};
    for (const pugi::xml_node& point : root.children()) {
        if (plain_name(point) != "wpt") continue;
        SheetRow row{file + ":" + line_of(text, point.offset_debug()), {}};
        std::string name = one_line(std::string(trimmed(child_text(point, "name"))));
        if (child_text(point, "type") == "swarm trap") name = without_number(name);
        const std::string said = one_line(std::string(trimmed(child_text(point, "desc"))));
        row.cells["id"] = name.empty() ? "" : id_of_name(name);
        row.cells["name"] = name.empty() ? said : name;
        const std::string comment = one_line(std::string(trimmed(child_text(point, "cmt"))));
        row.cells["notes"] = name.empty() ? comment : said.empty() ? comment : said;
        row.cells["latitude_deg"] = point.attribute("lat").as_string();
        row.cells["longitude_deg"] = point.attribute("lon").as_string();
        sheet.rows.push_back(std::move(row));
    }
    if (!sheet.rows.empty()) return sheet;
    for (const pugi::xml_node& line : root.children()) {
        if (plain_name(line) != "trk" && plain_name(line) != "rte") continue;
        throw InputError(file, "found a track or route but no waypoint (wpt)",
                         "mark each place as a waypoint: nobody can tell which points of a walk were meant");
    }
    throw InputError(file, "found no waypoint (wpt)", "mark each place as a waypoint and export again");
}

}  // namespace maybough::scenario
