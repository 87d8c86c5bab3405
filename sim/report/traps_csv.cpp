// Traps as CSV (RFC 4180), in the form a placement is read from.
#include <cmath>

#include "report/report.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

std::string field(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + "\"";
}

/// A compass word where the direction is one of eight, else degrees.
std::string facing_field(double degrees) {
    return std::fmod(degrees, 45.0) == 0 && degrees >= 0 && degrees < 360 ? compass(degrees) : exact(degrees);
}

}  // namespace

std::string traps_csv(const Scenario& scenario, const Placement& placement) {
    std::string text =
        "spot,kind,height_m,facing,hang,take_down,visit_every_days,lured,name,latitude_deg,longitude_deg\n";
    for (const TrapSetting& set : placement) {
        text += field(scenario.spots.at(set.spot).id) + "," + field(scenario.kinds.at(set.kind).id) + "," +
                exact(set.height_m) + "," + facing_field(set.facing_deg) + "," + iso(date_of(scenario, set.hang)) +
                "," + iso(date_of(scenario, set.take_down)) + "," + std::to_string(set.visit_every_days) + "," +
                (set.lured ? "yes" : "no") + "," + field(spot_name(scenario, set.spot)) + "," +
                number(scenario.spots.at(set.spot).place.latitude_deg, 7) + "," +
                number(scenario.spots.at(set.spot).place.longitude_deg, 7) + "\n";
    }
    return text;
}

}  // namespace maybough::report
