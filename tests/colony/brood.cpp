// Brood ages: a day is a day, castes emerge when they should; without a queen a colony dwindles.
#include <doctest/doctest.h>

#include "experiments/made_days.hpp"

using namespace maybough;
using namespace maybough::experiments;  // its made days and lives are open to tests

TEST_CASE("ages turn without skipping") {
    Ages<5> ages;
    for (int day = 0; day < 12; ++day) {
        const std::int64_t out = ages.turn();
        CHECK(out == (day >= 5 ? day - 5 : 0));
        ages[0] = day;
        for (std::size_t age = 0; age < 5; ++age) CHECK(ages[age] == std::max(0, day - static_cast<int>(age)));
    }
}

namespace {

/// A colony with one cohort of eggs laid today and no queen.
Colony one_cohort() {
    Colony colony = overwintered_colony(wild_nest(1), {}, {}, {});
    colony.queen.state = QueenState::none;
    colony.workers.ages[0] = colony.workers.eggs = 1000;
    colony.drone_brood.ages[0] = colony.drone_brood.eggs = 1000;
    return colony;
}

}  // namespace

TEST_CASE("workers are capped on day 9 and emerge on day 21, drones on 10 and 24") {
    Colony colony = one_cohort();
    for (int day = 1; day <= 25; ++day) {
        const DayOfColony today = live_one_day(colony, fair_day(), {day}, {}, {});
        CHECK((colony.workers.eggs > 0) == (day < 3));
        CHECK((colony.workers.larvae > 0) == (day >= 3 && day < 9));
        CHECK((colony.workers.sealed > 0) == (day >= 9 && day < 21));
        CHECK((colony.drone_brood.sealed > 0) == (day >= 10 && day < 24));
        CHECK((today.workers_emerged > 0) == (day == 21));
        CHECK((today.drones_emerged > 0) == (day == 24));
    }
}

TEST_CASE("without a queen a summer colony dwindles to a tenth in 5 to 12 weeks") {
    // Summer workers live 15 to 45 days and the last emerge after three weeks: Winston 1987, from memory.
    Colony colony = overwintered_colony(wild_nest(3), {}, {}, {});
    for (std::size_t age = 0; age < nest_ages; ++age) colony.nest[age] = 600;
    colony.winter_bees = 0;
    colony.foragers = 4000;
    colony.queen.state = QueenState::none;
    const std::int64_t start = adults(colony);
    int day = 0;
    while (colony.alive && adults(colony) > start / 10 && day < 300) {
        live_one_day(colony, fair_day(), {day}, {}, {});
        ++day;
    }
    CHECK(day >= 5 * 7);
    CHECK(day <= 12 * 7);
}

TEST_CASE("a failing queen is superseded without a swarm: a few cells, a virgin, a laying daughter") {
    ColonyParameters p;
    p.queen_failure_per_day = 1;
    p.supersedure_share = 1;
    Colony colony = overwintered_colony(wild_nest(4), {}, {}, {});
    DayOfColony today = live_one_day(colony, fair_day(), {0}, p, {});
    CHECK(colony.episode == SwarmEpisode::superseding);
    CHECK(today.cells_begun == 3);
    CHECK(colony.queen.state == QueenState::laying);
    CHECK_FALSE(prime_is_due(colony));
    CHECK_FALSE(afterswarm_is_due(colony));
    p.queen_failure_per_day = 0;
    std::int64_t emerged = 0;
    for (int day = 1; day < 45; ++day) {
        today = live_one_day(colony, fair_day(), {day}, p, {});
        emerged += today.queens_emerged;
        if (emerged == 0) CHECK(colony.queen.state == QueenState::laying);
        CHECK_FALSE(prime_is_due(colony));
        if (day == static_cast<int>(queen_days)) CHECK(colony.queen.state == QueenState::virgin);
    }
    CHECK(emerged == 1);
    CHECK(colony.episode == SwarmEpisode::none);
    CHECK(colony.queen.state == QueenState::laying);
    CHECK(colony.queen.age_days < 45);
}

TEST_CASE("drones are reared only in drone comb, which a new nest builds after its own workers emerge") {
    Colony colony = founded_colony({9}, {}, {12000, true, 480, 365}, 42, ordinary_country, {0}, {}, {});
    std::int64_t emerged = 0;
    for (int day = 0; day < 60; ++day) {
        const DayOfColony today = live_one_day(colony, fair_day(), {day}, {}, {});
        emerged += today.workers_emerged;
        if (emerged == 0) CHECK(colony.drone_comb_cells == 0);
        CHECK(colony.drone_brood.all() <= colony.drone_comb_cells);
        CHECK(colony.drone_comb_cells <= colony.comb_cells);
        CHECK(today.drone_comb_built <= today.comb_built);
    }
    CHECK(colony.drone_comb_cells > 0);
}
