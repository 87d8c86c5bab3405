// Habitat patches from GeoJSON polygons.
#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

#include "scenario/geojson.hpp"
#include "scenario/places.hpp"
#include "scenario/text_file.hpp"

namespace maybough::scenario {

namespace {

/// Twice the signed area: positive for a ring that runs counter-clockwise.
double turning(const std::vector<Point>& ring) {
    double sum = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point a = ring[i];
        const Point b = ring[(i + 1) % ring.size()];
        sum += a.x_m * b.y_m - b.x_m * a.y_m;
    }
    return sum;
}

enum class Turn { counter_clockwise, clockwise };

/// A closed ring of positions on the plane, the first point not repeated, turned as asked.
std::vector<Point> ring_in(const JsonAt& at, const LocalPlane& plane, Turn turn) {
    constexpr std::size_t fewest_positions = 4;
    if (expect_array(at).size() < fewest_positions) {
        throw InputError(at.place(),
                         "found a ring of " + std::to_string(at.value.size()) + " positions, expected at least 4");
    }
    if (at.value.front() != at.value.back()) {
        throw InputError(at.place(), "the ring is not closed", "repeat its first position at the end");
    }
    std::vector<Point> ring;
    for (std::size_t i = 0; i + 1 < at.value.size(); ++i) ring.push_back(plane.to_plane(position_in(at.at(i))));
    const double area = turning(ring);
    if (area == 0) throw InputError(at.place(), "the ring encloses nothing");
    if ((area > 0) != (turn == Turn::counter_clockwise)) std::reverse(ring.begin(), ring.end());
    return ring;
}

/// One ring that walks the outer ring, crosses to the hole, walks it backwards and crosses back.
void cut_hole(std::vector<Point>& outer, const std::vector<Point>& hole) {
    const Point entry = outer.front();
    outer.push_back(entry);
    outer.insert(outer.end(), hole.begin(), hole.end());
    outer.push_back(hole.front());
}

bool within_reach(const std::vector<Point>& ring, double reach_m) {
    const auto [left, right] =
        std::minmax_element(ring.begin(), ring.end(), [](Point a, Point b) { return a.x_m < b.x_m; });
    const auto [low, high] =
        std::minmax_element(ring.begin(), ring.end(), [](Point a, Point b) { return a.y_m < b.y_m; });
    return left->x_m <= reach_m && right->x_m >= -reach_m && low->y_m <= reach_m && high->y_m >= -reach_m;
}

HabitatPatch patch_in(const JsonAt& polygon, HabitatPatch patch, const LocalPlane& plane) {
    if (expect_array(polygon).empty()) throw InputError(polygon.place(), "the polygon has no ring");
    patch.ring = ring_in(polygon.at(std::size_t{0}), plane, Turn::counter_clockwise);
    if (!within_reach(patch.ring, farthest_from_centre_m)) {
        throw InputError(polygon.place(), "the patch lies more than 40 km from the centre of the scenario's place",
                         "GeoJSON puts the longitude first; are the two swapped?");
    }
    for (std::size_t i = 1; i < polygon.value.size(); ++i) {
        cut_hole(patch.ring, ring_in(polygon.at(i), plane, Turn::clockwise));
    }
    return patch;
}

/// The habitat that a map's own words for land use stand for (key=value as in the OpenStreetMap wiki, Map features).
std::optional<Habitat> habitat_of_tags(const Json& properties) {
    static const std::map<std::string, Habitat> words{
        {"forest", Habitat::woodland},    {"wood", Habitat::woodland},
        {"orchard", Habitat::orchard},    {"vineyard", Habitat::orchard},
        {"farmland", Habitat::farmland},  {"meadow", Habitat::grassland},
        {"grass", Habitat::grassland},    {"grassland", Habitat::grassland},
        {"heath", Habitat::grassland},    {"park", Habitat::parkland},
        {"cemetery", Habitat::parkland},  {"garden", Habitat::parkland},
        {"residential", Habitat::suburb}, {"allotments", Habitat::suburb},
        {"commercial", Habitat::town},    {"retail", Habitat::town},
        {"industrial", Habitat::town},    {"water", Habitat::water},
        {"reservoir", Habitat::water},    {"woodland", Habitat::woodland},
        {"parkland", Habitat::parkland},  {"suburb", Habitat::suburb},
        {"town", Habitat::town}};
    for (const char* key : {"landuse", "natural", "leisure", "class", "type", "landcover", "fclass"}) {
        if (!properties.contains(key) || !properties.at(key).is_string()) continue;
        const auto found = words.find(properties.at(key).get<std::string>());
        if (found != words.end()) return found->second;
    }
    return {};
}

HabitatPatch named_patch(const JsonAt& feature) {
    const Json properties = properties_of(feature);
    const JsonAt at{properties, feature.file, feature.path + "/properties"};
    if (!at.has("habitat")) {
        if (const auto guess = habitat_of_tags(properties)) {
            HabitatPatch patch;
            patch.habitat = *guess;
            if (at.has("name") && at.value.at("name").is_string()) {
                patch.name = one_line(at.value.at("name").get<std::string>());
            }
            return patch;
        }
        throw InputError(at.place(), "the property \"habitat\" is missing",
                         "expected one of " + first_listed({habitat_names.begin(), habitat_names.end()}, 20));
    }
    const std::string word = expect_text(at.at("habitat"));
    const auto found = std::find(habitat_names.begin(), habitat_names.end(), word);
    if (found == habitat_names.end()) {
        const std::vector<std::string> known(habitat_names.begin(), habitat_names.end());
        throw InputError(at.at("habitat").place(), "found \"" + word + "\", expected one of " + first_listed(known, 20),
                         did_you_mean(word, known, ""));
    }
    HabitatPatch patch;
    patch.habitat = static_cast<Habitat>(found - habitat_names.begin());
    if (at.has("name") && at.value.at("name").is_string())
        patch.name = one_line(at.value.at("name").get<std::string>());
    return patch;
}

}  // namespace

std::vector<HabitatPatch> read_habitats(const std::string& path, const Land& land) {
    const Json document = parse_json(read_text(path, most_places_bytes), path);
    const LocalPlane plane(land.centre);
    std::vector<HabitatPatch> patches;
    const std::vector<JsonAt> features = features_of(document, path);
    const auto is_area = [](const JsonAt& feature) {
        const Json& geometry = geometry_of(feature).value;
        return geometry.at("type") == "Polygon" || geometry.at("type") == "MultiPolygon";
    };
    const bool areas = std::any_of(features.begin(), features.end(), is_area);
    for (const JsonAt& feature : features) {
        if (areas && !is_area(feature)) continue;  // points and lines among the outlines
        const JsonAt geometry = geometry_of(feature);
        const HabitatPatch named = named_patch(feature);
        const std::string type = expect_text(geometry.at("type"));
        const JsonAt coordinates = geometry.at("coordinates");
        if (type == "Polygon") {
            patches.push_back(patch_in(coordinates, named, plane));
        } else if (type == "MultiPolygon") {
            for (std::size_t i = 0; i < expect_array(coordinates).size(); ++i) {
                patches.push_back(patch_in(coordinates.at(i), named, plane));
            }
        } else {
            throw InputError(geometry.place(), "found a " + type + ", expected a Polygon or MultiPolygon");
        }
    }
    return patches;
}

}  // namespace maybough::scenario
