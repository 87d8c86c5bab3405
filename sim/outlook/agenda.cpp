// What to do when: hang, visit, new lure, take down, from the odds of the season's dates.
#include <algorithm>
#include <cmath>

#include "outlook/outlook.hpp"

namespace maybough::outlook {

namespace {
std::size_t at(Milestone what) {
    return static_cast<std::size_t>(what);
}
}  // namespace

std::vector<AgendaItem> agenda_of(const Forecast& forecast, const Placement& placement, double relure_after_days,
                                  const OutlookParameters& parameters) {
    const Date today = forecast.weather.today;
    std::vector<AgendaItem> agenda;
    const auto add = [&](Task task, Date date) { agenda.push_back({task, date, date < today}); };
    const auto days = [](double count) { return std::chrono::days{static_cast<int>(std::lround(count))}; };
    const DateOdds& first = forecast.dates[at(Milestone::first)];
    const DateOdds& nine_tenths = forecast.dates[at(Milestone::nine_tenths)];
    const DateOdds& last = forecast.dates[at(Milestone::last)];

    const Date hang = std::max(forecast.first_day, forecast.date(first.day_10) - days(parameters.hang_before_days));
    const Date down = std::min(forecast.first_day + days(forecast.days - 1),
                               forecast.date(last.day_90) + days(parameters.stay_after_days));
    add(Task::hang, hang);
    add(Task::visit_from, forecast.date(first.day_10));
    add(Task::visit_until, forecast.date(nine_tenths.day_90));
    add(Task::take_down, down);

    // Lures age from the day the first trap hung; a new one pays only while most of the season's tail is still to come.
    Date hung = hang;
    if (!placement.empty()) {
        const auto earliest = std::min_element(placement.begin(), placement.end(),
                                               [](const auto& a, const auto& b) { return a.hang < b.hang; });
        hung = forecast.date(earliest->hang);
    }
    const int every = std::max(1, static_cast<int>(relure_after_days));
    for (Date date = hung + days(every); date < forecast.date(nine_tenths.day_90); date += days(every)) {
        add(Task::relure, date);
    }
    std::stable_sort(agenda.begin(), agenda.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
    return agenda;
}

}  // namespace maybough::outlook
