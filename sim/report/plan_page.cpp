// The plan as one page that opens offline: the frame from tools/page with the plan as one block of data in it.
#include <algorithm>
#include <string_view>

#include "report/json.hpp"
#include "report/sections.hpp"

namespace maybough {

/// The page without its data, put together from tools/page when the program is built. Four marks are left to fill.
std::string_view plan_page_frame();

namespace {

/// JSON that cannot end its script element or open a comment in it: "<" stands only inside strings, where it may be
/// written as an escape.
std::string island(const Json& json) {
    std::string out;
    for (const char c : json_text(json, -1)) {
        if (c == '<') {
            out += "\\u003c";
        } else {
            out += c;
        }
    }
    return out;
}

/// Terminals get "+-", pages the sign.
std::string with_sign(std::string text) {
    for (std::size_t at = text.find("+-"); at != std::string::npos; at = text.find("+-", at)) {
        text.replace(at, 2, "\u00b1");
    }
    return text;
}

std::vector<std::string> with_signs(std::vector<std::string> lines) {
    for (std::string& line : lines) line = with_sign(std::move(line));
    return lines;
}

Json place_json(LatLon place) {
    return Json::array({place.latitude_deg, place.longitude_deg});
}

Json map_json(const Scenario& scenario, const Plan& plan) {
    const Land& land = scenario.land;
    const LocalPlane plane(land.centre);
    Json habitats = Json::array();
    for (const HabitatPatch& patch : land.patches) {
        Json ring = Json::array();
        for (const Point corner : patch.ring) ring.push_back(place_json(plane.to_earth(corner)));
        habitats.push_back({{"habitat", habitat_names.at(static_cast<std::size_t>(patch.habitat))},
                            {"name", plain_text(patch.name)},
                            {"ring", std::move(ring)}});
    }
    Json apiaries = Json::array();
    for (const Apiary& apiary : scenario.apiaries) {
        const LatLon place = plane.to_earth(apiary.at);
        apiaries.push_back({{"id", plain_text(apiary.id)},
                            {"latitude_deg", place.latitude_deg},
                            {"longitude_deg", place.longitude_deg},
                            {"hives", apiary.hives}});
    }
    Json spots = Json::array();
    for (std::size_t i = 0; i < scenario.spots.size(); ++i) {
        const auto here = [i](const PlannedTrap& trap) { return trap.setting.spot == i; };
        if (std::any_of(plan.traps.begin(), plan.traps.end(), here)) continue;
        spots.push_back({{"name", spot_name(scenario, i)},
                         {"latitude_deg", scenario.spots[i].place.latitude_deg},
                         {"longitude_deg", scenario.spots[i].place.longitude_deg}});
    }
    return {{"latitude_deg", land.centre.latitude_deg},
            {"longitude_deg", land.centre.longitude_deg},
            {"radius_m", land.radius_m},
            {"elsewhere", habitat_names.at(static_cast<std::size_t>(land.elsewhere))},
            {"habitats", std::move(habitats)},
            {"apiaries", std::move(apiaries)},
            {"spots", std::move(spots)}};
}

}  // namespace

std::string plan_page(const Scenario& scenario, const Plan& plan, const Provenance& origin) {
    Json json = plan_as_json(scenario, plan, origin);
    json["map"] = map_json(scenario, plan);
    json["prose"] = {{"chance", with_sign(chance_and_ignorance(recommended_point(plan).catches))},
                     {"why", with_sign(why_it_stops(plan))},
                     {"unknowns", with_signs(unknowns(scenario, plan))},
                     {"others", other_terms(scenario, plan)},
                     {"search", search_quality(scenario, plan)},
                     {"reproduction", reproduction(scenario, plan.effort, origin)}};
    const std::string title = markup_text("Traps for " + scenario.name + ", " + std::to_string(scenario.year));
    const std::map<std::string_view, std::string> fillings{
        {"{{title}}", title},
        {"{{answer}}", markup_text(with_sign(plan_answer(scenario, plan)))},
        {"{{data}}", island(json)}};
    // One pass over the frame, so that a name that looks like a mark stays a name.
    const std::string_view frame = plan_page_frame();
    std::string page;
    std::size_t at = 0;
    for (std::size_t mark = frame.find("{{"); mark != std::string_view::npos; mark = frame.find("{{", mark + 2)) {
        const std::size_t end = frame.find("}}", mark);
        if (end == std::string_view::npos) break;
        const auto filling = fillings.find(frame.substr(mark, end + 2 - mark));
        if (filling == fillings.end()) continue;
        page.append(frame.substr(at, mark - at)).append(filling->second);
        at = end + 2;
    }
    return page.append(frame.substr(at));
}

}  // namespace maybough
