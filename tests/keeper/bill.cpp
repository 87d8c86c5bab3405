// The bill: what one trap costs, what rounds share, what is owned already, what height and weight add.
#include <doctest/doctest.h>

#include <cmath>

#include "sample.hpp"

using namespace maybough;
using namespace maybough::testing;

namespace {
Bill bill_of(const Placement& placement, const TrapKind& kind = sample_kind(), const Keeper& keeper = {},
             const KeeperParameters& parameters = no_mishaps()) {
    const std::vector<Spot> spots(2, sample_spot());
    return bill(placement, {&kind, 1}, spots, keeper, parameters);
}
}  // namespace

TEST_CASE("no traps cost nothing") {
    const Bill none = bill_of({});
    CHECK(none.total({}) == 0);
    CHECK(none.outlay == 0);
    CHECK(none.rounds == 0);
}

TEST_CASE("one trap's bill, added up by hand") {
    const Keeper keeper;
    const KeeperParameters parameters = no_mishaps();
    const Bill one = bill_of({sample_setting()});
    CHECK(one.rounds == 17);  // hang, 15 visits, take down
    CHECK(one.material == doctest::Approx(40.0 / 8));
    CHECK(one.outlay == doctest::Approx(40 + keeper.lure_cost));
    CHECK(one.lures == doctest::Approx(keeper.lure_cost));
    CHECK(one.km == doctest::Approx(17 * (keeper.base_km + 1.5)));
    const double minutes = 17 * 2 * 6 + parameters.hang_minutes + parameters.take_down_minutes +
                           15 * parameters.visit_minutes + parameters.lure_minutes;
    CHECK(one.hours == doctest::Approx(2.0 / 8 + minutes / 60 + one.km / parameters.drive_speed_kmh));
    CHECK(one.total(keeper) == doctest::Approx(one.material + one.lures + one.hours * 10 + one.km * 0.4));
}

TEST_CASE("a second trap seen on the same rounds costs no second drive to the area") {
    const Keeper keeper;
    TrapSetting second = sample_setting();
    second.spot = 1;
    const Bill one = bill_of({sample_setting()});
    const Bill two = bill_of({sample_setting(), second});
    CHECK(two.rounds == one.rounds);
    CHECK(two.km == doctest::Approx(one.km + 17 * 1.5));
    second.visit_every_days = 14;
    CHECK(bill_of({sample_setting(), second}).rounds == one.rounds);
    second.visit_every_days = 9;  // falls on other days
    CHECK(bill_of({sample_setting(), second}).rounds > one.rounds);
    CHECK(two.total(keeper) < 2 * one.total(keeper));
}

TEST_CASE("traps that are owned cost no material and no building") {
    TrapKind owned = sample_kind();
    owned.owned = 1;
    TrapSetting second = sample_setting();
    second.spot = 1;
    CHECK(bill_of({sample_setting()}, owned).material == 0);
    CHECK(bill_of({sample_setting()}, owned).outlay == doctest::Approx(Keeper{}.lure_cost));
    CHECK(bill_of({sample_setting(), second}, owned).material == doctest::Approx(40.0 / 8));
    CHECK(bill_of({sample_setting()}, owned).hours == doctest::Approx(bill_of({sample_setting()}).hours - 0.25));
}

TEST_CASE("height above reach and weight cost time, height below reach does not") {
    TrapSetting low = sample_setting();
    low.height_m = 1;
    TrapSetting high = sample_setting();
    high.height_m = 4.5;
    const KeeperParameters p = no_mishaps();
    CHECK(bill_of({low}).hours == bill_of({sample_setting()}).hours);
    const double extra_minutes = 2 * (p.ladder_hang_minutes + 2 * p.climb_minutes_per_m) + 15 * p.ladder_visit_minutes;
    CHECK(bill_of({high}).hours == doctest::Approx(bill_of({low}).hours + extra_minutes / 60));
    TrapKind heavy = sample_kind();
    heavy.mass_kg = 10;
    CHECK(bill_of({low}, heavy).hours == doctest::Approx(bill_of({low}).hours + 2 * 3.2 * p.heavy_minutes_per_kg / 60));
}

TEST_CASE("mishaps are paid for on average") {
    KeeperParameters parameters = no_mishaps();
    const Bill calm = bill_of({sample_setting()}, sample_kind(), {}, parameters);
    parameters.tenant_per_100_days = 0.5;
    CHECK(bill_of({sample_setting()}, sample_kind(), {}, parameters).hours ==
          doctest::Approx(calm.hours + 0.5 * 1.12 * parameters.mend_minutes / 60));
    parameters.theft_per_100_days = 0.2;
    CHECK(bill_of({sample_setting()}, sample_kind(), {}, parameters).material ==
          doctest::Approx(calm.material + 40 * -std::expm1(-0.224) * 7 / 8));
}

TEST_CASE("the order of traps changes nothing") {
    TrapSetting second = sample_setting();
    second.spot = 1;
    second.visit_every_days = 10;
    const Bill a = bill_of({sample_setting(), second});
    const Bill b = bill_of({second, sample_setting()});
    CHECK(a.rounds == b.rounds);
    CHECK(a.km == doctest::Approx(b.km));
    CHECK(a.hours == doctest::Approx(b.hours));
    CHECK(a.material == b.material);
}
