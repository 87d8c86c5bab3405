// Bloom: what flowers today, by degree-days, and by date where heat is lacking or does not matter.
#include <algorithm>
#include <array>

#include "weather/hours.hpp"

namespace maybough::weather {

namespace {
/// Rises from `opens` to `full`, holds to `fades`, falls to `over`.
double window(double x, double opens, double full, double fades, double over) {
    return ramp(x, opens, full) * ramp(x, over, fades);
}

/// Degree-days by the calendar: a broken line that brings every kind to full bloom on its latest day without any heat.
double degree_days_by_date(double day, const WeatherParameters& p) {
    constexpr double lead_days = 30;  // so long before its latest day the calendar begins to move the first kind
    const std::array<std::array<double, 2>, 5> knots{{{p.early_latest_day - lead_days, 0},
                                                      {p.early_latest_day, p.early_full_dd},
                                                      {p.fruit_latest_day, p.fruit_full_dd},
                                                      {p.spring_latest_day, p.spring_full_dd},
                                                      {p.summer_latest_day, p.summer_full_dd}}};
    if (day <= knots[0][0]) return 0;
    double degree_days = knots[4][1];
    for (std::size_t i = knots.size() - 1; i > 0; --i) {
        if (day >= knots[i][0]) break;
        degree_days = knots[i - 1][1] + (knots[i][1] - knots[i - 1][1]) * ramp(day, knots[i - 1][0], knots[i][0]);
    }
    return degree_days / p.calendar_share;
}

/// Degree-days that plants go by. Known needs of heat are from warm summers; plants of cool places flower with less,
/// and a year without heat still flowers: where heat lags behind the calendar, a share of the lag is made up.
double bloom_clock(double degree_days_c, double day, const WeatherParameters& p) {
    return degree_days_c + p.calendar_share * std::max(0.0, degree_days_by_date(day, p) - degree_days_c);
}
}  // namespace

std::array<float, bloom_kinds> bloom_of(double degree_days_c, int season_day, double tmin_c,
                                        const WeatherParameters& p) {
    if (tmin_c < p.frost_stops_bloom_c) return {};
    constexpr double fade_days = 30;
    const double day = season_day;
    const double clock = bloom_clock(degree_days_c, day, p);
    const double summer = window(clock, p.summer_opens_dd, p.summer_full_dd, p.summer_fades_dd, p.summer_over_dd) *
                          ramp(day, p.summer_ends_day, p.summer_ends_day - fade_days);
    return {static_cast<float>(window(clock, p.early_opens_dd, p.early_full_dd, p.early_fades_dd, p.early_over_dd)),
            static_cast<float>(window(clock, p.fruit_opens_dd, p.fruit_full_dd, p.fruit_fades_dd, p.fruit_over_dd)),
            static_cast<float>(window(clock, p.spring_opens_dd, p.spring_full_dd, p.spring_fades_dd, p.spring_over_dd)),
            static_cast<float>(summer),
            static_cast<float>(window(day, p.late_opens_day, p.late_full_day, p.late_fades_day, p.late_over_day))};
}

}  // namespace maybough::weather
