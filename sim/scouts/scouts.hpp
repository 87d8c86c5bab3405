// Scouts: find, assess, recruit, reach a quorum, decide. One swarm's house-hunt with individual scouts.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "base/base.hpp"
#include "chance/chance.hpp"
#include "landscape/landscape.hpp"
#include "parameters/scouts.hpp"
#include "swarm/swarm.hpp"

namespace maybough::scouts {

/// Quality of a cavity as one additive log-odds score, 0 = a bare 40 l cavity at 5 m facing the midday sun.
/// `poleward_south`: true south of the equator, where the midday sun stands north.
double site_log_odds(const Cavity& cavity, const ScoutParameters& parameters, bool poleward_south = false);

/// Relative rate at which scouts come upon a cavity at this distance (before division by the search effort).
double find_weight(const Cavity& cavity, double distance_m, const ScoutParameters& parameters);

/// Distance beyond which a site cannot be found: find_weight is exactly zero there.
double search_reach_m(const ScoutParameters& parameters);

/// How many natural cavities one at this distance stands for (see SiteFinder): its find_weight is to be multiplied by
/// it.
double stands_for(double distance_m, const ScoutParameters& parameters);

/// One site as offered to one swarm. Offers come in increasing SiteId; those with zero find_weight may be left out
/// without changing a bit of the outcome.
struct SiteOffer {
    SiteId id;
    double distance_m = 0;
    double find_weight = 0;
    double log_odds = 0;
    double open_from_h = 0;       ///< hours since the swarm hung; before it the site is tenanted
    double open_until_h = 1e9;    ///< from then on it is taken by others
    std::uint32_t taste_key = 0;  ///< what this swarm sees beyond the score is drawn for this key; 0: for the id
};

enum class HuntOutcome {
    moved,          ///< flew to the chosen site
    built_in_open,  ///< never agreed; settled on a branch
    dispersed,      ///< ran out of stores
    hived,          ///< somebody hived the cluster first
};

/// How one hunt went. Hours count from the moment the swarm hung.
struct HuntResult {
    HuntOutcome outcome = HuntOutcome::dispersed;
    SiteId site;            ///< valid where moved
    double arrival_h = 0;   ///< settled in the site (or ended)
    double decision_h = 0;  ///< quorum sensed
    double scouting_h = 0;  ///< hours of flyable daylight spent
    int scouts = 0;
    int sites_found = 0;
    int sites_danced_for = 0;
    int visitors_of_chosen = 0;    ///< different scouts that had been to the chosen site
    std::uint64_t found_mask = 0;  ///< bit site_bit(id) set for every site that any scout came upon; see found_site
};

/// The bit that stands for a site in HuntResult::found_mask; several sites share one.
inline std::uint64_t site_bit(SiteId site) {
    return 1ULL << ((site.value * 2654435761U) >> 26U);
}

/// False only where no scout of this hunt ever came upon the site: then closing it changes nothing.
inline bool found_site(const HuntResult& result, SiteId site) {
    return (result.found_mask & site_bit(site)) != 0;
}

/// One thing that happened in a hunt, for replay.
struct HuntEvent {
    double hour = 0;
    enum class Kind {
        found,
        visited,
        danced,
        stopped,
        rested,
        quorum,
        lifted,
        arrived,
        split,
        night,
        rain,
        followed
    } kind{};
    int scout = -1;
    SiteId site;
    double amount = 0;  ///< waggle runs, bees at the door
};
using HuntTrace = std::vector<HuntEvent>;

/// Hours at which scouts came to one site's door and what they met: all that its hours meant to the hunt.
struct Asked {
    double first_open_h = 1e9;  ///< earliest hour at which it was found open
    double last_open_h = -1;    ///< latest such hour
    double last_early_h = -1;   ///< latest hour at which it was still shut
    double first_late_h = 1e9;  ///< earliest hour at which it was shut again
};

/// What one hunt met of a site that some scout of it came upon.
struct MetSite {
    SiteId id;
    double distance_m = 0;
    double log_odds = 0;
    std::uint64_t width = 0;    ///< chance of a find per flight, in 2^-32
    std::uint64_t low_hit = 0;  ///< the draws of search flights that ended at it lie between these two
    std::uint64_t high_hit = 0;
    Asked asked;
};

/// All that a hunt met of its sites: where other offers would have met its draws in the same way, the hunt over them is
/// the same to the bit. See same_hunt.
struct HuntWitness {
    std::uint64_t lowest_miss = ~0ULL;  ///< the lowest draw of a search flight that ended at nothing
    std::vector<MetSite> met;           ///< in increasing id
};

/// The house-hunt of `swarm` over `sites` under `sky` (the days from swarm.day on). The bits of the outcome depend on
/// the swarm's id, the sites that can be found and the sky alone. No allocation after the first call on a thread.
HuntResult hunt(const Swarm& swarm, std::span<const SiteOffer> sites, std::span<const DayOfSky> sky,
                const ScoutParameters& parameters, const Chance& chance, HuntTrace* trace = nullptr);

/// The same, ended where somebody hives the cluster `hived_h` hours after it hung (1e9: nobody does). `witness`, where
/// given, receives what the hunt met.
HuntResult hunt_until(double hived_h, const Swarm& swarm, std::span<const SiteOffer> sites,
                      std::span<const DayOfSky> sky, const ScoutParameters& parameters, const Chance& chance,
                      HuntTrace* trace = nullptr, HuntWitness* witness = nullptr);

/// Bound below which the draw of a search flight ends at a site or at one before it, for each of `sites` in 2^-32; what
/// lies above the last ends at nothing. A site's own width does not depend on the others, short of certainty.
void find_bounds(std::span<const SiteOffer> sites, const ScoutParameters& parameters,
                 std::vector<std::uint64_t>& bounds);

/// True only where the hunt that left `witness` would run to the same end, event by event, over `sites`: the same
/// swarm, luck and sky are the caller's care. Sites that it never came upon may come, go or change, as long as none of
/// its draws falls on them.
bool same_hunt(const HuntWitness& witness, std::span<const SiteOffer> sites, const ScoutParameters& parameters);

/// What a swarm still has after hanging for `hours`: honey less what its bees ate, bees less those that died.
struct SwarmLeft {
    std::int64_t bees = 0;
    double honey_g = 0;
};
SwarmLeft left_after(const Swarm& swarm, double hours, const ScoutParameters& parameters);

/// The taste_key of a trap: traps of the same score in one square of 100 m are liked or disliked together.
std::uint32_t shared_taste(Point at, double log_odds);

/// Scouts seen together outside a site that make a quorum, in a swarm with so many scouts.
std::int32_t quorum_of(double scouts, const ScoutParameters& parameters);

}  // namespace maybough::scouts

namespace maybough {
using namespace scouts;  // so that rooms to the right need no prefix
}
