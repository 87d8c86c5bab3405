// The plan on the terminal: the answer first, then what stands behind it.
#include <algorithm>
#include <cmath>

#include "report/sections.hpp"

namespace maybough::report {
namespace {

using Align = TextTable::Align;

std::string traps_to_hang(const Scenario& scenario, const Plan& plan) {
    TextTable table;
    table.column("#")
        .column("spot", Align::left, 26)
        .column("kind", Align::left, 20)
        .column("height", Align::right, 16);
    table.column("faces", Align::left).column("hang").column("take down").column("every");
    int nr = 0;
    for (const PlannedTrap& trap : plan.traps) {
        const TrapSetting& set = trap.setting;
        table.row({std::to_string(++nr), spot_name(scenario, set.spot), kind_name(scenario, set.kind),
                   height_words(set.height_m), compass(set.facing_deg), short_date(date_of(scenario, set.hang)),
                   short_date(date_of(scenario, set.take_down)), std::to_string(set.visit_every_days) + " d"});
    }
    return table.text();
}

std::string traps_worth(const Scenario& scenario, const Plan& plan) {
    TextTable table;
    table.column("#").column("spot", Align::left, 24).column("swarms a season").column("share");
    table.column("lost without it");
    table.column("next best spot", Align::left, 22).column("lost there");
    const double all = recommended_point(plan).catches.mean;
    int nr = 0;
    for (const PlannedTrap& trap : plan.traps) {
        const bool has_next = trap.next_spot < scenario.spots.size();
        table.row({std::to_string(++nr), spot_name(scenario, trap.setting.spot), with_error(trap.catches, 2),
                   percent(all > 0 ? trap.catches.mean / all : 0), with_error(trap.lost_without, 2),
                   has_next ? spot_name(scenario, trap.next_spot) : "none",
                   has_next ? with_error(trap.next_difference, 2) : ""});
    }
    return table.text();
}

std::string bar(double value, double most) {
    constexpr double longest = 14;
    const double length = most > 0 && std::isfinite(value) ? std::clamp(longest * value / most, 0.0, longest) : 0;
    return std::string(static_cast<std::size_t>(std::lround(length)), '#');
}

std::string curve(const Plan& plan) {
    double most = 0;
    for (const CurvePoint& point : plan.curve) most = std::max(most, point.catches.mean);
    TextTable table;
    table.column("").column("traps").column("swarms").column("one more adds").column("cost").column("adds");
    table.column("net").column("one more adds").column("spend").column("", Align::left);
    for (std::size_t k = 0; k < plan.curve.size(); ++k) {
        const CurvePoint& point = plan.curve[k];
        const int traps = static_cast<int>(k);
        const bool tied = traps >= plan.recommended_low && traps <= plan.recommended_high;
        table.row({traps == plan.recommended ? ">"
                   : tied                    ? "~"
                                             : "",
                   std::to_string(point.traps), with_error(point.catches, 2),
                   k == 0 ? "" : with_error(point.marginal_catches, 2), number(point.cost.mean, 0),
                   k == 0 ? "" : number(point.cost.mean - plan.curve[k - 1].cost.mean, 0), with_error(point.net, 0),
                   k == 0 ? "" : with_error(point.marginal_net, 0), number(point.outlay, 0),
                   bar(point.catches.mean, most)});
    }
    return table.text();
}

std::string odds(const CurvePoint& best) {
    return wrapped(odds_words(best.odds_at_least)) +
           wrapped("In the worst tenth of seasons " + number(best.worst_tenth_catches, 1) + " swarms on average.");
}

std::string shopping(const Scenario& scenario, const CurvePoint& best) {
    const Keeper& keeper = scenario.keeper;
    TextTable table;
    table.column("kind", Align::left, 30).column("used").column("to build").column("material").column("hours to build");
    for (const KindNeed& need : kinds_needed(scenario, best.placement)) {
        table.row({kind_name(scenario, need.kind), std::to_string(need.used), std::to_string(need.to_build),
                   money(need.material, keeper.currency), number(need.build_hours, 1)});
    }
    const auto lured =
        std::count_if(best.placement.begin(), best.placement.end(), [](const auto& s) { return s.lured; });
    return table.text() + wrapped("Lures: " + counted(static_cast<double>(lured), "vial") + " to start with (" +
                                  money(keeper.lure_cost, keeper.currency) + " each, renewed after " +
                                  number(keeper.relure_after_days, 0) + " days).");
}

std::string all_wrapped(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) {
        std::string block = wrapped(line, 2);
        if (!block.empty()) block.front() = '-';
        text += block;
    }
    return text;
}

std::string the_curve(const Scenario& scenario, const Plan& plan) {
    return heading("Catch against cost, a season, money in " + plain_text(scenario.keeper.currency)) + curve(plan) +
           wrapped(
               "> recommended; ~ cannot be told from it at 95 %. +- is one standard error. Cost counts traps by "
               "the seasons they last, lures, hours and kilometres; spend is the money to spend before the "
               "season.");
}

}  // namespace

std::string plan_table(const Scenario& scenario, const Plan& plan, const Provenance& origin) {
    const CurvePoint& best = recommended_point(plan);
    std::string text = "Traps for " + plain_text(scenario.name) + ", " + std::to_string(scenario.year) + "\n\n" +
                       wrapped(plan_answer(scenario, plan));
    if (!plan.traps.empty()) {
        text += heading("The traps") + traps_to_hang(scenario, plan) + "\n" + traps_worth(scenario, plan);
        text += heading("To build and buy") + shopping(scenario, best);
    }
    if (plan.curve.size() > 1) text += the_curve(scenario, plan);
    if (!plan.traps.empty()) {
        text += heading("Why it stops there") + wrapped(stop_words(plan));
        text += heading("Odds of a season with " + counted(best.traps, "trap")) + odds(best);
        text += heading("Chance and ignorance") + wrapped(chance_and_ignorance(best.catches));
    }
    const std::vector<std::string> unknown = plan.traps.empty() ? std::vector<std::string>{} : unknowns(scenario, plan);
    if (!unknown.empty()) text += heading("Which unknown matters most") + all_wrapped(unknown);
    const std::vector<std::string> others =
        plan.curve.size() > 1 ? other_terms(scenario, plan) : std::vector<std::string>{};
    if (!others.empty()) text += heading("Under other terms") + all_wrapped(others);
    if (plan.curve.size() > 1) {
        text += heading("How good the search is") + all_wrapped(search_quality(scenario, plan));
    }
    text += heading("What this rests on") + all_wrapped(assumptions(scenario));
    text += heading("Before you climb") + all_wrapped(cautions());
    text += heading("To get these numbers again") + all_wrapped(reproduction(scenario, plan.effort, origin));
    return text;
}

}  // namespace maybough::report
