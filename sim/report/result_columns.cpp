// The columns of a plan's tables.
#include "report/result_columns.hpp"

#include "report/words.hpp"

namespace maybough::report {
namespace {

template <class Row, class Place>
void add_setting(Columns<Row>& columns, const std::string& prefix, Place setting) {
    columns.add(
        prefix + "spot", "index into scenario/spots", [=](auto& row) -> auto& { return setting(row).spot; });
    columns.add(
        prefix + "kind", "index into scenario/kinds", [=](auto& row) -> auto& { return setting(row).kind; });
    columns.add(
        prefix + "height_m", "m", [=](auto& row) -> auto& { return setting(row).height_m; });
    columns.add(
        prefix + "facing_deg", "degree", [=](auto& row) -> auto& { return setting(row).facing_deg; });
    columns.add(
        prefix + "hang_day", "day of the simulated year", [=](auto& row) -> auto& { return setting(row).hang; });
    columns.add(
        prefix + "take_down_day",
        "day of the simulated year", [=](auto& row) -> auto& { return setting(row).take_down; });
    columns.add(
        prefix + "visit_every_days", "day", [=](auto& row) -> auto& { return setting(row).visit_every_days; });
    columns.add(
        prefix + "lured", "1 = yes", [=](auto& row) -> auto& { return setting(row).lured; });
}

std::string contest_word(ContestEnd end) {
    if (end == ContestEnd::one_left) return "one left";
    return end == ContestEnd::all_alike ? "all alike" : "seasons spent";
}

}  // namespace

const Columns<CurvePoint>& curve_columns() {
    static const Columns<CurvePoint> columns = [] {
        Columns<CurvePoint> list;
        list.add("traps", "1", MAYBOUGH_PLACE(traps));
        list.estimate("catches", "swarm/season", MAYBOUGH_PLACE(catches));
        list.estimate("cost", "currency/season", MAYBOUGH_PLACE(cost));
        list.estimate("value", "currency/season", MAYBOUGH_PLACE(value));
        list.estimate("net", "currency/season", MAYBOUGH_PLACE(net));
        list.estimate("marginal_catches", "swarm/season", MAYBOUGH_PLACE(marginal_catches));
        list.estimate("marginal_net", "currency/season", MAYBOUGH_PLACE(marginal_net));
        list.add("outlay", "currency", MAYBOUGH_PLACE(outlay));
        list.add("hours", "h/season", MAYBOUGH_PLACE(hours));
        list.add("worst_tenth_catches", "swarm/season", MAYBOUGH_PLACE(worst_tenth_catches));
        return list;
    }();
    return columns;
}

const Columns<PlannedTrap>& planned_trap_columns() {
    static const Columns<PlannedTrap> columns = [] {
        Columns<PlannedTrap> list;
        add_setting(list, "", MAYBOUGH_PLACE(setting));
        list.add("rank", "1", MAYBOUGH_PLACE(rank));
        list.estimate("catches", "swarm/season", MAYBOUGH_PLACE(catches));
        list.estimate("lost_without", "swarm/season", MAYBOUGH_PLACE(lost_without));
        list.add("best_unused_spot", "index into scenario/spots; their number where none is left",
                 MAYBOUGH_PLACE(next_spot));
        add_setting(list, "next_", MAYBOUGH_PLACE(next_setting));
        list.estimate("next_difference", "swarm/season", MAYBOUGH_PLACE(next_difference));
        list.estimate("next_net_loss", "currency/season", MAYBOUGH_PLACE(next_net_loss));
        return list;
    }();
    return columns;
}

const Columns<TriedDesign>& tried_columns() {
    static const Columns<TriedDesign> columns = [] {
        Columns<TriedDesign> list;
        list.add("seasons", "1", MAYBOUGH_PLACE(seasons));
        list.estimate("catches", "swarm/season", MAYBOUGH_PLACE(catches));
        list.estimate("net", "currency/season", MAYBOUGH_PLACE(net));
        list.add("foretold_catches", "swarm/season", MAYBOUGH_PLACE(foretold_catches));
        list.add("foretold_net", "currency/season", MAYBOUGH_PLACE(foretold_net));
        list.add("left", "1 = yes", MAYBOUGH_PLACE(left));
        return list;
    }();
    return columns;
}

const Columns<Sensitivity>& sensitivity_columns() {
    static const Columns<Sensitivity> columns = [] {
        Columns<Sensitivity> list;
        list.add("key", "text", MAYBOUGH_PLACE(key));
        list.add("low", "the parameter's", MAYBOUGH_PLACE(low));
        list.add("high", "the parameter's", MAYBOUGH_PLACE(high));
        list.add("catches_at_low", "swarm/season", MAYBOUGH_PLACE(catches_at_low));
        list.add("catches_at_high", "swarm/season", MAYBOUGH_PLACE(catches_at_high));
        list.add("best_traps_at_low", "1", MAYBOUGH_PLACE(best_traps_at_low));
        list.add("best_traps_at_high", "1", MAYBOUGH_PLACE(best_traps_at_high));
        list.add("share_of_catch", "1", MAYBOUGH_PLACE(share_of_catch));
        list.add("share_of_catch_se", "1", MAYBOUGH_PLACE(share_of_catch_se));
        list.add("share_of_decision", "1", MAYBOUGH_PLACE(share_of_decision));
        list.add("worth_knowing", "currency/season", MAYBOUGH_PLACE(worth_knowing));
        return list;
    }();
    return columns;
}

const Columns<Plan>& plan_columns() {
    static const Columns<Plan> columns = [] {
        Columns<Plan> list;
        list.add("recommended", "row of plan/curve", MAYBOUGH_PLACE(recommended));
        list.add("recommended_low", "trap", MAYBOUGH_PLACE(recommended_low));
        list.add("recommended_high", "trap", MAYBOUGH_PLACE(recommended_high));
        list.add("why_it_stops", "text", MAYBOUGH_PLACE(why_it_stops));
        list.add("search_catches", "swarm/season", MAYBOUGH_PLACE(search_catches));
        list.add("bound_catches", "swarm/season", MAYBOUGH_PLACE(bound_catches));
        list.add("gap_net", "currency/season", MAYBOUGH_PLACE(gap_net));
        list.add("gap_found_net", "currency/season", MAYBOUGH_PLACE(gap_found_net));
        list.add("catches_calibration", "1", MAYBOUGH_PLACE(catches_calibration));
        list.add("worth_calibration", "1", MAYBOUGH_PLACE(worth_calibration));
        list.add("least_outlay", "currency", MAYBOUGH_PLACE(least_outlay));
        list.add("least_hours", "h/season", MAYBOUGH_PLACE(least_hours));
        list.add("indifference", "currency/season", MAYBOUGH_PLACE(indifference));
        list.add("hunts_exhaustive", "1", MAYBOUGH_PLACE(hunts_exhaustive));
        list.text(
            "contest_end", [](const Plan& plan) { return contest_word(plan.contest_end); },
            [](Plan& plan, const std::string& text) {
                for (const ContestEnd end : {ContestEnd::one_left, ContestEnd::all_alike, ContestEnd::seasons_spent}) {
                    if (contest_word(end) == text) plan.contest_end = end;
                }
            });
        list.add("worth_knowing_all", "currency/season", MAYBOUGH_PLACE(worth_knowing_all));
        list.add("expected_regret", "currency/season", MAYBOUGH_PLACE(expected_regret));
        list.add("worst_regret", "currency/season", MAYBOUGH_PLACE(worst_regret));
        list.add("surrogate_hunts", "1", MAYBOUGH_PLACE(surrogate.hunts));
        list.add("surrogate_rms_error", "1", MAYBOUGH_PLACE(surrogate.rms_error));
        list.add("surrogate_r_squared", "1", MAYBOUGH_PLACE(surrogate.r_squared));
        list.add("surrogate_predicted_in_traps", "1", MAYBOUGH_PLACE(surrogate.predicted_in_traps));
        list.add("surrogate_seen_in_traps", "1", MAYBOUGH_PLACE(surrogate.seen_in_traps));
        list.add("hunts_asked", "1", MAYBOUGH_PLACE(hunts_asked));
        list.add("hunts_run", "1", MAYBOUGH_PLACE(hunts_run));
        list.add("seed", "1", MAYBOUGH_PLACE(effort.seed));
        list.add("record_seasons", "1", MAYBOUGH_PLACE(effort.record_seasons));
        list.add("confirm_seasons", "1", MAYBOUGH_PLACE(effort.confirm_seasons));
        list.add("asked_max_traps", "1", MAYBOUGH_PLACE(question.max_traps));
        list.add("asked_budget", "currency, 0 = no limit", MAYBOUGH_PLACE(question.budget));
        list.add("asked_hours", "h, 0 = no limit", MAYBOUGH_PLACE(question.hours));
        list.add("asked_exactly", "trap, 0 = not asked", MAYBOUGH_PLACE(question.exactly));
        list.add("asked_at_least_swarms", "swarm, 0 = not asked", MAYBOUGH_PLACE(question.at_least_swarms));
        list.add("asked_at_least_odds", "1", MAYBOUGH_PLACE(question.at_least_odds));
        return list;
    }();
    return columns;
}

const Columns<PlacedTrap>& placed_trap_columns() {
    static const Columns<PlacedTrap> columns = [] {
        Columns<PlacedTrap> list;
        list.add("placement", "row of the table beside", MAYBOUGH_PLACE(placement));
        add_setting(list, "", MAYBOUGH_PLACE(setting));
        return list;
    }();
    return columns;
}

const Columns<OddsRow>& odds_columns() {
    static const Columns<OddsRow> columns = [] {
        Columns<OddsRow> list;
        list.add("placement", "row of the table beside", MAYBOUGH_PLACE(placement));
        list.add("at_least", "swarm/season", MAYBOUGH_PLACE(swarms));
        list.add("share_of_seasons", "1", MAYBOUGH_PLACE(share.share));
        list.add("share_of_seasons_low_95", "1", MAYBOUGH_PLACE(share.low_95));
        list.add("share_of_seasons_high_95", "1", MAYBOUGH_PLACE(share.high_95));
        return list;
    }();
    return columns;
}

const Columns<TiedSpot>& tied_spot_columns() {
    static const Columns<TiedSpot> columns = [] {
        Columns<TiedSpot> list;
        list.add("group", "1", MAYBOUGH_PLACE(group));
        list.add("spot", "index into scenario/spots", MAYBOUGH_PLACE(spot));
        return list;
    }();
    return columns;
}

const Columns<ChangedTerms>& changed_terms_columns() {
    static const Columns<ChangedTerms> columns = [] {
        Columns<ChangedTerms> list;
        list.add("amount", "times the swarm's worth, or currency", MAYBOUGH_PLACE(amount));
        list.add("best_traps", "trap", MAYBOUGH_PLACE(best_traps));
        list.add("net", "currency/season", MAYBOUGH_PLACE(net));
        return list;
    }();
    return columns;
}

const Columns<DayRow>& day_columns() {
    static const Columns<DayRow> columns = [] {
        Columns<DayRow> list;
        list.add("date", "text", MAYBOUGH_PLACE(date));
        list.add("swarms", "swarm/day", MAYBOUGH_PLACE(swarms));
        list.add("catches", "swarm/day", MAYBOUGH_PLACE(catches));
        return list;
    }();
    return columns;
}

const Columns<SwarmSquare>& swarm_square_columns() {
    static const Columns<SwarmSquare> columns = [] {
        Columns<SwarmSquare> list;
        list.add("east_m", "m from the centre", MAYBOUGH_PLACE(centre.x_m));
        list.add("north_m", "m from the centre", MAYBOUGH_PLACE(centre.y_m));
        list.add("side_m", "m", MAYBOUGH_PLACE(side_m));
        list.add("swarms", "swarm/season", MAYBOUGH_PLACE(swarms));
        return list;
    }();
    return columns;
}

std::vector<DayRow> day_rows(const Scenario& scenario, const std::vector<double>& swarms,
                             const std::vector<double>& catches) {
    if (swarms.size() != catches.size()) throw ModelFault("swarms and catches are told for different days");
    std::vector<DayRow> rows;
    for (std::size_t day = 0; day < swarms.size(); ++day) {
        rows.push_back({iso(date_of(scenario, Day{static_cast<int>(day)})), swarms[day], catches[day]});
    }
    return rows;
}

void add_placed(std::vector<PlacedTrap>& rows, std::size_t nr, const Placement& placement) {
    for (const TrapSetting& setting : placement) rows.push_back({nr, setting});
}

void add_odds(std::vector<OddsRow>& rows, std::size_t nr, const std::vector<SeasonShare>& odds) {
    for (std::size_t k = 0; k < odds.size(); ++k) rows.push_back({nr, static_cast<std::int64_t>(k) + 1, odds[k]});
}

}  // namespace maybough::report
