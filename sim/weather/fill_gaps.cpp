// Short gaps of a record, filled from the days on either side.
#include <cmath>
#include <vector>

#include "weather/weather.hpp"

namespace maybough::weather {

namespace {
using Member = double DayOfWeather::*;

/// Fills every gap of `member` of up to `longest` days that has a day on both sides; marks the days it filled.
void fill(std::vector<DayOfWeather>& days, Member member, int longest, bool by_line, std::vector<bool>& filled) {
    std::size_t gap = 0;  // first day of the gap being read
    for (std::size_t i = 0; i <= days.size(); ++i) {
        if (i < days.size() && std::isnan(days[i].*member)) continue;
        const std::size_t length = i - gap;
        const bool inside = gap > 0 && i < days.size();
        if (length > 0 && inside && static_cast<int>(length) <= longest) {
            const double before = days[gap - 1].*member;
            const double after = days[i].*member;
            for (std::size_t k = 0; k < length; ++k) {
                const double share = static_cast<double>(k + 1) / static_cast<double>(length + 1);
                days[gap + k].*member = by_line ? before + share * (after - before) : (share <= 0.5 ? before : after);
                filled[gap + k] = true;
            }
        }
        gap = i + 1;
    }
}
}  // namespace

void fill_gaps(WeatherRecord& record, QualityReport& report, const WeatherParameters& parameters) {
    const int longest = static_cast<int>(parameters.fill_days);
    std::vector<bool> filled(record.days.size(), false);
    fill(record.days, &DayOfWeather::tmax_c, longest, true, filled);
    fill(record.days, &DayOfWeather::tmin_c, longest, true, filled);
    report.filled_days = 0;
    report.unfilled_days = 0;
    for (std::size_t i = 0; i < record.days.size(); ++i) {
        DayOfWeather& day = record.days[i];
        report.filled_days += filled[i] ? 1 : 0;
        report.unfilled_days += std::isnan(day.tmax_c) || std::isnan(day.tmin_c) ? 1 : 0;
        // Extremes filled apart may cross.
        if (filled[i] && day.tmin_c > day.tmax_c) day.tmin_c = day.tmax_c;
    }
    fill(record.days, &DayOfWeather::wind_ms, longest, true, filled);
    fill(record.days, &DayOfWeather::rain_mm, longest, false, filled);
    report.fill_method = "gaps of up to " + std::to_string(longest) +
                         " days: temperature and wind by a straight line, rain from the nearer day";
}

}  // namespace maybough::weather
