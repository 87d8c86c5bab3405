// Colonies over years and from random states: bees and stores balance, numbers stay finite, hunger ends a colony.
#include <doctest/doctest.h>

#include "experiments/lives.hpp"

using namespace maybough;
using namespace maybough::experiments;  // its made days and lives are open to tests

TEST_CASE("a colony that lays is balanced each day over twenty years, and stays finite") {
    // live_one_day throws where bees or honey do not balance.
    Colony colony = overwintered_colony(wild_nest(5), {}, {}, {3, 0});
    std::int64_t most = 0;
    for (std::uint32_t year = 0; year < 20; ++year) {
        const Chance chance{3, year};
        const SkyYear sky = year_at(ithaca(), {}, chance);
        begin_year(colony);
        const LifeOfColony lived = live(colony, sky, chance);
        most = std::max(most, lived.most_adults);
        CHECK(colony.honey_g >= 0);
        CHECK(colony.pollen_g >= 0);
    }
    CHECK(most > 8000);
    CHECK(most < 60000);
}

namespace {

/// Nobody is older than a day ago by more than a day: each age holds at most who was a day younger.
template <std::size_t n>
void check_no_age_skipped(const Ages<n>& before, const Ages<n>& after) {
    for (std::size_t age = 1; age < n; ++age) CHECK(after[age] <= before[age - 1]);
}

}  // namespace

TEST_CASE("random states stay balanced and never go below nothing") {
    for (std::uint32_t n = 0; n < 300; ++n) {
        const Chance chance{17, n};
        Stream luck = chance.stream(Purpose::colony_start, n);
        Colony colony = overwintered_colony(wild_nest(n, 10 + 90 * luck.uniform()), {}, {}, chance);
        for (std::size_t age = 0; age < nest_ages; ++age) colony.nest[age] = poisson(luck, 300 * luck.uniform());
        colony.foragers = poisson(luck, 3000 * luck.uniform());
        colony.honey_g = 20000 * luck.uniform() * luck.uniform();
        colony.pollen_g = 2000 * luck.uniform();
        for (std::size_t age = 0; age < worker_days; ++age) {
            colony.workers.ages[age] = poisson(luck, 600 * luck.uniform());
            (age < egg_days            ? colony.workers.eggs
             : age < worker_capped_day ? colony.workers.larvae
                                       : colony.workers.sealed) += colony.workers.ages[age];
        }
        if (luck.uniform() < 0.3) colony.hazard_limit = 0;
        colony.queen.state = static_cast<QueenState>(static_cast<int>(4 * luck.uniform()));
        colony.management.managed = luck.uniform() < 0.5;
        colony.management.inspect_every_days = 7;
        colony.management.max_volume_l = 120;
        colony.management.clipped_queen = luck.uniform() < 0.3;
        const double kind = luck.uniform();
        for (int day = 0; day < 60; ++day) {
            const bool fly = luck.uniform() < 0.6;
            const DayOfSky sky = kind < 0.2 ? winter_day() : fly ? fair_day() : foul_day();
            const Colony before = colony;
            CHECK_NOTHROW(live_one_day(colony, sky, {day}, {}, chance));
            check_no_age_skipped(before.workers.ages, colony.workers.ages);
            check_no_age_skipped(before.drone_brood.ages, colony.drone_brood.ages);
            check_no_age_skipped(before.nest, colony.nest);
            issue_swarm(colony, sky, {day}, {}, chance);
            for (const std::int64_t count : colony.nest.slots) CHECK(count >= 0);
            CHECK(std::min({colony.older_nest, colony.winter_bees, colony.foragers, colony.drones}) >= 0);
            CHECK(std::min({colony.workers.eggs, colony.workers.larvae, colony.workers.sealed}) >= 0);
            CHECK(colony.workers.all() == colony.workers.ages.sum());
            CHECK(colony.drone_brood.all() == colony.drone_brood.ages.sum());
            CHECK(std::min({colony.comb_cells, colony.drone_comb_cells, colony.ripe_queens}) >= 0);
            CHECK(queens_in_cells(colony) >= 0);
            CHECK(std::min(colony.honey_g, colony.pollen_g) >= 0);
        }
    }
}

TEST_CASE("without forage a colony starves before autumn, with forage it does not") {
    const SkyYear sky = year_at(ithaca(), {}, {4, 1});
    Colony fed = overwintered_colony(wild_nest(1), {}, {}, {4, 1});
    live(fed, sky, {4, 1}, 0, 130);
    REQUIRE(fed.alive);
    fed.honey_g = 1500;
    Colony barren = fed;
    barren.forage = {};
    const LifeOfColony lean = live(barren, sky, {4, 1}, 130, 365);
    live(fed, sky, {4, 1}, 130, 273);
    CHECK(fed.alive);
    CHECK_FALSE(barren.alive);
    CHECK(lean.died_on < 273);
    CHECK(lean.least_honey_g == 0);
}

TEST_CASE("the same chance gives the same year, whatever else is lived") {
    const SkyYear sky = year_at(ithaca(), {}, {9, 2});
    Colony a = overwintered_colony(wild_nest(7), {}, {}, {9, 2});
    Colony other = overwintered_colony(wild_nest(8), {}, {}, {9, 2});
    Colony b = overwintered_colony(wild_nest(7), {}, {}, {9, 2});
    live(other, sky, {9, 2});
    const LifeOfColony first = live(a, sky, {9, 2});
    const LifeOfColony second = live(b, sky, {9, 2});
    CHECK(first.workers_emerged == second.workers_emerged);
    CHECK(a.honey_g == b.honey_g);
    CHECK(adults(a) == adults(b));
}
