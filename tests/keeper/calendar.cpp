// The one rule of when traps hang and come down.
#include <doctest/doctest.h>

#include "sample.hpp"

using namespace maybough;
using namespace maybough::testing;

TEST_CASE("traps hang before one swarm in twenty has come and come down after nearly all") {
    std::vector<int> days;
    for (int day = 100; day < 200; ++day) days.push_back(day);
    const KeeperParameters parameters;
    CHECK(hang_day(days, parameters).value == 104 - static_cast<int>(parameters.hang_before_days));
    const std::vector<Day> downs = take_down_days(days, {364}, parameters);
    REQUIRE(downs.size() == 4);
    CHECK(downs.front().value == 196 + static_cast<int>(parameters.stay_after_days));
    for (std::size_t i = 1; i < downs.size(); ++i) CHECK(downs[i] < downs[i - 1]);
    CHECK(take_down_days(days, {190}, parameters).front() == Day{190});
    CHECK(hang_day({}, parameters) == Day{0});
    CHECK(take_down_days({}, {364}, parameters) == std::vector<Day>{Day{364}});
    CHECK(hang_day({3, 3, 3}, parameters) == Day{0});
}

TEST_CASE(
    "lures are put in at hanging and at the first visit at which the last is old; none where the keeper uses none") {
    TrapSetting setting = sample_setting();
    Keeper keeper;
    keeper.use_lure = true;
    keeper.relure_after_days = 40;
    const Rounds rounds = visits_of(setting, keeper);
    REQUIRE(rounds.lures.size() >= 2);
    CHECK(rounds.lures.front() == setting.hang);
    CHECK(rounds.lures[1] - setting.hang >= 40);
    CHECK(rounds.lures[1] - setting.hang < 40 + setting.visit_every_days);
    keeper.use_lure = false;
    CHECK(visits_of(setting, keeper).lures.empty());
    CHECK(visits_of(setting, keeper).visits == rounds.visits);
}
