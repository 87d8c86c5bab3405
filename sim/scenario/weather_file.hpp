// Weather files of every form we know, each as one reading; told apart by their content.
#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "scenario/scenario.hpp"
#include "weather/weather.hpp"

namespace maybough::scenario {

/// The four values we keep, in the order of DayOfWeather.
enum class Sky { tmax, tmin, rain, wind };

/// What a reader needs beside the text.
struct WeatherSource {
    std::string file;
    std::string station;                         ///< empty: the only one
    std::map<std::string, std::string> columns;  ///< our column name -> the file's own
};

WeatherReading read_ghcn_fixed(const std::string& text, const WeatherSource& source);
WeatherReading read_ghcn_long(const std::string& text, const WeatherSource& source);
WeatherReading read_ghcn_wide(const std::string& text, const WeatherSource& source);
WeatherReading read_epw(const std::string& text, const WeatherSource& source);
WeatherReading read_weather_table(const std::string& text, const WeatherSource& source);

/// Throws InputError at `file` unless the record holds about a year of days with both temperatures: a climate needs it.
void check_whole_year(const WeatherRecord& record, const std::string& file);

/// Gathers values day by day, in any order, for one station, and lays them out as consecutive days.
class DayGatherer {
  public:
    explicit DayGatherer(const WeatherSource& source) : source_(source) {}

    /// Whether lines of this station are wanted; remembers its name.
    bool wants(const std::string& station);

    /// Takes one value; NaN counts as seen and missing. Throws InputError at `place` when it stands twice.
    void take(Date date, Sky what, double value, const std::string& place);

    /// Days from the first to the last that has any value. Throws InputError where nothing was read or several
    /// stations were and none was named.
    WeatherReading finish(const std::string& form) const;

    int traces = 0;   ///< rain of less than could be measured, taken as 0
    int flagged = 0;  ///< values the archive's own checks had failed, taken as missing

  private:
    struct Gathered {
        DayOfWeather day;
        unsigned seen = 0;
        Gathered();
    };
    const WeatherSource& source_;
    std::set<std::string> stations_;
    std::map<Date, Gathered> days_;
};

/// One GHCN-Daily value as read: elements we do not use are passed over, flags honoured, tenths made whole.
struct GhcnValue {
    std::string_view element;
    int tenths = 0;
    char measured = ' ';  ///< MFLAG
    char quality = ' ';   ///< QFLAG, blank = passed
};
void take_ghcn(DayGatherer& days, Date date, const GhcnValue& value, const std::string& place);

}  // namespace maybough::scenario
