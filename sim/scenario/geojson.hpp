// GeoJSON (RFC 7946): features and positions, longitude first.
#pragma once

#include <string>
#include <vector>

#include "base/base.hpp"
#include "scenario/json_text.hpp"

namespace maybough::scenario {

/// The features of a FeatureCollection, or the one of a lone Feature, each with its place. `document` has to outlive
/// them. Throws InputError on anything else and on a `crs` member that is not WGS 84.
std::vector<JsonAt> features_of(const Json& document, const std::string& file);

/// A position [longitude, latitude, ...].
LatLon position_in(const JsonAt& at);

/// Properties of a feature, an empty object where null or absent.
Json properties_of(const JsonAt& feature);

/// The geometry of a feature and its type; throws InputError where there is none.
JsonAt geometry_of(const JsonAt& feature);

}  // namespace maybough::scenario
