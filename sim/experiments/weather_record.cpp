// Generated weather beside the record it was fitted to: means over years, and spreads between years.
#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <cstdio>

#include "experiments/weather_figures.hpp"

namespace maybough::experiments {

namespace {
/// Share of tables that have a miss somewhere although the generator is right.
constexpr double family_wise = 0.05;
constexpr std::uint32_t generated_years = 400;
/// Fewest observed years whose own spread is taken for the error of their mean.
constexpr std::size_t enough_years = 10;

struct Moments {
    double n = 0;
    double mean = 0;
    double sd = 0;
};

Moments moments_of(const std::vector<std::vector<YearFigure>>& years, std::size_t which) {
    Moments m;
    double squares = 0;
    for (const auto& year : years) {
        const double value = year[which].value;
        if (std::isnan(value)) continue;
        m.n += 1;
        const double step = value - m.mean;
        m.mean += step / m.n;
        squares += step * (value - m.mean);
    }
    m.sd = m.n > 1 ? std::sqrt(squares / (m.n - 1)) : 0;
    return m;
}

std::string shown(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.*f", std::abs(value) < 1 ? 3 : (std::abs(value) < 100 ? 2 : 0), value);
    return text;
}

/// The simulated years that the record has in full.
std::vector<WeatherYear> whole_years(const WeatherRecord& record, double latitude_deg, RecordHas has) {
    std::vector<WeatherYear> years;
    if (record.days.empty()) return years;
    const auto known = [&](const DayOfWeather& day) {
        return !std::isnan(day.tmax_c) && !std::isnan(day.tmin_c) && !(has.rain && std::isnan(day.rain_mm)) &&
               !(has.wind && std::isnan(day.wind_ms));
    };
    const auto size = static_cast<std::ptrdiff_t>(record.days.size());
    for (Date first = simulated_year_start(record.first, latitude_deg);;
         first += std::chrono::days{days_in_year_from(first)}) {
        const auto from = (first - record.first).count();
        if (from >= size) return years;
        const auto until = from + days_in_year_from(first);
        if (from < 0 || until > size) continue;
        WeatherYear year{first, {record.days.begin() + from, record.days.begin() + until}};
        if (std::all_of(year.days.begin(), year.days.end(), known)) years.push_back(std::move(year));
    }
}

/// Both tables of figures: what was seen and what was made.
struct SeenAndMade {
    std::vector<std::vector<YearFigure>> seen;
    std::vector<std::vector<YearFigure>> made;
};

SeenAndMade count_both(WeatherRecord record, double latitude_deg, const Parameters& parameters, std::uint32_t seed) {
    // A day or two missing would cost the whole year: short gaps are filled as everywhere.
    QualityReport quality = check_record(record, latitude_deg, parameters.weather);
    fill_gaps(record, quality, parameters.weather);
    const auto any = [&](double DayOfWeather::*what) {
        return std::any_of(record.days.begin(), record.days.end(),
                           [what](const DayOfWeather& day) { return !std::isnan(day.*what); });
    };
    const RecordHas has{any(&DayOfWeather::rain_mm), any(&DayOfWeather::wind_ms)};
    SeenAndMade both;
    const std::vector<WeatherYear> years = whole_years(record, latitude_deg, has);
    if (years.size() < 2) return both;
    for (const WeatherYear& year : years) {
        both.seen.push_back(figures_of(year, latitude_deg, parameters.weather, has));
    }
    const Climate climate = fit_climate(record, parameters.weather);
    for (std::uint32_t k = 0; k < generated_years; ++k) {
        // As many leap years as the record has.
        const WeatherYear& like = years[k % years.size()];
        both.made.push_back(
            figures_of(generate_year(climate, like.first, static_cast<int>(like.days.size()), {seed, k}), latitude_deg,
                       parameters.weather, has));
    }
    return both;
}

std::string years_text(const Moments& seen) {
    return std::to_string(static_cast<int>(seen.n)) + " years";
}

/// The mean over years. Its error is that of the observed years; where they are few, the spread between generated
/// years stands for theirs.
Finding of_mean(const YearFigure& figure, const Moments& seen, const Moments& made, double alpha,
                const std::string& record_name) {
    const bool enough = seen.n >= static_cast<double>(enough_years);
    const double se = (enough ? seen.sd : made.sd) / std::sqrt(seen.n);
    const double degrees = enough ? seen.n - 1 : made.n - 1;
    const double t = boost::math::quantile(boost::math::complement(boost::math::students_t(degrees), alpha / 2));
    Finding finding;
    finding.what = figure.what;
    finding.unit = figure.unit;
    finding.published = shown(seen.mean) + " (" + years_text(seen) + ")";
    finding.simulated = made.mean;
    finding.simulated_se = made.sd / std::sqrt(made.n);
    finding.low = seen.mean - t * se;
    finding.high = seen.mean + t * se;
    finding.why_interval = shown(t) + " standard errors of the mean of " + years_text(seen) +
                           (enough ? ", by the spread between them" : ", by the spread between generated years") +
                           "; 5 % for a miss anywhere in this table";
    finding.source = record_name;
    finding.footing = Footing::calibrated;
    return finding;
}

/// The spread between years, against the exact interval of a normal spread.
Finding of_spread(const YearFigure& figure, const Moments& seen, const Moments& made, double alpha,
                  const std::string& record_name) {
    const boost::math::chi_squared law(seen.n - 1);
    const double squares = (seen.n - 1) * seen.sd * seen.sd;
    Finding finding;
    finding.what = figure.what + ": spread between years";
    finding.unit = figure.unit;
    finding.published = shown(seen.sd) + " (" + years_text(seen) + ")";
    finding.simulated = made.sd;
    finding.simulated_se = made.sd / std::sqrt(2 * made.n);
    finding.low = std::sqrt(squares / boost::math::quantile(boost::math::complement(law, alpha / 2)));
    finding.high = std::sqrt(squares / boost::math::quantile(law, alpha / 2));
    finding.why_interval =
        "chi-squared interval of a spread over " + years_text(seen) + "; 5 % for a miss anywhere in this table";
    finding.source = record_name;
    finding.footing = Footing::calibrated;
    return finding;
}
}  // namespace

Experiment record_experiment(const WeatherRecord& record, double latitude_deg, const std::string& record_name) {
    const auto run = [record, latitude_deg, record_name](const Parameters& parameters, std::uint32_t seed) {
        const SeenAndMade both = count_both(record, latitude_deg, parameters, seed);
        std::vector<Finding> findings;
        if (both.seen.empty()) return findings;
        const std::size_t figures = both.seen.front().size();
        double checks = 0;
        for (const YearFigure& figure : both.seen.front()) {
            checks += figure.compared == Compared::mean_and_spread ? 2 : 1;
        }
        const double alpha = 1 - std::pow(1 - family_wise, 1 / checks);
        for (const bool spreads : {false, true}) {
            for (std::size_t i = 0; i < figures; ++i) {
                const Moments seen = moments_of(both.seen, i);
                const Moments made = moments_of(both.made, i);
                if (seen.n < 2 || made.n < 2) continue;
                const YearFigure& figure = both.seen.front()[i];
                if (!spreads) {
                    findings.push_back(of_mean(figure, seen, made, alpha, record_name));
                } else if (figure.compared == Compared::mean_and_spread && seen.sd > 0) {
                    findings.push_back(of_spread(figure, seen, made, alpha, record_name));
                }
            }
        }
        return findings;
    };
    return {"record", "weather", "400 generated years against the record they were fitted to", run};
}

}  // namespace maybough::experiments
