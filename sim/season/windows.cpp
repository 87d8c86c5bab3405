// When a trap is open to a swarm, and the digest by which a hunt is known again.
#include <algorithm>
#include <bit>

#include "season/process.hpp"

namespace maybough {

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

std::uint64_t digest(const Swarm& swarm, const std::vector<SiteOffer>& offers) {
    std::uint64_t hash = 14695981039346656037ULL;
    const auto mix = [&hash](std::uint64_t word) {
        hash ^= word;
        hash *= 1099511628211ULL;
        hash ^= hash >> 29U;
    };
    mix(swarm.id.value);
    mix(std::bit_cast<std::uint64_t>(hours_at(swarm.day, swarm.hour)));
    for (const SiteOffer& offer : offers) {
        mix(offer.id.value);
        mix(std::bit_cast<std::uint64_t>(offer.find_weight));
        mix(std::bit_cast<std::uint64_t>(offer.log_odds));
        mix(std::bit_cast<std::uint64_t>(offer.open_from_h));
        mix(std::bit_cast<std::uint64_t>(offer.open_until_h));
    }
    return hash;
}

}  // namespace maybough
