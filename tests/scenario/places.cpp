// Spots, hives and habitats from CSV, GPX and GeoJSON.
#include "scenario/places.hpp"

#include <doctest/doctest.h>

#include "scenario/folder.hpp"

using namespace maybough;

namespace {
Land meadow() {
    Land land;
    land.centre = {47.5, 8.5};
    land.radius_m = 2000;
    return land;
}

std::string refused_spots(const std::string& text) {
    const ScratchFolder folder;
    const std::string file = folder.put("spots.csv", text);
    const std::string message = refusal([&] { read_spots(file, meadow()); });
    return message.empty() ? message : message.substr(folder.path().size() + 1);
}
}  // namespace

TEST_CASE("spots are read from CSV with their units and words") {
    const ScratchFolder folder;
    const auto spots = read_spots(
        folder.put("s.csv",
                   "id;latitude_deg;longitude_deg;max_height_ft;min_height_ft;facings_deg;drive_mi;use;notes\n"
                   "oak;47,501;8,501;20;5;S E 90;2;must;near the pond\n"
                   "elm;47.499;8.5;;;;;;\n"),
        meadow());
    REQUIRE(spots.size() == 2);
    CHECK(spots[0].max_height_m == doctest::Approx(6.096));
    CHECK(spots[0].min_height_m == doctest::Approx(1.524));
    CHECK(spots[0].facings_deg == std::vector<double>{90, 180});
    CHECK(spots[0].drive_km == doctest::Approx(3.218688));
    CHECK(spots[0].must);
    CHECK(spots[0].at.y_m == doctest::Approx(111.2).epsilon(0.01));
    CHECK(spots[1].max_height_m == Spot{}.max_height_m);
    CHECK(spots[1].facings_deg.empty());
    CHECK_FALSE(spots[1].must);
}

TEST_CASE("the same spots come from CSV, GPX and GeoJSON") {
    const ScratchFolder folder;
    const auto csv =
        read_spots(folder.put("s.csv", "id,name,latitude_deg,longitude_deg\nOld-oak,Old oak,47.501,8.501\n"), meadow());
    const auto gpx = read_spots(folder.put("s.gpx", R"(<?xml version="1.0"?>
<gpx version="1.1" creator="hand" xmlns="http://www.topografix.com/GPX/1/1">
  <wpt lat="47.501" lon="8.501"><ele>440</ele><name>Old oak</name><desc>By the gate</desc></wpt>
</gpx>)"),
                                meadow());
    const auto json = read_spots(folder.put("s.geojson", R"({"type": "FeatureCollection", "features": [
  {"type": "Feature", "properties": {"id": "Old-oak", "name": "Old oak"},
   "geometry": {"type": "Point", "coordinates": [8.501, 47.501, 440]}}]})"),
                                 meadow());
    for (const auto* other : {&gpx, &json}) {
        REQUIRE(other->size() == 1);
        CHECK(other->front().id == csv.front().id);
        CHECK(other->front().name == csv.front().name);
        CHECK(other->front().at == csv.front().at);
    }
}

TEST_CASE("spots that cannot be are refused with their line") {
    const std::string head = "id,latitude_deg,longitude_deg,min_height_m,max_height_m,use\n";
    CHECK(says(refused_spots(head + "a,47.5,8.5,1,3,\na,47.501,8.5,1,3,\n"),
               "spots.csv:3: the id \"a\" stands already at"));
    CHECK(says(refused_spots(head + "a,47.6,8.5,1,3,\n"), "spots.csv:2: spot a: lies 11"));
    CHECK(says(refused_spots(head + "a,8.5,47.5,1,3,\n"), "look swapped"));
    CHECK(says(refused_spots(head + "a,47.5,8.5,1,3,\nb,47.50001,8.50001,1,3,\n"), "same square"));
    CHECK(says(refused_spots(head + "a,47.5,8.5,4,3,\n"), "spots.csv:2: found min_height 4"));
    CHECK(says(refused_spots(head + "a,47.5,8.5,1,3,maybe\n"), "spots.csv:2: use: found \"maybe\""));
    CHECK(says(refused_spots(head + "a,47.5,nan,1,3,\n"), "spots.csv:2: longitude_deg: found \"nan\""));
    CHECK(says(refused_spots(head + "a,,8.5,1,3,\n"), "spots.csv:2: latitude_deg is missing"));
    CHECK(refused_spots(head + ",47.5,8.5,1,3,\n").empty());  // an id is made
    CHECK(says(refused_spots(head + "=1+1,47.5,8.5,1,3,\n"), "spots.csv:2: found the id \"=1+1\""));
    CHECK(says(refused_spots(head + "a b,47.5,8.5,1,3,\n"), "spots.csv:2: found \"a b\", expected an id"));
    CHECK(says(refused_spots("id,latitude_deg,longitude,shde\na,47.5,8.5,1\n"), "did you mean shade"));
    CHECK(says(refused_spots("id,latitude_deg\na,1\n"), "\"longitude_deg\" is missing"));
    CHECK(says(refused_spots("id,latitude_deg,longitude_deg,min_height\na,47.5,8.5,2\n"), "min_height"));
}

TEST_CASE("habitats keep their holes, and faults name their feature") {
    const ScratchFolder folder;
    const std::string ring = "[8.49,47.49],[8.51,47.49],[8.51,47.51],[8.49,47.51],[8.49,47.49]";
    const std::string hole = "[8.495,47.495],[8.505,47.495],[8.505,47.505],[8.495,47.505],[8.495,47.495]";
    const auto collection = [&](const std::string& habitat, const std::string& rings) {
        return R"({"type":"FeatureCollection","features":[{"type":"Feature","properties":{"habitat":")" + habitat +
               R"(","name":"Wood"},"geometry":{"type":"Polygon","coordinates":[)" + rings + "]}}]}";
    };
    Land land = meadow();
    land.elsewhere = Habitat::town;
    land.patches =
        read_habitats(folder.put("h.geojson", collection("woodland", "[" + ring + "],[" + hole + "]")), land);
    REQUIRE(land.patches.size() == 1);
    CHECK(habitat_at(land, {0, 0}) == Habitat::town);        // in the hole
    CHECK(habitat_at(land, {600, 0}) == Habitat::woodland);  // between hole and rim
    CHECK(habitat_at(land, {0, -800}) == Habitat::woodland);
    CHECK(habitat_at(land, {0, 900}) == Habitat::woodland);
    CHECK(habitat_at(land, {1500, 0}) == Habitat::town);  // outside

    const auto refused = [&](const std::string& text) {
        return refusal([&] { read_habitats(folder.put("h.geojson", text), land); });
    };
    CHECK(says(refused(collection("wodland", "[" + ring + "]")), "/features/0/properties/habitat: found \"wodland\""));
    CHECK(says(refused(collection("wodland", "[" + ring + "]")), "did you mean woodland"));
    CHECK(says(refused(collection("town", "[[8.49,47.49],[8.51,47.49],[8.51,47.51],[8.49,47.51]]")), "not closed"));
    CHECK(says(refused(collection("town", "[[8.49,47.49],[8.51,47.49],[8.49,47.49]]")), "at least 4"));
    CHECK(says(refused(collection("town", "[[47.49,8.49],[47.49,8.51],[47.51,8.51],[47.49,8.49]]")), "swapped"));
    CHECK(says(
        refused(
            "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{\"habitat\":\"town\"},"
            "\"geometry\":{\"type\":\"Point\",\"coordinates\":[8.5,47.5]}}]}"),
        "/features/0/geometry: found a Point"));
}

TEST_CASE("waypoints that are no GPX are refused") {
    const ScratchFolder folder;
    const auto refused = [&](const std::string& text) {
        return refusal([&] { read_spots(folder.put("s.gpx", text), meadow()); });
    };
    CHECK(says(refused("<gpx version=\"1.1\"><wpt lat=\"47.5\" lon=\"8.5\">"), "not valid XML"));
    CHECK(says(refused("<html></html>"), "expected GPX 1.1"));
    CHECK(says(refused("<gpx version=\"1.1\"></gpx>"), "no waypoint"));
    CHECK(says(refused("<gpx version=\"1.1\">\n<wpt lat=\"47.5\" lon=\"x\"><name>a</name></wpt></gpx>"),
               "s.gpx:2: longitude_deg"));
    CHECK(refused("<gpx version=\"1.1\">\n<wpt lat=\"47.5\" lon=\"8.5\"></wpt></gpx>").empty());
}

TEST_CASE("a waypoint's description is no name; waypoints without a name or of one name are numbered") {
    const ScratchFolder folder;
    const auto spots = read_spots(folder.put("s.gpx", R"(<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="phone" xmlns="http://www.topografix.com/GPX/1/1">
<wpt lat="47.5" lon="8.5"><name>Barn</name><desc>Ask Anna first</desc></wpt>
<wpt lat="47.501" lon="8.5"><name>Barn</name></wpt>
<wpt lat="47.502" lon="8.5"></wpt>
<wpt lat="47.503" lon="8.5"></wpt>
<wpt lat="47.504" lon="8.5"><name>2 Old oaks</name></wpt></gpx>)"),
                                  meadow());
    REQUIRE(spots.size() == 5);
    const std::vector<std::string> ids{"Barn", "Barn-2", "spot-3", "spot-4", "2-Old-oaks"};
    for (std::size_t i = 0; i < ids.size(); ++i) CHECK(spots[i].id == ids[i]);
    CHECK(spots[0].name == "Barn");
    CHECK(spots[4].name == "2 Old oaks");
}

TEST_CASE("names in Windows-1252 are converted; other old encodings are refused rather than filled with wrong signs") {
    const ScratchFolder folder;
    const auto names = [&](const std::string& file, const std::string& text) {
        return read_spots(folder.put(file, text), meadow()).at(0).name;
    };
    const std::string columns = "name,lat,lon\n";
    const auto csv = [&](const std::string& name) { return columns + name + ",47.5,8.5\n"; };
    const std::string declared = "<?xml version=\"1.0\" encoding=\"";
    const auto gpx = [&](const std::string& encoding, const std::string& name) {
        return declared + encoding + "\"?>\n<gpx version=\"1.1\"><wpt lat=\"47.5\" lon=\"8.5\"><name>" + name +
               "</name></wpt></gpx>";
    };
    // M u-umlaut hle: FC in Windows-1252, C3 BC in UTF-8 (Unicode, mapping CP1252).
    const std::string mill = "M\xC3\xBChle";
    CHECK(names("u.csv", csv(mill)) == mill);
    CHECK(names("w.csv", csv("M\xFChle")) == mill);
    CHECK(names("w.csv", csv("\x84M\xFChle\x93 \x96 Tor")) == "\xE2\x80\x9E" + mill + "\xE2\x80\x9C \xE2\x80\x93 Tor");
    CHECK(names("w.gpx", gpx("ISO-8859-1", "M\xFChle")) == mill);
    CHECK(names("u.gpx", gpx("ISO-8859-1", mill)) == mill);  // says so, and is UTF-8 all the same
    CHECK(names("w.geojson", R"({"type":"Feature","properties":{"name":"M)"
                             "\xFC"
                             R"(hle"},"geometry":{"type":"Point","coordinates":[8.5,47.5]}})") == mill);

    const auto refused = [&](const std::string& file, const std::string& text) {
        return refusal([&] { read_spots(folder.put(file, text), meadow()); });
    };
    CHECK(says(refused("d.csv", csv("M\x81hle")), "d.csv:2: found text neither in UTF-8 nor in Windows-1252"));
    CHECK(says(refused("d.csv", csv("B\x84r")), "in UTF-8"));    // a-umlaut of DOS (code page 850)
    CHECK(says(refused("m.csv", csv("M\x9Fhle")), "in UTF-8"));  // u-umlaut of old Macs
    CHECK(says(refused("e.gpx", gpx("ISO-8859-2", "Dv\xF9r")), "found text in the encoding iso-8859-2"));
}
