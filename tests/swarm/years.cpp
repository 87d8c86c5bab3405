// Colonies over years and from random states: bees and stores balance, numbers stay finite, hunger ends a colony.
#include "colony/years.hpp"

#include <doctest/doctest.h>

#include "colony/days.hpp"

using namespace maybough;
using namespace maybough_test;

TEST_CASE("a colony that lays is balanced each day over twenty years, and stays finite") {
    // live_one_day throws where bees or honey do not balance.
    Colony colony = overwintered_colony(wild_nest(5), {}, {}, {3, 0});
    std::int64_t most = 0;
    for (std::uint32_t year = 0; year < 20; ++year) {
        const Chance chance{3, year};
        const SkyYear sky = ithaca_sky(chance);
        begin_year(colony);
        const YearOfColony lived = live(colony, sky, chance);
        most = std::max(most, lived.most_adults);
        CHECK(colony.honey_g >= 0);
        CHECK(colony.pollen_g >= 0);
    }
    CHECK(most > 8000);
    CHECK(most < 60000);
}

TEST_CASE("random states stay balanced and never go below nothing") {
    for (std::uint32_t n = 0; n < 300; ++n) {
        const Chance chance{17, n};
        Stream luck = chance.stream(Purpose::colony_start, n);
        Colony colony = overwintered_colony(wild_nest(n, 10 + 90 * luck.uniform()), {}, {}, chance);
        for (std::size_t age = 0; age < nest_ages; ++age) colony.nest[age] = poisson(luck, 300 * luck.uniform());
        colony.foragers = poisson(luck, 3000 * luck.uniform());
        colony.honey_g = 20000 * luck.uniform() * luck.uniform();
        colony.pollen_g = 2000 * luck.uniform();
        const double kind = luck.uniform();
        for (int day = 0; day < 60; ++day) {
            const bool fly = luck.uniform() < 0.6;
            const DayOfSky sky = kind < 0.2 ? winter_day() : fly ? fair_day() : foul_day();
            CHECK_NOTHROW(live_one_day(colony, sky, {day}, {}, chance));
            issue_swarm(colony, sky, {day}, {}, chance);
            for (const std::int64_t count : colony.nest.slots) CHECK(count >= 0);
            CHECK(std::min({colony.older_nest, colony.winter_bees, colony.foragers, colony.drones}) >= 0);
            CHECK(std::min({colony.workers.eggs, colony.workers.larvae, colony.workers.sealed}) >= 0);
            CHECK(colony.workers.all() == colony.workers.ages.sum());
            CHECK(colony.drone_brood.all() == colony.drone_brood.ages.sum());
            CHECK(colony.comb_cells >= 0);
        }
    }
}

TEST_CASE("without forage a colony starves before autumn, with forage it does not") {
    const SkyYear sky = ithaca_sky({4, 1});
    Colony fed = overwintered_colony(wild_nest(1), {}, {}, {4, 1});
    live(fed, sky, {4, 1}, 0, 130);
    REQUIRE(fed.alive);
    fed.honey_g = 1500;
    Colony barren = fed;
    barren.forage = {};
    const YearOfColony lean = live(barren, sky, {4, 1}, 130, 365);
    live(fed, sky, {4, 1}, 130, 273);
    CHECK(fed.alive);
    CHECK_FALSE(barren.alive);
    CHECK(lean.died_on < 273);
    CHECK(lean.least_honey_g == 0);
}

TEST_CASE("the same chance gives the same year, whatever else is lived") {
    const SkyYear sky = ithaca_sky({9, 2});
    Colony a = overwintered_colony(wild_nest(7), {}, {}, {9, 2});
    Colony other = overwintered_colony(wild_nest(8), {}, {}, {9, 2});
    Colony b = overwintered_colony(wild_nest(7), {}, {}, {9, 2});
    live(other, sky, {9, 2});
    const YearOfColony first = live(a, sky, {9, 2});
    const YearOfColony second = live(b, sky, {9, 2});
    CHECK(first.workers_emerged == second.workers_emerged);
    CHECK(a.honey_g == b.honey_g);
    CHECK(adults(a) == adults(b));
}
