// An extract read: outlines with holes, rings that cross themselves, clipping, simplification, the table of tags.
#include "extract/extract.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <numbers>
#include <string>

using namespace maybough;

namespace {

// Metres in a degree at 47 N on WGS 84 (a 6378137 m, e2 0.00669437999): meridian radius a(1-e2)/w^3 and that across
// a/w, w2 = 1 - e2 sin2(47).
constexpr double north_deg = 1 / 111170.84;
constexpr double east_deg = 1 / 76056.00;

/// Nodes at metres from 47 N 8 E and ways over them, as OSM XML 0.6.
class Sketch {
  public:
    std::string node(double east_m, double north_m, const std::string& tags = "") {
        const std::string id = std::to_string(++nodes_);
        const double lat = 47 + north_m * north_deg;
        const double lon = 8 + east_m * east_deg;
        text_ += "<node id=\"" + id + "\" version=\"1\" lat=\"" + std::to_string(lat) + "0\" lon=\"" +
                 std::to_string(lon) + "0\">" + tags + "</node>\n";
        return id;
    }
    static std::string tag(const std::string& key, const std::string& value) {
        return "<tag k=\"" + key + "\" v=\"" + value + "\"/>";
    }
    void way(const std::vector<std::pair<double, double>>& corners, const std::string& tags, bool close) {
        std::string refs;
        std::string first;
        for (const auto& [east_m, north_m] : corners) {
            const std::string id = node(east_m, north_m);
            if (first.empty()) first = id;
            refs += "<nd ref=\"" + id + "\"/>";
        }
        if (close) refs += "<nd ref=\"" + first + "\"/>";
        ways_ += "<way id=\"" + std::to_string(++count_) + "\" version=\"1\">" + refs + tags + "</way>\n";
    }
    void relation(const std::string& members, const std::string& tags) {
        relations_ +=
            "<relation id=\"1\" version=\"1\">" + members + tag("type", "multipolygon") + tags + "</relation>\n";
    }
    std::string put(const std::string& name) const {
        const auto path = std::filesystem::temp_directory_path() / name;
        std::ofstream(path) << "<?xml version=\"1.0\"?><osm version=\"0.6\">\n"
                            << text_ << ways_ << relations_ << "</osm>\n";
        return path.string();
    }

  private:
    int nodes_ = 0;
    int count_ = 0;
    std::string text_;
    std::string ways_;
    std::string relations_;
};

LandRequest asked_of(const std::string& file) {
    LandRequest asked;
    asked.file = file;
    asked.centre = {47, 8};
    asked.radius_m = 1000;
    asked.margin_m = 0;
    asked.tolerance_m = 0;
    asked.rules = usual_tag_rules();
    return asked;
}
}  // namespace

TEST_CASE("a wood with a pond cut out, by a relation") {
    Sketch sketch;
    sketch.way({{-200, -200}, {200, -200}, {200, 200}, {-200, 200}}, "", true);
    sketch.way({{-50, -50}, {50, -50}, {50, 50}, {-50, 50}}, Sketch::tag("natural", "water"), true);
    sketch.relation("<member type=\"way\" ref=\"1\" role=\"outer\"/><member type=\"way\" ref=\"2\" role=\"inner\"/>",
                    Sketch::tag("natural", "wood"));
    const LandRequest asked = asked_of(sketch.put("maybough-wood.osm"));
    Drawn drawn = read_drawn(asked);
    cut_to_reach(drawn, asked);
    REQUIRE(drawn.areas.size() == 2);
    CHECK(drawn.areas[0].becomes == "woodland");  // the larger first, so that the smaller lies over it
    CHECK(drawn.areas[0].drawn_m2 == doctest::Approx(400 * 400 - 100 * 100).epsilon(0.002));  // sides by construction
    CHECK(drawn.areas[1].becomes == "water");
    CHECK(drawn.areas[1].kept_m2 == doctest::Approx(100 * 100).epsilon(0.01));
}

TEST_CASE("a ring that crosses itself is read as its two loops, and told") {
    Sketch sketch;
    sketch.way({{0, 0}, {200, 200}, {200, 0}, {0, 200}}, Sketch::tag("landuse", "orchard"), true);
    const LandRequest asked = asked_of(sketch.put("maybough-bow.osm"));
    const Drawn drawn = read_drawn(asked);
    REQUIRE(drawn.areas.size() == 1);
    REQUIRE(drawn.mended.size() == 1);
    CHECK(drawn.areas[0].outlines.size() == 2);
    CHECK(drawn.areas[0].drawn_m2 == doctest::Approx(2 * 100 * 200 / 2.0).epsilon(0.01));  // two triangles
}

TEST_CASE("what lies beyond the radius is cut off, and a margin keeps more of habitats") {
    Sketch sketch;
    sketch.way({{-5000, -5000}, {5000, -5000}, {5000, 5000}, {-5000, 5000}}, Sketch::tag("landuse", "farmland"), true);
    LandRequest asked = asked_of(sketch.put("maybough-far.osm"));
    asked.margin_m = 500;
    Drawn drawn = read_drawn(asked);
    cut_to_reach(drawn, asked);
    REQUIRE(drawn.areas.size() == 1);
    CHECK(drawn.areas[0].kept_m2 == doctest::Approx(std::numbers::pi * 1500 * 1500).epsilon(0.002));  // a disc
}

TEST_CASE("lines, trees, churches and names find their places; users change the table") {
    Sketch sketch;
    sketch.node(10, 20, Sketch::tag("natural", "tree"));
    sketch.node(30, 20, Sketch::tag("place", "village") + Sketch::tag("name", "Alderwick"));
    sketch.way({{-100, 0}, {0, 0}, {100, 0}}, Sketch::tag("highway", "residential") + Sketch::tag("name", "Osier Row"),
               false);
    sketch.way({{300, 300}, {320, 300}, {320, 310}, {300, 310}}, Sketch::tag("building", "church"), true);
    sketch.way({{-500, -500}, {-400, -500}, {-400, -400}, {-500, -400}}, Sketch::tag("natural", "heath"), true);
    LandRequest asked = asked_of(sketch.put("maybough-things.osm"));
    Drawn drawn = read_drawn(asked);
    cut_to_reach(drawn, asked);
    CHECK(drawn.lines.size() == 1);
    CHECK(drawn.lines[0].name == "Osier Row");
    CHECK(drawn.marks.size() == 2);
    const std::string proposals = proposals_csv(drawn, asked);
    CHECK(proposals.find("church-1") != std::string::npos);
    CHECK(proposals.find("tree-1") != std::string::npos);
    for (const std::string& text :
         {habitats_geojson(drawn, asked), map_geojson(drawn, asked), proposals, account(drawn, asked)}) {
        CHECK(text.find(credit) != std::string::npos);  // the licence asks for it
    }
    asked.rules = {{"natural", "heath", "woodland"}};
    const Drawn other = read_drawn(asked);
    REQUIRE(other.areas.size() == 1);
    CHECK(other.areas[0].becomes == "woodland");
}

TEST_CASE("files that are no extract are refused in one line") {
    const auto path = std::filesystem::temp_directory_path() / "maybough-none.osm";
    for (const char* text : {"", "not xml", "<osm version=\"0.6\"><node", "<html/>"}) {
        std::ofstream(path) << text;
        std::string message;
        try {
            read_drawn(asked_of(path.string()));
        } catch (const InputError& e) {
            message = e.what();
        }
        CAPTURE(text);
        CHECK(message.find("maybough-none.osm: cannot be read") != std::string::npos);
        CHECK(message.find('\n') == std::string::npos);
    }
}
