// An ensemble of seasons, and placements side by side, on the terminal.
#include "report/sections.hpp"

namespace maybough::report {
namespace {

using Align = TextTable::Align;

std::string totals(const Scenario& scenario, const SeasonSummary& summary) {
    TextTable table;
    table.column("a season", Align::left, 44)
        .column("mean")
        .column("8 seasons of 10")
        .column("chance")
        .column("ignorance");
    const auto row = [&](const std::string& what, const Estimate& estimate, int decimals) {
        table.row({what, with_error(estimate, decimals),
                   number(estimate.low, decimals == 2 ? 0 : decimals) + " to " +
                       number(estimate.high, decimals == 2 ? 0 : decimals),
                   number(estimate.sd_chance, decimals), number(estimate.sd_ignorance, decimals)});
    };
    const std::string in = " (" + plain_text(scenario.keeper.currency) + ")";
    row("swarms caught", summary.catches, 2);
    row("swarms cast in the area and its margin", summary.swarms, 1);
    row("  of them hung within the area", summary.swarms_in_area, 1);
    row("  share of prime swarms", summary.prime_share, 3);
    row("  moved into cavities", summary.settled_in_cavities, 1);
    row("  hived by others", summary.hived_by_others, 1);
    row("  lost", summary.lost, 1);
    row("cost" + in, summary.cost, 0);
    row("value of swarms" + in, summary.value, 0);
    row("net" + in, summary.net, 0);
    return table.text() + wrapped(
                              "Chance and ignorance are standard deviations between seasons: the first from luck, the "
                              "second from what is not known. +- is the standard error of the mean.");
}

std::string each_trap(const Scenario& scenario, const SeasonSummary& summary, const Placement& placement) {
    TextTable table;
    table.column("#").column("spot", Align::left, 30).column("kind", Align::left, 24).column("height").column("faces");
    table.column("swarms a season");
    for (std::size_t i = 0; i < placement.size(); ++i) {
        const TrapSetting& set = placement[i];
        table.row({std::to_string(i + 1), spot_name(scenario, set.spot), kind_name(scenario, set.kind),
                   height_words(set.height_m), compass(set.facing_deg),
                   i < summary.by_trap.size() ? with_error(summary.by_trap[i], 2) : ""});
    }
    return table.text();
}

}  // namespace

std::string season_table(const Scenario& scenario, const SeasonSummary& summary, const Placement& placement) {
    std::string text = plain_text(scenario.name) + ", " + std::to_string(scenario.year) + "\n\n";
    const std::string seasons = counted(summary.catches.n, "simulated season");
    text += placement.empty()
                ? wrapped("No traps are set, so nothing is caught: what follows are the swarms of " + seasons +
                          ". Name traps in the scenario or with --placement, or let 'maybough plan' choose them.")
                : wrapped(counted(static_cast<double>(placement.size()), "trap") + " caught " +
                          with_error(summary.catches, 2) + " swarms a season over " + seasons + "; " +
                          eight_in_ten(summary.catches) + ".");
    text += heading("What became of the swarms") + totals(scenario, summary);
    if (placement.empty()) return text;
    text += heading("The traps") + each_trap(scenario, summary, placement);
    return text + heading("Odds of a season") + wrapped(odds_words(summary.odds_at_least));
}

std::string compare_table(const Scenario& scenario, const std::vector<ComparedPlacement>& sides) {
    TextTable table;
    table.column("placement", Align::left, 22).column("traps").column("swarms").column("against first");
    table.column("cost").column("net").column("against first").column("better in");
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const ComparedPlacement& side = sides[i];
        table.row({plain_text(side.name), std::to_string(side.placement.size()), with_error(side.catches, 2),
                   i == 0 ? "" : with_error(side.catches_less_first, 2), number(side.cost.mean, 0),
                   with_error(side.net, 0), i == 0 ? "" : with_error(side.net_less_first, 0),
                   i == 0 ? "" : percent(side.odds_better_than_first)});
    }
    const std::uint32_t seasons = sides.empty() ? 0 : sides.front().catches.n;
    return plain_text(scenario.name) + ", " + std::to_string(scenario.year) + ": placements on the same " +
           counted(seasons, "simulated season") + "\n\n" + table.text() +
           wrapped(
               "Money in " + plain_text(scenario.keeper.currency) +
               " a season. Differences are paired, season by season, so their +- is smaller than that of two means. "
               "\"Better in\" is the share of seasons with more net value than the first, ties half.");
}

}  // namespace maybough::report
