// Dates of a season's swarms, and their odds over the members of a forecast.
#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "outlook/outlook.hpp"

namespace maybough::outlook {

namespace {
constexpr double none = std::numeric_limits<double>::quiet_NaN();
constexpr int peak_window_days = 7;

/// First day on which the running count reaches `share` of all.
double day_at_share(std::span<const int> swarms_on, int all, double share) {
    double count = 0;
    for (std::size_t day = 0; day < swarms_on.size(); ++day) {
        count += swarms_on[day];
        if (swarms_on[day] > 0 && count >= share * all) return static_cast<double>(day);
    }
    return none;
}

/// Middle of the seven days with most swarms; of several such, the middle one.
double peak_day(std::span<const int> swarms_on) {
    const int days = static_cast<int>(swarms_on.size());
    const auto sum_about = [&](int day) {
        const int from = std::max(0, day - peak_window_days / 2);
        const int until = std::min(days, day + peak_window_days / 2 + 1);
        return std::accumulate(swarms_on.begin() + from, swarms_on.begin() + until, 0);
    };
    std::vector<int> best;
    int most = 0;
    for (int day = 0; day < days; ++day) {
        const int sum = sum_about(day);
        if (sum > most) best.clear();
        most = std::max(most, sum);
        if (sum == most) best.push_back(day);
    }
    return best[(best.size() - 1) / 2];
}

/// Earliest day by which the sorted dates have come with a share of at least `odds`.
Day day_at_odds(const std::vector<double>& sorted, double odds) {
    if (sorted.empty()) return {0};
    const auto wanted = static_cast<std::size_t>(std::ceil(odds * static_cast<double>(sorted.size()) - 1e-9));
    return {static_cast<int>(sorted[std::clamp<std::size_t>(wanted, 1, sorted.size()) - 1])};
}

std::vector<double> sorted_dates(std::span<const double> dates) {
    std::vector<double> sorted;
    std::copy_if(dates.begin(), dates.end(), std::back_inserter(sorted), [](double d) { return !std::isnan(d); });
    std::sort(sorted.begin(), sorted.end());
    return sorted;
}

double share_by(const std::vector<double>& sorted, double day) {
    if (sorted.empty()) return 0;
    const auto come = std::upper_bound(sorted.begin(), sorted.end(), day) - sorted.begin();
    return static_cast<double>(come) / static_cast<double>(sorted.size());
}
}  // namespace

std::string_view milestone_word(Milestone milestone) {
    static constexpr std::array<std::string_view, milestone_kinds> words{"first swarm", "first tenth", "half of them",
                                                                         "peak week",   "nine tenths", "last swarm"};
    return words.at(static_cast<std::size_t>(milestone));
}

SeasonDates dates_of(std::span<const int> swarms_on) {
    SeasonDates dates;
    dates.fill(none);
    const int all = std::accumulate(swarms_on.begin(), swarms_on.end(), 0);
    if (all == 0) return dates;
    const auto put = [&](Milestone what, double day) { dates[static_cast<std::size_t>(what)] = day; };
    constexpr double any = 1e-9;
    constexpr double whole = 1 - 1e-9;
    put(Milestone::first, day_at_share(swarms_on, all, any));
    put(Milestone::first_tenth, day_at_share(swarms_on, all, 0.1 * whole));
    put(Milestone::half, day_at_share(swarms_on, all, 0.5 * whole));
    put(Milestone::peak, peak_day(swarms_on));
    put(Milestone::nine_tenths, day_at_share(swarms_on, all, 0.9 * whole));
    put(Milestone::last, day_at_share(swarms_on, all, whole));
    return dates;
}

DateOdds date_odds(std::span<const double> dates, std::span<const double> normal_dates, Day today, int days) {
    DateOdds odds;
    const std::vector<double> sorted = sorted_dates(dates);
    odds.day_10 = day_at_odds(sorted, 0.1);
    odds.day_50 = day_at_odds(sorted, 0.5);
    odds.day_90 = day_at_odds(sorted, 0.9);
    for (int day = 0; day < days; ++day) odds.by_day.push_back(share_by(sorted, day));
    odds.odds_past = share_by(sorted, today.value);
    odds.normal_day_50 = day_at_odds(sorted_dates(normal_dates), 0.5);

    std::vector<double> late;
    double later = 0;
    for (std::size_t i = 0; i < std::min(dates.size(), normal_dates.size()); ++i) {
        const double difference = dates[i] - normal_dates[i];
        if (std::isnan(difference)) continue;
        late.push_back(difference);
        later += difference > 0 ? 1 : (difference == 0 ? 0.5 : 0);
    }
    odds.days_late = estimate(late);
    odds.odds_later = late.empty() ? 0.5 : later / static_cast<double>(late.size());
    return odds;
}

}  // namespace maybough::outlook
