// The skill of past forecasts on the terminal, and what kind of skill it is.
#include <algorithm>

#include "report/forecast_words.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

using Align = TextTable::Align;

std::string issued(const Hindcast& hindcast, int fortnight) {
    return short_date(hindcast.first_issue + std::chrono::days{14 * fortnight});
}

std::string scores_table(const Hindcast& hindcast) {
    TextTable table;
    table.column("forecast of", Align::left, 20).column("issued").column("cases").column("CRPS d").column("normal d");
    table.column("skill").column("bias d").column("80 % width d").column("80 % holds");
    for (const HindcastScore& score : hindcast.scores) {
        table.row({std::string(milestone_word(score.what)), issued(hindcast, score.fortnight),
                   std::to_string(score.truths), number(score.crps_days, 2), number(score.crps_normal_days, 2),
                   number(score.skill, 2) + " +- " + number(score.skill_se, 2), number(score.bias_days, 1),
                   number(score.width_days, 1), percent(score.coverage_80)});
    }
    return table.text();
}

/// Rank histograms pooled over fortnights: one row a date.
std::string ranks_table(const Hindcast& hindcast) {
    TextTable table;
    table.column("truth's rank among members", Align::left, 30);
    for (int c = 1; c <= 10; ++c) table.column(std::to_string(10 * c) + " %");
    for (const Milestone what : all_milestones) {
        RankHistogram ranks{};
        double rows = 0;
        for (const HindcastScore& score : hindcast.scores) {
            if (score.what != what) continue;
            for (std::size_t c = 0; c < ranks.size(); ++c) ranks[c] += score.ranks[c];
            rows += 1;
        }
        if (rows <= 0) continue;
        std::vector<std::string> cells{std::string(milestone_word(what))};
        for (const double share : ranks) cells.push_back(percent(share / rows));
        table.row(cells);
    }
    return table.text() + wrapped(
                              "10 % in every class where the odds hold; much at both ends: too narrow; much at one "
                              "end: biased. Fortnights share their truths, so they are not independent.");
}

std::string observed_table(const Hindcast& hindcast) {
    TextTable table;
    table.column("issued", Align::left).column("years").column("CRPS d").column("normal d").column("own dates d");
    table.column("skill against normal").column("against own dates").column("model less seen d");
    for (const ObservedScore& score : hindcast.observed) {
        table.row({issued(hindcast, score.fortnight), std::to_string(score.years), number(score.crps_days, 2),
                   number(score.crps_normal_days, 2), number(score.crps_record_days, 2),
                   number(score.skill, 2) + " +- " + number(score.skill_se, 2), number(score.skill_record, 2),
                   number(score.bias_days, 1)});
    }
    return table.text() +
           wrapped(
               "Your own first swarms. A club does not see every swarm, so forecasts are shifted by the mean "
               "difference of the other years before they are scored. \"Own dates\" takes the dates of the other "
               "years as the forecast.");
}

}  // namespace

std::string hindcast_table(const Scenario& scenario, const Hindcast& hindcast) {
    const HindcastOptions& options = hindcast.options;
    std::string text = plain_text(scenario.name) + ": skill of forecasts issued each fortnight from " +
                       issued(hindcast, 0) + ", " + counted(static_cast<double>(hindcast.years.size()), "year") +
                       " from " + std::to_string(hindcast.years.front()) + " to " +
                       std::to_string(hindcast.years.back()) + "\n\n";
    text += wrapped(hindcast_meaning());
    text +=
        "\n" + wrapped(counted(options.members, "member") +
                       " a forecast (fewer than the forecast itself uses, to "
                       "save time; the score is fair to their number), " +
                       counted(options.truths, "true season") + " a year, seed " + std::to_string(hindcast.seed) +
                       ". Weather: " + plain_text(hindcast.source.empty() ? "the scenario's record" : hindcast.source) +
                       ". " + (hindcast.left_out ? "Each year's climatology was fitted without that year." : ""));
    for (const std::string& note : hindcast.notes) text += wrapped("- " + plain_text(note), 2);
    if (hindcast.truths_without_swarms > 0) {
        text += wrapped("- " + counted(hindcast.truths_without_swarms, "true season") +
                            " had no swarm in the area and are not scored",
                        2);
    }
    text += heading("Scores") + scores_table(hindcast);
    text += wrapped(
        "CRPS is the forecast's mean miss in days, odds and all; normal is that of the same model's "
        "climatology. Skill 0 is no better than it, 1 is perfect; +- is a standard error over years.");
    text += heading("Ranks") + ranks_table(hindcast);
    if (!hindcast.observed.empty()) {
        text += heading("Against observed first swarms") + observed_table(hindcast);
    } else {
        text += "\n" + wrapped(
                           "For the skill against your own first swarms give --observed FILE: CSV with the columns "
                           "year,first_swarm, "
                           "one line a year, such as 2024,2024-04-28; leave the date empty where none was seen. The "
                           "year is the one "
                           "in which spring falls.");
    }
    return text;
}

}  // namespace maybough::report
