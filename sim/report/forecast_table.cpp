// This year's forecast on the terminal, at most 100 columns wide.
#include <cmath>

#include "report/forecast_words.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

using Align = TextTable::Align;

std::string weather_lines(const Forecast& forecast) {
    const std::vector<std::string> notes = forecast_weather(forecast);
    std::string lines = wrapped(notes.front());
    for (std::size_t i = 1; i < notes.size(); ++i) lines += wrapped("- " + notes[i], 2);
    return lines;
}

std::string dates_table(const Forecast& forecast) {
    TextTable table;
    table.column("come, with odds of", Align::left, 30).column("10 %").column("50 %").column("90 %");
    table.column("is past").column("normal 50 %").column("days late").column("odds of later");
    for (const Milestone what : all_milestones) {
        const DateOdds& odds = odds_of(forecast, what);
        table.row({std::string(milestone_word(what)), forecast_day(forecast, odds.day_10),
                   forecast_day(forecast, odds.day_50), forecast_day(forecast, odds.day_90), percent(odds.odds_past),
                   forecast_day(forecast, odds.normal_day_50),
                   number(odds.days_late.mean, 1) + " +- " + number(odds.days_late.se, 1), percent(odds.odds_later)});
    }
    return table.text() +
           wrapped(
               "Of swarms that hang within the area, from colonies alive in spring, the margin's included where "
               "they hang inside. Days late are paired: each member beside a normal year of the same land, beliefs "
               "and luck; +- is the standard error of the mean.");
}

/// Weeks worth a line: the CSV has them all.
bool tells(const WeekOdds& week) {
    constexpr double fewest_swarms = 0.05;
    return week.swarms.mean >= fewest_swarms || week.normal.mean >= fewest_swarms;
}

std::string odds_table(const Forecast& forecast) {
    TextTable table;
    table.column("come by", Align::left, 24);
    for (const Milestone what : all_milestones) table.column(std::string(milestone_word(what)), Align::right, 20);
    for (const WeekOdds& week : forecast.weeks) {
        if (!tells(week)) continue;
        const auto day = static_cast<std::size_t>((week.monday + std::chrono::days{6} - forecast.first_day).count());
        std::vector<std::string> cells{iso(week.monday + std::chrono::days{6})};
        for (const Milestone what : all_milestones) {
            const auto& by_day = odds_of(forecast, what).by_day;
            cells.push_back(percent(by_day[std::min(day, by_day.size() - 1)]));
        }
        table.row(cells);
    }
    return table.text();
}

std::string range(const Estimate& estimate) {
    return number(estimate.low, 0) + " to " + number(estimate.high, 0);
}

std::string weeks_table(const Forecast& forecast) {
    TextTable table;
    table.column("week from", Align::left).column("swarms").column("8 in 10").column("normal");
    if (forecast.with_catches) table.column("catches").column("8 in 10");
    for (const WeekOdds& week : forecast.weeks) {
        if (!tells(week)) continue;
        std::vector<std::string> cells{iso(week.monday), number(week.swarms.mean, 1), range(week.swarms),
                                       number(week.normal.mean, 1)};
        if (forecast.with_catches) {
            cells.push_back(number(week.catches.mean, 2));
            cells.push_back(range(week.catches));
        }
        table.row(cells);
    }
    std::string text = "Swarms in the area: " + number(forecast.swarms.mean, 1) + " this year (" +
                       range(forecast.swarms) + "), " + number(forecast.normal.mean, 1) +
                       " in normal years; still to come: " + number(forecast.to_come.mean, 1) + " (" +
                       range(forecast.to_come) + ").";
    if (forecast.with_catches) {
        text += " Catches of the traps as set: " + number(forecast.catches.mean, 2) + ", still to come " +
                number(forecast.catches_to_come.mean, 2) + ".";
    } else {
        text += " The scenario sets no traps, so catches are not simulated.";
    }
    return table.text() + wrapped(text);
}

std::string next_table(const Forecast& forecast) {
    TextTable table;
    table.column("day", Align::left).column("a swarm in the area").column("normal").column("mean swarms");
    table.column("fit for leaving").column("max C").column("rain mm").column("weather", Align::left);
    for (const DayOdds& day : forecast.next) {
        table.row({iso(day.date), percent(day.odds_swarm), percent(day.odds_normal), number(day.swarms, 2),
                   percent(day.odds_fit), number(day.tmax_c, 1), number(day.rain_mm, 1),
                   day.typed ? "as typed" : "simulated"});
    }
    std::string text = table.text();
    if (forecast.weather.typed_days > 0) {
        text += wrapped("Typed weather is taken as certain; the odds are for the swarms if it comes so.");
    }
    return text;
}

std::string agenda_lines(const Forecast& forecast) {
    std::string text;
    bool lures = false;
    for (const AgendaItem& item : forecast.agenda) {
        lures = lures || item.task == Task::relure;
        text += wrapped(task_title(item.task) + " " + iso(item.date) + (item.overdue ? " (now past)" : "") + ": " +
                        task_reason(item.task) + ".");
    }
    if (!lures) text += wrapped("No new lures are due before most swarms have come.");
    return text;
}

}  // namespace

std::string forecast_table(const Scenario& scenario, const Forecast& forecast) {
    std::string text = plain_text(scenario.name) + ": swarm calendar of the year from " + iso(forecast.first_day) +
                       ", as seen on " + iso(forecast.weather.today) + "\n\n";
    text += wrapped(forecast_answer(forecast)) + "\n" + weather_lines(forecast);
    text += wrapped(counted(forecast.members, "member") + ", seed " + std::to_string(forecast.seed) +
                    ": each with land, colonies, beliefs and weather to come of its own.");
    if (forecast.members_without_swarms > 0) {
        text += wrapped(counted(forecast.members_without_swarms, "member") +
                        " had no swarm in the area at all and are left out of the dates.");
    }
    text += heading("What to do when") + agenda_lines(forecast);
    text += heading("Dates") + dates_table(forecast);
    text += heading("The next days") + next_table(forecast);
    text += heading("Weeks") + weeks_table(forecast);
    text += heading("Odds by date") + odds_table(forecast);
    return text;
}

}  // namespace maybough::report
