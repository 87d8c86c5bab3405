// Traps as waypoints for a phone: GPX 1.1. Children of wpt come in the order its schema asks for.
#include "report/sections.hpp"

namespace maybough::report {
namespace {

std::string waypoint(const Scenario& scenario, const TrapSetting& set, std::size_t nr) {
    const LatLon place = scenario.spots.at(set.spot).place;
    const std::string comment =
        kind_name(scenario, set.kind) + ", " + height_words(set.height_m) + " up, entrance " + compass(set.facing_deg);
    const std::string when = "Hang by " + iso(date_of(scenario, set.hang)) + ", visit every " +
                             std::to_string(set.visit_every_days) + " days, take down " +
                             iso(date_of(scenario, set.take_down)) + (set.lured ? ", with a lure" : ", no lure");
    return "  <wpt lat=\"" + number(place.latitude_deg, 7) + "\" lon=\"" + number(place.longitude_deg, 7) + "\">\n" +
           "    <name>" + markup_text(std::to_string(nr) + " " + spot_name(scenario, set.spot)) + "</name>\n" +
           "    <cmt>" + markup_text(comment) + "</cmt>\n" + "    <desc>" + markup_text(comment + ". " + when + ".") +
           "</desc>\n" + "    <sym>Flag</sym>\n    <type>swarm trap</type>\n  </wpt>\n";
}

}  // namespace

std::string traps_gpx(const Scenario& scenario, const Placement& placement, const Provenance& origin) {
    std::string text =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<gpx version=\"1.1\" creator=\"maybough " +
        markup_text(origin.version) +
        "\" xmlns=\"http://www.topografix.com/GPX/1/1\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\""
        " xsi:schemaLocation=\"http://www.topografix.com/GPX/1/1 http://www.topografix.com/GPX/1/1/gpx.xsd\">\n"
        "  <metadata>\n    <name>" +
        markup_text("Traps for " + scenario.name + ", " + std::to_string(scenario.year)) + "</name>\n    <desc>" +
        markup_text("Seed " + std::to_string(origin.seed) + ".") + "</desc>\n" +
        (origin.written_at.empty() ? "" : "    <time>" + markup_text(origin.written_at) + "</time>\n") +
        "  </metadata>\n";
    for (std::size_t i = 0; i < placement.size(); ++i) text += waypoint(scenario, placement[i], i + 1);
    return text + "</gpx>\n";
}

}  // namespace maybough::report
