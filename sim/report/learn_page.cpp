// What a catch log taught, as a page: beliefs before and after, each trap and year, and next year's catch.
#include <algorithm>

#include "report/page.hpp"
#include "report/sections.hpp"

namespace maybough::report {
namespace {

Json belief_json(const Belief& belief) {
    return {
        {"median", json_number(belief.median)}, {"low", json_number(belief.low)}, {"high", json_number(belief.high)}};
}

Json odds_of_next(const CatchOdds& odds) {
    return {{"mean", json_number(odds.mean)},
            {"mean_low", json_number(odds.mean_low)},
            {"mean_high", json_number(odds.mean_high)},
            {"odds_none", json_number(odds.odds_none)},
            {"odds_at_least_2", json_number(odds.odds_at_least_2)}};
}

Json unknowns_json(const Learned& learned) {
    Json list = Json::array();
    for (const LearnedUnknown& unknown : learned.unknowns) {
        list.push_back({{"key", plain_text(unknown.key)},
                        {"meaning", plain_text(unknown.meaning)},
                        {"unit", plain_text(unknown.unit)},
                        {"taught", unknown.taught},
                        {"prior", belief_json(unknown.prior)},
                        {"posterior", belief_json(unknown.posterior)},
                        {"shift_spreads", json_number(unknown.shift_spreads)},
                        {"narrowed", json_number(unknown.narrowed)}});
    }
    return list;
}

const char* outcome_key(LearnOutcome outcome) {
    switch (outcome) {
        case LearnOutcome::nothing:
            return "nothing";
        case LearnOutcome::learnt:
            return "learnt";
        case LearnOutcome::weakened:
            return "weakened";
        case LearnOutcome::refused:
            return "refused";
    }
    throw ModelFault("a log was learnt from in no way");
}

/// The spot's own name where the scenario has one.
std::string name_of(const Scenario& scenario, const std::string& id) {
    for (std::size_t i = 0; i < scenario.spots.size(); ++i) {
        if (scenario.spots[i].id == id) return spot_name(scenario, i);
    }
    return plain_text(id);
}

Json traps_json(const Scenario& scenario, const Learned& learned) {
    const LocalPlane plane(scenario.land.centre);
    Json list = Json::array();
    for (const LearnedTrap& trap : learned.traps) {
        Json json{{"spot", plain_text(trap.spot)},
                  {"spot_name", name_of(scenario, trap.spot)},
                  {"years", trap.years},
                  {"swarms", trap.swarms},
                  {"before", json_number(trap.before)},
                  {"after", json_number(trap.after)},
                  {"odds_so_few", json_number(trap.odds_so_few)},
                  {"odds_so_many", json_number(trap.odds_so_many)}};
        for (const Spot& spot : scenario.spots) {
            if (spot.id != trap.spot) continue;
            json["latitude_deg"] = spot.place.latitude_deg;
            json["longitude_deg"] = spot.place.longitude_deg;
        }
        list.push_back(std::move(json));
    }
    return list;
}

Json years_json(const Learned& learned) {
    Json list = Json::array();
    for (const LearnedYear& year : learned.years) {
        list.push_back({{"year", year.year},
                        {"traps", year.traps},
                        {"swarms", year.swarms},
                        {"before", json_number(year.before)},
                        {"after", json_number(year.after)},
                        {"weather_known", year.weather_known}});
    }
    return list;
}

/// The spots of the log as a placement, so that the map does not show them as unused.
Placement placement_of(const Scenario& scenario, const Learned& learned) {
    Placement used;
    for (std::size_t i = 0; i < scenario.spots.size(); ++i) {
        const auto here = [&](const LearnedTrap& trap) { return trap.spot == scenario.spots[i].id; };
        if (!std::any_of(learned.traps.begin(), learned.traps.end(), here)) continue;
        used.push_back({});
        used.back().spot = i;
    }
    return used;
}

std::string answer(const Learned& learned) {
    if (learned.outcome == LearnOutcome::nothing) return "The log holds no trap: beliefs stay what they were.";
    std::string text = "The log holds " + counted(learned.swarms, "swarm") + " in " +
                       counted(learned.trap_years, "season") + " of single traps; the model expected " +
                       number(learned.before, 1) + ". Before the log so few or fewer had odds of " +
                       percent(learned.odds_so_few) + ", so many or more of " + percent(learned.odds_so_many) + ". ";
    if (learned.outcome == LearnOutcome::refused) {
        return text +
               "The model hardly allows such a log, so beliefs stay what they were: look first whether the log "
               "or the scenario is wrong.";
    }
    text += "Next year's catch, " + number(learned.next_before.mean, 2) +
            " swarms before the log, is now expected at " + number(learned.next_after.mean, 2) +
            " (8 in 10 odds that the expectation is between " + number(learned.next_after.mean_low, 2) + " and " +
            number(learned.next_after.mean_high, 2) + ").";
    if (learned.outcome == LearnOutcome::weakened) {
        text += " Few simulated beliefs fit the log, so it was given less than its full weight.";
    }
    return text;
}

}  // namespace

std::string learn_page(const Scenario& scenario, const Learned& learned, const Provenance& origin) {
    Json json{{"file_kind", "maybough learn"}, {"format", 1}, {"origin", json_origin(origin)}};
    json["scenario"] = json_scenario(scenario);
    json["outcome"] = outcome_key(learned.outcome);
    json["totals"] = {{"swarms", learned.swarms},
                      {"trap_years", learned.trap_years},
                      {"before", json_number(learned.before)},
                      {"odds_so_few", json_number(learned.odds_so_few)},
                      {"odds_so_many", json_number(learned.odds_so_many)},
                      {"log_rate_low", json_number(learned.log_rate_low)},
                      {"log_rate_high", json_number(learned.log_rate_high)},
                      {"effective_draws", json_number(learned.effective_draws)}};
    json["next"] = {{"before", odds_of_next(learned.next_before)},
                    {"after", odds_of_next(learned.next_after)},
                    {"overlay", odds_of_next(learned.next_overlay)}};
    json["unknowns"] = unknowns_json(learned);
    json["traps"] = traps_json(scenario, learned);
    json["years"] = years_json(learned);
    std::vector<std::string> notes;
    for (const std::string& note : learned.notes) notes.push_back(plain_text(note));
    json["notes"] = with_signs(notes);
    json["map"] = map_json(scenario, placement_of(scenario, learned));
    json["assumptions"] = assumptions(scenario);
    json["reproduction"] = run_again(origin, learned.seed,
                                     counted(learned.options.seasons, "season") + " simulated for each year, " +
                                         counted(learned.options.draws, "draw") + " of the unknowns");
    return page_text({"learn", "What the catch log of " + scenario.name + " taught", answer(learned), std::move(json)});
}

}  // namespace maybough::report
