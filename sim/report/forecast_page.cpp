// This year's forecast as a page: dates with odds, the next days, weeks, and what to do when.
#include "report/forecast_words.hpp"
#include "report/page.hpp"
#include "report/sections.hpp"

namespace maybough::report {
namespace {

Json dates_json(const Forecast& forecast) {
    Json list = Json::array();
    for (const Milestone what : all_milestones) {
        const DateOdds& odds = odds_of(forecast, what);
        Json by_day = Json::array();
        for (const double share : odds.by_day) by_day.push_back(json_number(share));
        list.push_back({{"what", milestone_word(what)},
                        {"day_10", iso(forecast.date(odds.day_10))},
                        {"day_50", iso(forecast.date(odds.day_50))},
                        {"day_90", iso(forecast.date(odds.day_90))},
                        {"normal_day_50", iso(forecast.date(odds.normal_day_50))},
                        {"odds_past", json_number(odds.odds_past)},
                        {"odds_later", json_number(odds.odds_later)},
                        {"days_late", json_estimate(odds.days_late)},
                        {"odds_by_day", std::move(by_day)}});
    }
    return list;
}

Json weeks_json(const Forecast& forecast) {
    Json list = Json::array();
    for (const WeekOdds& week : forecast.weeks) {
        list.push_back({{"monday", iso(week.monday)},
                        {"swarms", json_estimate(week.swarms)},
                        {"normal", json_estimate(week.normal)},
                        {"catches", forecast.with_catches ? json_estimate(week.catches) : Json(nullptr)}});
    }
    return list;
}

Json next_json(const Forecast& forecast) {
    Json list = Json::array();
    for (const DayOdds& day : forecast.next) {
        list.push_back({{"date", iso(day.date)},
                        {"odds_swarm", json_number(day.odds_swarm)},
                        {"odds_normal", json_number(day.odds_normal)},
                        {"odds_fit", json_number(day.odds_fit)},
                        {"swarms", json_number(day.swarms)},
                        {"tmax_c", json_number(day.tmax_c)},
                        {"rain_mm", json_number(day.rain_mm)},
                        {"typed", day.typed}});
    }
    return list;
}

Json agenda_json(const Forecast& forecast) {
    Json list = Json::array();
    for (const AgendaItem& item : forecast.agenda) {
        list.push_back({{"task", task_title(item.task)},
                        {"date", iso(item.date)},
                        {"overdue", item.overdue},
                        {"reason", task_reason(item.task)}});
    }
    return list;
}

Json totals_json(const Forecast& forecast) {
    const auto of_traps = [&](const Estimate& e) { return forecast.with_catches ? json_estimate(e) : Json(nullptr); };
    return {{"swarms", json_estimate(forecast.swarms)},
            {"normal", json_estimate(forecast.normal)},
            {"to_come", json_estimate(forecast.to_come)},
            {"catches", of_traps(forecast.catches)},
            {"catches_to_come", of_traps(forecast.catches_to_come)},
            {"odds_begun", json_number(forecast.odds_begun)},
            {"odds_over", json_number(forecast.odds_over)}};
}

Json traps_json(const Scenario& scenario) {
    Json traps = Json::array();
    for (std::size_t i = 0; i < scenario.placement.size(); ++i) {
        traps.push_back(json_trap(scenario, scenario.placement[i], i + 1));
    }
    return traps;
}

}  // namespace

std::string forecast_page(const Scenario& scenario, const Forecast& forecast, const Provenance& origin) {
    Json json{{"file_kind", "maybough forecast"}, {"format", 1}, {"origin", json_origin(origin)}};
    json["scenario"] = json_scenario(scenario);
    json["today"] = iso(forecast.weather.today);
    json["first_day"] = iso(forecast.first_day);
    json["members"] = forecast.members;
    json["totals"] = totals_json(forecast);
    json["dates"] = dates_json(forecast);
    json["next"] = next_json(forecast);
    json["weeks"] = weeks_json(forecast);
    json["agenda"] = agenda_json(forecast);
    json["weather"] = forecast_weather(forecast);
    json["traps"] = traps_json(scenario);
    json["map"] = map_json(scenario, scenario.placement);
    json["beliefs"] = beliefs_json(scenario);
    json["assumptions"] = assumptions(scenario);
    json["cautions"] = cautions();
    json["reproduction"] = run_again(
        origin, forecast.seed, counted(forecast.members, "member") + ", as seen on " + iso(forecast.weather.today));
    return page_text({"forecast", "Swarm calendar of " + scenario.name + ", seen on " + iso(forecast.weather.today),
                      forecast_answer(forecast), std::move(json)});
}

}  // namespace maybough::report
