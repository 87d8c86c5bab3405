// Walks GeoJSON and turns point features into rows.
#include "scenario/geojson.hpp"

#include <algorithm>

#include "scenario/sheet.hpp"

namespace maybough::scenario {

std::vector<JsonAt> features_of(const Json& document, const std::string& file) {
    const JsonAt root{document, file, ""};
    expect_object(root);
    if (root.has("crs") && document.at("crs").dump().find("CRS84") == std::string::npos &&
        document.at("crs").dump().find("4326") == std::string::npos) {
        throw InputError(file + ": /crs", "found another coordinate system, expected degrees of WGS 84",
                         "export the map as GeoJSON by RFC 7946 (EPSG:4326)");
    }
    const std::string type =
        root.has("type") && document.at("type").is_string() ? document.at("type").get<std::string>() : "";
    if (type == "Feature") return {root};
    if (type != "FeatureCollection" || !root.has("features")) {
        throw InputError(file, "found " + (type.empty() ? "no type" : "the type \"" + type + "\"") +
                                   ", expected a GeoJSON FeatureCollection");
    }
    const JsonAt list = root.at("features");
    std::vector<JsonAt> features;
    for (std::size_t i = 0; i < expect_array(list).size(); ++i) {
        const JsonAt feature = list.at(i);
        if (!feature.has("type") || feature.value.at("type") != "Feature") {
            throw InputError(feature.place(), "expected a GeoJSON Feature");
        }
        features.push_back(feature);
    }
    return features;
}

LatLon position_in(const JsonAt& at) {
    if (expect_array(at).size() < 2) throw InputError(at.place(), "expected a position [longitude, latitude]");
    const double longitude_deg = expect_number(at.at(std::size_t{0}));
    const double latitude_deg = expect_number(at.at(std::size_t{1}));
    if (!(latitude_deg >= -90 && latitude_deg <= 90 && longitude_deg >= -180 && longitude_deg <= 180)) {
        throw InputError(at.place(), "found " + at.value.dump() + ", expected degrees [longitude, latitude]",
                         "GeoJSON puts the longitude first");
    }
    return {latitude_deg, longitude_deg};
}

Json properties_of(const JsonAt& feature) {
    if (!feature.has("properties") || feature.value.at("properties").is_null()) return Json::object();
    return expect_object(feature.at("properties"));
}

JsonAt geometry_of(const JsonAt& feature) {
    if (!feature.has("geometry") || feature.value.at("geometry").is_null()) {
        throw InputError(feature.place(), "the feature has no geometry");
    }
    JsonAt geometry = feature.at("geometry");
    expect_object(geometry);
    if (!geometry.has("type") || !geometry.has("coordinates")) {
        throw InputError(geometry.place(), "expected a geometry with type and coordinates");
    }
    expect_text(geometry.at("type"));
    return geometry;
}

namespace {
std::string cell_of(const JsonAt& at) {
    const Json& value = at.value;
    if (value.is_string()) return value.get<std::string>();
    if (value.is_null()) return {};
    if (value.is_boolean()) return value.get<bool>() ? "yes" : "no";
    constexpr std::size_t longest = 200;
    if (value.is_object()) return value.dump(-1, ' ', false, Json::error_handler_t::replace).substr(0, longest);
    if (!value.is_array()) return value.dump();
    std::string joined;
    for (std::size_t i = 0; i < value.size(); ++i) {
        if (i > 0) joined += ' ';
        joined += cell_of(at.at(i));
    }
    return joined;
}
}  // namespace

Sheet sheet_of_geojson(const std::string& text, const std::string& file) {
    const Json document = parse_json(text, file);
    Sheet sheet{file, {"latitude_deg", "longitude_deg"}, DecimalSign::point, {}, true};
    const std::vector<JsonAt> features = features_of(document, file);
    const auto is_point = [](const JsonAt& feature) {
        return feature.value.contains("geometry") && feature.value.at("geometry").is_object() &&
               feature.value.at("geometry").contains("type") && feature.value.at("geometry").at("type") == "Point";
    };
    const bool points = std::any_of(features.begin(), features.end(), is_point);
    for (const JsonAt& feature : features) {
        if (points && !is_point(feature)) continue;  // outlines and lines among the points
        const JsonAt geometry = geometry_of(feature);
        if (geometry.value.at("type") != "Point") {
            throw InputError(geometry.place(), "found " + said(geometry.value.at("type")) + ", expected a Point");
        }
        SheetRow row{feature.place(), {}};
        if (feature.has("id")) row.cells["id"] = id_of_name(one_line(cell_of(feature.at("id"))));
        const Json properties = properties_of(feature);
        for (const auto& [key, value] : properties.items()) {
            row.cells[one_line(key)] = one_line(cell_of({value, file, feature.path + "/properties/" + key}));
        }
        const LatLon at = position_in(geometry.at("coordinates"));
        row.cells["latitude_deg"] = shortest(at.latitude_deg);
        row.cells["longitude_deg"] = shortest(at.longitude_deg);
        for (const auto& [name, cell] : row.cells) {
            if (std::find(sheet.columns.begin(), sheet.columns.end(), name) == sheet.columns.end()) {
                sheet.columns.push_back(name);
            }
        }
        sheet.rows.push_back(std::move(row));
    }
    if (sheet.rows.empty()) throw InputError(file + ": /features", "found no feature, expected points");
    return sheet;
}

}  // namespace maybough::scenario
