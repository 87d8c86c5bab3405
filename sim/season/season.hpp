// Season: one replicate. The backdrop that traps do not change, and the season of swarms over one placement.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <tuple>
#include <unordered_map>
#include <vector>

#include "scenario/scenario.hpp"

namespace maybough::season {

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
};

/// A hunt that was run, and what it met.
struct KnownHunt {
    Swarm swarm;
    HuntResult result;
    HuntWitness witness;
};

/// Hunts already run in this replicate, by swarm: reused where nothing has changed that their scouts came upon; and
/// founders' swarms by where and when they settled. One memo serves one backdrop and one thread at a time.
struct HuntMemo {
    std::unordered_map<std::uint32_t, std::vector<KnownHunt>> hunts;
    std::map<std::tuple<SwarmId, SiteId, Day>, std::vector<Swarm>> founders;
    std::int64_t asked = 0;  ///< hunts needed
    std::int64_t run = 0;    ///< of them, run by the agents
};

/// One thing that happened to a swarm, for replay. Hours count from the start of the simulated year.
struct SeasonEvent {
    enum class Kind {
        hung,         ///< left its colony and hangs as a cluster
        forestalled,  ///< a site its scouts had found was taken by another swarm
        settled,      ///< moved into a natural cavity
        caught,       ///< moved into a trap
        taken,        ///< the keeper took it out of the trap
        hived,        ///< somebody hived the cluster
        lost          ///< dispersed, or built in the open
    } kind{};
    double hour = 0;
    SwarmId swarm;
    SiteId site;  ///< where there is one
};

/// A swarm as the season left it: what it could find in the end, how it chose, what became of it.
struct LoggedSwarm {
    Swarm swarm;
    std::vector<SiteOffer> offers;  ///< of its last hunt: hunted again, they give `hunt` to the bit
    HuntResult hunt;
    SeasonEvent::Kind fate{};  ///< settled, caught, hived or lost
    double hung_h = 0;
    double ended_h = 0;
    Point ended_at;  ///< cavity or trap; the cluster's own place where it found neither
};

/// The log of one season, kept only where one is asked for.
struct SeasonLog {
    std::vector<SeasonEvent> events;  ///< in order of hour
    std::vector<LoggedSwarm> swarms;  ///< in order of hanging
};

/// The season of swarms over `placement`. `stories`, where given, receives every swarm's; `log` all that happened.
SeasonRecord run_season(const Scenario& scenario, const Parameters& parameters, const Backdrop& backdrop,
                        const Placement& placement, const Chance& chance, HuntMemo* memo = nullptr,
                        std::vector<SwarmStory>* stories = nullptr, SeasonLog* log = nullptr);

/// A colony at the end of a day.
struct ColonyDay {
    std::int64_t bees = 0;
    std::int64_t brood = 0;
    double honey_g = 0;
    double honey_in_g = 0;  ///< brought home today
    std::int64_t queen_cells = 0;
    double urge = 0;          ///< summed hazard of beginning cells over its limit: at 1 cells are begun
    Preparation preparation;  ///< parts of today's hazard
    SwarmEpisode episode = SwarmEpisode::none;
};

/// The year of one colony, day by day.
struct ColonyDiary {
    ColonyId id;
    Point at;
    ColonyOrigin origin = ColonyOrigin::wild;
    double volume_l = 0;
    int apiary = -1;  ///< index of the known apiary, -1 for none
    Day first{0};
    std::vector<ColonyDay> days;  ///< up to its end, or the end of swarming
    std::vector<Swarm> cast;
    bool died = false;
};

/// Diaries of all colonies of the season, by living their year once more with the same luck: those of the backdrop in
/// its order, then those founded in natural cavities in the order in which they were.
std::vector<ColonyDiary> keep_diaries(const Scenario& scenario, const Parameters& parameters, const Backdrop& backdrop,
                                      const SeasonLog& log, const Chance& chance);

/// A site as scouts of one swarm meet it.
struct SceneSite {
    SiteOffer offer;
    Point at;
    Cavity cavity;
    int trap = -1;  ///< index into the placement; -1 for natural cavities and for a rival put up in a replay
};

/// All that one hunt depends on, to be run again, as it was or with one thing changed.
struct HuntScene {
    Swarm swarm;
    std::vector<SceneSite> sites;  ///< in increasing id
    double hived_h = 1e9;          ///< hours after which somebody hives the cluster
};
HuntScene hunt_scene(const Scenario& scenario, const Parameters& parameters, const Backdrop& backdrop,
                     const Placement& placement, const LoggedSwarm& logged, const Chance& chance);

/// Names of what a trap's replay may change: the cavity's own fields and `rival_m`.
std::vector<std::string> hunt_changes();
/// Throws InputError where hunt_changes() has no such name, or the value is out of its range.
void check_hunt_change(const std::string& key, double value);
/// The scene with one thing of one trap changed, under the same luck: a measure of the cavity, or `rival_m`: a trap
/// just like it that many metres to the east. `site` indexes scene.sites. Throws InputError where there is no such
/// thing to change or the value is out of range.
HuntScene with_change(const HuntScene& scene, std::size_t site, const std::string& key, double value,
                      const Scenario& scenario, const Parameters& parameters);
HuntResult hunt_again(const HuntScene& scene, const Backdrop& backdrop, const Parameters& parameters,
                      const Chance& chance, HuntTrace* trace = nullptr);

}  // namespace maybough::season

namespace maybough {
using namespace season;  // so that rooms to the right need no prefix
}
