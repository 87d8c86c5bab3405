// Swarms leave: what they take, who casts none, clipped queens, weather that holds them back, and who is hived.
#include <doctest/doctest.h>

#include "experiments/lives.hpp"

using namespace maybough;
using namespace maybough::experiments;  // its made days and lives are open to tests

TEST_CASE("a swarm takes its bees and honey out of the colony, and the queen with it") {
    const Chance chance{2, 1};
    Colony colony = crowded_colony(1, {}, chance);
    const std::int64_t bees = adults(colony);
    const double honey_g = colony.honey_g;
    const Departing gone = let_swarm_go(colony, 0.75, 0.04, 0.5);
    CHECK(gone.bees + adults(colony) == bees);
    CHECK(gone.honey_g + colony.honey_g == doctest::Approx(honey_g));
    CHECK(gone.queen.state == QueenState::laying);
    CHECK(colony.queen.state == QueenState::none);
    CHECK(std::abs(static_cast<double>(gone.bees) - 0.75 * static_cast<double>(bees)) < 1);
}

TEST_CASE("founders' own founders cast no more, and ids tell who cast what") {
    const SwarmId prime = swarm_of({12}, 0);
    const ColonyId founder = founder_of(prime);
    const ColonyId last = founder_of(swarm_of(founder, 0));
    const Chance chance{2, 5};
    Colony colony = crowded_colony(1, {}, chance);
    colony.id = last;
    for (int day = 0; day < 30; ++day) {
        live_one_day(colony, fair_day(), {day}, {}, chance);
        CHECK_FALSE(issue_swarm(colony, fair_day(), {day}, {}, chance));
    }
}

TEST_CASE("a clipped queen keeps the prime swarm at home; a virgin may lead one later") {
    int lost = 0;
    int led_by_virgin = 0;
    for (std::uint32_t number = 0; number < 20; ++number) {
        const Chance chance{21, number};
        Colony colony = crowded_colony(number, {}, chance);
        colony.management.managed = true;
        colony.management.clipped_queen = true;
        bool queenless = false;
        int swarms = 0;
        for (int day = 0; day < 40; ++day) {
            live_one_day(colony, fair_day(), {day}, {}, chance);
            const std::int64_t before = adults(colony);
            const auto swarm = issue_swarm(colony, fair_day(), {day}, {}, chance);
            if (!swarm) CHECK(adults(colony) == before);
            queenless = queenless || colony.queen.state == QueenState::none;
            if (swarm) {
                CHECK_FALSE(swarm->prime);
                ++swarms;
            }
        }
        lost += queenless ? 1 : 0;
        led_by_virgin += swarms > 0 ? 1 : 0;
    }
    CHECK(lost >= 10);
    CHECK(led_by_virgin >= 5);
}

TEST_CASE("long foul weather makes a colony give its swarm up; its cells are torn down and the old queen stays") {
    int gave_up = 0;
    for (std::uint32_t number = 0; number < 30; ++number) {
        const Chance chance{23, number};
        Colony colony = crowded_colony(number, {}, chance);
        live_one_day(colony, fair_day(), {0}, {}, chance);
        REQUIRE(colony.episode == SwarmEpisode::preparing);
        std::int64_t torn = 0;
        for (int day = 1; day < 20; ++day) {
            torn += live_one_day(colony, foul_day(), {day}, {}, chance).cells_torn_down;
            CHECK_FALSE(issue_swarm(colony, foul_day(), {day}, {}, chance));
        }
        CHECK(torn > 0);
        gave_up += colony.episode == SwarmEpisode::none && colony.queen.state == QueenState::laying ? 1 : 0;
    }
    CHECK(gave_up >= 28);  // a queen fails now and then
}

TEST_CASE("the hazard of beginning cells is the product of its parts, each readable and between 0 and 1") {
    const ColonyParameters p;
    Colony colony = crowded_colony(1, p, {});
    const Preparation part = preparation_of(colony, 0.8, {14, 0.04}, p);
    for (const double share : {part.crowding, part.young_bees, part.thin_scent, part.forage, part.day_length}) {
        CHECK(share > 0);
        CHECK(share < 1);
    }
    CHECK(part.per_day == doctest::Approx(p.prepare_per_day * part.crowding * part.young_bees * part.thin_scent *
                                          part.forage * part.day_length * part.queen_age * part.readiness));
    Colony roomy = colony;
    roomy.volume_l *= 3;
    CHECK(preparation_of(roomy, 0.8, {14, 0.04}, p).per_day < 0.5 * part.per_day);
    colony.queen.age_days *= 2;
    CHECK(preparation_of(colony, 0.8, {14, 0.04}, p).queen_age > part.queen_age);
}

TEST_CASE("clusters near people are hived more often") {
    const SwarmParameters p;
    int managed = 0;
    int wild = 0;
    constexpr int n = 2000;
    for (std::uint32_t i = 0; i < n; ++i) {
        Swarm swarm;
        swarm.id = swarm_of({i}, 0);
        swarm.origin = ColonyOrigin::managed;
        const ClusterFate fate = cluster_fate(swarm, p, {});
        CHECK(fate.hived_after_h > 0);
        managed += fate.hived_by_someone ? 1 : 0;
        swarm.origin = ColonyOrigin::wild;
        wild += cluster_fate(swarm, p, {}).hived_by_someone ? 1 : 0;
    }
    // Binomial: four standard errors.
    CHECK(std::abs(managed - n * p.hived_managed) < 4 * std::sqrt(n * p.hived_managed * (1 - p.hived_managed)));
    CHECK(std::abs(wild - n * p.hived_wild) < 4 * std::sqrt(n * p.hived_wild * (1 - p.hived_wild)));
}
