// The forecast's and the hindcast's tables as CSV (RFC 4180), for plots and spreadsheets.
#include "report/forecast_words.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

/// Column name of a milestone: its words with underscores.
std::string key_of(Milestone what) {
    std::string key(milestone_word(what));
    for (char& c : key) {
        if (c == ' ') c = '_';
    }
    std::erase(key, '\'');
    return key;
}

std::string mean_low_high(const Estimate& estimate) {
    return exact(estimate.mean) + "," + exact(estimate.low) + "," + exact(estimate.high);
}

}  // namespace

std::string forecast_weeks_csv(const Forecast& forecast) {
    std::string text = "week_from,swarms,swarms_low_10,swarms_high_90,normal_swarms";
    if (forecast.with_catches) text += ",catches,catches_low_10,catches_high_90";
    for (const Milestone what : all_milestones) text += ",odds_" + key_of(what) + "_by_week_end";
    text += "\n";
    for (const WeekOdds& week : forecast.weeks) {
        text += iso(week.monday) + "," + mean_low_high(week.swarms) + "," + exact(week.normal.mean);
        if (forecast.with_catches) text += "," + mean_low_high(week.catches);
        const auto end = static_cast<std::size_t>((week.monday + std::chrono::days{6} - forecast.first_day).count());
        for (const Milestone what : all_milestones) {
            const auto& by_day = odds_of(forecast, what).by_day;
            text += "," + exact(by_day[std::min(end, by_day.size() - 1)]);
        }
        text += "\n";
    }
    return text;
}

std::string forecast_days_csv(const Forecast& forecast) {
    std::string text = "date,odds_swarm,odds_normal,swarms,odds_fit,tmax_c,rain_mm,weather\n";
    for (const DayOdds& day : forecast.next) {
        text += iso(day.date) + "," + exact(day.odds_swarm) + "," + exact(day.odds_normal) + "," + exact(day.swarms) +
                "," + exact(day.odds_fit) + "," + exact(day.tmax_c) + "," + exact(day.rain_mm) + "," +
                (day.typed ? "typed" : "simulated") + "\n";
    }
    return text;
}

std::string hindcast_csv(const Hindcast& hindcast) {
    std::string text =
        "against,date,fortnight,issued,cases,crps_days,crps_normal_days,skill,skill_se,bias_days,width_80_days,"
        "coverage_80";
    for (int c = 1; c <= 10; ++c) text += ",rank_class_" + std::to_string(c);
    text += ",crps_own_dates_days,skill_own_dates\n";
    const auto issued = [&](int fortnight) {
        return iso(hindcast.first_issue + std::chrono::days{14 * fortnight}).substr(5);
    };
    for (const HindcastScore& score : hindcast.scores) {
        text += "simulated," + key_of(score.what) + "," + std::to_string(score.fortnight) + "," +
                issued(score.fortnight) + "," + std::to_string(score.truths) + "," + exact(score.crps_days) + "," +
                exact(score.crps_normal_days) + "," + exact(score.skill) + "," + exact(score.skill_se) + "," +
                exact(score.bias_days) + "," + exact(score.width_days) + "," + exact(score.coverage_80);
        for (const double share : score.ranks) text += "," + exact(share);
        text += ",,\n";
    }
    for (const ObservedScore& score : hindcast.observed) {
        text += "observed,first_swarm," + std::to_string(score.fortnight) + "," + issued(score.fortnight) + "," +
                std::to_string(score.years) + "," + exact(score.crps_days) + "," + exact(score.crps_normal_days) + "," +
                exact(score.skill) + "," + exact(score.skill_se) + "," + exact(score.bias_days) + ",,,,,,,,,,,,," +
                exact(score.crps_record_days) + "," + exact(score.skill_record) + "\n";
    }
    return text;
}

}  // namespace maybough::report
