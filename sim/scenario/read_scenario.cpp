// Reads scenario.json and the files it names into one checked Scenario.
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <set>

#include "base/base.hpp"
#include "scenario/overlay.hpp"
#include "scenario/places.hpp"
#include "scenario/records.hpp"
#include "scenario/scenario.hpp"
#include "scenario/text_file.hpp"
#include "scenario/weather_file.hpp"

namespace maybough::scenario {

namespace {
namespace fs = std::filesystem;

std::string scenario_file(const std::string& path) {
    std::error_code ignored;
    if (!fs::is_directory(path, ignored)) return path;
    const fs::path file = fs::path(path) / "scenario.json";
    if (!fs::exists(file, ignored)) {
        throw InputError(path, "the folder holds no scenario.json",
                         "name a scenario's folder or make one with: maybough new");
    }
    return file.string();
}

/// A newer format is refused before anything else in the file is looked at.
void check_format(const JsonAt& root) {
    expect_object(root);
    if (!root.has("format")) missing_key(root, "format", "the format number, " + std::to_string(scenario_format));
    const JsonAt at = root.at("format");
    const int format = expect_integer(at);
    const std::string found =
        "found format " + std::to_string(format) + ", expected " + std::to_string(scenario_format);
    if (format > scenario_format) throw InputError(at.place(), found, "the file is of a newer maybough; use that one");
    if (format < scenario_format) throw InputError(at.place(), found, "there is no older format");
}

void read_land(const JsonAt& root, Scenario& scenario) {
    WrittenPlace place;
    read_fields(root.at("place"), place_fields(), place, scenario.given);
    scenario.land.centre = {place.latitude_deg, place.longitude_deg};
    scenario.land.radius_m = place.radius_m;
    const auto found = std::find(habitat_names.begin(), habitat_names.end(), place.elsewhere);
    scenario.land.elsewhere = static_cast<Habitat>(found - habitat_names.begin());
}

void read_hives(const JsonAt& root, Scenario& scenario) {
    scenario.apiary_management.managed = true;
    if (root.has("apiary_management")) {
        read_fields(root.at("apiary_management"), management_fields(), scenario.apiary_management, scenario.given);
    }
    if (!root.has("apiaries")) return;
    const JsonAt apiaries = root.at("apiaries");
    scenario.given[apiaries.path] = apiaries.file;
    if (apiaries.value.is_array()) {
        scenario.apiaries = apiaries_in(apiaries, scenario.land, scenario.given);
    } else if (apiaries.value.is_string()) {
        scenario.apiaries = read_apiaries(beside(scenario.folder, expect_text(apiaries)), scenario.land);
    } else {
        throw InputError(apiaries.place(),
                         "found " + said(apiaries.value) + ", expected a file name or a list of apiaries");
    }
}

void read_kinds(const JsonAt& root, Scenario& scenario) {
    const JsonAt list = root.at("trap_kinds");
    if (expect_array(list).empty())
        throw InputError(list.place(), "the list is empty, expected at least one kind of trap");
    std::set<std::string> ids;
    for (std::size_t i = 0; i < list.value.size(); ++i) {
        TrapKind kind;
        read_fields(list.at(i), kind_fields(), kind, scenario.given);
        if (!ids.insert(kind.id).second) {
            throw InputError(list.at(i).place() + "/id", "the id \"" + kind.id + "\" stands twice", "rename one");
        }
        if (kind.name.empty()) kind.name = kind.id;
        scenario.kinds.push_back(kind);
    }
}

}  // namespace

std::string usual_late_from(const LatLon& place) {
    return is_southern(place) ? "01-01" : "07-01";
}

namespace {
void read_keeper(const JsonAt& root, Scenario& scenario) {
    if (!root.has("keeper")) return;
    WrittenKeeper written;
    read_fields(root.at("keeper"), keeper_fields(), written, scenario.given);
    if (!root.at("keeper").has("late_from")) written.late_from = usual_late_from(scenario.land.centre);
    scenario.keeper = written;
    scenario.keeper.late_month = whole_number(written.late_from.substr(0, 2)).value_or(scenario.keeper.late_month);
    scenario.keeper.late_day = whole_number(written.late_from.substr(3)).value_or(scenario.keeper.late_day);
}

MonthlyNormals normals_in(const JsonAt& at, Given& given) {
    MonthlyNormals normals;
    read_fields(at, normals_fields(), normals, given);
    for (std::size_t month = 0; month < normals.tmax_c.size(); ++month) {
        if (normals.tmin_c.at(month) > normals.tmax_c.at(month)) {
            throw InputError(
                at.place() + "/tmin_c/" + std::to_string(month),
                "found " + shortest(normals.tmin_c.at(month)) + ", above tmax_c " + shortest(normals.tmax_c.at(month)));
        }
    }
    return normals;
}

std::map<std::string, std::string> columns_in(const JsonAt& weather) {
    std::map<std::string, std::string> columns;
    if (!weather.has("columns")) return columns;
    const JsonAt at = weather.at("columns");
    expect_keys(at, weather_column_names());
    for (const auto& [key, value] : at.value.items()) columns[key] = expect_text(at.at(key));
    return columns;
}

void read_weather_section(const JsonAt& root, Scenario& scenario) {
    const JsonAt weather = root.at("weather");
    expect_keys(weather, keys_of(weather_fields(), {"columns", "monthly_normals"}));
    if (weather.has("monthly_normals")) {
        for (const char* other : {"file", "station", "columns"}) {
            if (!weather.has(other)) continue;
            throw InputError(weather.place(), "found monthly_normals and " + std::string(other),
                             "give a file or normals, not both");
        }
        const JsonAt normals = weather.at("monthly_normals");
        scenario.given[normals.path] = normals.file;
        scenario.climate = climate_from_normals(normals_in(normals, scenario.given), scenario.parameters.weather);
        return;
    }
    WrittenWeather written;
    read_fields(weather, weather_fields(), written, scenario.given, {"columns", "monthly_normals"});
    const std::string file = beside(scenario.folder, written.file);
    WeatherReading reading = read_weather_file(file, written.station, columns_in(weather));
    scenario.record = std::move(reading.record);
    check_whole_year(scenario.record, file);
    scenario.weather_quality =
        check_record(scenario.record, scenario.land.centre.latitude_deg, scenario.parameters.weather);
    if (reading.flagged > 0) {
        scenario.weather_quality.warnings.push_back(std::to_string(reading.flagged) +
                                                    " values had failed the archive's checks and are taken as missing");
    }
    if (reading.traces > 0) {
        scenario.weather_quality.warnings.push_back(std::to_string(reading.traces) +
                                                    " traces of rain are taken as 0 mm");
    }
    check_whole_year(scenario.record, file);
    scenario.climate = fit_climate(scenario.record, scenario.parameters.weather);
}

void check_uses(const Scenario& scenario, const std::string& file) {
    const auto must =
        std::count_if(scenario.spots.begin(), scenario.spots.end(), [](const Spot& spot) { return spot.must; });
    const auto never =
        std::count_if(scenario.spots.begin(), scenario.spots.end(), [](const Spot& spot) { return spot.never; });
    if (must > scenario.keeper.max_traps) {
        throw InputError(file, std::to_string(must) + " spots must be used, but keeper.max_traps is " +
                                   std::to_string(scenario.keeper.max_traps));
    }
    if (never == static_cast<std::ptrdiff_t>(scenario.spots.size())) {
        throw InputError(file, "no spot may be used: every one says never", "let at least one say may or must");
    }
}

void read_overlays(const std::vector<std::string>& overlays, Scenario& scenario) {
    for (const std::string& path : overlays) {
        const Json document = parse_json(read_text(path), path);
        const JsonAt root{document, path, ""};
        check_format(root);
        expect_keys(root, overlay_keys());
        put_parameters_over(root, scenario);
    }
}

}  // namespace

Date Scenario::first_day() const {
    return simulated_year_start(make_date(year, 12, 31), land.centre.latitude_deg);
}

int Scenario::days() const {
    return days_in_year_from(first_day());
}

Scenario read_scenario(const std::string& path, const std::vector<std::string>& overlays) {
    const std::string file = scenario_file(path);
    Scenario scenario;
    scenario.folder = fs::path(file).parent_path().string();
    scenario.text = read_text(file);
    const Json document = parse_json(scenario.text, file);
    const JsonAt root{document, file, ""};
    check_format(root);
    std::vector<std::string> section_keys;
    for (const Section& section : sections()) section_keys.emplace_back(section.key);
    WrittenTop top;
    read_fields(root, top_fields(), top, scenario.given, section_keys);
    for (const Section& section : sections()) {
        if (section.need == Need::required && !root.has(std::string(section.key)))
            missing_key(root, section.key, section.meaning);
    }
    scenario.name = top.name;
    scenario.description = top.description;
    scenario.year = top.year;
    put_parameters_over(root, scenario);
    read_overlays(overlays, scenario);
    read_land(root, scenario);
    if (!top.habitats.empty())
        scenario.land.patches = read_habitats(beside(scenario.folder, top.habitats), scenario.land);
    for (const std::string& drawn : {top.habitats, top.map}) {
        if (!drawn.empty() && scenario.credit.empty()) scenario.credit = credit_in(beside(scenario.folder, drawn));
    }
    if (!top.map.empty()) scenario.map = read_map(beside(scenario.folder, top.map));
    read_keeper(root, scenario);
    read_kinds(root, scenario);
    read_hives(root, scenario);
    const std::string spots_file = beside(scenario.folder, top.spots);
    scenario.spots = read_spots(spots_file, scenario.land);
    check_uses(scenario, spots_file);
    read_weather_section(root, scenario);
    if (!top.traps.empty()) scenario.placement = read_placement(beside(scenario.folder, top.traps), scenario);
    return scenario;
}

}  // namespace maybough::scenario
