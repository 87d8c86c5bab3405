// Quality of a record: impossible values set missing, odd ones counted and told.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <limits>

#include "weather/weather.hpp"

namespace maybough::weather {

namespace {
constexpr double missing = std::numeric_limits<double>::quiet_NaN();
using Member = double DayOfWeather::*;

std::string one_decimal(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.1f", value);
    return text.data();
}

/// Mean of a member over the days of the given months; NaN where there are none.
double mean_over(const WeatherRecord& record, Member member, std::array<bool, 12> months) {
    double sum = 0;
    int count = 0;
    for (std::size_t i = 0; i < record.days.size(); ++i) {
        const double value = record.days[i].*member;
        const int month = month_of(record.first + std::chrono::days{static_cast<int>(i)});
        if (std::isnan(value) || !months[static_cast<std::size_t>(month - 1)]) continue;
        sum += value;
        ++count;
    }
    return count > 0 ? sum / count : missing;
}

constexpr std::array<bool, 12> whole_year{true, true, true, true, true, true, true, true, true, true, true, true};
constexpr std::array<bool, 12> june_to_august{false, false, false, false, false, true,
                                              true,  true,  false, false, false, false};
constexpr std::array<bool, 12> december_to_february{true,  true,  false, false, false, false,
                                                    false, false, false, false, false, true};

/// Units and hemisphere, judged before anything is rejected. Limits lie beyond any place where bees are kept.
void suspect_units(const WeatherRecord& record, double latitude_deg, QualityReport& report) {
    constexpr double hottest_mean_c = 40;
    constexpr double kelvin_c = 200;
    constexpr double tropics_deg = 15;
    constexpr double clear_season_c = 3;
    constexpr double windiest_mean_ms = 10;
    const double tmax = mean_over(record, &DayOfWeather::tmax_c, whole_year);
    const double june = mean_over(record, &DayOfWeather::tmax_c, june_to_august);
    const double december = mean_over(record, &DayOfWeather::tmax_c, december_to_february);
    const double wind = mean_over(record, &DayOfWeather::wind_ms, whole_year);
    const double warmest = std::max(std::isnan(june) ? tmax : june, std::isnan(december) ? tmax : december);
    if (tmax > kelvin_c) {
        report.warnings.push_back("mean daily maximum is " + one_decimal(tmax) +
                                  ": temperatures look like kelvin or tenths of a degree, expected degrees C");
    } else if (warmest > hottest_mean_c + 10 || tmax > hottest_mean_c) {
        report.warnings.push_back("the warmest season's mean daily maximum is " + one_decimal(warmest) +
                                  ": temperatures look like Fahrenheit or tenths of a degree, expected degrees C");
    }
    const double summer_lead = latitude_deg >= 0 ? june - december : december - june;
    if (std::abs(latitude_deg) >= tropics_deg && summer_lead < -clear_season_c) {
        report.warnings.push_back("June to August is " + std::string(june < december ? "colder" : "warmer") +
                                  " than December to February: the record looks like the other hemisphere's, "
                                  "check the sign of the latitude");
    }
    if (wind > windiest_mean_ms) {
        report.warnings.push_back("mean wind is " + one_decimal(wind) +
                                  ": it looks like km/h, knots or miles per hour, expected m/s");
    }
}

/// Sets missing what cannot be: extremes out of bounds, minimum above maximum, negative rain or wind.
void reject_impossible(WeatherRecord& record, QualityReport& report, const WeatherParameters& p) {
    for (DayOfWeather& day : record.days) {
        bool rejected = false;
        for (const Member member : {&DayOfWeather::tmax_c, &DayOfWeather::tmin_c}) {
            if (day.*member < p.coldest_c || day.*member > p.hottest_c || std::isinf(day.*member)) {
                day.*member = missing;
                rejected = true;
            }
        }
        if (day.rain_mm < 0 || day.rain_mm > p.wettest_mm) {
            day.rain_mm = missing;
            rejected = true;
        }
        if (day.wind_ms < 0 || day.wind_ms > p.windiest_ms) {
            day.wind_ms = missing;
            rejected = true;
        }
        report.spike_days += rejected ? 1 : 0;
        if (day.tmin_c > day.tmax_c) {
            day.tmin_c = missing;
            day.tmax_c = missing;
            ++report.swapped_days;
        }
    }
}

/// A day that leaps the same way from both its neighbours by more than `jump_c` was misread.
void reject_spikes(WeatherRecord& record, QualityReport& report, const WeatherParameters& p) {
    std::vector<bool> spiked(record.days.size(), false);
    for (const Member member : {&DayOfWeather::tmax_c, &DayOfWeather::tmin_c}) {
        std::vector<std::size_t> found;
        for (std::size_t i = 1; i + 1 < record.days.size(); ++i) {
            const double before = record.days[i].*member - record.days[i - 1].*member;
            const double after = record.days[i].*member - record.days[i + 1].*member;
            if ((before > p.jump_c && after > p.jump_c) || (before < -p.jump_c && after < -p.jump_c))
                found.push_back(i);
        }
        for (const std::size_t i : found) {
            record.days[i].*member = missing;
            spiked[i] = true;
        }
    }
    report.spike_days += static_cast<int>(std::count(spiked.begin(), spiked.end(), true));
}

int stuck_runs(const WeatherRecord& record, Member member, const WeatherParameters& p) {
    int runs = 0;
    int length = 0;
    double last = missing;
    for (const DayOfWeather& day : record.days) {
        length = day.*member == last ? length + 1 : 1;
        last = day.*member;
        if (length == static_cast<int>(p.stuck_days)) ++runs;
    }
    return runs;
}

void count_gaps(const WeatherRecord& record, QualityReport& report) {
    int length = 0;
    for (const DayOfWeather& day : record.days) {
        if (std::isnan(day.tmax_c) || std::isnan(day.tmin_c)) {
            ++report.missing_days;
            if (++length == 1) ++report.gaps;
            report.longest_gap_days = std::max(report.longest_gap_days, length);
        } else {
            length = 0;
            report.rain_missing_days += std::isnan(day.rain_mm) ? 1 : 0;
        }
    }
    report.unfilled_days = report.missing_days;
    if (!report.has_rain) report.rain_missing_days = 0;
}

void warn(QualityReport& report) {
    const auto say = [&](int count, const std::string& what) {
        if (count > 0) report.warnings.push_back(std::to_string(count) + what);
    };
    say(report.swapped_days, " days with the minimum above the maximum, taken as missing");
    say(report.spike_days, " days with impossible values or leaps, taken as missing");
    say(report.stuck_runs, " runs of equal temperatures as from a stuck instrument, kept");
    if (!report.has_rain) report.warnings.emplace_back("no rain on record: every day counts as dry");
    if (!report.has_wind) report.warnings.emplace_back("no wind on record: the default wind climate is used");
    if (report.days > 0 && 4 * report.missing_days > report.days) {
        report.warnings.emplace_back("more than a quarter of the days are missing");
    }
}
}  // namespace

QualityReport check_record(WeatherRecord& record, double latitude_deg, const WeatherParameters& parameters) {
    QualityReport report;
    report.days = static_cast<int>(record.days.size());
    suspect_units(record, latitude_deg, report);
    reject_impossible(record, report, parameters);
    reject_spikes(record, report, parameters);
    report.stuck_runs =
        stuck_runs(record, &DayOfWeather::tmax_c, parameters) + stuck_runs(record, &DayOfWeather::tmin_c, parameters);
    report.has_rain = !std::isnan(mean_over(record, &DayOfWeather::rain_mm, whole_year));
    report.has_wind = !std::isnan(mean_over(record, &DayOfWeather::wind_ms, whole_year));
    count_gaps(record, report);
    warn(report);
    return report;
}

}  // namespace maybough::weather
