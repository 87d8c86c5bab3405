// JSON of the words that several outputs share.
#include "report/json.hpp"

#include <cmath>

#include "report/words.hpp"

namespace maybough::report {

Json json_number(double value) {
    return std::isfinite(value) ? Json(value) : Json(nullptr);
}

Json json_estimate(const Estimate& estimate) {
    return {{"mean", json_number(estimate.mean)},
            {"standard_error", json_number(estimate.se)},
            {"half_width_95", json_number(estimate.half_width_95)},
            {"low_95", json_number(estimate.low_95)},
            {"high_95", json_number(estimate.high_95)},
            {"sd_chance", json_number(estimate.sd_chance)},
            {"sd_ignorance", json_number(estimate.sd_ignorance)},
            {"quantile_10", json_number(estimate.low)},
            {"quantile_90", json_number(estimate.high)},
            {"seasons", estimate.n}};
}

Json json_trap(const Scenario& scenario, const TrapSetting& setting, std::size_t nr) {
    const Spot& spot = scenario.spots.at(setting.spot);
    return {{"number", nr},
            {"spot", plain_text(spot.id)},
            {"spot_name", spot_name(scenario, setting.spot)},
            {"latitude_deg", spot.place.latitude_deg},
            {"longitude_deg", spot.place.longitude_deg},
            {"kind", plain_text(scenario.kinds.at(setting.kind).id)},
            {"kind_name", kind_name(scenario, setting.kind)},
            {"height_m", json_number(setting.height_m)},
            {"facing_deg", json_number(setting.facing_deg)},
            {"hang", iso(date_of(scenario, setting.hang))},
            {"take_down", iso(date_of(scenario, setting.take_down))},
            {"visit_every_days", setting.visit_every_days},
            {"lured", setting.lured}};
}

Json json_origin(const Provenance& origin) {
    return {{"program", "maybough"},
            {"version", plain_text(origin.version)},
            {"flags", plain_text(origin.flags)},
            {"command", plain_text(origin.command)},
            {"command_line", plain_text(origin.command_line)},
            {"seed", origin.seed},
            {"written_at", plain_text(origin.written_at)}};
}

std::string json_text(const Json& json, int indent) {
    return json.dump(indent, ' ', false, Json::error_handler_t::replace);
}

}  // namespace maybough::report
