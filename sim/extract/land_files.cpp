// The files that `land` writes: habitats, the map, proposals for spots, beliefs about cavities, an account.
#include <algorithm>
#include <cmath>
#include <iomanip>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "extract/extract.hpp"

namespace maybough::extract {

namespace {
using Json = nlohmann::json;

bool is_habitat(const std::string& word) {
    return std::find(habitat_names.begin(), habitat_names.end(), word) != habitat_names.end();
}

Json position(const LocalPlane& plane, Point p) {
    constexpr double micro = 1e6;  // about 0.1 m
    const LatLon at = plane.to_earth(p);
    return Json::array({std::round(at.longitude_deg * micro) / micro, std::round(at.latitude_deg * micro) / micro});
}

Json ring_json(const LocalPlane& plane, const Ring& ring) {
    Json list = Json::array();
    for (const Point p : ring) list.push_back(position(plane, p));
    if (!ring.empty()) list.push_back(list.front());
    return list;
}

Json polygons(const LocalPlane& plane, const Area& area) {
    Json parts = Json::array();
    for (const Outline& outline : area.outlines) {
        Json rings = Json::array({ring_json(plane, outline.outer)});
        for (const Ring& hole : outline.holes) rings.push_back(ring_json(plane, hole));
        parts.push_back(std::move(rings));
    }
    return {{"type", "MultiPolygon"}, {"coordinates", std::move(parts)}};
}

/// A feature collection, one feature a line, with the credit in front.
class Collection {
  public:
    void add(Json properties, Json geometry) {
        text_ +=
            (text_.empty() ? "" : ",\n") +
            Json{{"type", "Feature"}, {"properties", std::move(properties)}, {"geometry", std::move(geometry)}}.dump(
                -1, ' ', false, Json::error_handler_t::replace);
    }
    std::string text() const {
        return "{\"type\": \"FeatureCollection\", \"attribution\": " + Json(credit).dump() + ", \"features\": [\n" +
               text_ + "\n]}\n";
    }

  private:
    std::string text_;
};

std::string quoted(const std::string& cell) {
    if (cell.find_first_of(",\"\n") == std::string::npos) return cell;
    std::string text = "\"";
    for (const char c : cell) text.append(c == '"' ? 2 : 1, c);
    return text + '"';
}

Point middle_of(const Outline& outline) {
    Point sum{};
    for (const Point p : outline.outer) sum = {sum.x_m + p.x_m, sum.y_m + p.y_m};
    const auto n = static_cast<double>(outline.outer.size());
    return {sum.x_m / n, sum.y_m / n};
}

/// The year in front of a start_date, 0 where there is none.
int year_in(const std::string& built) {
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    if (built.size() < 4 || !std::all_of(built.begin(), built.begin() + 4, digit)) return 0;
    return std::stoi(built.substr(0, 4));
}

std::string fixed(double value, int digits) {
    std::ostringstream out;
    out << std::fixed << std::setprecision(digits) << value;
    return out.str();
}
}  // namespace

std::string habitats_geojson(const Drawn& drawn, const LandRequest& asked) {
    const LocalPlane plane(asked.centre);
    Collection out;
    for (const Area& area : drawn.areas) {
        if (!is_habitat(area.becomes) || area.outlines.empty()) continue;
        Json properties{{"habitat", area.becomes}};
        if (!area.name.empty()) properties["name"] = area.name;
        out.add(std::move(properties), polygons(plane, area));
    }
    return out.text();
}

std::string map_geojson(const Drawn& drawn, const LandRequest& asked) {
    const LocalPlane plane(asked.centre);
    Collection out;
    for (const Area& area : drawn.areas) {
        if (area.outlines.empty() || is_habitat(area.becomes)) continue;
        out.add({{"map", "building"}, {"kind", area.becomes}, {"name", area.name}}, polygons(plane, area));
    }
    for (const Line& line : drawn.lines) {
        Json path = Json::array();
        for (const Point p : line.points) path.push_back(position(plane, p));
        out.add({{"map", line.becomes}, {"kind", line.kind}, {"name", line.name}},
                {{"type", "LineString"}, {"coordinates", std::move(path)}});
    }
    for (const Mark& mark : drawn.marks) {
        out.add({{"map", mark.becomes}, {"kind", mark.kind}, {"name", mark.name}},
                {{"type", "Point"}, {"coordinates", position(plane, mark.at)}});
    }
    return out.text();
}

std::string proposals_csv(const Drawn& drawn, const LandRequest& asked) {
    const LocalPlane plane(asked.centre);
    std::vector<Mark> marks;
    for (const Mark& mark : drawn.marks) {
        if (mark.becomes != "name") marks.push_back(mark);
    }
    for (const Area& area : drawn.areas) {
        if ((area.becomes != "church" && area.becomes != "barn") || area.outlines.empty()) continue;
        marks.push_back({area.becomes, "", area.name, middle_of(area.outlines.front())});
    }
    // Named ones first, then the nearer; one in each square of 100 m is enough to propose.
    std::stable_sort(marks.begin(), marks.end(), [](const Mark& a, const Mark& b) {
        if (a.name.empty() != b.name.empty()) return b.name.empty();
        return distance_m(a.at, {}) < distance_m(b.at, {});
    });
    constexpr double square_m = 100;
    constexpr int most = 200;
    std::set<std::pair<long, long>> squares;
    std::map<std::string, int> numbers;
    std::string text = "id,name,latitude_deg,longitude_deg,min_height_m,max_height_m,use,notes\n";
    int told = 0;
    for (const Mark& mark : marks) {
        if (!squares.emplace(std::lround(mark.at.x_m / square_m), std::lround(mark.at.y_m / square_m)).second) continue;
        if (++told > most) break;
        const std::string id = mark.becomes + "-" + std::to_string(++numbers[mark.becomes]);
        const Json at = position(plane, mark.at);
        text += id + "," + quoted(mark.name.empty() ? id : mark.name) + "," + at[1].dump() + "," + at[0].dump() +
                (mark.becomes == "tree" ? ",2,4" : ",2,5") + ",may,\"proposal from the map: ask the owner first; " +
                credit + "\"\n";
    }
    return text;
}

// Assumed, no published source: one building in 50 has a hollow open to bees where it was built before 1945, one in 200
// where built since, one in 100 where nobody says; one single tree in 100. How far off
// that may be is what cavity_density_factor stands for, which a plan draws anew for each belief.
std::string cavity_beliefs(const Drawn& drawn) {
    constexpr int old_until = 1945;
    double hollows = 0;
    double settled_m2 = 0;
    for (const Area& area : drawn.areas) {
        if (area.outlines.empty()) continue;
        if (area.becomes == "suburb" || area.becomes == "town") settled_m2 += area.kept_m2;
        if (is_habitat(area.becomes)) continue;
        const int year = year_in(area.built);
        hollows += year == 0 ? 1.0 / 100 : year < old_until ? 1.0 / 50 : 1.0 / 200;
    }
    const auto trees =
        std::count_if(drawn.marks.begin(), drawn.marks.end(), [](const Mark& mark) { return mark.becomes == "tree"; });
    hollows += static_cast<double>(trees) / 100;
    constexpr double square_km = 1e6;
    constexpr double least_km2 = 0.05;
    if (settled_m2 < least_km2 * square_km || hollows <= 0) return {};
    constexpr double most_per_km2 = 49;
    const double median = std::clamp(hollows / (settled_m2 / square_km), 0.1, most_per_km2);
    const Json text{
        {"format", 1},
        {"name", "Cavities by buildings and single trees"},
        {"description", std::string("From the map: ") + credit},
        {"parameters", {{"landscape.cavity_suburb_per_km2", median}, {"landscape.cavity_town_per_km2", median}}}};
    return text.dump(2) + "\n";
}

std::string account(const Drawn& drawn, const LandRequest& asked) {
    struct Sum {
        int areas = 0;
        double drawn_m2 = 0;
        double kept_m2 = 0;
    };
    std::map<std::string, Sum> sums;
    for (const Area& area : drawn.areas) {
        Sum& sum = sums[area.becomes];
        ++sum.areas;
        sum.drawn_m2 += area.drawn_m2;
        sum.kept_m2 += area.kept_m2;
    }
    constexpr double hectare = 1e4;
    std::string text = "class       areas    ha drawn     ha kept\n";
    for (const auto& [name, sum] : sums) {
        std::ostringstream line;
        line << std::left << std::setw(10) << name << std::right << std::setw(7) << sum.areas << std::setw(12)
             << fixed(sum.drawn_m2 / hectare, 4) << std::setw(12) << fixed(sum.kept_m2 / hectare, 4) << "\n";
        text += line.str();
    }
    text += "Kept: within " + fixed(asked.radius_m + asked.margin_m, 0) + " m (buildings " + fixed(asked.radius_m, 0) +
            " m), simplified to " + fixed(asked.tolerance_m, 1) + " m. Smaller areas lie over larger ones.\n";
    for (const std::string& line : drawn.mended) text += "Mended: " + line + "\n";
    for (const std::string& line : drawn.left) text += "Left out: " + line + "\n";
    return text + "Data " + credit + "\n";
}

}  // namespace maybough::extract
