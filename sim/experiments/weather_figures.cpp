// Figures of one year of weather: months, spells, persistence, extremes, degree-days, days fit for bees.
#include "experiments/weather_figures.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <limits>

namespace maybough::experiments {

namespace {
constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
constexpr std::array<const char*, 12> month_names{"January",   "February", "March",    "April",
                                                  "May",       "June",     "July",     "August",
                                                  "September", "October",  "November", "December"};

using OfDay = std::function<double(const DayOfWeather&)>;

/// The days of each calendar month of a year, in the order of the calendar; a year has every month once.
std::array<std::vector<DayOfWeather>, 12> months_of(const WeatherYear& year) {
    std::array<std::vector<DayOfWeather>, 12> months;
    for (std::size_t i = 0; i < year.days.size(); ++i) {
        const int month = month_of(year.first + std::chrono::days{static_cast<int>(i)});
        months[static_cast<std::size_t>(month - 1)].push_back(year.days[i]);
    }
    return months;
}

double mean_of(const std::vector<DayOfWeather>& days, const OfDay& of) {
    double sum = 0;
    for (const DayOfWeather& day : days) sum += of(day);
    return sum / static_cast<double>(days.size());
}

double sd_of(const std::vector<DayOfWeather>& days, const OfDay& of) {
    const double mean = mean_of(days, of);
    double squares = 0;
    for (const DayOfWeather& day : days) squares += std::pow(of(day) - mean, 2);
    return std::sqrt(squares / static_cast<double>(days.size() - 1));
}

/// Correlation of `today` with `before`, `lag` days earlier, as deviations from the means of their own month and year.
double correlation_within_months(const std::array<std::vector<DayOfWeather>, 12>& months, const OfDay& today,
                                 const OfDay& before, std::size_t lag) {
    double products = 0;
    double squares_today = 0;
    double squares_before = 0;
    for (const auto& days : months) {
        const double mean_today = mean_of(days, today);
        const double mean_before = mean_of(days, before);
        for (std::size_t i = lag; i < days.size(); ++i) {
            const double x = today(days[i]) - mean_today;
            const double y = before(days[i - lag]) - mean_before;
            products += x * y;
            squares_today += x * x;
            squares_before += y * y;
        }
    }
    return products / std::sqrt(squares_today * squares_before);
}

/// Lengths of runs of days that are, or are not, as `wanted` says.
std::vector<double> runs_of(const WeatherYear& year, const std::function<bool(const DayOfWeather&)>& wanted) {
    std::vector<double> runs;
    double length = 0;
    for (const DayOfWeather& day : year.days) {
        if (wanted(day)) {
            length += 1;
        } else if (length > 0) {
            runs.push_back(length);
            length = 0;
        }
    }
    if (length > 0) runs.push_back(length);
    return runs;
}

class Figures {
  public:
    void add(const std::string& what, const std::string& unit, double value, Compared compared = Compared::mean) {
        list_.push_back({what, unit, value, compared});
    }

    void add_runs(const std::string& name, const std::vector<double>& runs, double long_run) {
        double sum = 0;
        double longer = 0;
        double longest = 0;
        for (const double run : runs) {
            sum += run;
            longer += run >= long_run ? 1 : 0;
            longest = std::max(longest, run);
        }
        const double n = static_cast<double>(runs.size());
        add("mean " + name, "d", runs.empty() ? nothing : sum / n);
        add("share of " + name + "s of at least " + std::to_string(static_cast<int>(long_run)) + " days", "",
            runs.empty() ? nothing : longer / n);
        add("longest " + name + " of a year", "d", longest);
    }

    std::vector<YearFigure> take() { return std::move(list_); }

  private:
    std::vector<YearFigure> list_;
};

double tmax(const DayOfWeather& day) {
    return day.tmax_c;
}
double tmin(const DayOfWeather& day) {
    return day.tmin_c;
}
double middle(const DayOfWeather& day) {
    return (day.tmax_c + day.tmin_c) / 2;
}

void add_temperatures(Figures& figures, const WeatherYear& year) {
    const auto months = months_of(year);
    for (std::size_t m = 0; m < 12; ++m) {
        const std::string month = month_names[m];
        figures.add(month + ", mean daily maximum", "C", mean_of(months[m], tmax), Compared::mean_and_spread);
        figures.add(month + ", mean daily minimum", "C", mean_of(months[m], tmin));
        figures.add(month + ", spread of days about their month", "C", sd_of(months[m], middle));
    }
    figures.add("a day's maximum with the day before's, correlation within months", "",
                correlation_within_months(months, tmax, tmax, 1));
    figures.add("a day's minimum with the day before's, correlation within months", "",
                correlation_within_months(months, tmin, tmin, 1));
    figures.add("a day's maximum with its minimum, correlation within months", "",
                correlation_within_months(months, tmax, tmin, 0));
    const auto warmer = [](const auto& a, const auto& b) { return a.tmax_c < b.tmax_c; };
    const auto colder = [](const auto& a, const auto& b) { return a.tmin_c < b.tmin_c; };
    figures.add("hottest day of a year", "C", std::max_element(year.days.begin(), year.days.end(), warmer)->tmax_c);
    figures.add("coldest night of a year", "C", std::min_element(year.days.begin(), year.days.end(), colder)->tmin_c);
}

void add_rain(Figures& figures, const WeatherYear& year, const WeatherParameters& parameters) {
    const auto wet = [&](const DayOfWeather& day) { return day.rain_mm >= parameters.wet_day_mm; };
    const auto months = months_of(year);
    for (std::size_t m = 0; m < 12; ++m) {
        const std::string month = month_names[m];
        figures.add(month + ", share of wet days", "",
                    mean_of(months[m], [&](const auto& d) { return wet(d) ? 1.0 : 0.0; }));
        figures.add(month + ", rain", "mm", mean_of(months[m], [](const auto& d) {
                                                return d.rain_mm;
                                            }) * static_cast<double>(months[m].size()));
    }
    double sum = 0;
    for (const DayOfWeather& day : year.days) sum += day.rain_mm;
    figures.add("rain of a year", "mm", sum, Compared::mean_and_spread);
    constexpr double long_wet_d = 4;
    constexpr double long_dry_d = 7;
    figures.add_runs("wet spell", runs_of(year, wet), long_wet_d);
    figures.add_runs("dry spell", runs_of(year, [&](const auto& day) { return !wet(day); }), long_dry_d);
    const auto wetter = [](const auto& a, const auto& b) { return a.rain_mm < b.rain_mm; };
    figures.add("wettest day of a year", "mm", std::max_element(year.days.begin(), year.days.end(), wetter)->rain_mm);
}

void add_wind(Figures& figures, const WeatherYear& year) {
    const auto months = months_of(year);
    const auto wind = [](const DayOfWeather& day) { return day.wind_ms; };
    double mean = 0;
    for (const auto& days : months) mean += mean_of(days, wind) / 12;
    figures.add("daily mean wind", "m/s", mean);
    figures.add("a day's wind with the day before's, correlation within months", "",
                correlation_within_months(months, wind, wind, 1));
}

/// Sums of heat by the ends of the months in which bees build up and swarm.
void add_heat(Figures& figures, const WeatherYear& year, const WeatherParameters& parameters) {
    constexpr std::array<std::size_t, 4> months_on{3, 4, 5, 6};
    double sum = 0;
    std::size_t next = 0;
    for (std::size_t i = 0; i < year.days.size() && next < months_on.size(); ++i) {
        const Date date = year.first + std::chrono::days{static_cast<int>(i)};
        const auto months_in = static_cast<std::size_t>((month_of(date) - month_of(year.first) + 12) % 12);
        if (months_in >= months_on[next]) {
            figures.add(
                std::string("degree-days by the start of ") + month_names[static_cast<std::size_t>(month_of(date) - 1)],
                "C d", sum, Compared::mean_and_spread);
            ++next;
        }
        sum += degree_days_sine(year.days[i].tmin_c, year.days[i].tmax_c, parameters.degree_day_base_c);
    }
}

/// The two that drive a season most: hours fit for foraging, and the longest stretch without any, in the three months
/// before midsummer.
void add_flight(Figures& figures, const WeatherYear& year, double latitude_deg, const WeatherParameters& parameters) {
    constexpr std::size_t from = 90;
    constexpr std::size_t until = 181;
    constexpr double hardly_any_h = 0.5;
    const SkyYear sky = sky_of(year, latitude_deg, parameters);
    double hours = 0;
    double run = 0;
    double longest = 0;
    for (std::size_t i = from; i < until; ++i) {
        hours += sky.days[i].foraging_h;
        run = sky.days[i].foraging_h < hardly_any_h ? run + 1 : 0;
        longest = std::max(longest, run);
    }
    figures.add("hours fit for foraging in the three months before midsummer", "h", hours, Compared::mean_and_spread);
    figures.add("longest run of days without foraging in those months", "d", longest);
}
}  // namespace

std::vector<YearFigure> figures_of(const WeatherYear& year, double latitude_deg, const WeatherParameters& parameters,
                                   RecordHas has) {
    Figures figures;
    add_temperatures(figures, year);
    add_heat(figures, year, parameters);
    if (has.rain) add_rain(figures, year, parameters);
    if (has.wind) add_wind(figures, year);
    if (has.rain && has.wind) add_flight(figures, year, latitude_deg, parameters);
    return figures.take();
}

}  // namespace maybough::experiments
