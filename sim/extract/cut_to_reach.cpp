// Geometry of an extract: crossing rings mended, areas cut to reach and simplified.
#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/multi_linestring.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <cmath>
#include <numbers>
#include <optional>

#include "extract/extract.hpp"

namespace maybough::extract {

namespace {
namespace bg = boost::geometry;
using Spot2 = bg::model::d2::point_xy<double>;
using Polygon = bg::model::polygon<Spot2, false, false>;  // counter-clockwise, open
using Polygons = bg::model::multi_polygon<Polygon>;
using Path = bg::model::linestring<Spot2>;
using Paths = bg::model::multi_linestring<Path>;

Polygon polygon_of(const Outline& outline) {
    Polygon polygon;
    for (const Point p : outline.outer) polygon.outer().emplace_back(p.x_m, p.y_m);
    for (const Ring& hole : outline.holes) {
        polygon.inners().emplace_back();
        for (const Point p : hole) polygon.inners().back().emplace_back(p.x_m, p.y_m);
    }
    bg::correct(polygon);
    return polygon;
}

template <class Range>
Ring ring_of(const Range& range) {
    Ring ring;
    for (const Spot2& p : range) ring.push_back({p.x(), p.y()});
    return ring;
}

Outline outline_of(const Polygon& polygon) {
    Outline outline{ring_of(polygon.outer()), {}};
    for (const auto& inner : polygon.inners()) outline.holes.push_back(ring_of(inner));
    return outline;
}

Polygon disc(double radius_m) {
    constexpr int corners = 96;
    Polygon polygon;
    for (int i = 0; i < corners; ++i) {
        const double turn = 2 * std::numbers::pi * i / corners;
        polygon.outer().emplace_back(radius_m * std::cos(turn), radius_m * std::sin(turn));
    }
    return polygon;
}

/// Where two segments cross inside both; nothing where they only touch or run alongside.
std::optional<Point> crossing(Point a, Point b, Point c, Point d) {
    const double rx = b.x_m - a.x_m;
    const double ry = b.y_m - a.y_m;
    const double sx = d.x_m - c.x_m;
    const double sy = d.y_m - c.y_m;
    const double cross = rx * sy - ry * sx;
    if (cross == 0) return {};
    const double t = ((c.x_m - a.x_m) * sy - (c.y_m - a.y_m) * sx) / cross;
    const double u = ((c.x_m - a.x_m) * ry - (c.y_m - a.y_m) * rx) / cross;
    if (!(t > 0 && t < 1 && u > 0 && u < 1)) return {};
    return Point{a.x_m + t * rx, a.y_m + t * ry};
}

/// Splits a ring at its first crossing or doubled corner; false where it has none.
bool split(const Ring& ring, Ring& first, Ring& second) {
    const std::size_t n = ring.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = i + 2; j < n; ++j) {
            const bool doubled = ring[i] == ring[j];
            const bool neighbours = i == 0 && j + 1 == n;
            std::optional<Point> at;
            if (!doubled && !neighbours) at = crossing(ring[i], ring[i + 1], ring[j], ring[(j + 1) % n]);
            if (!doubled && !at) continue;
            const auto begin = ring.begin();
            const auto from = begin + static_cast<std::ptrdiff_t>(i) + 1;
            const auto to = begin + static_cast<std::ptrdiff_t>(j) + 1;
            second.assign(from, to);
            if (at) second.push_back(*at);
            first.assign(begin, from);
            if (at) first.push_back(*at);
            first.insert(first.end(), to, ring.end());
            return true;
        }
    }
    return false;
}

Polygons cut(const Area& area, const Polygon& reach) {
    Polygons kept;
    for (const Outline& outline : area.outlines) {
        const Polygon polygon = polygon_of(outline);
        Polygons part;
        if (!bg::is_valid(polygon)) continue;
        bg::intersection(polygon, reach, part);
        kept.insert(kept.end(), part.begin(), part.end());
    }
    return kept;
}

void simplify(Area& area, const Polygons& kept, double tolerance_m) {
    area.outlines.clear();
    for (const Polygon& polygon : kept) {
        Polygon simple;
        bg::simplify(polygon, simple, tolerance_m);
        const bool good = simple.outer().size() >= 3 && bg::is_valid(simple);
        const Polygon& chosen = good ? simple : polygon;
        area.kept_m2 += bg::area(chosen);
        area.outlines.push_back(outline_of(chosen));
    }
}

std::vector<Line> cut_line(const Line& line, const Polygon& reach, double tolerance_m) {
    Path path;
    for (const Point p : line.points) path.emplace_back(p.x_m, p.y_m);
    Path simple;
    bg::simplify(path, simple, tolerance_m);
    Paths parts;
    bg::intersection(simple, reach, parts);
    std::vector<Line> lines;
    for (const Path& part : parts) lines.push_back({line.becomes, line.kind, line.name, ring_of(part)});
    return lines;
}

}  // namespace

double area_m2(const Outline& outline) {
    return bg::area(polygon_of(outline));
}

std::vector<Outline> mended_outlines(const Ring& ring) {
    constexpr std::size_t most_corners = 20000;  // the search for crossings takes the square of it
    if (ring.size() > most_corners) return {};
    std::vector<Ring> open{ring};
    Polygons whole;
    constexpr std::size_t most_loops = 1000;
    std::size_t loops = 0;
    while (!open.empty() && loops < most_loops) {
        const Ring next = std::move(open.back());
        open.pop_back();
        Ring first;
        Ring second;
        if (split(next, first, second)) {
            open.push_back(std::move(first));
            open.push_back(std::move(second));
            continue;
        }
        ++loops;
        if (next.size() < 3) continue;
        const Polygon loop = polygon_of({next, {}});
        if (!bg::is_valid(loop)) continue;
        Polygons both;
        bg::union_(whole, loop, both);
        whole = std::move(both);
    }
    std::vector<Outline> outlines;
    for (const Polygon& polygon : whole) outlines.push_back(outline_of(polygon));
    return outlines;
}

void cut_to_reach(Drawn& drawn, const LandRequest& asked) {
    const Polygon wide = disc(asked.radius_m + asked.margin_m);
    const Polygon near = disc(asked.radius_m);
    for (Area& area : drawn.areas) {
        const bool habitat = std::find(habitat_names.begin(), habitat_names.end(), area.becomes) != habitat_names.end();
        simplify(area, cut(area, habitat ? wide : near), habitat ? asked.tolerance_m : asked.tolerance_m / 3);
    }
    std::stable_sort(drawn.areas.begin(), drawn.areas.end(),
                     [](const Area& a, const Area& b) { return a.kept_m2 > b.kept_m2; });
    std::vector<Line> lines;
    for (const Line& line : drawn.lines) {
        for (Line& part : cut_line(line, near, asked.tolerance_m)) lines.push_back(std::move(part));
    }
    drawn.lines = std::move(lines);
    const auto far = [&](const Mark& mark) { return distance_m(mark.at, {}) > asked.radius_m; };
    drawn.marks.erase(std::remove_if(drawn.marks.begin(), drawn.marks.end(), far), drawn.marks.end());
}

}  // namespace maybough::extract
