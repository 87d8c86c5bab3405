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

/// A waypoint's name may hold blanks; an id may not.
std::string id_of_name(std::string_view name) {
    std::string id;
    for (const char c : trimmed(name)) {
        const bool plain = std::string_view(" \t\r\n,;:\"'`|/\\<>").find(c) == std::string_view::npos;
        if (plain) id += c;
        if (!plain && !id.empty() && id.back() != '-') id += '-';
    }
    while (!id.empty() && id.back() == '-') id.pop_back();
    return id;
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
    if (std::string_view(root.name()) != "gpx" || (version != "1.1" && version != "1.0")) {
        throw InputError(
            file, "found <" + std::string(root.name()) + " version=\"" + std::string(version) + "\">, expected GPX 1.1",
            "export the waypoints as GPX 1.1");
    }
    Sheet sheet{file, {"id", "name", "latitude_deg", "longitude_deg"}, DecimalSign::point, {}};
    for (const pugi::xml_node& point : root.children("wpt")) {
        SheetRow row{file + ":" + line_of(text, point.offset_debug()), {}};
        row.cells["id"] = id_of_name(point.child_value("name"));
        row.cells["name"] =
            one_line(std::string(trimmed(point.child_value(*point.child_value("desc") != '\0' ? "desc" : "name"))));
        row.cells["latitude_deg"] = point.attribute("lat").as_string();
        row.cells["longitude_deg"] = point.attribute("lon").as_string();
        sheet.rows.push_back(std::move(row));
    }
    if (sheet.rows.empty()) throw InputError(file, "found no waypoint (wpt)", "tracks and routes are not read");
    return sheet;
}

}  // namespace maybough::scenario
