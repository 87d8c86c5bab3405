// Season: one replicate. The backdrop that traps do not change, and the season of swarms over one placement.
#pragma once

#include <cstdint>
#include <map>
#include <tuple>
#include <unordered_map>
#include <vector>

#include "scenario/scenario.hpp"

namespace maybough {

/// Everything of a replicate that does not depend on where traps hang: weather, land, colonies' year and the swarms
/// they cast. Raised once, used under every placement.
struct Backdrop {
    SkyYear sky;
    DrawnLand land;
    std::vector<Swarm> swarms;                           ///< in order of day and hour, of colonies alive at the start
    std::vector<double> cavity_log_odds;                 ///< of each of land.cavities
    std::vector<double> cavity_free_h;                   ///< of each: free of bees and robbers from this hour on
    std::vector<std::vector<SiteOffer>> natural_offers;  ///< per swarm: cavities its scouts can find, all open
    SiteFinder finder;                                   ///< over land.cavities, within scouts' reach
    std::int64_t colonies_died = 0;
    std::int64_t colonies_swarmed = 0;
};
Backdrop raise_backdrop(const Scenario& scenario, const Parameters& parameters, const Chance& chance);
/// The same under a given weather, such as this year's to date and a continuation of it: land, colonies and luck of
/// the replicate stay what they are.
Backdrop raise_backdrop(const Scenario& scenario, const Parameters& parameters, const Chance& chance,
                        const WeatherYear& year);

/// One swarm in one trap.
struct Catch {
    SwarmId swarm;
    std::size_t trap = 0;  ///< index into the placement
    Day caught{0};
    std::int64_t bees = 0;
    bool prime = true;
    ColonyOrigin origin = ColonyOrigin::wild;
    double distance_m = 0;
    Taking taking;
};

/// What one season came to under one placement.
struct SeasonRecord {
    std::vector<Catch> catches;
    std::int64_t swarms = 0;  ///< cast in the simulated land, founders' included
    std::int64_t prime_swarms = 0;
    std::int64_t in_area = 0;  ///< of them, hung within the area
    std::int64_t settled_in_cavities = 0;
    std::int64_t hived_by_others = 0;
    std::int64_t lost = 0;  ///< dispersed or built in the open
    double scouting_h = 0;  ///< summed over hunts
    Bill bill;
    double value = 0;  ///< of the swarms taken
    double cost = 0;   ///< bill and taking together
    double net() const { return value - cost; }
};

/// Where each swarm hung and ended, for maps, replay and the planner's surrogate.
struct SwarmStory {
    Swarm swarm;
    HuntResult hunt;
    bool hived = false;
};

/// Hunts already run in this replicate, by a digest of the swarm and all it could find: reused where nothing within
/// reach has changed; and founders' swarms by where and when they settled. One memo serves one backdrop and one
/// thread.
struct HuntMemo {
    std::unordered_map<std::uint64_t, HuntResult> hunts;
    std::map<std::tuple<SwarmId, SiteId, Day>, std::vector<Swarm>> founders;
    std::int64_t asked = 0;  ///< hunts needed
    std::int64_t run = 0;    ///< of them, run by the agents
};

/// The season of swarms over `placement`. `stories`, where given, receives every swarm's.
SeasonRecord run_season(const Scenario& scenario, const Parameters& parameters, const Backdrop& backdrop,
                        const Placement& placement, const Chance& chance, HuntMemo* memo = nullptr,
                        std::vector<SwarmStory>* stories = nullptr);

}  // namespace maybough
