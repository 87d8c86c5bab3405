// Every constant of the model, declared once: key, unit, default, limits, belief, meaning, source, standing.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "parameters/colony.hpp"
#include "parameters/keeper.hpp"
#include "parameters/landscape.hpp"
#include "parameters/outlook.hpp"
#include "parameters/row.hpp"
#include "parameters/scouts.hpp"
#include "parameters/swarm.hpp"
#include "parameters/weather.hpp"

namespace maybough::parameters {

/// All rooms' parameters, each room's own small struct. A room's functions take its struct, never this one.
struct Parameters {
    WeatherParameters weather;
    LandscapeParameters landscape;
    ColonyParameters colony;
    SwarmParameters swarm;
    ScoutParameters scouts;
    KeeperParameters keeper;
    OutlookParameters outlook;
};

/// One declared row with the way to its value inside Parameters.
struct ParameterEntry {
    ParameterRow row;
    double& (*of)(Parameters&);
    double get(const Parameters& p) const { return of(const_cast<Parameters&>(p)); }
};

/// The whole table, in the order of rooms.
const std::vector<ParameterEntry>& parameter_table();

/// The entry of `key` ("colony.laying_peak_eggs_per_day"), or nullptr.
const ParameterEntry* find_parameter(std::string_view key);

/// The up to three keys most like `key`, nearest first: for error messages.
std::vector<std::string> nearest_keys(std::string_view key, const std::vector<std::string>& known);

/// Value of a parameter's belief at probability u in (0, 1): the two-piece law of ParameterRow. Fixed rows give the
/// default. Median, low and high may be narrowed by what a catch log taught.
struct Belief {
    double median = 0;
    double low = 0;   ///< 5 % quantile
    double high = 0;  ///< 95 % quantile
};
Belief belief_of(const ParameterRow& row);
double belief_quantile(const ParameterRow& row, const Belief& belief, double u);

/// Rules across rows (low below high and the like). Throws ModelFault or InputError naming `place`.
void check_across(const Parameters& parameters, const std::string& place);

/// The table as Markdown, for MODEL.md.
std::string parameter_table_markdown();

}  // namespace maybough::parameters

namespace maybough {
using namespace parameters;  // so that rooms to the right need no prefix
}
