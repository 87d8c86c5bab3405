// Traps as map data: GeoJSON, RFC 7946 (longitude first, WGS 84, no crs member).
#include "report/json.hpp"
#include "report/words.hpp"

namespace maybough::report {

std::string traps_geojson(const Scenario& scenario, const Placement& placement, const Provenance& origin) {
    Json features = Json::array();
    for (std::size_t i = 0; i < placement.size(); ++i) {
        Json properties = json_trap(scenario, placement[i], i + 1);
        properties.erase("latitude_deg");
        properties.erase("longitude_deg");
        const LatLon place = scenario.spots.at(placement[i].spot).place;
        features.push_back(
            {{"type", "Feature"},
             {"id", i + 1},
             {"geometry", {{"type", "Point"}, {"coordinates", {place.longitude_deg, place.latitude_deg}}}},
             {"properties", std::move(properties)}});
    }
    const Json map{{"type", "FeatureCollection"},
                   {"name", plain_text("Traps for " + scenario.name + ", " + std::to_string(scenario.year))},
                   {"origin", {{"program", "maybough " + origin.version}, {"seed", origin.seed}}},
                   {"features", std::move(features)}};
    return json_text(map, 1) + "\n";
}

}  // namespace maybough::report
