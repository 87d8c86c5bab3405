// Facts drawn from a plan once: what to build, how sure it is, how good the search was, what it rests on.
#include "report/sections.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace maybough::report {

const CurvePoint& recommended_point(const Plan& plan) {
    if (plan.recommended < 0 || static_cast<std::size_t>(plan.recommended) >= plan.curve.size()) {
        throw ModelFault("the plan recommends point " + std::to_string(plan.recommended) + " of a curve of " +
                         std::to_string(plan.curve.size()));
    }
    return plan.curve[static_cast<std::size_t>(plan.recommended)];
}

std::vector<KindNeed> kinds_needed(const Scenario& scenario, const Placement& placement) {
    std::map<std::size_t, KindNeed> needs;
    for (const TrapSetting& setting : placement) {
        KindNeed& need = needs[setting.kind];
        need.kind = setting.kind;
        ++need.used;
    }
    std::vector<KindNeed> list;
    for (auto& [kind, need] : needs) {
        const TrapKind& of = scenario.kinds.at(kind);
        need.to_build = std::max(0, need.used - of.owned);
        need.material = need.to_build * of.cost;
        need.build_hours = need.to_build * of.build_hours;
        list.push_back(need);
    }
    return list;
}

double share_of_ignorance(const Estimate& estimate) {
    const double chance = estimate.sd_chance * estimate.sd_chance;
    const double ignorance = estimate.sd_ignorance * estimate.sd_ignorance;
    if (!(chance + ignorance > 0)) return std::numeric_limits<double>::quiet_NaN();
    return ignorance / (chance + ignorance);
}

std::vector<Sensitivity> ranked(std::vector<Sensitivity> sensitivities) {
    const auto moves = [](const Sensitivity& s) { return std::abs(s.catches_at_high - s.catches_at_low); };
    std::stable_sort(sensitivities.begin(), sensitivities.end(),
                     [&](const Sensitivity& a, const Sensitivity& b) { return moves(a) > moves(b); });
    return sensitivities;
}

std::string stop_words(const Plan& plan) {
    return plain_text(plan.why_it_stops);
}

std::string chance_and_ignorance(const Estimate& estimate) {
    const double ignorance = share_of_ignorance(estimate);
    if (!std::isfinite(ignorance)) return "Every simulated season came out alike.";
    return "Of the spread between seasons " + percent(1 - ignorance) +
           " is chance (another season like this one) and " + percent(ignorance) +
           " is ignorance (densities and effects nobody has measured here); simulating more seasons shrinks neither, "
           "only "
           "the +- of a mean. Standard deviations: chance " +
           number(estimate.sd_chance, 2) + ", ignorance " + number(estimate.sd_ignorance, 2) + " swarms.";
}

std::string contest_words(const Scenario& scenario, const Plan& plan) {
    const auto left = std::count_if(plan.tried.begin(), plan.tried.end(), [](const auto& tried) { return tried.left; });
    const std::string alike = money(plan.indifference, scenario.keeper.currency);
    switch (plan.contest_end) {
        case ContestEnd::one_left:
            return "all others fell behind";
        case ContestEnd::all_alike:
            return "the " + std::to_string(left) + " left differ by no more than " + alike + " (95 %)";
        case ContestEnd::seasons_spent:
            break;
    }
    return std::to_string(left) + " were left when the seasons were spent; a difference of less than " + alike +
           " was not looked for";
}

namespace {

std::string contest_line(const Scenario& scenario, const Plan& plan) {
    std::uint32_t seasons = 0;
    double seen = 0;
    double foretold = 0;
    for (const TriedDesign& tried : plan.tried) {
        seasons = std::max(seasons, tried.seasons);
        seen += tried.catches.mean;
        foretold += tried.foretold_catches;
    }
    const TriedDesign& winner = plan.tried.front();
    return "The full simulation tried " + counted(static_cast<double>(plan.tried.size()), "design") + " on up to " +
           number(seasons, 0) + " seasons they shared: " + contest_words(scenario, plan) +
           ". On the same seasons the formula foretold " + number(winner.foretold_catches, 2) +
           " swarms for the one taken, the simulation caught " + number(winner.catches.mean, 2) +
           "; over all designs " + percent(seen > 0 ? foretold / seen - 1 : 0) + " off.";
}

std::string hunts_line(const Plan& plan) {
    const double run = static_cast<double>(plan.hunts_run);
    const double asked = static_cast<double>(plan.hunts_asked);
    std::string line = "House-hunts: " + number(run, 0) + " simulated for " + number(asked, 0) + " asked (" +
                       percent(1 - run / asked) + " were bit for bit the same as one already run)";
    if (plan.hunts_exhaustive > 0) {
        line += "; to try every placement of as many traps on the contest's seasons would ask for " +
                three_digits(plan.hunts_exhaustive / 1e6) + " million";
        if (run < plan.hunts_exhaustive / 100) line += ", more than a hundred times as many";
    }
    return line + ".";
}

}  // namespace

std::vector<std::string> search_quality(const Scenario& scenario, const Plan& plan) {
    std::vector<std::string> lines;
    const SurrogateCheck& check = plan.surrogate;
    if (check.hunts > 0) {
        lines.push_back(
            "A fast formula searches, the full simulation confirms. On " + number(static_cast<double>(check.hunts), 0) +
            " house-hunts it was not fitted to, its odds were off by " + number(100 * check.rms_error, 1) +
            " points of 100 (root mean square; R2 " + number(check.r_squared, 2) + "); swarms in traps: foretold " +
            percent(check.predicted_in_traps) + ", seen " + percent(check.seen_in_traps) + ".");
    }
    lines.push_back(
        "By that formula, brought to the simulation's level, this plan catches " + number(plan.search_catches, 2) +
        " swarms a season and no choice of spots for as many traps more than " + number(plan.bound_catches, 2) +
        ". Searched anew with other seasons in hand, at most " + money(plan.gap_found_net, scenario.keeper.currency) +
        " more of net value turn up; that no placement at all has more than " +
        money(plan.gap_net, scenario.keeper.currency) + " beyond this one is proved (both 95 %).");
    if (!plan.tried.empty()) lines.push_back(contest_line(scenario, plan));
    if (plan.hunts_asked > 0) lines.push_back(hunts_line(plan));
    for (const auto& group : plan.tied_spots) {
        if (group.size() < 2) continue;
        std::vector<std::string> names;
        for (const std::size_t spot : group) names.push_back(spot_name(scenario, spot));
        lines.push_back("The seasons cannot tell these spots apart; take the handiest: " + listed(names) + ".");
    }
    return lines;
}

namespace {

/// What an unknown explains of the spread between beliefs, and what a year's net would gain by knowing it.
std::string worth_words(const Scenario& scenario, const Sensitivity& s) {
    std::string text;
    if (s.share_of_catch_se > 0 && s.share_of_catch > 2 * s.share_of_catch_se) {  // told from nothing
        text.append("; it explains ")
            .append(percent(s.share_of_catch))
            .append(" of the ignorance about the catch, give or take ")
            .append(number(100 * s.share_of_catch_se, 0))
            .append(" points");
    }
    if (s.worth_knowing > 0) {
        text.append("; to know it is worth ")
            .append(money(s.worth_knowing, scenario.keeper.currency))
            .append(" a season");
    }
    return text;
}

}  // namespace

std::vector<std::string> other_terms(const Scenario& scenario, const Plan& plan) {
    const std::string& currency = scenario.keeper.currency;
    std::vector<std::string> lines;
    for (const ChangedTerms& terms : plan.if_swarm_value) {
        lines.push_back("Were a swarm worth " + three_digits(terms.amount) + " times as much, " +
                        counted(terms.best_traps, "trap") + " would be best (net " + money(terms.net, currency) + ").");
    }
    for (const ChangedTerms& terms : plan.if_budget) {
        lines.push_back("With " + money(terms.amount, currency) + " to spend before the season, " +
                        counted(terms.best_traps, "trap") + " would be best (net " + money(terms.net, currency) + ").");
    }
    if (plan.expected_regret > 0 || plan.worst_regret > 0) {
        lines.push_back("Not knowing this place costs up to " + money(plan.expected_regret, currency) +
                        " a season on average against the best number of traps (by curves fitted to these seasons, "
                        "which flatter), and up to " +
                        money(plan.worst_regret, currency) + " where things stand worst. A rule learnt on half of " +
                        "the beliefs and judged on the other half gains " + money(plan.worth_knowing_all, currency) +
                        " by knowing.");
    }
    return lines;
}

std::vector<std::string> unknowns(const Scenario& scenario, const Plan& plan) {
    std::vector<std::string> lines;
    for (const Sensitivity& s : ranked(plan.sensitivities)) {
        const ParameterEntry* entry = find_parameter(s.key);
        std::string name = plain_text(s.key);
        std::string unit;
        if (entry != nullptr) {
            name.append(" (").append(entry->row.meaning).append(")");
            if (entry->row.unit != "1") unit.append(" ").append(entry->row.unit);
        }
        lines.push_back(name + ": from " + three_digits(s.low) + " to " + three_digits(s.high) + unit +
                        " the catch goes from " + number(s.catches_at_low, 2) + " to " + number(s.catches_at_high, 2) +
                        " and the best number of traps from " + std::to_string(s.best_traps_at_low) + " to " +
                        std::to_string(s.best_traps_at_high) + worth_words(scenario, s) + ".");
    }
    return lines;
}

std::vector<std::string> reproduction(const Scenario& scenario, const Effort& effort, const Provenance& origin) {
    std::vector<std::string> lines;
    if (!origin.command_line.empty()) lines.push_back(plain_text(origin.command_line));
    std::string run = "Seed " + std::to_string(effort.seed) + ", " + std::to_string(effort.record_seasons) +
                      " seasons to learn from, " + std::to_string(effort.confirm_seasons) +
                      " fresh seasons for the numbers above; scenario \"" + plain_text(scenario.name) + "\"";
    if (!origin.version.empty()) run += "; maybough " + plain_text(origin.version);
    lines.push_back(run + ". Any number of threads gives the same numbers.");
    return lines;
}

std::vector<std::string> assumptions(const Scenario& scenario) {
    const Keeper& keeper = scenario.keeper;
    std::vector<std::string> lines;
    lines.push_back("Worth: an early prime swarm " + money(keeper.swarm_value, keeper.currency) + ", one after " +
                    short_date(make_date(scenario.year, keeper.late_month, keeper.late_day)) + " " +
                    money(keeper.late_swarm_value, keeper.currency) + ", an hour of yours " +
                    money(keeper.hour_value, keeper.currency) + ", a kilometre " +
                    money(keeper.km_cost, keeper.currency) + ".");
    if (has_example_spots(scenario)) {
        lines.push_back(
            "SOME SPOTS ARE THE EXAMPLES OF A STARTER and exist nowhere: put your own in before you build.");
    }
    if (!scenario.credit.empty()) lines.push_back("Land data: " + plain_text(scenario.credit) + ".");
    for (const Spot& spot : scenario.spots) {
        if (!spot.notes.empty())
            lines.push_back("Your note on " + plain_text(spot.name) + ": " + plain_text(spot.notes));
    }
    int hives = 0;
    for (const Apiary& apiary : scenario.apiaries) hives += apiary.hives;
    lines.push_back("Area: " + number(scenario.land.radius_m / 1000, 1) + " km (" +
                    number(scenario.land.radius_m / 1609.344, 1) + " mi) round " +
                    number(scenario.land.centre.latitude_deg, 4) + ", " +
                    number(scenario.land.centre.longitude_deg, 4) + "; " + counted(hives, "known hive") +
                    "; colonies and cavities nobody listed are drawn afresh for "
                    "every simulated season, beyond the area too.");
    if (!scenario.record.days.empty()) {
        lines.push_back("Weather: seasons generated from " + plain_text(scenario.record.source) + ", " +
                        counted(scenario.weather_quality.days, "day") + ", " +
                        counted(scenario.weather_quality.missing_days, "day") + " missing.");
    } else {
        lines.push_back("Weather: seasons generated from twelve monthly normals.");
    }
    std::map<std::string, int> standings;
    int drawn = 0;
    int set = 0;
    for (const ParameterEntry& entry : parameter_table()) {
        ++standings[std::string(word(entry.row.standing))];
        drawn += entry.row.spread != Spread::fixed;
        set += scenario.given.count(std::string(entry.row.key)) != 0;
    }
    std::vector<std::string> shares;
    for (const auto& [standing, count] : standings) shares.push_back(std::to_string(count) + " " + standing);
    lines.push_back("Model: " + counted(static_cast<double>(parameter_table().size()), "constant") + " (" +
                    listed(shares) + "); " + std::to_string(drawn) +
                    " of them are drawn from their odds for every four seasons; " + std::to_string(set) +
                    " set by this scenario. `maybough parameters` lists all.");
    return lines;
}

std::string eight_in_ten(const Estimate& estimate) {
    return "in 8 seasons of 10 between " + number(estimate.low, 0) + " and " + number(estimate.high, 0);
}

}  // namespace maybough::report
