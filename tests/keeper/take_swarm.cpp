// Taking a swarm: when, how long it takes, what it is worth by date, size, waiting and the queen's luck.
#include <doctest/doctest.h>

#include <cmath>

#include "sample.hpp"

using namespace maybough;
using namespace maybough::testing;

namespace {
const Date first_day = make_date(2026, 1, 1);

Swarm swarm_of_bees(std::int64_t bees, std::uint32_t id = 8) {
    Swarm swarm;
    swarm.id = {id};
    swarm.bees = bees;
    return swarm;
}

KeeperParameters safe_queens() {
    KeeperParameters parameters = no_mishaps();
    parameters.queen_loss_moving = 0;
    parameters.queen_loss_cutout = 0;
    return parameters;
}

Taking take(Day caught, const TrapSetting& setting, const TrapKind& kind, const KeeperParameters& parameters,
            std::int64_t bees = 11500, const Keeper& keeper = {}, Date first = first_day) {
    const TrapSeason trap = plan_trap_season(setting, 0, kind, sample_spot(), keeper, parameters, {1, 0});
    return take_swarm(swarm_of_bees(bees), caught, trap, kind, keeper, first, parameters, {1, 0});
}
}  // namespace

TEST_CASE("a catch is taken on the first round after the day it came") {
    const TrapSetting setting = sample_setting();
    CHECK(take({112}, setting, sample_kind(), safe_queens()).taken == Day{119});
    CHECK(take({113}, setting, sample_kind(), safe_queens()).waited_days == 6);
    CHECK(take({118}, setting, sample_kind(), safe_queens()).waited_days == 1);
    CHECK(take({205}, setting, sample_kind(), safe_queens()).taken == setting.take_down);
    CHECK(take({209}, setting, sample_kind(), safe_queens()).waited_days == 1);
}

TEST_CASE("usual hours of taking are those of an ordinary swarm that waited half the time between visits") {
    const KeeperParameters parameters = safe_queens();
    TrapKind kind = sample_kind();
    for (const bool frames : {true, false}) {
        kind.frames = frames;
        const Taking taking = take({116}, sample_setting(), kind, parameters, std::llround(parameters.standard_bees));
        CHECK(taking.hours == doctest::Approx(usual_taking_hours(
                                  kind, static_cast<int>(2 * std::lround(taking.waited_days)), parameters)));
    }
    CHECK(usual_taking_hours(kind, 14, parameters) > usual_taking_hours(kind, 7, parameters));
}

TEST_CASE("an ordinary early swarm on frames has the full value, a late one the late value") {
    const Keeper keeper;
    CHECK(take({120}, sample_setting(), sample_kind(), safe_queens()).value == doctest::Approx(keeper.swarm_value));
    CHECK(take({190}, sample_setting(), sample_kind(), safe_queens()).value ==
          doctest::Approx(keeper.late_swarm_value));
    // 16 June: half of the 30 days before 1 July are left.
    CHECK(take({166}, sample_setting(), sample_kind(), safe_queens()).value ==
          doctest::Approx((keeper.swarm_value + keeper.late_swarm_value) / 2));
    KeeperParameters step = safe_queens();
    step.late_ramp_days = 0;
    CHECK(take({180}, sample_setting(), sample_kind(), step).value == doctest::Approx(keeper.swarm_value));
    CHECK(take({181}, sample_setting(), sample_kind(), step).value == doctest::Approx(keeper.late_swarm_value));
}

TEST_CASE("south of the equator the late date lies in the year's second half") {
    Keeper keeper;
    keeper.late_month = 1;
    keeper.late_day = 1;
    const Date july = make_date(2026, 7, 1);  // day 184 is 1 January
    KeeperParameters step = safe_queens();
    step.late_ramp_days = 0;
    CHECK(take({183}, sample_setting(), sample_kind(), step, 11500, keeper, july).value == keeper.swarm_value);
    CHECK(take({184}, sample_setting(), sample_kind(), step, 11500, keeper, july).value == keeper.late_swarm_value);
}

TEST_CASE("comb makes waiting costly in a trap without frames, and hardly in one with") {
    TrapSetting rare = sample_setting();
    rare.visit_every_days = 28;
    TrapKind pot = sample_kind();
    pot.frames = false;
    const KeeperParameters parameters = safe_queens();
    const Taking soon = take({112}, sample_setting(), pot, parameters);
    const Taking waited = take({112}, rare, pot, parameters);
    CHECK(waited.waited_days == 28);
    CHECK(waited.hours > soon.hours + 1);
    CHECK(waited.value < soon.value);
    CHECK(soon.value < 90);
    const Taking framed = take({112}, rare, sample_kind(), parameters);
    CHECK(framed.hours < waited.hours - 1);
    CHECK(framed.value == doctest::Approx(90));
}

TEST_CASE("value follows size, up to a limit, and no bees are worth nothing") {
    const KeeperParameters parameters = safe_queens();
    CHECK(take({120}, sample_setting(), sample_kind(), parameters, 0).value == 0);
    CHECK(take({120}, sample_setting(), sample_kind(), parameters, 2875).value == doctest::Approx(45));
    CHECK(take({120}, sample_setting(), sample_kind(), parameters, 60000).value ==
          doctest::Approx(90 * parameters.size_limit));
}

TEST_CASE("queens are lost as often as stated, by a swarm's own luck") {
    KeeperParameters parameters = no_mishaps();
    const TrapKind kind = sample_kind();
    const TrapSeason trap = plan_trap_season(sample_setting(), 0, kind, sample_spot(), {}, parameters, {1, 0});
    int lost = 0;
    constexpr int n = 4000;
    for (std::uint32_t id = 0; id < n; ++id) {
        const Taking taking =
            take_swarm(swarm_of_bees(11500, id), {120}, trap, kind, {}, first_day, parameters, {1, 0});
        if (!taking.queen_lost) continue;
        ++lost;
        CHECK(taking.value == doctest::Approx(90 * parameters.queenless_share));
    }
    const double p = parameters.queen_loss_moving;
    CHECK(std::abs(lost - n * p) < 4 * std::sqrt(n * p * (1 - p)));
}

TEST_CASE("a swarm that waits in a stolen trap is gone with it") {
    const TrapSetting setting = sample_setting();
    TrapSeason trap = plan_trap_season(setting, 0, sample_kind(), sample_spot(), {}, safe_queens(), {1, 0});
    const auto taken_with_theft_on = [&](Day stolen) {
        trap.outages = {{Outage::Cause::stolen, stolen, trap.take_down}};
        return take_swarm(swarm_of_bees(11500), {113}, trap, sample_kind(), {}, first_day, safe_queens(), {1, 0});
    };
    CHECK(taken_with_theft_on({115}).gone);
    CHECK(taken_with_theft_on({115}).value == 0);
    CHECK_FALSE(taken_with_theft_on({119}).gone);  // taken on day 119, before
    CHECK(taken_with_theft_on({119}).value > 0);
}
