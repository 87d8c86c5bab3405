// One page: the frame from tools/page with title, answer and data in it; and the data that several pages share.
#include "report/page.hpp"

#include <algorithm>
#include <map>

#include "report/words.hpp"

namespace maybough::report {

/// A page without its data, put together from tools/page when the program is built; empty where there is none of that
/// name. The marks {{title}}, {{answer}} and {{data}} are left to fill.
std::string page_frame(std::string_view page);

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

Json place_json(LatLon place) {
    return Json::array({place.latitude_deg, place.longitude_deg});
}

Json habitats_json(const Land& land, const LocalPlane& plane) {
    Json habitats = Json::array();
    for (const HabitatPatch& patch : land.patches) {
        Json ring = Json::array();
        for (const Point corner : patch.ring) ring.push_back(place_json(plane.to_earth(corner)));
        habitats.push_back({{"habitat", habitat_names.at(static_cast<std::size_t>(patch.habitat))},
                            {"name", plain_text(patch.name)},
                            {"ring", std::move(ring)}});
    }
    return habitats;
}

/// Streets, water, buildings and names; nothing where a results file's own are damaged.
Json drawn_json(const Scenario& scenario) {
    const Json drawn = Json::parse(scenario.map, nullptr, false);
    return drawn.is_array() ? drawn : Json::array();
}

}  // namespace

std::string page_text(const Page& page) {
    const std::string frame = page_frame(page.frame);
    if (frame.empty()) throw ModelFault("there is no page '" + std::string(page.frame) + "'");
    const std::map<std::string_view, std::string> fillings{{"{{title}}", markup_text(page.title)},
                                                           {"{{answer}}", markup_text(with_sign(page.answer))},
                                                           {"{{data}}", island(page.data)}};
    // One pass over the frame, so that a name that looks like a mark stays a name.
    std::string text;
    std::size_t at = 0;
    for (std::size_t mark = frame.find("{{"); mark != std::string::npos; mark = frame.find("{{", mark + 2)) {
        const std::size_t end = frame.find("}}", mark);
        if (end == std::string::npos) break;
        const auto filling = fillings.find(std::string_view(frame).substr(mark, end + 2 - mark));
        if (filling == fillings.end()) continue;
        text.append(frame, at, mark - at).append(filling->second);
        at = end + 2;
    }
    return text.append(frame, at);
}

Json map_json(const Scenario& scenario, const Placement& used, const std::vector<SwarmSquare>& swarms) {
    const Land& land = scenario.land;
    const LocalPlane plane(land.centre);
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
        const auto here = [i](const TrapSetting& setting) { return setting.spot == i; };
        if (std::any_of(used.begin(), used.end(), here)) continue;
        spots.push_back({{"name", spot_name(scenario, i)},
                         {"latitude_deg", scenario.spots[i].place.latitude_deg},
                         {"longitude_deg", scenario.spots[i].place.longitude_deg}});
    }
    Json squares = Json::array();
    for (const SwarmSquare& square : swarms) {
        const LatLon centre = plane.to_earth(square.centre);
        squares.push_back({{"latitude_deg", centre.latitude_deg},
                           {"longitude_deg", centre.longitude_deg},
                           {"side_m", square.side_m},
                           {"swarms", json_number(square.swarms)}});
    }
    return {{"swarms", std::move(squares)},
            {"latitude_deg", land.centre.latitude_deg},
            {"longitude_deg", land.centre.longitude_deg},
            {"radius_m", land.radius_m},
            {"elsewhere", habitat_names.at(static_cast<std::size_t>(land.elsewhere))},
            {"habitats", habitats_json(land, plane)},
            {"credit", plain_text(scenario.credit)},
            {"drawn", drawn_json(scenario)},
            {"apiaries", std::move(apiaries)},
            {"spots", std::move(spots)}};
}

Json beliefs_json(const Scenario& scenario) {
    Json list = Json::array();
    for (const ParameterEntry& entry : parameter_table()) {
        Belief own;
        const Belief* belief = drawn_belief(scenario, entry, own);
        if (belief == nullptr) continue;
        const auto given = scenario.given.find(std::string(entry.row.key));
        list.push_back({{"key", entry.row.key},
                        {"meaning", entry.row.meaning},
                        {"unit", entry.row.unit},
                        {"median", json_number(belief->median)},
                        {"low", json_number(belief->low)},
                        {"high", json_number(belief->high)},
                        {"standing", word(entry.row.standing)},
                        {"source", entry.row.source},
                        {"set_by", given == scenario.given.end() ? "" : plain_text(given->second)}});
    }
    return list;
}

Json json_scenario(const Scenario& scenario) {
    return {{"name", plain_text(scenario.name)},
            {"year", scenario.year},
            {"latitude_deg", scenario.land.centre.latitude_deg},
            {"longitude_deg", scenario.land.centre.longitude_deg},
            {"radius_m", scenario.land.radius_m},
            {"currency", plain_text(scenario.keeper.currency)}};
}

Json calendar_json(const Scenario& scenario, const std::vector<double>& swarms, const std::vector<double>& catches) {
    const auto series = [](const std::vector<double>& days) {
        Json list = Json::array();
        for (const double value : days) list.push_back(json_number(value));
        return list;
    };
    return {{"first_day", iso(date_of(scenario, Day{0}))},
            {"swarms_per_day", series(swarms)},
            {"catches_per_day", series(catches)}};
}

Json odds_json(const std::vector<SeasonShare>& odds) {
    Json list = Json::array();
    for (std::size_t k = 0; k < odds.size(); ++k)
        list.push_back({{"swarms", k + 1},
                        {"share_of_seasons", json_number(odds[k].share)},
                        {"low_95", json_number(odds[k].low_95)},
                        {"high_95", json_number(odds[k].high_95)}});
    return list;
}

std::string citation(const Provenance& origin) {
    return "To cite: Maybough " + plain_text(origin.version) +
           ", swarm traps planned on simulated seasons of bee colonies; name the command and the seed with it.";
}

std::vector<std::string> run_again(const Provenance& origin, std::uint32_t seed, const std::string& run) {
    std::vector<std::string> lines;
    if (!origin.command_line.empty()) lines.push_back(plain_text(origin.command_line));
    lines.push_back("Seed " + std::to_string(seed) + ", " + run + "; maybough " + plain_text(origin.version) +
                    ". Any number of threads gives the same numbers.");
    lines.push_back(citation(origin));
    return lines;
}

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

}  // namespace maybough::report
