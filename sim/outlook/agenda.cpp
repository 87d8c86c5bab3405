// What to do when: hang, visit, new lure, take down, by the keeper's one calendar from this year's simulated swarms.
#include <algorithm>

#include "outlook/outlook.hpp"

namespace maybough::outlook {

std::vector<AgendaItem> agenda_of(const Forecast& forecast, const std::vector<int>& swarm_days,
                                  const Scenario& scenario) {
    const KeeperParameters& parameters = scenario.parameters.keeper;
    TrapSetting trap;
    trap.hang = hang_day(swarm_days, parameters);
    trap.take_down = take_down_days(swarm_days, {forecast.days - 1}, parameters).front();
    trap.lured = scenario.keeper.use_lure;
    for (const TrapSetting& set : scenario.placement) {
        const bool first = &set == &scenario.placement.front();
        trap.visit_every_days = first ? set.visit_every_days : std::min(trap.visit_every_days, set.visit_every_days);
    }
    const Rounds rounds = visits_of(trap, scenario.keeper);

    std::vector<AgendaItem> agenda;
    const auto add = [&](Task task, Day day) {
        const Date date = forecast.date(day);
        agenda.push_back({task, date, date < forecast.weather.today});
    };
    add(Task::hang, trap.hang);
    if (!rounds.visits.empty()) {
        add(Task::visit_from, rounds.visits.front());
        add(Task::visit_until, rounds.visits.back());
    }
    for (const Day day : rounds.lures) {
        if (day != trap.hang) add(Task::relure, day);
    }
    add(Task::take_down, trap.take_down);
    std::stable_sort(agenda.begin(), agenda.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
    return agenda;
}

}  // namespace maybough::outlook
