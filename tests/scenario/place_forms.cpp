// A table of lists of places as people have them: faithful to what phones, spreadsheets and map programs write, with
// what is read of each and what refused. Forms: GPX 1.1 and KML 2.2 schemas, RFC 7946, OGC 06-103r4 (well-known text).
#include <doctest/doctest.h>

#include <cmath>

#include "scenario/folder.hpp"
#include "scenario/places.hpp"
#include "scenario/sheet.hpp"

using namespace maybough;

namespace {

struct Form {
    const char* what;
    const char* file;
    std::string text;
    int places;        ///< read; 0: refused
    std::string says;  ///< an id where read, a part of the message where refused
};

const std::string gpx =
    "<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"x\" xmlns=\"http://www.topografix.com/GPX/1/1\">";
const std::string kml = "<?xml version=\"1.0\"?><kml xmlns=\"http://www.opengis.net/kml/2.2\"><Document>";
const std::string fc = R"({"type":"FeatureCollection","features":[)";

std::string pin(const std::string& properties, const std::string& extra = "") {
    return R"({"type":"Feature",)" + extra + R"("properties":)" + properties +
           R"(,"geometry":{"type":"Point","coordinates":[8.501,47.501]}})";
}

std::vector<Form> forms() {
    const std::string outline =
        R"({"type":"Feature","properties":{"landuse":"forest"},"geometry":{"type":"Polygon","coordinates":[[[8.49,47.49],[8.51,47.49],[8.51,47.51],[8.49,47.49]]]}})";
    return {
        {"our own", "a.csv", "id,name,latitude_deg,longitude_deg\noak,Oak,47.501,8.501\n", 1, "oak"},
        {"short names", "b.csv", "Name,Lat,Lon\nOld oak,47.501,8.501\n", 1, "Old-oak"},
        {"capitals, another order", "c.csv", "LNG,LAT,PLACE,NOTES\n8.501,47.501,Barn,dog\n", 1, "Barn"},
        {"semicolons, decimal commas", "d.csv", "Ort;Breitengrad;Längengrad\nEiche;47,501;8,501\n", 1, "Eiche"},
        {"decimal commas in quotes", "e.csv", "name,lat,lon\nA,\"47,501\",\"8,501\"\n", 1, "A"},
        {"hemisphere behind", "f.csv", "name,lat,lon\nA,47.501 N,8.501 E\n", 1, "A"},
        {"degrees and minutes", "g.csv", "name;lat;lon\nA;47°30.06'N;8°30.06'E\n", 1, "A"},
        {"degrees, minutes, seconds", "h.csv", "name;lat;lon\nA;\"47° 30' 3.6\"\" N\";\"8° 30' 3.6\"\" E\"\n", 1, "A"},
        {"hemisphere in front", "i.csv", "name;lat;lon\nA;N 47 30 3.6;E 8 30 3.6\n", 1, "A"},
        {"trailing empty columns", "j.csv", "name,lat,lon,,,\nA,47.501,8.501,,,\nB,47.502,8.502,,,\n", 2, "A"},
        {"tabs", "k.tsv", "name\tlatitude\tlongitude\nA\t47.501\t8.501\n", 1, "A"},
        {"height in feet", "l.csv", "name,lat,lon,Height (ft)\nA,47.501,8.501,10\n", 1, "A"},
        {"a column of the owner's", "m.csv", "name,lat,lon,Owner\nA,47.501,8.501,Mr Alder\n", 1, "A"},
        {"one column for both", "n.csv", "name;gps\nA;\"47.501, 8.501\"\n", 1, "A"},
        {"well-known text", "o.csv", "name,wkt\nA,POINT (8.501 47.501)\n", 1, "A"},
        {"no names at all", "p.csv", "lat,lon\n47.501,8.501\n47.502,8.502\n", 2, "spot-1"},
        {"the same name twice", "q.csv", "name,lat,lon\nOak,47.501,8.501\nOak,47.502,8.502\n", 2, "Oak"},
        {"line that tells the delimiter", "r.csv", "sep=;\nname;lat;lon\nA;47,501;8,501\n", 1, "A"},
        {"byte-order mark, CRLF", "s.csv", "\xEF\xBB\xBFname,lat,lon\r\nA,47.501,8.501\r\n", 1, "A"},
        {"phone waypoints", "a.gpx", gpx + "<wpt lat=\"47.501\" lon=\"8.501\"><name>Old oak</name></wpt></gpx>", 1,
         "Old-oak"},
        {"unnamed waypoint", "b.gpx", gpx + "<wpt lat=\"47.501\" lon=\"8.501\"/></gpx>", 1, "spot-1"},
        {"doubled names", "c.gpx",
         gpx + "<wpt lat=\"47.501\" lon=\"8.501\"><name>A</name></wpt><wpt lat=\"47.502\" "
               "lon=\"8.501\"><name>A</name></wpt></gpx>",
         2, "A"},
        {"prefixes", "d.gpx",
         "<g:gpx version=\"1.1\" xmlns:g=\"http://www.topografix.com/GPX/1/1\"><g:wpt lat=\"47.501\" "
         "lon=\"8.501\"><g:name>A</g:name></g:wpt></g:gpx>",
         1, "A"},
        {"waypoints beside a track", "e.gpx",
         gpx + "<wpt lat=\"47.501\" lon=\"8.501\"><name>A</name></wpt><trk><trkseg><trkpt lat=\"47.5\" "
               "lon=\"8.5\"/></trkseg></trk></gpx>",
         1, "A"},
        {"a track alone", "f.gpx", gpx + "<trk><trkseg><trkpt lat=\"47.5\" lon=\"8.5\"/></trkseg></trk></gpx>", 0,
         "track or route but no waypoint"},
        {"a name that is a formula", "g.gpx", gpx + "<wpt lat=\"47.501\" lon=\"8.501\"><name>=1+1</name></wpt></gpx>",
         1, "1-1"},
        {"KML placemark", "a.kml",
         kml + "<Placemark><name>Oak</name><description>pond</description><Point><coordinates>8.501,47.501,0</"
               "coordinates></Point></Placemark></Document></kml>",
         1, "Oak"},
        {"KML in folders", "b.kml",
         kml + "<Folder><Folder><Placemark><name>Oak</name><Point><coordinates>\n "
               "8.501,47.501\n</coordinates></Point></Placemark></Folder></Folder></Document></kml>",
         1, "Oak"},
        {"KML without points", "c.kml", kml + "<Placemark><LineString/></Placemark></Document></kml>", 0,
         "no point among them"},
        {"foreign properties", "a.geojson", fc + pin(R"({"name":"Oak","marker-color":"#f00","meta":{"a":1}})") + "]}",
         1, "Oak"},
        {"no id, no name", "b.geojson", fc + pin("{}") + "]}", 1, "spot-1"},
        {"an id beside the properties", "c.geojson", fc + pin("null", R"("id":"node/12",)") + "]}", 1, "node-12"},
        {"points and outlines", "d.geojson", fc + pin(R"({"name":"Oak"})") + "," + outline + "]}", 1, "Oak"},
        {"spots and hives by a property", "e.geojson",
         fc + pin(R"({"name":"Oak","kind":"spot"})") + "," + pin(R"({"name":"H","kind":"hives"})") + "]}", 1, "Oak"},
        {"a workbook", "a.xlsx", "PK\x03\x04rest", 0, "archive cannot be opened"},
        {"an old workbook", "a.xls", "\xD0\xCF\x11\xE0", 0, "old workbook"},
        {"a GeoPackage", "a.gpkg", "SQLite format 3 ", 0, "ogr2ogr"},
        {"a shapefile", "a.shp", std::string("\0\0\x27\x0a\0\0", 6), 0, "shapefile"},
        {"a hemisphere of the other axis", "t.csv", "name,lat,lon\nA,47.501 E,8.501 N\n", 0, "latitude_deg"},
        {"O, which is east or west", "u.csv", "name,lat,lon\nA,47.501,8.501 O\n", 0, "longitude_deg"},
        {"height without a unit", "v.csv", "name,lat,lon,Height\nA,47.501,8.501,3\n", 0, "has no unit"},
        {"a slip of the pen", "w.csv", "name,lat,lon,visibilty\nA,47.501,8.501,1\n", 0, "did you mean visibility"},
        {"no position", "x.csv", "name,street\nA,Mill Lane\n", 0, "latitude_deg\" is missing"},
        {"nested too deep", "f.geojson", std::string(100000, '['), 0, "more than 64 deep"},
    };
}

Land meadow() {
    Land land;
    land.centre = {47.5, 8.5};
    land.radius_m = 2000;
    return land;
}
}  // namespace

TEST_CASE("lists of places as people have them") {
    const ScratchFolder folder;
    for (const Form& form : forms()) {
        CAPTURE(form.what);
        const std::string file = folder.put(form.file, form.text);
        std::vector<Spot> spots;
        const std::string message = refusal([&] { spots = read_spots(file, meadow()); });
        if (form.places == 0) {
            CHECK_MESSAGE(says(message, form.says), message);
            CHECK(message.find('\n') == std::string::npos);
            continue;
        }
        CHECK_MESSAGE(message.empty(), message);
        REQUIRE(static_cast<int>(spots.size()) == form.places);
        CHECK(spots[0].id == form.says);
        CHECK(spots[0].place.latitude_deg == doctest::Approx(47.501).epsilon(1e-7));
        CHECK(spots[0].place.longitude_deg == doctest::Approx(8.501).epsilon(1e-7));
    }
}

TEST_CASE("what a spreadsheet adds is kept: notes, other columns, heights in feet") {
    const ScratchFolder folder;
    const auto spots = read_spots(
        folder.put("a.csv", "name,lat,lon,Height (ft),Remarks,Owner\nA,47.501,8.501,10,dog,Mr Alder\n"), meadow());
    REQUIRE(spots.size() == 1);
    CHECK(spots[0].max_height_m == doctest::Approx(3.048));
    CHECK(spots[0].notes == "dog; Owner: Mr Alder");
}

TEST_CASE("all faults of a file are told in one line") {
    const ScratchFolder folder;
    const std::string message = refusal([&] {
        read_spots(folder.put("a.csv", "name,lat,lon,use\nA,x,8.5,\nB,47.5,8.5,may\nC,47.501,8.5,perhaps\n"), meadow());
    });
    CHECK(says(message, "a.csv:2: latitude_deg"));
    CHECK(says(message, "and 1 more: at :4: use"));
    CHECK(message.find('\n') == std::string::npos);
}

TEST_CASE("hives are counted from a column or a plain note, and asked for where neither says") {
    const ScratchFolder folder;
    const auto hives_of = [&](const std::string& text) {
        return read_apiaries(folder.put("h.csv", text), meadow(), std::nullopt).at(0).hives;
    };
    CHECK(hives_of("name,lat,lon,Colonies\nA,47.5,8.5,7\n") == 7);
    CHECK(hives_of("name,lat,lon,notes\nA,47.5,8.5,about 4 hives by the shed\n") == 4);
    CHECK(hives_of("name,lat,lon\n12 colonies at the mill,47.5,8.5\n") == 12);
    CHECK(says(refusal([&] { hives_of("name,lat,lon\nMill,47.5,8.5\n"); }), "--hives-each"));
    CHECK(read_apiaries(folder.put("h.csv", "name,lat,lon\nMill,47.5,8.5\n"), meadow(), 3).at(0).hives == 3);
}

TEST_CASE("outlines of a mixed map become habitats by its own words") {
    const ScratchFolder folder;
    const Form mixed = forms()[32];
    const auto patches = read_habitats(folder.put("m.geojson", mixed.text), meadow());
    REQUIRE(patches.size() == 1);
    CHECK(patches[0].habitat == Habitat::woodland);
}

TEST_CASE("the centre and a radius come from the places") {
    const ScratchFolder folder;
    const Surroundings found = surroundings_of(folder.put("a.csv", "lat,lon\n47.49,8.5\n47.51,8.5\n"), "");
    CHECK(found.centre.latitude_deg == doctest::Approx(47.5));
    CHECK(found.centre.longitude_deg == doctest::Approx(8.5));
    CHECK(found.radius_m >= 1112);  // a hundredth of a degree of latitude
    CHECK(found.radius_m <= 1400);
    CHECK(says(refusal([&] { surroundings_of(folder.put("b.csv", "lat,lon\n47.49,8.5\n57.51,8.5\n"), ""); }), "28 km"));
}

TEST_CASE("writing that would forge lines or turn them round is cleaned") {
    CHECK(short_line("a\x1b[31mb\nc\u202Ed\u0085e", 40) == "a [31mb c d e");
    CHECK(short_line("ääää", 5) == "ää");
}
