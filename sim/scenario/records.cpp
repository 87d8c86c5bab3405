// The table of fields of scenario.json: key, need, limits, meaning.
#include "scenario/records.hpp"

#include "landscape/landscape.hpp"

namespace maybough::scenario {

namespace {
constexpr Need required = Need::required;
constexpr Need optional = Need::optional;
constexpr double most_money = 1e9;
constexpr double longest_text = 2000;
constexpr double longest_name = 80;
constexpr double longest_file_name = 200;

std::vector<std::string> habitat_choices() {
    return {habitat_names.begin(), habitat_names.end()};
}
}  // namespace

// clang-format off
const FieldsOf<WrittenTop>& top_fields() {
    using T = WrittenTop;
    static const FieldsOf<T> fields{
        {{"$schema", optional, 0, longest_text, "where the JSON Schema of this file lies, for editors"}, &T::schema},
        {{"format", required, scenario_format, scenario_format, "the format number of this file"}, &T::format},
        {{"name", required, 1, longest_name, "the name of the scenario"}, &T::name},
        {{"description", optional, 0, longest_text, "what the scenario is for"}, &T::description},
        {{"year", required, 1900, 2199, "the calendar year of the swarm season planned for"}, &T::year},
        {{"habitats", optional, 1, longest_file_name, "GeoJSON file of polygons with the property habitat", Rule::file}, &T::habitats},
        {{"map", optional, 1, longest_file_name, "GeoJSON file of streets, water, buildings and names to draw, as maybough land writes it", Rule::file}, &T::map},
        {{"spots", required, 1, longest_file_name, "file of places where a trap may hang: CSV, GPX or GeoJSON", Rule::file}, &T::spots},
        {{"traps", optional, 1, longest_file_name, "CSV file of traps as set", Rule::file}, &T::traps},
    };
    return fields;
}

const FieldsOf<WrittenPlace>& place_fields() {
    using T = WrittenPlace;
    static const FieldsOf<T> fields{
        {{"latitude_deg", required, -66, 66, "latitude of the centre in degrees (WGS 84), south negative"}, &T::latitude_deg},
        {{"longitude_deg", required, -180, 180, "longitude of the centre in degrees (WGS 84), west negative"}, &T::longitude_deg},
        {{"radius_m", required, 100, 30000, "radius of the area in metres; all spots lie within it"}, &T::radius_m},
        {{"elsewhere", optional, 0, 0, "habitat wherever no patch is drawn", Rule::choice, habitat_choices()}, &T::elsewhere},
    };
    return fields;
}

const FieldsOf<WrittenApiary>& apiary_fields() {
    using T = WrittenApiary;
    static const FieldsOf<T> fields{
        {{"id", required, 0, 0, "id of the apiary", Rule::id}, &T::id},
        {{"latitude_deg", required, -90, 90, "latitude in degrees (WGS 84)"}, &T::latitude_deg},
        {{"longitude_deg", required, -180, 180, "longitude in degrees (WGS 84)"}, &T::longitude_deg},
        {{"hives", optional, 1, 500, "number of colonies"}, &T::hives},
    };
    return fields;
}

const FieldsOf<HiveManagement>& management_fields() {
    using T = HiveManagement;
    static const FieldsOf<T> fields{
        {{"inspect_every_days", optional, 0, 365, "days between inspections of hives in the swarm season, 0 = never"}, &T::inspect_every_days},
        {{"cell_finding", optional, 0, 1, "chance that one inspection finds the queen cells there are"}, &T::cell_finding},
        {{"max_volume_l", optional, 10, 300, "hive volume in litres with supers on"}, &T::max_volume_l},
    };
    return fields;
}

const FieldsOf<TrapKind>& kind_fields() {
    using T = TrapKind;
    static const FieldsOf<T> fields{
        {{"id", required, 0, 0, "id of the kind", Rule::id}, &T::id},
        {{"name", optional, 0, longest_name, "name for print"}, &T::name},
        {{"volume_l", required, 2, 200, "inner volume in litres"}, &T::volume_l},
        {{"entrance_area_cm2", optional, 1, 500, "area of the entrance in square centimetres"}, &T::entrance_area_cm2},
        {{"cost", optional, 0, most_money, "material for one, in the scenario's currency"}, &T::cost},
        {{"build_hours", optional, 0, 200, "hours to build one"}, &T::build_hours},
        {{"life_seasons", optional, 0.5, 100, "seasons one lasts"}, &T::seasons_life},
        {{"frames", optional, 0, 1, "whether it holds frames, so that a swarm is lifted over; else it is cut out"}, &T::frames},
        {{"transfer_hours", optional, 0, 24, "hours to move a fresh catch into a hive"}, &T::transfer_hours},
        {{"comb", optional, 0, 1, "old comb put in: 0 none, 1 a frame or more"}, &T::comb},
        {{"dryness", optional, 0, 1, "0 wet inside, 1 dry"}, &T::dryness},
        {{"plate", optional, 0, 1, "whether a metal plate guards the entrance from animals that gnaw"}, &T::plate},
        {{"mass_kg", optional, 0.1, 100, "mass of the empty trap in kilograms"}, &T::mass_kg},
        {{"owned", optional, 0, 10000, "number already there, without cost"}, &T::owned},
    };
    return fields;
}

const FieldsOf<WrittenKeeper>& keeper_fields() {
    using T = WrittenKeeper;
    static const FieldsOf<T> fields{
        {{"currency", optional, 1, 8, "the currency of every money value here"}, &T::currency},
        {{"hour_value", optional, 0, most_money, "what an hour of the keeper's own work is worth, money"}, &T::hour_value},
        {{"km_cost", optional, 0, most_money, "cost of driving one kilometre, money"}, &T::km_cost},
        {{"base_km", optional, 0, 1000, "kilometres to the area and back, once a round of visits"}, &T::base_km},
        {{"lure_cost", optional, 0, most_money, "cost of one slow-release vial of lure, money"}, &T::lure_cost},
        {{"use_lure", optional, 0, 1, "whether traps are lured"}, &T::use_lure},
        {{"relure_after_days", optional, 1, 365, "days after which a lure is renewed"}, &T::relure_after_days},
        {{"swarm_value", optional, 0, most_money, "what an early prime swarm is worth, money"}, &T::swarm_value},
        {{"late_swarm_value", optional, 0, most_money, "what a swarm is worth from late_from on, money"}, &T::late_swarm_value},
        {{"late_from", optional, 0, 0, "month and day (MM-DD) from which a swarm counts as late", Rule::month_day}, &T::late_from},
        {{"budget", optional, 0, most_money, "money for the season; left out = no limit", Rule::above_min}, &T::budget},
        {{"max_traps", optional, 1, 500, "most traps one keeper can look after"}, &T::max_traps},
    };
    return fields;
}

const FieldsOf<WrittenWeather>& weather_fields() {
    using T = WrittenWeather;
    static const FieldsOf<T> fields{
        {{"file", required, 1, longest_file_name, "daily weather: GHCN-Daily, EPW or CSV with units", Rule::file}, &T::file},
        {{"station", optional, 0, longest_name, "the station to take from a file of several"}, &T::station},
    };
    return fields;
}

const FieldsOf<MonthlyNormals>& normals_fields() {
    using T = MonthlyNormals;
    static const FieldsOf<T> fields{
        {{"tmax_c", required, -60, 60, "mean daily maximum of each month in degrees C, January first"}, &T::tmax_c},
        {{"tmin_c", required, -70, 50, "mean daily minimum of each month in degrees C"}, &T::tmin_c},
        {{"rain_mm", required, 0, 3000, "mean rain of each month in mm"}, &T::rain_mm},
        {{"wet_days", required, 0, 31, "mean number of days with at least 1 mm in each month"}, &T::wet_days},
        {{"wind_ms", optional, 0, 30, "mean wind of the year in m/s at 10 m"}, &T::wind_ms},
    };
    return fields;
}

const FieldsOf<Belief>& belief_fields() {
    using T = Belief;
    constexpr double largest = 1e12;
    static const FieldsOf<T> fields{
        {{"median", required, -largest, largest, "as likely too low as too high"}, &T::median},
        {{"low", required, -largest, largest, "the truth lies below it with 5 %"}, &T::low},
        {{"high", required, -largest, largest, "the truth lies above it with 5 %"}, &T::high},
    };
    return fields;
}

const std::vector<Section>& sections() {
    static const std::vector<Section> all{
        {"place", required, "where the area lies"},
        {"apiaries", optional, "hives known of: a CSV, GPX or GeoJSON file, or a list"},
        {"apiary_management", optional, "how those hives are run"},
        {"trap_kinds", required, "the kinds of trap to choose from"},
        {"keeper", optional, "what time, money and swarms are worth, and how visits go"},
        {"weather", required, "a weather file or twelve monthly normals"},
        {"parameters", optional, "values put over the model's defaults, taken as known"},
        {"beliefs", optional, "what is thought of unknown parameters: median, 5 % and 95 % points"},
    };
    return all;
}
// clang-format on

const std::vector<std::string>& overlay_keys() {
    static const std::vector<std::string> keys{"$schema", "format", "name", "description", "parameters", "beliefs"};
    return keys;
}

const std::vector<std::string>& weather_column_names() {
    static const std::vector<std::string> names{"date",    "station", "tmax_c",  "tmax_f",   "tmin_c",   "tmin_f",
                                                "rain_mm", "rain_in", "wind_ms", "wind_kmh", "wind_mph", "wind_kn"};
    return names;
}

}  // namespace maybough::scenario
