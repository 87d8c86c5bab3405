// The answer of a plan in one paragraph: what to build, when, what to expect, how sure.
#include <algorithm>
#include <cmath>

#include "report/sections.hpp"

namespace maybough::report {
namespace {

std::string kinds_words(const Scenario& scenario, const Placement& placement) {
    std::vector<std::string> parts;
    int owned = 0;
    for (const KindNeed& need : kinds_needed(scenario, placement)) {
        parts.push_back(std::to_string(need.used) + " x " + kind_name(scenario, need.kind));
        owned += need.used - need.to_build;
    }
    std::string text = listed(parts);
    if (owned > 0) text += " (" + std::to_string(owned) + " of them there already)";
    return text;
}

std::string hours_words(double hours) {
    return number(hours, hours < 10 ? 1 : 0) + " h";
}

std::string days_words(const Placement& placement) {
    const auto [fewest, most] =
        std::minmax_element(placement.begin(), placement.end(),
                            [](const auto& a, const auto& b) { return a.visit_every_days < b.visit_every_days; });
    if (fewest->visit_every_days == most->visit_every_days) return counted(most->visit_every_days, "day");
    return std::to_string(fewest->visit_every_days) + " to " + std::to_string(most->visit_every_days) + " days";
}

/// Why nothing is to be hung, in plain words: a limit that reaches for no trap, no place, or traps that do not pay.
std::string no_trap_answer(const Scenario& scenario, const Plan& plan) {
    const std::string& currency = scenario.keeper.currency;
    if (plan.question.hours > 0 && plan.least_hours > plan.question.hours) {
        return "Hang no trap: " + hours_words(plan.question.hours) +
               " of your own are too few for even one; the one that takes least wants about " +
               hours_words(plan.least_hours) + " a season.";
    }
    if (plan.question.budget > 0 && plan.least_outlay > plan.question.budget) {
        return "Hang no trap: " + money(plan.question.budget, currency) +
               " to spend before the season buys none; the cheapest takes " + money(plan.least_outlay, currency) + ".";
    }
    if (plan.curve.size() < 2) return "Hang no trap: there is no spot that a trap may use.";
    const CurvePoint& one = plan.curve[1];
    std::string text = "Hang no trap: on the numbers given, none pays for itself. The first would catch " +
                       with_error(one.catches, 2) + " swarms a season, worth " + money(one.value.mean, currency) +
                       ", and cost " + money(one.cost.mean, currency) + ".";
    if (plan.recommended_high > 0) {
        text += " The simulated seasons cannot tell 0 to " + std::to_string(plan.recommended_high) +
                " traps apart by what they bring (95 %).";
    }
    return text;
}

}  // namespace

std::string plan_answer(const Scenario& scenario, const Plan& plan) {
    const CurvePoint& best = recommended_point(plan);
    const std::string& currency = scenario.keeper.currency;
    if (best.placement.empty()) return no_trap_answer(scenario, plan);
    const auto by_hang = [](const TrapSetting& a, const TrapSetting& b) { return a.hang < b.hang; };
    const auto [first, last] = std::minmax_element(best.placement.begin(), best.placement.end(), by_hang);
    const std::string hang = first->hang == last->hang ? "by " + short_date(date_of(scenario, first->hang))
                                                       : "from " + short_date(date_of(scenario, first->hang)) + " to " +
                                                             short_date(date_of(scenario, last->hang));
    std::string text =
        "Hang " + counted(best.traps, "trap") + ": " + kinds_words(scenario, best.placement) + ". Hang " +
        (best.traps == 1 ? "it " : "them ") + hang + " and visit every " + days_words(best.placement) +
        ". Expect about " + counted(std::round(10 * best.catches.mean) / 10, "swarm") + " a season, " +
        eight_in_ten(best.catches) + ". Net value " + money_with_error(best.net, currency) +
        " a season after costs of " + money(best.cost.mean, currency) + "; " + money(best.outlay, currency) +
        " to spend before the season and " + number(best.hours, 0) + " h of your own work. ";
    return text + how_sure(scenario, plan);
}

std::string how_sure(const Scenario& /*scenario*/, const Plan& plan) {
    const CurvePoint& best = recommended_point(plan);
    std::string text = "How sure: ";
    if (plan.recommended_low == plan.recommended_high) {
        text += "the simulated seasons single out this number of traps (95 %)";
    } else {
        text += "the simulated seasons cannot tell " + std::to_string(plan.recommended_low) + " to " +
                std::to_string(plan.recommended_high) + " traps apart (95 %)";
    }
    if (!best.odds_at_least.empty()) {
        text += "; at least one swarm comes in " + share_words(best.odds_at_least.front()) + " of seasons";
    }
    const double ignorance = share_of_ignorance(best.catches);
    if (std::isfinite(ignorance)) {
        text += "; " + percent(ignorance) + " of the spread is what nobody knows of this place, the rest is luck";
    }
    return text + ".";
}

}  // namespace maybough::report
