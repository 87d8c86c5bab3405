// When a trap is open: before it hangs, through outages, after a catch, after it is taken down.
#include <doctest/doctest.h>

#include "season/process.hpp"

using namespace maybough;

namespace {
TrapSeason hung_trap() {
    TrapSeason trap;
    trap.site = trap_site({0, 0});
    trap.hang = {100};
    trap.take_down = {200};
    return trap;
}
}  // namespace

TEST_CASE("a trap is open from the noon it hangs to the noon it comes down") {
    const TrapSeason trap = hung_trap();
    const Window before = open_window(trap, hours_at({90}, 9), 0);
    CHECK(before.from_h == hours_at({100}, 12));
    CHECK(before.until_h == hours_at({200}, 12));
    const Window during = open_window(trap, hours_at({150}, 9), 0);
    CHECK(during.from_h == hours_at({150}, 9));
    const Window after = open_window(trap, hours_at({205}, 9), 0);
    CHECK(after.from_h >= after.until_h);
}

TEST_CASE("an outage ends the open stretch, or delays it; a catch delays it until it is taken") {
    TrapSeason trap = hung_trap();
    trap.outages = {{Outage::Cause::tenant, {120}, {127}}, {Outage::Cause::damage, {140}, {141}}};
    CHECK(open_window(trap, hours_at({110}, 9), 0).until_h == hours_at({120}, 12));
    const Window pushed = open_window(trap, hours_at({121}, 9), 0);
    CHECK(pushed.from_h == hours_at({127}, 12));
    CHECK(pushed.until_h == hours_at({140}, 12));
    CHECK(open_window(trap, hours_at({145}, 9), hours_at({152}, 18)).from_h == hours_at({152}, 18));
}
