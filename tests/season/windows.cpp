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

TEST_CASE("a hunt's digest tells apart everything its outcome depends on") {
    Swarm swarm;
    swarm.id = {77};
    swarm.day = {150};
    const std::vector<SiteOffer> offers{{{5}, 300, 0.1, 0.5}, {{9}, 400, 0.2, 0.1}};
    const auto base = digest(swarm, offers);
    CHECK(base == digest(swarm, offers));
    for (int change = 0; change < 6; ++change) {
        Swarm other = swarm;
        std::vector<SiteOffer> changed = offers;
        if (change == 0) other.id = {78};
        if (change == 1) other.hour = 13;
        if (change == 2) changed[1].find_weight = 0.21;
        if (change == 3) changed[1].log_odds = 0.2;
        if (change == 4) changed[0].open_until_h = 5;
        if (change == 5) changed.pop_back();
        INFO(change);
        CHECK(digest(other, changed) != base);
    }
}
