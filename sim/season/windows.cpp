// When a trap is open to a swarm.
#include <algorithm>

#include "season/process.hpp"

namespace maybough::season {

Window open_window(const TrapSeason& trap, double now_h, double emptied_h) {
    double from_h = std::max({now_h, hours_at(trap.hang, keeper_at_work_h), emptied_h});
    const double end_h = hours_at(trap.take_down, keeper_at_work_h);
    // Outages come in order of their first day; one that covers `from_h` pushes it on, a later one ends the stretch.
    for (const Outage& outage : trap.outages) {
        const double begins_h = hours_at(outage.from, keeper_at_work_h);
        const double ends_h = hours_at(outage.until, keeper_at_work_h);
        if (from_h >= begins_h && from_h < ends_h) from_h = ends_h;
        if (begins_h > from_h) return {from_h, std::min(begins_h, end_h)};
    }
    return {from_h, std::max(from_h, end_h)};
}

}  // namespace maybough::season
