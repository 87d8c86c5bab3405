// Whether a hunt over other offers would be the same to the bit, from what the hunt met.
#include "scouts/witness.hpp"

namespace maybough::scouts {

namespace {

/// Every hour at which scouts came to the door is answered as before.
bool answers_alike(const Asked& asked, const SiteOffer& offer) {
    const bool open = offer.open_from_h <= asked.first_open_h && asked.last_open_h < offer.open_until_h;
    return open && asked.last_early_h < offer.open_from_h && asked.first_late_h >= offer.open_until_h;
}

}  // namespace

void find_bounds(std::span<const SiteOffer> sites, const ScoutParameters& parameters,
                 std::vector<std::uint64_t>& bounds) {
    bounds.clear();
    std::uint64_t bound = 0;
    for (const SiteOffer& offer : sites) {
        if (offer.find_weight > 0) bound = find_bound(bound, offer, parameters);
        bounds.push_back(bound);
    }
}

bool same_hunt(const HuntWitness& witness, std::span<const SiteOffer> sites, const ScoutParameters& parameters) {
    // Draws are of three kinds: hits, which must fall on the same site; misses, which must miss all; and those of
    // scouts drawn by company, which fall on the widths of sites with bees at the door, and only met sites have any.
    auto met = witness.met.begin();
    std::uint64_t from = 0;
    for (const SiteOffer& offer : sites) {
        if (!(offer.find_weight > 0)) continue;
        const std::uint64_t below = find_bound(from, offer, parameters);
        if (below > witness.lowest_miss) return false;
        if (met != witness.met.end() && met->id == offer.id) {
            const bool hit = met->low_hit >= from && met->high_hit < below && met->width == below - from;
            const bool alike = met->distance_m == offer.distance_m && met->log_odds == offer.log_odds;
            if (!hit || !alike || !answers_alike(met->asked, offer)) return false;
            ++met;
        }
        from = below;
    }
    return met == witness.met.end();
}

}  // namespace maybough::scouts
