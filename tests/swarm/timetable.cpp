// The timetable of swarming in made weather: cells, prime swarm, delay by foul days, virgin, afterswarms.
#include <doctest/doctest.h>

#include "colony/days.hpp"
#include "colony/years.hpp"

using namespace maybough;
using namespace maybough_test;

namespace {

/// A crowded colony whose first egg in a queen cup is laid on day 0.
Colony about_to_prepare(std::uint32_t number, const Chance& chance) {
    Colony colony = overwintered_colony(wild_nest(number), {}, {}, chance);
    for (std::size_t age = 0; age < nest_ages; ++age) colony.nest[age] = 600;
    for (std::size_t age = 0; age < worker_days; ++age) colony.workers.ages[age] = 900;
    colony.workers.eggs = 2700;
    colony.workers.larvae = 5400;
    colony.workers.sealed = 10800;
    colony.winter_bees = 0;
    colony.foragers = 4000;
    colony.hazard_limit = 0;
    return colony;
}

struct Story {
    int begun = -1;
    int prime = -1;
    int virgin = -1;
    std::vector<int> after;
    double share = 0;
};

/// Foul days from day `foul_from` on, `foul_days` of them; all others fair.
Story tell(std::uint32_t number, int foul_from, int foul_days) {
    const Chance chance{21, number};
    ColonyParameters p;
    p.give_up_per_day = p.give_up_bad_per_day = p.give_up_dearth_per_day = 0;  // the timetable alone is looked at
    Colony colony = about_to_prepare(number, chance);
    Story story;
    for (Day day{0}; day.value < 45; day = day + 1) {
        const bool foul = day.value >= foul_from && day.value < foul_from + foul_days;
        const DayOfSky sky = foul ? foul_day() : fair_day();
        if (live_one_day(colony, sky, day, p, chance).cells_begun > 0 && story.begun < 0) story.begun = day.value;
        const std::int64_t before = adults(colony);
        const auto swarm = issue_swarm(colony, sky, day, {}, chance);
        if (swarm && swarm->prime && story.prime < 0) {
            story.prime = day.value;
            story.share = static_cast<double>(swarm->bees) / static_cast<double>(before);
        }
        if (swarm && !swarm->prime) story.after.push_back(day.value);
        if (story.prime >= 0 && story.virgin < 0 && colony.queen.state == QueenState::virgin) story.virgin = day.value;
    }
    return story;
}

}  // namespace

TEST_CASE("prime swarm 8 to 10 days after the first egg in fair weather, a day later for each foul day") {
    double fair_sum = 0;
    double foul_sum = 0;
    int by_day_10 = 0;
    int n = 0;
    for (std::uint32_t number = 0; number < 60; ++number) {
        const Story fair = tell(number, 0, 0);
        const Story foul = tell(number, 8, 3);
        REQUIRE(fair.begun == 0);
        CHECK(fair.prime >= 8);
        by_day_10 += fair.prime <= 10 ? 1 : 0;
        CHECK(foul.prime >= 11);
        fair_sum += fair.prime;
        foul_sum += foul.prime;
        ++n;
    }
    // 0.7 a day from day 8 on: 1 - 0.3^3 = 0.973 by day 10; four standard errors of 0.021.
    CHECK(by_day_10 >= (0.973 - 4 * 0.021) * n);
    CHECK(fair_sum / n >= 8);
    CHECK(fair_sum / n <= 10);
    CHECK(foul_sum / n - fair_sum / n == doctest::Approx(3).epsilon(0.34));
}

TEST_CASE("first virgin 7 to 8 days after the prime swarm, afterswarms 8 to 10 days after, then 1 to 4 apart") {
    std::vector<int> virgin;
    std::vector<int> first;
    double gaps = 0;
    int n_gaps = 0;
    for (std::uint32_t number = 0; number < 120; ++number) {
        const Story story = tell(number, 0, 0);
        if (story.virgin >= 0) virgin.push_back(story.virgin - story.prime);
        if (!story.after.empty()) first.push_back(story.after[0] - story.prime);
        for (std::size_t i = 1; i < story.after.size(); ++i) {
            gaps += story.after[i] - story.after[i - 1];
            ++n_gaps;
        }
    }
    REQUIRE(virgin.size() > 50);
    REQUIRE(first.size() > 30);
    std::sort(virgin.begin(), virgin.end());
    std::sort(first.begin(), first.end());
    CHECK(virgin[virgin.size() / 2] >= 6);
    CHECK(virgin[virgin.size() / 2] <= 10);
    CHECK(first[first.size() / 2] >= 7);
    CHECK(first[first.size() / 2] <= 12);
    REQUIRE(n_gaps > 0);
    CHECK(gaps / n_gaps >= 1);
    CHECK(gaps / n_gaps <= 4);
}

TEST_CASE("about three quarters of the workers leave with the prime swarm") {
    // Rangel and Seeley 2012: mean 0.75. Spread 0.06, n = 200: standard error 0.004.
    double sum = 0;
    int n = 0;
    for (std::uint32_t number = 0; number < 200; ++number) {
        const Story story = tell(number, 0, 0);
        if (story.prime < 0) continue;
        CHECK(story.share >= 0.55);
        CHECK(story.share <= 0.95);
        sum += story.share;
        ++n;
    }
    CHECK(sum / n == doctest::Approx(0.75).epsilon(0.03 / 0.75));
}

TEST_CASE("a swarm takes its bees and honey out of the colony, and the queen with it") {
    const Chance chance{2, 1};
    Colony colony = about_to_prepare(1, chance);
    const std::int64_t bees = adults(colony);
    const double honey_g = colony.honey_g;
    const Departing gone = take_swarm(colony, 0.75, 0.04, 0.5);
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
    Colony colony = about_to_prepare(1, chance);
    colony.id = last;
    for (int day = 0; day < 30; ++day) {
        live_one_day(colony, fair_day(), {day}, {}, chance);
        CHECK_FALSE(issue_swarm(colony, fair_day(), {day}, {}, chance));
    }
}

TEST_CASE("a clipped queen keeps the prime swarm at home") {
    const Chance chance{21, 3};
    Colony colony = about_to_prepare(3, chance);
    colony.management.managed = true;
    colony.management.clipped_queen = true;
    for (int day = 0; day < 40; ++day) {
        live_one_day(colony, fair_day(), {day}, {}, chance);
        const auto swarm = issue_swarm(colony, fair_day(), {day}, {}, chance);
        if (swarm) CHECK_FALSE(swarm->prime);
    }
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
