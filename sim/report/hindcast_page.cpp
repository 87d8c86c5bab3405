// The skill of past forecasts as a page: by day of issue, with rank histograms and coverage.
#include <algorithm>

#include "report/forecast_words.hpp"
#include "report/page.hpp"
#include "report/sections.hpp"

namespace maybough::report {
namespace {

std::string issued(const Hindcast& hindcast, int fortnight) {
    return short_date(hindcast.first_issue + std::chrono::days{14 * fortnight});
}

Json scores_json(const Hindcast& hindcast) {
    Json list = Json::array();
    for (const HindcastScore& score : hindcast.scores) {
        list.push_back({{"what", milestone_word(score.what)},
                        {"fortnight", score.fortnight},
                        {"issued", issued(hindcast, score.fortnight)},
                        {"truths", score.truths},
                        {"crps_days", json_number(score.crps_days)},
                        {"crps_normal_days", json_number(score.crps_normal_days)},
                        {"skill", json_number(score.skill)},
                        {"skill_se", json_number(score.skill_se)},
                        {"bias_days", json_number(score.bias_days)},
                        {"width_days", json_number(score.width_days)},
                        {"coverage_80", json_number(score.coverage_80)},
                        {"ranks", score.ranks}});
    }
    return list;
}

Json observed_json(const Hindcast& hindcast) {
    Json list = Json::array();
    for (const ObservedScore& score : hindcast.observed) {
        list.push_back({{"issued", issued(hindcast, score.fortnight)},
                        {"years", score.years},
                        {"crps_days", json_number(score.crps_days)},
                        {"crps_normal_days", json_number(score.crps_normal_days)},
                        {"crps_record_days", json_number(score.crps_record_days)},
                        {"skill", json_number(score.skill)},
                        {"skill_se", json_number(score.skill_se)},
                        {"skill_record", json_number(score.skill_record)},
                        {"bias_days", json_number(score.bias_days)}});
    }
    return list;
}

/// The issue day from which the first swarm is forecast best, in words.
std::string answer(const Hindcast& hindcast) {
    const HindcastScore* best = nullptr;
    for (const HindcastScore& score : hindcast.scores) {
        if (score.what != Milestone::first || !(score.skill_se >= 0)) continue;
        if (best == nullptr || score.skill > best->skill) best = &score;
    }
    std::string text = "Forecasts of " + counted(static_cast<double>(hindcast.years.size()), "past year");
    if (!hindcast.years.empty()) {
        text += " (" + std::to_string(hindcast.years.front()) + " to " + std::to_string(hindcast.years.back()) + ")";
    }
    text += " against simulated seasons under those years' weather.";
    if (best == nullptr) return text;
    const bool told = best->skill > 2 * best->skill_se;
    return text + " The first swarm is foretold best from " + issued(hindcast, best->fortnight) + ": a mean miss of " +
           number(best->crps_days, 1) + " days against " + number(best->crps_normal_days, 1) +
           " for the normal calendar, skill " + number(best->skill, 2) + " \u00b1 " + number(best->skill_se, 2) +
           (told ? "." : ", which these years cannot tell from none.");
}

}  // namespace

std::string hindcast_page(const Scenario& scenario, const Hindcast& hindcast, const Provenance& origin) {
    Json json{{"file_kind", "maybough hindcast"}, {"format", 1}, {"origin", json_origin(origin)}};
    json["scenario"] = json_scenario(scenario);
    json["years"] = hindcast.years;
    json["scores"] = scores_json(hindcast);
    json["observed"] = observed_json(hindcast);
    std::vector<std::string> notes{hindcast_meaning()};
    for (const std::string& note : hindcast.notes) notes.push_back(plain_text(note));
    if (hindcast.truths_without_swarms > 0) {
        notes.push_back(counted(hindcast.truths_without_swarms, "true season") +
                        " had no swarm in the area and are not scored.");
    }
    json["notes"] = with_signs(notes);
    json["reproduction"] = run_again(origin, hindcast.seed,
                                     counted(hindcast.options.members, "member") + " a forecast, " +
                                         counted(hindcast.options.truths, "true season") + " a year");
    return page_text({"hindcast", "Skill of past forecasts for " + scenario.name, answer(hindcast), std::move(json)});
}

}  // namespace maybough::report
