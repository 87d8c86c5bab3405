// JSON of the words that several outputs share: private to report/.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "report/report.hpp"

namespace maybough::report {

using Json = nlohmann::ordered_json;

/// A finite number, or null.
Json json_number(double value);
/// Mean, standard error, half width of the 95 % interval, spread from chance and from ignorance, 10 and 90 % quantiles,
/// seasons.
Json json_estimate(const Estimate& estimate);
/// One trap as set, with names, place and dates. Counts from 1.
Json json_trap(const Scenario& scenario, const TrapSetting& setting, std::size_t nr);
Json json_origin(const Provenance& origin);
/// The whole plan, as in plan.json.
Json plan_as_json(const Scenario& scenario, const Plan& plan, const Provenance& origin);
/// Text as it stands in a file; bytes that are no UTF-8 become U+FFFD.
std::string json_text(const Json& json, int indent);

}  // namespace maybough::report
