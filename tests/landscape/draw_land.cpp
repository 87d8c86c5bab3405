// The unknown land: limits, margins that only add, order that does not matter, densities as stated.
#include <doctest/doctest.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <set>

#include "lands.hpp"

using namespace maybough;
using namespace maybough::testing;

namespace {
bool same(const Cavity& a, const Cavity& b) {
    return a.volume_l == b.volume_l && a.entrance_area_cm2 == b.entrance_area_cm2 && a.height_m == b.height_m &&
           a.facing_deg == b.facing_deg && a.shade == b.shade && a.comb == b.comb && a.lure == b.lure &&
           a.dryness == b.dryness && a.visibility == b.visibility;
}

/// What of `drawn` lies within the two discs, to be compared with a land drawn with a narrower margin.
DrawnLand within(const DrawnLand& drawn, double colony_disc_m, double cavity_disc_m) {
    DrawnLand inner;
    for (const DrawnColony& colony : drawn.colonies) {
        if (std::hypot(colony.at.x_m, colony.at.y_m) <= colony_disc_m) inner.colonies.push_back(colony);
    }
    for (const NaturalSite& site : drawn.cavities) {
        if (std::hypot(site.at.x_m, site.at.y_m) <= cavity_disc_m) inner.cavities.push_back(site);
    }
    return inner;
}

void check_same(const DrawnLand& a, const DrawnLand& b) {
    REQUIRE(a.colonies.size() == b.colonies.size());
    for (std::size_t i = 0; i < a.colonies.size(); ++i) {
        CHECK(a.colonies[i].id == b.colonies[i].id);
        CHECK(a.colonies[i].at == b.colonies[i].at);
        CHECK(a.colonies[i].origin == b.colonies[i].origin);
        CHECK(a.colonies[i].volume_l == b.colonies[i].volume_l);
        CHECK(a.colonies[i].forage == b.colonies[i].forage);
    }
    REQUIRE(a.cavities.size() == b.cavities.size());
    for (std::size_t i = 0; i < a.cavities.size(); ++i) {
        CHECK(a.cavities[i].id == b.cavities[i].id);
        CHECK(a.cavities[i].at == b.cavities[i].at);
        CHECK(same(a.cavities[i].cavity, b.cavities[i].cavity));
    }
}

const std::vector<Apiary> three_apiaries{{"b", {310, 420}, 6}, {"a", {330, 410}, 3}, {"far", {-3400, 900}, 9}};
}  // namespace

TEST_CASE("zero densities leave only the hives that were listed") {
    LandscapeParameters parameters;
    parameters.wild_density_factor = 0;
    parameters.managed_density_factor = 0;
    parameters.cavity_density_factor = 0;
    const DrawnLand drawn = draw_land(mixed_land(), three_apiaries, parameters, Chance{1, 0});
    CHECK(drawn.cavities.empty());
    CHECK(drawn.colonies.size() == 18);
    for (const DrawnColony& colony : drawn.colonies) {
        CHECK(colony.origin == ColonyOrigin::managed);
        CHECK(colony.apiary >= 0);
        CHECK(colony.at == three_apiaries[static_cast<std::size_t>(colony.apiary)].at);
    }
}

TEST_CASE("nothing lives in open water, and an area without width is still drawn") {
    LandscapeParameters parameters;
    const DrawnLand wet = draw_land(plain_land(Habitat::water, 3000), {}, parameters, Chance{1, 0});
    CHECK(wet.colonies.empty());
    CHECK(wet.cavities.empty());
    parameters.margin_m = 0;
    parameters.cavity_margin_m = 0;
    CHECK(draw_land(plain_land(Habitat::town, 0), {}, parameters, Chance{1, 0}).cavities.empty());
}

TEST_CASE("a wider margin only adds: what lies within the narrower land is the same to the bit") {
    LandscapeParameters narrow;
    narrow.margin_m = 1500;
    narrow.cavity_margin_m = 400;
    LandscapeParameters wide = narrow;
    wide.margin_m = 4100;
    wide.cavity_margin_m = 900;
    const Land land = mixed_land();
    for (std::uint32_t replicate = 0; replicate < 20; ++replicate) {
        const DrawnLand small = draw_land(land, three_apiaries, narrow, Chance{1, replicate});
        const DrawnLand large = draw_land(land, three_apiaries, wide, Chance{1, replicate});
        CHECK(large.cavities.size() > small.cavities.size());
        CHECK(large.colonies.size() > small.colonies.size());
        check_same(within(large, land.radius_m + 1500, land.radius_m + 1900), small);
    }
}

TEST_CASE("the order of apiaries and of patches that do not overlap changes nothing") {
    Land land = mixed_land();
    std::vector<Apiary> apiaries = three_apiaries;
    const DrawnLand before = draw_land(land, apiaries, {}, Chance{3, 4});
    std::reverse(apiaries.begin(), apiaries.end());
    std::swap(land.patches[0], land.patches[2]);
    const DrawnLand after = draw_land(land, apiaries, {}, Chance{3, 4});
    check_same(before, after);
}

TEST_CASE("ids are unique, rise, fit in 24 bits, and no listed hive takes another's") {
    for (std::uint32_t replicate = 0; replicate < 20; ++replicate) {
        const DrawnLand drawn = draw_land(mixed_land(), three_apiaries, {}, Chance{2, replicate});
        for (std::size_t i = 0; i < drawn.colonies.size(); ++i) {
            CHECK(drawn.colonies[i].id.value <= max_colony);
            if (i > 0) CHECK(drawn.colonies[i - 1].id < drawn.colonies[i].id);
        }
        for (std::size_t i = 0; i < drawn.cavities.size(); ++i) {
            CHECK(drawn.cavities[i].id.value <= max_colony);
            CHECK_FALSE(is_trap(drawn.cavities[i].id));
            if (i > 0) CHECK(drawn.cavities[i - 1].id < drawn.cavities[i].id);
        }
    }
}

TEST_CASE("one more listed hive adds one colony and moves no other") {
    std::vector<Apiary> apiaries{{"home", {-120, 80}, 5}};
    const DrawnLand before = draw_land(mixed_land(), apiaries, {}, Chance{1, 7});
    apiaries[0].hives = 6;
    DrawnLand after = draw_land(mixed_land(), apiaries, {}, Chance{1, 7});
    std::set<std::uint32_t> known;
    for (const DrawnColony& colony : before.colonies) known.insert(colony.id.value);
    std::erase_if(after.colonies, [&](const DrawnColony& colony) { return !known.contains(colony.id.value); });
    check_same(before, after);
}

TEST_CASE("a higher density keeps what there was and adds") {
    LandscapeParameters few;
    LandscapeParameters many;
    many.cavity_density_factor = 2;
    many.wild_density_factor = 2;
    const DrawnLand sparse = draw_land(mixed_land(), {}, few, Chance{1, 3});
    const DrawnLand dense = draw_land(mixed_land(), {}, many, Chance{1, 3});
    std::set<std::uint32_t> ids;
    for (const NaturalSite& site : dense.cavities) ids.insert(site.id.value);
    for (const NaturalSite& site : sparse.cavities) CHECK(ids.contains(site.id.value));
    CHECK(dense.cavities.size() > sparse.cavities.size());
}

TEST_CASE("an area too wide to number and an apiary too large to number are refused") {
    CHECK_THROWS_AS(draw_land(plain_land(Habitat::town, 40000), {}, {}, Chance{1, 0}), InputError);
    const std::vector<Apiary> huge{{"huge", {10, 10}, 500}};
    CHECK_THROWS_AS(draw_land(plain_land(Habitat::town, 1000), huge, {}, Chance{1, 0}), InputError);
}

TEST_CASE("the forage of a drawn colony is that of its place") {
    const Land land = mixed_land();
    const LandscapeParameters parameters;
    for (const DrawnColony& colony : draw_land(land, three_apiaries, parameters, Chance{1, 2}).colonies) {
        CHECK(colony.forage == forage_mix_at(land, colony.at, parameters));
    }
}
