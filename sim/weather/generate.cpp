// The daily generator: wet and dry days, amounts, temperatures that remember yesterday, wind.
#include <algorithm>
#include <cmath>

#include "weather/seasons.hpp"

namespace maybough::weather {

namespace {
/// What a generated day leaves to the next.
struct Memory {
    bool wet = false;
    double chi_max = 0;  ///< standardised residual of the maximum
    double chi_min = 0;
    double wind_score = 0;  ///< standard normal
    double offset_c = 0;    ///< of this whole year
};

std::size_t month_index(Date date) {
    return static_cast<std::size_t>(month_of(date) - 1);
}

const Phase& phase_of(Date date) {
    return phases()[static_cast<std::size_t>(day_of_year(date))];
}

/// The day after `memory`. Draws, in this order: wet or dry, two temperature normals, wind, and on wet days the amount.
DayOfWeather next_day(const Climate& climate, Date date, Memory& memory, Stream& stream) {
    const std::size_t month = month_index(date);
    const Phase& phase = phase_of(date);
    memory.wet = bernoulli(stream, memory.wet ? climate.wet_after_wet[month] : climate.wet_after_dry[month]);
    const double first = standard_normal(stream);
    const double second = standard_normal(stream);
    const double gust = standard_normal(stream);

    // Temperatures: Richardson 1981, eq. 5, on the mean and spread of a dry or wet day.
    const double chi_max = climate.a[0] * memory.chi_max + climate.a[1] * memory.chi_min + climate.b[0] * first;
    const double chi_min =
        climate.a[2] * memory.chi_max + climate.a[3] * memory.chi_min + climate.b[2] * first + climate.b[3] * second;
    memory.chi_max = chi_max;
    memory.chi_min = chi_min;
    DayOfWeather day;
    day.tmax_c = at_phase(climate.tmax_mean_c[memory.wet ? 1 : 0], phase) + memory.offset_c +
                 tmax_sd(climate, memory.wet, phase) * chi_max;
    day.tmin_c = at_phase(climate.tmin_mean_c, phase) + memory.offset_c + tmin_sd(climate, phase) * chi_min;
    day.tmin_c = std::min(day.tmin_c, day.tmax_c - climate.least_range_c);

    // Wind: gamma about the season's mean, its normal scores remembering yesterday's.
    const double lag = climate.wind_lag1;
    memory.wind_score = lag * memory.wind_score + std::sqrt(1 - lag * lag) * gust;
    day.wind_ms = wind_from_score(memory.wind_score, climate.wind_shape, mean_wind(climate, phase));

    if (memory.wet) {
        const double excess_mm = std::max(0.05, climate.amount_mean_mm[month] - climate.wet_day_mm);
        day.rain_mm = climate.wet_day_mm + gamma(stream, climate.amount_shape[month], excess_mm);
    }
    return day;
}

/// The day before the first, drawn from the stationary law.
Memory opening(const Climate& climate, Date first, Stream& stream) {
    const std::size_t month = month_index(first);
    const double after_dry = climate.wet_after_dry[month];
    const double wet_share = after_dry / std::max(1e-12, 1 + after_dry - climate.wet_after_wet[month]);
    const Matrix root = lower_root(stationary_covariance(climate.a, climate.b));
    Memory memory;
    memory.offset_c = climate.year_sd_c * standard_normal(stream);
    memory.wet = bernoulli(stream, wet_share);
    const double first_normal = standard_normal(stream);
    const double second_normal = standard_normal(stream);
    memory.chi_max = root[0] * first_normal;
    memory.chi_min = root[2] * first_normal + root[3] * second_normal;
    memory.wind_score = standard_normal(stream);
    return memory;
}

/// The year's offset given the year so far: normal prior of spread year_sd_c, and the mean anomaly to date observed
/// with the spread that daily persistence leaves it.
void learn_offset(const WeatherYear& so_far, const Climate& climate, Memory& memory) {
    const double prior = climate.year_sd_c * climate.year_sd_c;
    if (!(prior > 0) || so_far.days.empty()) return;
    double sum = 0;
    double variance = 0;
    Date date = so_far.first;
    for (const DayOfWeather& day : so_far.days) {
        const Phase& phase = phase_of(date);
        const bool wet = day.rain_mm >= climate.wet_day_mm;
        sum += (day.tmax_c - at_phase(climate.tmax_mean_c[wet ? 1 : 0], phase) + day.tmin_c -
                at_phase(climate.tmin_mean_c, phase)) /
               2;
        const double sd = (tmax_sd(climate, wet, phase) + tmin_sd(climate, phase)) / 2;
        variance += sd * sd;
        date += std::chrono::days{1};
    }
    const auto n = static_cast<double>(so_far.days.size());
    const Matrix m0 = stationary_covariance(climate.a, climate.b);
    // Lag-1 correlation of the mean of both extremes; the variance of an n-day mean grows by (1 + r) / (1 - r).
    const double lag = (climate.a[0] * m0[0] + climate.a[1] * m0[2] + climate.a[2] * m0[0] + climate.a[3] * m0[2] +
                        climate.a[0] * m0[1] + climate.a[1] * m0[3] + climate.a[2] * m0[1] + climate.a[3] * m0[3]) /
                       (m0[0] + 2 * m0[1] + m0[3]);
    const double of_mean = variance / n * (m0[0] + 2 * m0[1] + m0[3]) / 4 * (1 + lag) / (1 - lag) / n;
    const double weight = prior / (prior + of_mean);
    memory.offset_c = weight * sum / n + std::sqrt(1 - weight) * memory.offset_c;
}

/// Standardised residuals of an observed day, so that the next one can follow it.
void take_up(const DayOfWeather& day, const Climate& climate, Date date, Memory& memory) {
    constexpr double furthest = 4;  // a freak day is carried on no further than this many spreads
    const Phase& phase = phase_of(date);
    memory.wet = day.rain_mm >= climate.wet_day_mm;
    const double chi_max = (day.tmax_c - memory.offset_c - at_phase(climate.tmax_mean_c[memory.wet ? 1 : 0], phase)) /
                           tmax_sd(climate, memory.wet, phase);
    const double chi_min =
        (day.tmin_c - memory.offset_c - at_phase(climate.tmin_mean_c, phase)) / tmin_sd(climate, phase);
    memory.chi_max = std::clamp(chi_max, -furthest, furthest);
    memory.chi_min = std::clamp(chi_min, -furthest, furthest);
    const double score = score_of_wind(day.wind_ms, climate.wind_shape, mean_wind(climate, phase));
    if (!std::isnan(score)) memory.wind_score = std::clamp(score, -furthest, furthest);
}

void go_on(WeatherYear& year, const Climate& climate, int days, Memory& memory, const Chance& chance) {
    year.days.reserve(static_cast<std::size_t>(std::max(days, 0)));
    for (int index = static_cast<int>(year.days.size()); index < days; ++index) {
        Stream stream = chance.stream(Purpose::weather_generate, 0U, Day{index});
        year.days.push_back(next_day(climate, year.first + std::chrono::days{index}, memory, stream));
    }
}
}  // namespace

WeatherYear generate_year(const Climate& climate, Date first, int days, const Chance& chance) {
    Stream stream = chance.stream(Purpose::weather_generate, 0U);
    Memory memory = opening(climate, first, stream);
    WeatherYear year{first, {}};
    go_on(year, climate, days, memory, chance);
    return year;
}

WeatherYear continue_year(const WeatherYear& so_far, const Climate& climate, int days, const Chance& chance) {
    Stream stream = chance.stream(Purpose::weather_generate, 0U);
    Memory memory = opening(climate, so_far.first, stream);
    WeatherYear year = so_far;
    if (static_cast<int>(year.days.size()) > days) year.days.resize(static_cast<std::size_t>(std::max(days, 0)));
    if (!year.days.empty()) {
        learn_offset(year, climate, memory);
        const int last = static_cast<int>(year.days.size()) - 1;
        take_up(year.days.back(), climate, year.first + std::chrono::days{last}, memory);
    }
    go_on(year, climate, days, memory, chance);
    return year;
}

WeatherRecord bridge_gaps(const WeatherRecord& record, const Climate& climate, const Chance& chance,
                          QualityReport& report) {
    WeatherRecord whole = record;
    Stream opener = chance.stream(Purpose::weather_generate, 0U);
    Memory memory = opening(climate, record.first, opener);
    report.bridged_days = 0;
    for (std::size_t i = 0; i < whole.days.size(); ++i) {
        DayOfWeather& day = whole.days[i];
        const Date date = whole.first + std::chrono::days{static_cast<int>(i)};
        // Long records run past the days a key can hold; whole blocks of days then take another sub-number.
        constexpr std::size_t block = 60000;
        Stream stream = chance.stream(Purpose::weather_generate, 0U, Day{static_cast<int>(i % block)},
                                      1U + static_cast<std::uint32_t>(i / block));
        Memory made_memory = memory;
        const DayOfWeather made = next_day(climate, date, made_memory, stream);
        if (std::isnan(day.tmax_c) || std::isnan(day.tmin_c)) {
            ++report.bridged_days;
            day.tmax_c = made.tmax_c;
            day.tmin_c = made.tmin_c;
        }
        if (std::isnan(day.rain_mm)) day.rain_mm = made.rain_mm;
        if (std::isnan(day.wind_ms)) day.wind_ms = made.wind_ms;
        memory = made_memory;
        take_up(day, climate, date, memory);
    }
    return whole;
}

}  // namespace maybough::weather
