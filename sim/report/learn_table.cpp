// What a catch log taught, on the terminal, at most 100 columns wide.
#include <cmath>

#include "report/report.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

using Align = TextTable::Align;

std::string expectation(const CatchOdds& odds) {
    return number(odds.mean, 2) + " (" + number(odds.mean_low, 2) + " to " + number(odds.mean_high, 2) + ")";
}

/// Whether the log is odd under the prior, in words.
std::string how_usual(const Learned& learned) {
    constexpr double odd = 0.05;
    if (learned.odds_so_few < odd) {
        return "Only " + percent(learned.odds_so_few) +
               " of simulated logs hold so few: the scenario promises more "
               "than your traps gave.";
    }
    if (learned.odds_so_many < odd) {
        return "Only " + percent(learned.odds_so_many) +
               " of simulated logs hold so many: the scenario promises less "
               "than your traps gave.";
    }
    return "Such a log is nothing unusual: " + percent(learned.odds_so_few) +
           " of simulated logs hold so few or "
           "fewer, " +
           percent(learned.odds_so_many) + " so many or more.";
}

std::string answer(const Learned& learned) {
    if (learned.outcome == LearnOutcome::nothing) return "The log has no rows: beliefs are what they were.";
    const auto years = static_cast<double>(learned.years.size());
    std::string text = "Your log has " + counted(learned.swarms, "swarm") + " in " + counted(years, "year") + " (" +
                       counted(learned.trap_years, "trap season") + "); the model expected " +
                       number(learned.before, 1) + " before it saw them. " + how_usual(learned);
    text += " Next year's traps were expected to catch " + number(learned.next_before.mean, 2) + " swarms, and now " +
            number(learned.next_after.mean, 2) + ".";
    return text;
}

std::string little(const Learned& learned) {
    const double width_before = learned.next_before.mean_high - learned.next_before.mean_low;
    const double width_after = learned.next_after.mean_high - learned.next_after.mean_low;
    std::string text = "How little a log tells: by its count alone your traps would catch between " +
                       number(learned.log_rate_low, 1) + " and " + number(learned.log_rate_high, 1) +
                       " swarms a year in the long run (exact 95 % interval of a count).";
    if (learned.outcome == LearnOutcome::learnt || learned.outcome == LearnOutcome::weakened) {
        text += " With the model's own knowledge the range of the expected catch went from " + number(width_before, 2) +
                " to " + number(width_after, 2) + " swarms wide. Most of what comes next year is still luck.";
    }
    return text;
}

std::string traps_table(const Scenario& scenario, const Learned& learned) {
    TextTable table;
    table.column("place", Align::left, 28)
        .column("years")
        .column("swarms")
        .column("expected")
        .column("so few or fewer");
    table.column("so many or more").column("expected now");
    for (const LearnedTrap& trap : learned.traps) {
        table.row({spot_name(scenario, spot_index(scenario, trap.spot, learned.log)), std::to_string(trap.years),
                   std::to_string(trap.swarms), number(trap.before, 2), percent(trap.odds_so_few),
                   percent(trap.odds_so_many), number(trap.after, 2)});
    }
    return table.text() +
           wrapped(
               "Expected: swarms of all the log's years together, before the log and now that it is known, the "
               "place's own luck (colonies near it that nobody listed) taken in. The overlay cannot hold that "
               "luck: it holds what is true of all places.");
}

std::string years_table(const Learned& learned) {
    TextTable table;
    table.column("year", Align::left).column("traps").column("swarms").column("expected").column("expected now");
    table.column("weather", Align::left);
    for (const LearnedYear& year : learned.years) {
        table.row({std::to_string(year.year), std::to_string(year.traps), std::to_string(year.swarms),
                   number(year.before, 2), number(year.after, 2), year.weather_known ? "of the record" : "generated"});
    }
    return table.text();
}

std::string spread(const Belief& belief) {
    return three_digits(belief.median) + " (" + three_digits(belief.low) + " to " + three_digits(belief.high) + ")";
}

std::string unknowns_table(const Learned& learned) {
    TextTable table;
    table.column("unknown", Align::left, 32).column("before").column("after").column("moved").column("narrowed");
    std::vector<std::string> untaught;
    for (const LearnedUnknown& unknown : learned.unknowns) {
        if (!unknown.taught) {
            untaught.push_back(unknown.key);
            continue;
        }
        table.row({unknown.key, spread(unknown.prior), spread(unknown.posterior),
                   number(unknown.shift_spreads, 2) + " sd", percent(std::max(0.0, unknown.narrowed))});
    }
    std::string text;
    if (untaught.size() < learned.unknowns.size()) {
        text = table.text() + wrapped(
                                  "Median with the 5 % and 95 % points. Moved: in standard deviations of the belief "
                                  "before; narrowed: share of it that is gone.");
    }
    if (!untaught.empty())
        text += wrapped("Nothing to tell of " + listed(untaught) +
                        ": the log moves them little, or their effect on the catch does not "
                        "stand out from the seasons simulated (more --seasons may show it).");
    return text;
}

std::string next_table(const Learned& learned) {
    TextTable table;
    table.column("next year's catch", Align::left, 46).column("expected (8 in 10)").column("none").column("2 or more");
    const auto row = [&](const std::string& name, const CatchOdds& odds) {
        table.row({name, expectation(odds), percent(odds.odds_none), percent(odds.odds_at_least_2)});
    };
    row("before the log", learned.next_before);
    row("after, all unknowns weighed together", learned.next_after);
    row("after, as plan sees it through the overlay", learned.next_overlay);
    return table.text() +
           wrapped(
               "8 in 10: the range of the expected catch by ignorance alone. The overlay gives each unknown by "
               "itself and forgets that they were learnt together, so its range is the wider one.");
}

}  // namespace

std::string learn_table(const Scenario& scenario, const Learned& learned) {
    std::string text = plain_text(scenario.name) + ": what the catch log taught\n\n";
    text += wrapped(answer(learned)) + "\n" + wrapped(little(learned));
    for (const std::string& note : learned.notes) text += wrapped("- " + plain_text(note) + ".", 2);
    text += wrapped("Simulated " + counted(learned.options.seasons, "season") + " of each year; " +
                    number(learned.effective_draws, 0) + " of " + std::to_string(learned.options.draws) +
                    " draws of the unknowns carry the log" +
                    (learned.power < 1 ? ", its word weakened to the power " + number(learned.power, 2) : "") +
                    ". Seed " + std::to_string(learned.seed) + ".");
    text += heading("Next year") + next_table(learned);
    if (learned.outcome != LearnOutcome::nothing) {
        text += heading("Places") + traps_table(scenario, learned);
        text += heading("Years") + years_table(learned);
    }
    text += heading("Unknowns") + unknowns_table(learned);
    return text;
}

}  // namespace maybough::report
