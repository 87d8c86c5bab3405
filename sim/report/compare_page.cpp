// Placements side by side as a page: paired differences with their intervals, and all of them on one map.
#include <algorithm>
#include <cmath>

#include "report/page.hpp"
#include "report/sections.hpp"

namespace maybough::report {
namespace {

/// A, B, ... Z, AA, AB, ...
std::string letter(std::size_t nr) {
    const std::string last(1, static_cast<char>('A' + nr % 26));
    return nr < 26 ? last : letter(nr / 26 - 1) + last;
}

/// A placement's name as the keeper's own words.
std::string named(const ComparedPlacement& side) {
    return "\u201c" + plain_text(side.name) + "\u201d";
}

/// What one placement brings against the first, and whether the seasons can tell.
std::string against(const ComparedPlacement& side, const std::string& first, const std::string& currency) {
    const Estimate& less = side.net_less_first;
    const std::string amount = money(std::abs(less.mean), currency) + " a season " + (less.mean < 0 ? "less" : "more");
    const std::string better = "better in " + percent(side.odds_better_than_first) + " of seasons";
    if (std::abs(less.mean) > less.half_width_95) {
        return named(side) + " brings " + amount + " than " + first + " (\u00b1 " + number(less.se, 0) + "), " +
               better + ".";
    }
    return "These seasons cannot tell " + named(side) + " from " + first + ": " + amount + " (\u00b1 " +
           number(less.se, 0) + "), " + better + ".";
}

std::string answer(const std::vector<ComparedPlacement>& sides, const std::string& currency) {
    if (sides.empty()) return "There is nothing to compare.";
    const auto by_net = [](const ComparedPlacement& a, const ComparedPlacement& b) { return a.net.mean < b.net.mean; };
    const ComparedPlacement& best = *std::max_element(sides.begin(), sides.end(), by_net);
    const std::string first = named(sides.front());
    std::string text = "On the same " + counted(best.net.n, "simulated season") + ", " + named(best) +
                       " brings most: net value " + money_with_error(best.net, currency) + " a season, " +
                       with_error(best.catches, 2) + " swarms.";
    if (sides.size() == 1) return text;
    if (&best != &sides.front()) return text + " " + against(best, first, currency);
    const auto second = std::max_element(sides.begin() + 1, sides.end(), by_net);
    return text + " Next to it, " + against(*second, first, currency);
}

Json placements_json(const Scenario& scenario, const std::vector<ComparedPlacement>& sides) {
    Json list = Json::array();
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const ComparedPlacement& side = sides[i];
        Json traps = Json::array();
        for (std::size_t k = 0; k < side.placement.size(); ++k) {
            traps.push_back(json_trap(scenario, side.placement[k], k + 1));
        }
        list.push_back({{"letter", letter(i)},
                        {"name", plain_text(side.name)},
                        {"traps", std::move(traps)},
                        {"catches", json_estimate(side.catches)},
                        {"cost", json_estimate(side.cost)},
                        {"net", json_estimate(side.net)},
                        {"catches_less_first", json_estimate(side.catches_less_first)},
                        {"net_less_first", json_estimate(side.net_less_first)},
                        {"odds_better_than_first", json_number(side.odds_better_than_first)}});
    }
    return list;
}

}  // namespace

std::string compare_page(const Scenario& scenario, const std::vector<ComparedPlacement>& sides,
                         const Provenance& origin) {
    Placement used;
    for (const ComparedPlacement& side : sides) used.insert(used.end(), side.placement.begin(), side.placement.end());
    const std::uint32_t seasons = sides.empty() ? 0 : sides.front().catches.n;
    Json json{{"file_kind", "maybough compare"}, {"format", 1}, {"origin", json_origin(origin)}};
    json["scenario"] = json_scenario(scenario);
    json["placements"] = placements_json(scenario, sides);
    json["map"] = map_json(scenario, used);
    json["beliefs"] = beliefs_json(scenario);
    json["assumptions"] = assumptions(scenario);
    json["cautions"] = cautions();
    json["reproduction"] =
        run_again(origin, origin.seed, counted(seasons, "simulated season") + ", the same for every placement");
    return page_text({"compare", "Placements for " + scenario.name + ", " + std::to_string(scenario.year),
                      answer(sides, scenario.keeper.currency), std::move(json)});
}

}  // namespace maybough::report
