// Lays single values out as consecutive days.
#include <algorithm>
#include <cmath>
#include <limits>

#include "base/base.hpp"
#include "scenario/text_file.hpp"
#include "scenario/weather_file.hpp"

namespace maybough::scenario {

namespace {
constexpr double missing = std::numeric_limits<double>::quiet_NaN();
constexpr int longest_record_days = 110000;  // some 300 years: longer means a mistyped year
}  // namespace

DayGatherer::Gathered::Gathered() : day{missing, missing, missing, missing} {}

bool DayGatherer::wants(const std::string& station) {
    stations_.insert(station);
    return source_.station.empty() || source_.station == station;
}

void DayGatherer::take(Date date, Sky what, double value, const std::string& place) {
    Gathered& gathered = days_[date];
    const unsigned bit = 1U << static_cast<unsigned>(what);
    if ((gathered.seen & bit) != 0 && stations_.size() < 2) {
        throw InputError(place, "the day " + iso(date) + " stands twice", "keep one value for each day");
    }
    gathered.seen |= bit;
    switch (what) {
        case Sky::tmax:
            gathered.day.tmax_c = value;
            break;
        case Sky::tmin:
            gathered.day.tmin_c = value;
            break;
        case Sky::rain:
            gathered.day.rain_mm = value;
            break;
        case Sky::wind:
            gathered.day.wind_ms = value;
            break;
    }
}

WeatherReading DayGatherer::finish(const std::string& form) const {
    const std::vector<std::string> stations(stations_.begin(), stations_.end());
    if (!source_.station.empty() && stations_.count(source_.station) == 0) {
        throw InputError(source_.file, "the station \"" + source_.station + "\" is not in the file",
                         did_you_mean(source_.station, stations, "it holds " + first_listed(stations)));
    }
    if (source_.station.empty() && stations.size() > 1) {
        throw InputError(
            source_.file,
            "the file holds " + std::to_string(stations.size()) + " stations (" + first_listed(stations) + ")",
            "name the one wanted as weather.station");
    }
    const auto some = [](const auto& item) {
        const DayOfWeather& d = item.second.day;
        return std::isfinite(d.tmax_c) || std::isfinite(d.tmin_c) || std::isfinite(d.rain_mm) ||
               std::isfinite(d.wind_ms);
    };
    const auto first = std::find_if(days_.begin(), days_.end(), some);
    if (first == days_.end()) throw InputError(source_.file, "found no temperature, rain or wind in the file");
    const Date last = std::find_if(days_.rbegin(), days_.rend(), some)->first;
    if ((last - first->first).count() >= longest_record_days) {
        throw InputError(source_.file, "the record runs from " + iso(first->first) + " to " + iso(last),
                         "is a year mistyped?");
    }
    WeatherReading reading;
    reading.form = form;
    reading.traces = traces;
    reading.flagged = flagged;
    reading.record.first = first->first;
    const std::string station = source_.station.empty() && stations.size() == 1 ? stations.front() : source_.station;
    reading.record.source = source_.file + (station.empty() ? "" : ", station " + station) + " (" + form + ")";
    for (Date date = first->first; date <= last; date += std::chrono::days{1}) {
        const auto found = days_.find(date);
        reading.record.days.push_back(found == days_.end() ? Gathered().day : found->second.day);
    }
    return reading;
}

}  // namespace maybough::scenario
