// Scenario, parameters and weather in a results file: enough to make every output again, not to simulate again.
#include <cmath>

#include "report/result_columns.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

std::string habitat_word(Habitat habitat) {
    return std::string(habitat_names.at(static_cast<std::size_t>(habitat)));
}

Habitat habitat_of(const std::string& word) {
    for (std::size_t i = 0; i < habitat_names.size(); ++i) {
        if (habitat_names[i] == word) return static_cast<Habitat>(i);
    }
    throw InputError("scenario/patches", "\"" + word + "\" is no habitat", "the results file is damaged");
}

const Columns<Scenario>& place_columns() {
    static const Columns<Scenario> columns = [] {
        Columns<Scenario> list;
        list.add("name", "text", MAYBOUGH_PLACE(name));
        list.add("description", "text", MAYBOUGH_PLACE(description));
        list.add("year", "1", MAYBOUGH_PLACE(year));
        list.add("latitude_deg", "degree", MAYBOUGH_PLACE(land.centre.latitude_deg));
        list.add("longitude_deg", "degree", MAYBOUGH_PLACE(land.centre.longitude_deg));
        list.add("radius_m", "m", MAYBOUGH_PLACE(land.radius_m));
        list.text(
            "elsewhere", [](const Scenario& row) { return habitat_word(row.land.elsewhere); },
            [](Scenario& row, const std::string& word) { row.land.elsewhere = habitat_of(word); });
        list.add("map", "text", MAYBOUGH_PLACE(map));
        list.add("map_credit", "text", MAYBOUGH_PLACE(credit));
        list.add("weather_source", "text", MAYBOUGH_PLACE(record.source));
        list.add("weather_days", "day", MAYBOUGH_PLACE(weather_quality.days));
        list.add("weather_missing_days", "day", MAYBOUGH_PLACE(weather_quality.missing_days));
        list.add("weather_gaps", "1", MAYBOUGH_PLACE(weather_quality.gaps));
        list.add("weather_longest_gap_days", "day", MAYBOUGH_PLACE(weather_quality.longest_gap_days));
        list.add("weather_filled_days", "day", MAYBOUGH_PLACE(weather_quality.filled_days));
        list.add("weather_swapped_days", "day", MAYBOUGH_PLACE(weather_quality.swapped_days));
        list.add("weather_spike_days", "day", MAYBOUGH_PLACE(weather_quality.spike_days));
        list.add("weather_stuck_runs", "1", MAYBOUGH_PLACE(weather_quality.stuck_runs));
        return list;
    }();
    return columns;
}

const Columns<Keeper>& keeper_columns() {
    static const Columns<Keeper> columns = [] {
        Columns<Keeper> list;
        list.add("currency", "text", MAYBOUGH_PLACE(currency));
        list.add("hour_value", "currency/h", MAYBOUGH_PLACE(hour_value));
        list.add("km_cost", "currency/km", MAYBOUGH_PLACE(km_cost));
        list.add("base_km", "km", MAYBOUGH_PLACE(base_km));
        list.add("lure_cost", "currency", MAYBOUGH_PLACE(lure_cost));
        list.add("use_lure", "1 = yes", MAYBOUGH_PLACE(use_lure));
        list.add("relure_after_days", "day", MAYBOUGH_PLACE(relure_after_days));
        list.add("swarm_value", "currency", MAYBOUGH_PLACE(swarm_value));
        list.add("late_swarm_value", "currency", MAYBOUGH_PLACE(late_swarm_value));
        list.add("late_month", "1", MAYBOUGH_PLACE(late_month));
        list.add("late_day", "1", MAYBOUGH_PLACE(late_day));
        list.add("budget", "currency, 0 = no limit", MAYBOUGH_PLACE(budget));
        list.add("max_traps", "1", MAYBOUGH_PLACE(max_traps));
        return list;
    }();
    return columns;
}

const Columns<TrapKind>& kind_columns() {
    static const Columns<TrapKind> columns = [] {
        Columns<TrapKind> list;
        list.add("id", "text", MAYBOUGH_PLACE(id));
        list.add("name", "text", MAYBOUGH_PLACE(name));
        list.add("volume_l", "l", MAYBOUGH_PLACE(volume_l));
        list.add("entrance_area_cm2", "cm2", MAYBOUGH_PLACE(entrance_area_cm2));
        list.add("cost", "currency", MAYBOUGH_PLACE(cost));
        list.add("build_hours", "h", MAYBOUGH_PLACE(build_hours));
        list.add("seasons_life", "season", MAYBOUGH_PLACE(seasons_life));
        list.add("frames", "1 = yes", MAYBOUGH_PLACE(frames));
        list.add("transfer_hours", "h", MAYBOUGH_PLACE(transfer_hours));
        list.add("comb", "1", MAYBOUGH_PLACE(comb));
        list.add("dryness", "1", MAYBOUGH_PLACE(dryness));
        list.add("plate", "1 = yes", MAYBOUGH_PLACE(plate));
        list.add("mass_kg", "kg", MAYBOUGH_PLACE(mass_kg));
        list.add("owned", "1", MAYBOUGH_PLACE(owned));
        return list;
    }();
    return columns;
}

const Columns<Spot>& spot_columns() {
    static const Columns<Spot> columns = [] {
        Columns<Spot> list;
        list.add("id", "text", MAYBOUGH_PLACE(id));
        list.add("name", "text", MAYBOUGH_PLACE(name));
        list.add("latitude_deg", "degree", MAYBOUGH_PLACE(place.latitude_deg));
        list.add("longitude_deg", "degree", MAYBOUGH_PLACE(place.longitude_deg));
        list.add("x_m", "m", MAYBOUGH_PLACE(at.x_m));
        list.add("y_m", "m", MAYBOUGH_PLACE(at.y_m));
        list.add("min_height_m", "m", MAYBOUGH_PLACE(min_height_m));
        list.add("max_height_m", "m", MAYBOUGH_PLACE(max_height_m));
        list.add("shade", "1", MAYBOUGH_PLACE(shade));
        list.add("visibility", "1", MAYBOUGH_PLACE(visibility));
        list.add("minutes_to_reach", "min", MAYBOUGH_PLACE(minutes_to_reach));
        list.add("drive_km", "km", MAYBOUGH_PLACE(drive_km));
        list.add("must", "1 = yes", MAYBOUGH_PLACE(must));
        list.add("never", "1 = yes", MAYBOUGH_PLACE(never));
        list.add("notes", "text", MAYBOUGH_PLACE(notes));
        return list;
    }();
    return columns;
}

struct Facing {
    std::size_t spot = 0;
    double facing_deg = 0;
};
const Columns<Facing>& facing_columns() {
    static const Columns<Facing> columns = [] {
        Columns<Facing> list;
        list.add("spot", "index into scenario/spots", MAYBOUGH_PLACE(spot));
        list.add("facing_deg", "degree", MAYBOUGH_PLACE(facing_deg));
        return list;
    }();
    return columns;
}

const Columns<Apiary>& apiary_columns() {
    static const Columns<Apiary> columns = [] {
        Columns<Apiary> list;
        list.add("id", "text", MAYBOUGH_PLACE(id));
        list.add("x_m", "m", MAYBOUGH_PLACE(at.x_m));
        list.add("y_m", "m", MAYBOUGH_PLACE(at.y_m));
        list.add("hives", "1", MAYBOUGH_PLACE(hives));
        return list;
    }();
    return columns;
}

const Columns<HabitatPatch>& patch_columns() {
    static const Columns<HabitatPatch> columns = [] {
        Columns<HabitatPatch> list;
        list.text(
            "habitat", [](const HabitatPatch& row) { return habitat_word(row.habitat); },
            [](HabitatPatch& row, const std::string& word) { row.habitat = habitat_of(word); });
        list.add("name", "text", MAYBOUGH_PLACE(name));
        return list;
    }();
    return columns;
}

struct Corner {
    std::size_t patch = 0;
    Point at;
};
const Columns<Corner>& corner_columns() {
    static const Columns<Corner> columns = [] {
        Columns<Corner> list;
        list.add("patch", "index into scenario/patches", MAYBOUGH_PLACE(patch));
        list.add("x_m", "m", MAYBOUGH_PLACE(at.x_m));
        list.add("y_m", "m", MAYBOUGH_PLACE(at.y_m));
        return list;
    }();
    return columns;
}

struct WeatherRow {
    std::string date;
    DayOfWeather day;
};
const Columns<WeatherRow>& weather_columns() {
    static const Columns<WeatherRow> columns = [] {
        Columns<WeatherRow> list;
        list.add("date", "text", MAYBOUGH_PLACE(date));
        list.add("tmax_c", "degree Celsius", MAYBOUGH_PLACE(day.tmax_c));
        list.add("tmin_c", "degree Celsius", MAYBOUGH_PLACE(day.tmin_c));
        list.add("rain_mm", "mm", MAYBOUGH_PLACE(day.rain_mm));
        list.add("wind_ms", "m/s", MAYBOUGH_PLACE(day.wind_ms));
        return list;
    }();
    return columns;
}

/// One parameter as this run used it.
struct ParameterUsed {
    std::string key, unit, set_by, spread, standing, source, meaning;
    double value = 0, fallback = 0;
    int is_default = 1;
    Belief belief;
};
const Columns<ParameterUsed>& parameter_columns() {
    static const Columns<ParameterUsed> columns = [] {
        Columns<ParameterUsed> list;
        list.add("key", "text", MAYBOUGH_PLACE(key));
        list.add("value", "see unit", MAYBOUGH_PLACE(value));
        list.add("unit", "text", MAYBOUGH_PLACE(unit));
        list.add("default", "see unit", MAYBOUGH_PLACE(fallback));
        list.add("is_default", "1 = yes", MAYBOUGH_PLACE(is_default));
        list.add("set_by", "text", MAYBOUGH_PLACE(set_by));
        list.add("spread", "text", MAYBOUGH_PLACE(spread));
        list.add("belief_low", "see unit", MAYBOUGH_PLACE(belief.low));
        list.add("belief_median", "see unit", MAYBOUGH_PLACE(belief.median));
        list.add("belief_high", "see unit", MAYBOUGH_PLACE(belief.high));
        list.add("standing", "text", MAYBOUGH_PLACE(standing));
        list.add("source", "text", MAYBOUGH_PLACE(source));
        list.add("meaning", "text", MAYBOUGH_PLACE(meaning));
        return list;
    }();
    return columns;
}

std::vector<ParameterUsed> parameters_used(const Scenario& scenario) {
    std::vector<ParameterUsed> rows;
    for (const ParameterEntry& entry : parameter_table()) {
        ParameterUsed used;
        used.key = entry.row.key;
        used.unit = entry.row.unit;
        used.value = entry.get(scenario.parameters);
        used.fallback = entry.row.value;
        used.is_default = used.value == used.fallback ? 1 : 0;
        const auto given = scenario.given.find(used.key);
        used.set_by = given == scenario.given.end() ? "" : given->second;
        used.spread = word(entry.row.spread);
        const auto belief = scenario.beliefs.find(used.key);
        used.belief = belief == scenario.beliefs.end() ? belief_of(entry.row) : belief->second;
        used.standing = word(entry.row.standing);
        used.source = entry.row.source;
        used.meaning = entry.row.meaning;
        rows.push_back(std::move(used));
    }
    return rows;
}

}  // namespace

void write_scenario(Hdf5Writer& file, const Scenario& scenario) {
    parameter_columns().write(file, "/parameters", parameters_used(scenario));
    std::vector<WeatherRow> weather;
    for (std::size_t day = 0; day < scenario.record.days.size(); ++day) {
        const Date date = scenario.record.first + std::chrono::days{static_cast<int>(day)};
        weather.push_back({iso(date), scenario.record.days[day]});
    }
    weather_columns().write(file, "/weather", weather);
    place_columns().write(file, "/scenario/place", {scenario});
    keeper_columns().write(file, "/scenario/keeper", {scenario.keeper});
    kind_columns().write(file, "/scenario/kinds", scenario.kinds);
    spot_columns().write(file, "/scenario/spots", scenario.spots);
    std::vector<Facing> facings;
    for (std::size_t spot = 0; spot < scenario.spots.size(); ++spot) {
        for (const double facing : scenario.spots[spot].facings_deg) facings.push_back({spot, facing});
    }
    facing_columns().write(file, "/scenario/facings", facings);
    apiary_columns().write(file, "/scenario/apiaries", scenario.apiaries);
    patch_columns().write(file, "/scenario/patches", scenario.land.patches);
    std::vector<Corner> corners;
    for (std::size_t patch = 0; patch < scenario.land.patches.size(); ++patch) {
        for (const Point corner : scenario.land.patches[patch].ring) corners.push_back({patch, corner});
    }
    corner_columns().write(file, "/scenario/patch_corners", corners);
}

Scenario read_scenario_tables(const Hdf5Reader& file) {
    const std::vector<Scenario> place = place_columns().read(file, "/scenario/place");
    const std::vector<Keeper> keeper = keeper_columns().read(file, "/scenario/keeper");
    if (place.size() != 1 || keeper.size() != 1) {
        throw InputError(file.path() + ": /scenario", "does not tell one place and one keeper");
    }
    Scenario scenario = place.front();
    scenario.keeper = keeper.front();
    scenario.text = file.text_attribute("scenario_text");
    scenario.kinds = kind_columns().read(file, "/scenario/kinds");
    scenario.spots = spot_columns().read(file, "/scenario/spots");
    for (const Facing& facing : facing_columns().read(file, "/scenario/facings")) {
        scenario.spots.at(facing.spot).facings_deg.push_back(facing.facing_deg);
    }
    scenario.apiaries = apiary_columns().read(file, "/scenario/apiaries");
    scenario.land.patches = patch_columns().read(file, "/scenario/patches");
    for (const Corner& corner : corner_columns().read(file, "/scenario/patch_corners")) {
        scenario.land.patches.at(corner.patch).ring.push_back(corner.at);
    }
    for (const WeatherRow& row : weather_columns().read(file, "/weather")) {
        if (scenario.record.days.empty()) scenario.record.first = parse_date(row.date, file.path() + ": /weather");
        scenario.record.days.push_back(row.day);
    }
    for (const ParameterUsed& used : parameter_columns().read(file, "/parameters")) {
        const ParameterEntry* entry = find_parameter(used.key);
        if (entry != nullptr) entry->of(scenario.parameters) = used.value;
        if (!used.set_by.empty()) scenario.given[used.key] = used.set_by;
        if (entry != nullptr && entry->row.spread != Spread::fixed) scenario.beliefs[used.key] = used.belief;
    }
    return scenario;
}

}  // namespace maybough::report
