// Extract: what a piece of OpenStreetMap says of the land: habitats, the map's lines and names, proposals for spots.
#pragma once

#include <string>
#include <vector>

#include "landscape/landscape.hpp"
#include "scenario/scenario.hpp"

namespace maybough::extract {

/// What the licence asks to be said on every page and file made from such data.
inline constexpr const char* credit = "(c) OpenStreetMap contributors, ODbL 1.0";

/// A thing with this tag becomes a habitat ("woodland" ...), "building", "street", "stream", "tree", "church", "barn",
/// or "nothing". `value` "*" means any. Of several rules that fit, the first counts.
struct TagRule {
    std::string key;
    std::string value;
    std::string becomes;
};
const std::vector<TagRule>& usual_tag_rules();
/// Rules from a CSV file with the columns key, value, becomes. Throws InputError with file and line.
std::vector<TagRule> read_tag_rules(const std::string& path);
std::string tag_rules_csv(const std::vector<TagRule>& rules);

using Ring = std::vector<Point>;

/// One outline on the plane, its holes beside it; rings open (first point not repeated).
struct Outline {
    Ring outer;
    std::vector<Ring> holes;
};

/// An area of a class; `outlines` is empty where nothing of it lies within reach.
struct Area {
    std::string becomes;
    std::string name;
    std::string built;  ///< start_date as written, of buildings
    std::vector<Outline> outlines;
    double drawn_m2 = 0;  ///< as drawn in the extract
    double kept_m2 = 0;   ///< within reach, simplified
};

struct Line {
    std::string becomes;  ///< street or stream
    std::string kind;     ///< the tag's value
    std::string name;
    Ring points;
};

struct Mark {
    std::string becomes;  ///< tree, church, barn, or name
    std::string kind;
    std::string name;
    Point at;
};

struct Drawn {
    std::vector<Area> areas;
    std::vector<Line> lines;
    std::vector<Mark> marks;
    std::vector<std::string> mended;  ///< one line for each outline that crossed itself
    std::vector<std::string> left;    ///< one line for each that could not be read
};

struct LandRequest {
    std::string file;
    LatLon centre;
    double radius_m = 3000;
    double margin_m = 3000;  ///< habitats are kept this far beyond the radius
    double tolerance_m = 3;  ///< outlines and lines move by no more than this when simplified
    std::vector<TagRule> rules;
};

/// Reads an extract in XML or PBF, plain or packed (.osm, .osm.gz, .osm.bz2, .osm.pbf). Throws InputError.
Drawn read_drawn(const LandRequest& asked);

/// Cuts everything to its reach and simplifies it; larger areas come before smaller, which lie over them.
void cut_to_reach(Drawn& drawn, const LandRequest& asked);

/// Area in square metres; a ring that crosses itself counts each loop once.
double area_m2(const Outline& outline);
/// The simple outlines of a ring that crosses or touches itself, by Boost.Geometry's union of its loops.
std::vector<Outline> mended_outlines(const Ring& ring);

// What is written: each a whole file's text.
std::string habitats_geojson(const Drawn& drawn, const LandRequest& asked);
std::string map_geojson(const Drawn& drawn, const LandRequest& asked);
std::string proposals_csv(const Drawn& drawn, const LandRequest& asked);
std::string cavity_beliefs(const Drawn& drawn);  ///< an overlay; empty where the map shows too little
std::string account(const Drawn& drawn, const LandRequest& asked);

}  // namespace maybough::extract

namespace maybough {
using namespace extract;  // so that rooms to the right need no prefix
}
