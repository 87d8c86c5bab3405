// Which tags become what: a table that users may change.
#include <algorithm>

#include "extract/extract.hpp"

namespace maybough::extract {

// Keys and values as in the OpenStreetMap wiki, "Map features"; what each is to bees is common practice, no published
// source.
// clang-format off
const std::vector<TagRule>& usual_tag_rules() {
    static const std::vector<TagRule> rules{
        {"building", "church", "church"}, {"building", "chapel", "church"}, {"building", "cathedral", "church"},
        {"building", "barn", "barn"}, {"building", "farm_auxiliary", "barn"}, {"building", "stable", "barn"},
        {"building", "no", "nothing"}, {"building", "*", "building"},
        {"amenity", "place_of_worship", "church"},
        {"natural", "tree", "tree"},
        {"highway", "*", "street"},
        {"waterway", "riverbank", "water"}, {"waterway", "dock", "water"}, {"waterway", "*", "stream"},
        {"natural", "water", "water"}, {"landuse", "reservoir", "water"}, {"landuse", "basin", "water"},
        {"natural", "wood", "woodland"}, {"landuse", "forest", "woodland"},
        {"landuse", "orchard", "orchard"}, {"landuse", "vineyard", "orchard"},
        {"landuse", "farmland", "farmland"}, {"landuse", "farm", "farmland"}, {"landuse", "farmyard", "farmland"},
        {"landuse", "meadow", "grassland"}, {"landuse", "grass", "grassland"}, {"natural", "grassland", "grassland"},
        {"natural", "heath", "grassland"}, {"natural", "scrub", "grassland"}, {"natural", "wetland", "grassland"},
        {"landuse", "village_green", "parkland"}, {"landuse", "cemetery", "parkland"}, {"landuse", "recreation_ground", "parkland"},
        {"amenity", "grave_yard", "parkland"}, {"leisure", "park", "parkland"}, {"leisure", "garden", "parkland"},
        {"leisure", "golf_course", "parkland"}, {"leisure", "nature_reserve", "nothing"},
        {"landuse", "residential", "suburb"}, {"landuse", "allotments", "suburb"},
        {"landuse", "commercial", "town"}, {"landuse", "retail", "town"}, {"landuse", "industrial", "town"},
        {"landuse", "railway", "town"}, {"landuse", "construction", "town"},
        {"place", "city", "name"}, {"place", "town", "name"}, {"place", "village", "name"}, {"place", "suburb", "name"},
        {"place", "hamlet", "name"}, {"place", "locality", "name"},
    };
    return rules;
}
// clang-format on

std::vector<TagRule> read_tag_rules(const std::string& path) {
    std::vector<TagRule> rules;
    const std::vector<std::string> others{"building", "street", "stream", "tree", "church", "barn", "name", "nothing"};
    for (const auto& [place, cells] : read_columns(path, {"key", "value", "becomes"})) {
        const bool habitat = std::find(habitat_names.begin(), habitat_names.end(), cells[2]) != habitat_names.end();
        if (!habitat && std::find(others.begin(), others.end(), cells[2]) == others.end()) {
            throw InputError(place, "becomes: found \"" + cells[2] +
                                        "\", expected a habitat or one of building, street, "
                                        "stream, tree, church, barn, name, nothing");
        }
        rules.push_back({cells[0], cells[1], cells[2]});
    }
    return rules;
}

std::string tag_rules_csv(const std::vector<TagRule>& rules) {
    std::string text = "key,value,becomes\n";
    for (const TagRule& rule : rules) text.append(rule.key + "," + rule.value + "," + rule.becomes + "\n");
    return text;
}

}  // namespace maybough::extract
