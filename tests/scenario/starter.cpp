// Starter scenarios: they are whole, they read back, and nothing is left where one is refused.
#include <doctest/doctest.h>

#include "scenario/folder.hpp"

using namespace maybough;

TEST_CASE("a starter reads back with what it was given") {
    const ScratchFolder folder;
    folder.put("places.gpx",
               "<gpx version=\"1.1\"><wpt lat=\"-35.001\" lon=\"149.0\"><name>Red gum</name></wpt></gpx>");
    folder.put("hives.csv", "id,latitude_deg,longitude_deg,hives\nhome,-35.0,149.01,7\n");
    Starter starter;
    starter.name = "Quoted \"place\"";
    starter.centre = {-35, 149};
    starter.radius_m = 1500;
    starter.country = "parkland";
    starter.spots_file = folder.path("places.gpx");
    starter.hives_file = folder.path("hives.csv");
    write_starter(folder.path("made"), starter);
    const Scenario s = read_scenario(folder.path("made"));
    CHECK(s.name == starter.name);
    REQUIRE(s.spots.size() == 1);
    CHECK(s.spots[0].id == "Red-gum");
    REQUIRE(s.apiaries.size() == 1);
    CHECK(s.apiaries[0].hives == 7);
    CHECK(s.land.elsewhere == Habitat::parkland);
}

TEST_CASE("a starter with nothing given runs at every latitude") {
    for (const double latitude_deg : {-60.0, -20.0, 0.0, 47.0, 66.0}) {
        const ScratchFolder folder;
        Starter starter;
        starter.centre = {latitude_deg, 10};
        write_starter(folder.path("made"), starter);
        CHECK(read_scenario(folder.path("made")).spots.size() == 6);
    }
}

TEST_CASE("a starter never touches what is there, and leaves nothing behind when refused") {
    const ScratchFolder folder;
    Starter starter;
    starter.centre = {47, 8};
    std::filesystem::create_directory(folder.path("full"));
    folder.put("full/letter.txt", "keep me");
    CHECK(says(refusal([&] { write_starter(folder.path("full"), starter); }), "not an empty folder"));
    starter.spots_file = folder.put("far.csv", "id,latitude_deg,longitude_deg\na,12,8\n");
    CHECK(says(refusal([&] { write_starter(folder.path("made"), starter); }), "far.csv:2"));
    starter.spots_file.clear();
    starter.country = "wodland";
    CHECK(says(refusal([&] { write_starter(folder.path("made"), starter); }), "did you mean woodland"));
    int left = 0;
    for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(folder.path())) ++left;
    CHECK(left == 2);  // full/ and far.csv
}

TEST_CASE("a starter of the south counts swarms as late in the second half of its own season") {
    for (const double latitude_deg : {-37.0, 46.0}) {
        const ScratchFolder folder;
        Starter starter;
        starter.centre = {latitude_deg, 145};
        write_starter(folder.path("made"), starter);
        const Scenario s = read_scenario(folder.path("made"));
        CHECK(s.keeper.late_month == (latitude_deg < 0 ? 1 : 7));
        CHECK(!says(describe(s), "usual here is"));
        Scenario wrong = s;
        wrong.keeper.late_month = latitude_deg < 0 ? 7 : 1;
        CHECK(says(describe(wrong), "usual here is"));
    }
}
