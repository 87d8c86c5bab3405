// Seasons of one placement as a page: how many swarms, when, in which traps, and where they came from.
#include <algorithm>

#include "report/page.hpp"
#include "report/sections.hpp"

namespace maybough::report {
namespace {

/// SeasonShare of seasons with 0, 1, 2, ... catches, up to the most seen.
Json shares_of_seasons(const std::vector<SeasonRecord>& seasons) {
    std::vector<std::int64_t> counts(1, 0);
    for (const SeasonRecord& season : seasons) {
        if (season.catches.size() >= counts.size()) counts.resize(season.catches.size() + 1, 0);
        ++counts[season.catches.size()];
    }
    Json shares = Json::array();
    for (const std::int64_t count : counts) {
        shares.push_back(static_cast<double>(count) / static_cast<double>(std::max<std::size_t>(1, seasons.size())));
    }
    return shares;
}

Json fates_json(const Scenario& scenario, const SeasonSummary& summary) {
    const std::string currency = plain_text(scenario.keeper.currency);
    const auto row = [](const char* key, const std::string& what, int decimals, const Estimate& estimate) {
        return Json{{"key", key}, {"what", what}, {"decimals", decimals}, {"estimate", json_estimate(estimate)}};
    };
    return Json::array({row("catches", "swarms caught", 2, summary.catches),
                        row("swarms", "swarms cast in the area and its margin", 1, summary.swarms),
                        row("swarms_in_area", "of them hung within the area", 1, summary.swarms_in_area),
                        row("prime_share", "share of prime swarms", 3, summary.prime_share),
                        row("settled_in_cavities", "moved into cavities", 1, summary.settled_in_cavities),
                        row("hived_by_others", "hived by others", 1, summary.hived_by_others),
                        row("lost", "lost", 1, summary.lost), row("cost", "cost, " + currency, 0, summary.cost),
                        row("value", "worth of swarms, " + currency, 0, summary.value),
                        row("net", "net value, " + currency, 0, summary.net)});
}

/// Whose swarms the traps took, and from how far; nothing where none was taken.
std::string where_from(const std::vector<SeasonRecord>& seasons) {
    std::vector<double> distances_m;
    double managed = 0;
    double prime = 0;
    for (const SeasonRecord& season : seasons) {
        for (const Catch& caught : season.catches) {
            distances_m.push_back(caught.distance_m);
            managed += caught.origin == ColonyOrigin::managed ? 1 : 0;
            prime += caught.prime ? 1 : 0;
        }
    }
    if (distances_m.empty()) return "No swarm was caught in any simulated season.";
    const double all = static_cast<double>(distances_m.size());
    std::sort(distances_m.begin(), distances_m.end());
    const auto at = [&](double share) { return distances_m[static_cast<std::size_t>(share * (all - 1))]; };
    return "Of the swarms caught, " + percent(managed / all) + " came from managed hives, the others from colonies " +
           "nobody keeps; " + percent(prime / all) + " were prime swarms. Half of them had hung within " +
           number(at(0.5), 0) + " m of the trap, nine tenths within " + number(at(0.9), 0) + " m.";
}

std::string answer(const SeasonSummary& summary, const Placement& placement, const std::string& currency) {
    const std::string seasons = counted(summary.catches.n, "simulated season");
    if (placement.empty()) {
        return "No traps are set. Over " + seasons + ", " + with_error(summary.swarms_in_area, 1) +
               " swarms a season hung in the area.";
    }
    return counted(static_cast<double>(placement.size()), "trap") + " caught " + with_error(summary.catches, 2) +
           " swarms a season over " + seasons + "; " + eight_in_ten(summary.catches) + ". Net value " +
           money_with_error(summary.net, currency) + " a season after costs of " + money(summary.cost.mean, currency) +
           ".";
}

Json season_json(const Scenario& scenario, const SeasonSummary& summary, const Placement& placement,
                 const Provenance& origin) {
    Json traps = Json::array();
    for (std::size_t i = 0; i < placement.size(); ++i) {
        traps.push_back(json_trap(scenario, placement[i], i + 1));
        traps.back()["catches"] = i < summary.by_trap.size() ? json_estimate(summary.by_trap[i]) : Json(nullptr);
    }
    Json json{{"file_kind", "maybough season"}, {"format", 1}, {"origin", json_origin(origin)}};
    json["scenario"] = json_scenario(scenario);
    json["traps"] = std::move(traps);
    json["fates"] = fates_json(scenario, summary);
    json["share_of_seasons_with"] = shares_of_seasons(summary.seasons);
    json["odds_at_least"] = odds_json(summary.odds_at_least);
    json["calendar"] = calendar_json(scenario, summary.swarm_days, summary.catch_days);
    json["where_from"] = where_from(summary.seasons);
    json["chance"] = with_sign(chance_and_ignorance(summary.catches));
    json["map"] = map_json(scenario, placement, summary.swarm_squares);
    json["beliefs"] = beliefs_json(scenario);
    json["assumptions"] = assumptions(scenario);
    json["cautions"] = cautions();
    json["reproduction"] = run_again(origin, origin.seed, counted(summary.catches.n, "simulated season"));
    return json;
}

}  // namespace

std::string season_page(const Scenario& scenario, const SeasonSummary& summary, const Placement& placement,
                        const Provenance& origin) {
    return page_text({"season", "Seasons of " + scenario.name + ", " + std::to_string(scenario.year),
                      answer(summary, placement, scenario.keeper.currency),
                      season_json(scenario, summary, placement, origin)});
}

}  // namespace maybough::report
