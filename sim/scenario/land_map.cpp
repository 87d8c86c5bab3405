// The map that pages draw: lines, buildings and names of a GeoJSON file, checked and made compact.
#include "scenario/geojson.hpp"
#include "scenario/places.hpp"
#include "scenario/scenario.hpp"
#include "scenario/text_file.hpp"

namespace maybough::scenario {

namespace {

/// Positions [latitude, longitude] as the pages want them, out of nested lists of any depth the reader allows.
Json turned(const JsonAt& at) {
    if (!expect_array(at).empty() && at.value.front().is_number()) {
        const LatLon place = position_in(at);
        return Json::array({place.latitude_deg, place.longitude_deg});
    }
    Json list = Json::array();
    for (std::size_t i = 0; i < at.value.size(); ++i) list.push_back(turned(at.at(i)));
    return list;
}

std::string word_in(const Json& properties, const char* key) {
    constexpr std::size_t longest = 80;
    const auto found = properties.find(key);
    return found != properties.end() && found->is_string() ? short_line(found->get<std::string>(), longest) : "";
}

}  // namespace

std::string read_map(const std::string& path) {
    const Json document = parse_json(read_text(path, most_places_bytes), path);
    const std::vector<JsonAt> features = features_of(document, path);
    constexpr std::size_t most_features = 20000;
    if (features.size() > most_features) {
        throw InputError(path, "found " + std::to_string(features.size()) + " features, expected at most 20000",
                         "make the map with a smaller --radius");
    }
    Json drawn = Json::array();
    for (const JsonAt& feature : features) {
        const JsonAt geometry = geometry_of(feature);
        const Json properties = properties_of(feature);
        const std::string what = word_in(properties, "map");
        if (what.empty()) continue;
        const std::string type = expect_text(geometry.at("type"));
        if (type == "GeometryCollection") continue;
        drawn.push_back({{"map", what},
                         {"kind", word_in(properties, "kind")},
                         {"name", word_in(properties, "name")},
                         {"shape", type},
                         {"at", turned(geometry.at("coordinates"))}});
    }
    return drawn.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string credit_in(const std::string& path) {
    const Json document = parse_json(read_text(path, most_places_bytes), path);
    return document.is_object() ? word_in(document, "attribution") : "";
}

}  // namespace maybough::scenario
