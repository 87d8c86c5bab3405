// Writes a starter scenario: imports what is given, invents the rest so that it runs, whole or not at all.
#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <numbers>
#include <sstream>

#include "base/base.hpp"
#include "scenario/places.hpp"
#include "scenario/records.hpp"
#include "scenario/scenario.hpp"
#include "scenario/sheet.hpp"
#include "scenario/text_file.hpp"
#include "scenario/weather_file.hpp"

namespace maybough::scenario {

namespace {
namespace fs = std::filesystem;

/// Year's mean and half the range of monthly means in lowlands, every 10 degrees of latitude: rough figures from memory
/// to start from; the file written says that they want replacing.
struct ZonalTemperature {
    double mean_c;
    double half_range_c;
};
constexpr std::array<ZonalTemperature, 8> zones{
    ZonalTemperature{26.5, 0.5}, {26, 2}, {24.5, 5}, {20, 8}, {14.5, 9.5}, {9.5, 8.5}, {4.5, 10.5}, {-3, 13}};

MonthlyNormals rough_normals(double latitude_deg) {
    constexpr double zone_deg = 10;
    const double zone = std::abs(latitude_deg) / zone_deg;
    const auto lower = std::min(static_cast<std::size_t>(zone), zones.size() - 2);
    const double part = zone - static_cast<double>(lower);
    const double mean_c = std::lerp(zones.at(lower).mean_c, zones.at(lower + 1).mean_c, part);
    const double half_range_c = std::lerp(zones.at(lower).half_range_c, zones.at(lower + 1).half_range_c, part);
    constexpr int warmest_month_north = 6;  // July
    constexpr double half_daily_range_c = 5;
    constexpr double rain_mm = 65;
    constexpr double wet_days = 10;
    MonthlyNormals normals;
    for (int month = 0; month < 12; ++month) {
        const int from_warmest = month - warmest_month_north + (is_southern({latitude_deg, 0}) ? 6 : 0);
        const double middle_c = mean_c + half_range_c * std::cos(2 * std::numbers::pi * from_warmest / 12);
        const auto i = static_cast<std::size_t>(month);
        constexpr double tenths = 10;
        normals.tmax_c.at(i) = std::round((middle_c + half_daily_range_c) * tenths) / tenths;
        normals.tmin_c.at(i) = std::round((middle_c - half_daily_range_c) * tenths) / tenths;
        normals.rain_mm.at(i) = rain_mm;
        normals.wet_days.at(i) = wet_days;
    }
    return normals;
}

std::string rounded_degrees(double degrees) {
    constexpr double micro = 1e6;  // about 0.1 m
    return shortest(std::round(degrees * micro) / micro);
}

/// A few spots on two circles, so that the starter runs before the user's own are in.
std::string example_spots(const Land& land) {
    struct Example {
        const char* id;
        const char* name;
        double bearing_deg;
        double share_of_radius;
    };
    constexpr std::array<Example, 6> examples{
        Example{"garden", "Garden wall (example)", 0, 0.1},    {"orchard", "Orchard edge (example)", 60, 0.35},
        {"churchyard", "Churchyard lime (example)", 150, 0.3}, {"barn", "Barn roof (example)", 220, 0.5},
        {"wood", "Wood's edge (example)", 300, 0.6},           {"mill", "Mill oak (example)", 20, 0.7}};
    const LocalPlane plane(land.centre);
    std::ostringstream out;
    out << "id,name,latitude_deg,longitude_deg,min_height_m,max_height_m,facings_deg,shade,visibility,minutes_to_reach,"
           "drive_km,use\n";
    for (const Example& example : examples) {
        const double bearing = example.bearing_deg * std::numbers::pi / 180;
        const double away_m = example.share_of_radius * land.radius_m;
        const LatLon at = plane.to_earth({away_m * std::sin(bearing), away_m * std::cos(bearing)});
        out << example.id << "," << example.name << "," << rounded_degrees(at.latitude_deg) << ","
            << rounded_degrees(at.longitude_deg) << ",2,4,,0.5,0.6,5,0.5,may\n";
    }
    return out.str();
}

std::string quoted(const std::string& cell) {
    if (cell.find_first_of(",\"\n") == std::string::npos) return cell;
    std::string text = "\"";
    for (const char c : cell) text.append(c == '"' ? 2 : 1, c);
    text += '"';
    return text;
}

std::string spots_table(const std::vector<Spot>& spots) {
    std::ostringstream out;
    out << "id,name,latitude_deg,longitude_deg,min_height_m,max_height_m,facings_deg,shade,visibility,minutes_to_reach,"
           "drive_km,use,notes\n";
    for (const Spot& s : spots) {
        std::string facings;
        for (const double facing : s.facings_deg) {
            if (!facings.empty()) facings += ' ';
            facings += shortest(facing);
        }
        out << s.id << "," << quoted(s.name) << "," << shortest(s.place.latitude_deg) << ","
            << shortest(s.place.longitude_deg) << "," << shortest(s.min_height_m) << "," << shortest(s.max_height_m)
            << "," << facings << "," << shortest(s.shade) << "," << shortest(s.visibility) << ","
            << shortest(s.minutes_to_reach) << "," << shortest(s.drive_km) << ","
            << (s.must    ? "must"
                : s.never ? "never"
                          : "may")
            << "," << quoted(s.notes) << "\n";
    }
    return out.str();
}

std::string apiaries_table(const std::vector<Apiary>& apiaries, const Land& land) {
    const LocalPlane plane(land.centre);
    std::ostringstream out;
    out << "id,latitude_deg,longitude_deg,hives\n";
    for (const Apiary& apiary : apiaries) {
        const LatLon at = plane.to_earth(apiary.at);
        out << apiary.id << "," << rounded_degrees(at.latitude_deg) << "," << rounded_degrees(at.longitude_deg) << ","
            << apiary.hives << "\n";
    }
    return out.str();
}

/// This year's swarm season, or the next where it is over.
int season_to_plan(double latitude_deg) {
    const Date today = std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
    constexpr int last_month_north = 7;
    return year_of(today) + (!is_southern({latitude_deg, 0}) && month_of(today) > last_month_north ? 1 : 0);
}

std::string list_of(const std::array<double, 12>& values) {
    std::string text = "[";
    for (const double value : values) {
        if (text.size() > 1) text += ", ";
        text += shortest(value);
    }
    text += ']';
    return text;
}

std::string weather_section(const Starter& starter, const std::string& copied) {
    if (!copied.empty()) return "{\"file\": " + Json(copied).dump() + "}";
    const MonthlyNormals normals = rough_normals(starter.centre.latitude_deg);
    return "{\n    // Rough figures for this latitude, January first. Put the normals of your nearest station here, or "
           "better a\n"
           "    // daily record: \"weather\": {\"file\": \"weather.csv\"}.\n"
           "    \"monthly_normals\": {\n      \"tmax_c\": " +
           list_of(normals.tmax_c) + ",\n      \"tmin_c\": " + list_of(normals.tmin_c) +
           ",\n      \"rain_mm\": " + list_of(normals.rain_mm) + ",\n      \"wet_days\": " + list_of(normals.wet_days) +
           ",\n      \"wind_ms\": 3\n    }\n  }";
}

std::string scenario_text(const Starter& starter, bool hives, const std::string& weather_copy) {
    const TrapKind kind;
    const Keeper keeper;
    std::ostringstream out;
    out << "// A starter scenario. Everything marked as an example or as rough wants your own figures.\n{\n"
        << "  \"format\": " << scenario_format << ",\n  \"name\": " << Json(starter.name).dump() << ",\n"
        << "  \"year\": " << season_to_plan(starter.centre.latitude_deg) << ",\n"
        << "  \"place\": {\"latitude_deg\": " << shortest(starter.centre.latitude_deg)
        << ", \"longitude_deg\": " << shortest(starter.centre.longitude_deg)
        << ", \"radius_m\": " << shortest(starter.radius_m) << ", \"elsewhere\": " << Json(starter.country).dump()
        << "},\n";
    if (!starter.habitats_file.empty()) out << "  \"habitats\": \"habitats.geojson\",\n";
    if (!starter.map_file.empty()) out << "  \"map\": \"land.geojson\",\n";
    if (hives) out << "  \"apiaries\": \"apiaries.csv\",\n";
    out << "  \"spots\": \"spots.csv\",\n  \"trap_kinds\": [\n"
        << "    {\"id\": \"box40\", \"name\": \"Hive body, 40 l (example)\", \"volume_l\": " << shortest(kind.volume_l)
        << ", \"entrance_area_cm2\": " << shortest(kind.entrance_area_cm2) << ", \"cost\": " << shortest(kind.cost)
        << ", \"build_hours\": " << shortest(kind.build_hours) << ", \"frames\": true},\n"
        << "    {\"id\": \"box25\", \"name\": \"Half-size box, 25 l (example)\", \"volume_l\": 25, \"cost\": 25, "
           "\"build_hours\": 1.5, "
           "\"frames\": true, \"mass_kg\": 4}\n  ],\n"
        << "  \"keeper\": {\"currency\": \"EUR\", \"hour_value\": " << shortest(keeper.hour_value)
        << ", \"swarm_value\": " << shortest(keeper.swarm_value) << ", \"late_from\": \""
        << usual_late_from(starter.centre)
        << "\", \"max_traps\": 6},\n  \"weather\": " << weather_section(starter, weather_copy) << "\n}\n";
    return out.str();
}

void put(const fs::path& path, const std::string& text) {
    std::ofstream out(path, std::ios::binary);
    out << text;
    out.close();
    if (!out) throw RunError(path.string() + ": cannot be written");
}

/// Fills `folder`; everything given is read and checked on the way.
void fill(const fs::path& folder, const Starter& starter, const Land& land) {
    if (starter.spots_file.empty()) {
        put(folder / "spots.csv", example_spots(land));
    } else {
        put(folder / "spots.csv", spots_table(read_spots(starter.spots_file, land)));
    }
    if (!starter.hives_file.empty())
        put(folder / "apiaries.csv", apiaries_table(read_apiaries(starter.hives_file, land, starter.hives_each), land));
    if (!starter.habitats_file.empty()) {
        read_habitats(starter.habitats_file, land);
        put(folder / "habitats.geojson", read_text(starter.habitats_file, most_places_bytes));
    }
    if (!starter.map_file.empty()) {
        put(folder / "land.geojson", read_text(starter.map_file, most_places_bytes));
    }
    std::string weather_copy;
    if (!starter.weather_file.empty()) {
        check_whole_year(read_weather_file(starter.weather_file).record, starter.weather_file);
        weather_copy = fs::path(starter.weather_file).filename().string();
        put(folder / weather_copy, read_text(starter.weather_file));
    }
    put(folder / "scenario.json", scenario_text(starter, !starter.hives_file.empty(), weather_copy));
    read_scenario(folder.string());
}

}  // namespace

Surroundings surroundings_of(const std::string& spots_file, const std::string& hives_file) {
    std::vector<LatLon> places;
    if (!spots_file.empty()) places = places_in(spots_file, Wanted::spots);
    if (places.empty() && !hives_file.empty()) places = places_in(hives_file, Wanted::hives);
    if (places.empty()) throw InputError("command line", "neither spots nor hives tell where the place is");
    // About the first place, so that an area across the date line holds together.
    const LocalPlane first(places.front());
    std::vector<Point> points;
    for (const LatLon& place : places) points.push_back(first.to_plane(place));
    const auto [west, east] =
        std::minmax_element(points.begin(), points.end(), [](Point a, Point b) { return a.x_m < b.x_m; });
    const auto [south, north] =
        std::minmax_element(points.begin(), points.end(), [](Point a, Point b) { return a.y_m < b.y_m; });
    constexpr double micro = 1e6;  // about 0.1 m
    LatLon centre = first.to_earth({(west->x_m + east->x_m) / 2, (south->y_m + north->y_m) / 2});
    centre = {std::round(centre.latitude_deg * micro) / micro, std::round(centre.longitude_deg * micro) / micro};
    const LocalPlane plane(centre);
    double farthest_m = 0;
    for (const LatLon& place : places) farthest_m = std::max(farthest_m, distance_m(plane.to_plane(place), {}));
    constexpr double most_m = 28000;
    if (!(farthest_m <= most_m)) {
        throw InputError(spots_file.empty() ? hives_file : spots_file,
                         "its places lie up to " + shortest(std::round(farthest_m / 1000)) +
                             " km from their middle, expected at most 28 km",
                         "is a position mistyped, or are these several places?");
    }
    constexpr double least_m = 1000;
    constexpr double step_m = 100;
    constexpr double room = 1.1;
    return {centre, std::max(least_m, std::ceil(farthest_m * room / step_m) * step_m)};
}

bool has_example_spots(const Scenario& scenario) {
    return std::any_of(scenario.spots.begin(), scenario.spots.end(),
                       [](const Spot& spot) { return spot.name.ends_with("(example)"); });
}

void write_starter(const std::string& folder, const Starter& starter) {
    std::error_code failed;
    const fs::path target = fs::path(folder).has_filename() ? fs::path(folder) : fs::path(folder).parent_path();
    if (fs::exists(target, failed) && !(fs::is_directory(target, failed) && fs::is_empty(target, failed))) {
        throw InputError(folder, "is there already and is not an empty folder", "name a new folder");
    }
    if (std::find(habitat_names.begin(), habitat_names.end(), starter.country) == habitat_names.end()) {
        const std::vector<std::string> known(habitat_names.begin(), habitat_names.end());
        throw InputError("country", "found \"" + starter.country + "\", expected one of " + first_listed(known, 20),
                         did_you_mean(starter.country, known, ""));
    }
    Land land;
    land.centre = starter.centre;
    land.radius_m = starter.radius_m;
    const fs::path unfinished = target.string() + ".unfinished";
    fs::remove_all(unfinished, failed);
    if (!fs::create_directories(unfinished, failed) || failed) {
        throw InputError(folder, "the folder cannot be made", "name one where you may write");
    }
    try {
        fill(unfinished, starter, land);
    } catch (...) {
        fs::remove_all(unfinished, failed);
        throw;
    }
    fs::rename(unfinished, target, failed);
    if (failed) {
        const std::string why = failed.message();
        fs::remove_all(unfinished, failed);
        throw RunError(folder + ": the folder cannot be put in place: " + why);
    }
}

}  // namespace maybough::scenario
