// Keeper: trap kinds, hanging, visits, lure, damage, taking a swarm, costs and hours.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "landscape/landscape.hpp"
#include "parameters/keeper.hpp"
#include "scouts/scouts.hpp"

namespace maybough::keeper {

/// One kind of trap the keeper may build or buy.
struct TrapKind {
    std::string id;
    std::string name;
    double volume_l = 40;
    double entrance_area_cm2 = 12.5;
    double cost = 40;  ///< material for one, in the scenario's currency
    double build_hours = 1;
    double seasons_life = 5;
    bool frames = true;           ///< swarm is lifted over on frames; false: it has to be cut out
    double transfer_hours = 0.3;  ///< moving a fresh catch into a hive; grows with comb when it has no frames
    double comb = 0;              ///< old comb put in, 0..1
    double dryness = 1;
    bool plate = false;  ///< a metal plate about the entrance, which animals cannot gnaw wide
    double mass_kg = 6;
    int owned = 0;  ///< already there: no material or building cost
};

/// What the keeper's time and swarms are worth, and how visits go.
struct Keeper {
    double hour_value = 10;
    double km_cost = 0.4;
    double base_km = 4;    ///< to the area and back, once a round of visits
    double lure_cost = 4;  ///< one slow-release vial
    bool use_lure = true;
    double relure_after_days = 120;
    double swarm_value = 90;       ///< an early prime swarm
    double late_swarm_value = 40;  ///< one that comes after the date below
    int late_month = 7;
    int late_day = 1;
    double budget = 0;  ///< money for the season, 0 = no limit
    int max_traps = 15;
    std::string currency = "EUR";
};

/// The days on which the keeper sees to one trap.
struct Rounds {
    /// Between hanging and taking down. They fall on common rounds, every visit_every_days counted from the first day
    /// of the simulated year, so that traps with the same interval are seen on the same drive whenever they were hung.
    std::vector<Day> visits;
    /// Days among hanging and visits on which a vial is put in: at hanging, and at the first visit at which the last is
    /// old; none where the keeper uses no lures.
    std::vector<Day> lures;
};
/// The one calendar of a trap: what the simulation lives, the bill counts and every table, page and calendar shows.
Rounds visits_of(const TrapSetting& setting, const Keeper& keeper);

/// When traps hang: one rule for the plan, the rules of thumb and this year's forecast, from the days of the year on
/// which swarms hung in simulated seasons. hang_before_days before one swarm in twenty has come; the first day where
/// there are none.
Day hang_day(std::vector<int> swarm_days, const KeeperParameters& parameters);
/// Days of taking down worth trying, latest first: stay_after_days after nearly all swarms of the season have come (97
/// of 100; the usual choice), or 90, 80 or 70. `last` is the last day of the simulated year.
std::vector<Day> take_down_days(std::vector<int> swarm_days, Day last, const KeeperParameters& parameters);

/// A stretch of days in which a hung trap cannot take a swarm (0-based days of the simulated year, [from, until)).
struct Outage {
    enum class Cause { tenant, damage, stolen } cause{};
    Day from{0};
    Day until{0};
};

/// A stretch of days in which a hung trap is worse than it was made, but open.
struct Wear {
    enum class Cause {
        gnawed,   ///< entrance gnawed wide; the next visit mends it
        spoiled,  ///< old comb eaten by moths; the next visit clears it out, and it is gone for the season
    } cause{};
    Day from{0};
    Day until{0};
};

/// The life of one set trap apart from swarms: its site, visits and mishaps.
struct TrapSeason {
    SiteId site;
    Point at;
    std::size_t setting = 0;  ///< index into the placement
    Day hang{0};
    Day take_down{0};
    std::vector<Day> visits;
    std::vector<Outage> outages;
    std::vector<Wear> wear;
    std::vector<Day> lured_on;
};
TrapSeason plan_trap_season(const TrapSetting& setting, std::size_t index, const TrapKind& kind, const Spot& spot,
                            const Keeper& keeper, const KeeperParameters& parameters, const Chance& chance);

/// The trap as a cavity on `day` (lure weakened by age, shade and height of its spot).
Cavity trap_cavity(const TrapSeason& trap, const TrapSetting& setting, const TrapKind& kind, const Spot& spot, Day day,
                   const KeeperParameters& parameters);

/// First visit on or after `day`; take_down if none is left.
Day next_visit(const TrapSeason& trap, Day day);

/// What became of one catch.
struct Taking {
    Day taken{0};
    double waited_days = 0;
    double hours = 0;   ///< of work for taking it
    double value = 0;   ///< worth of the swarm, after losses by waiting and cutting out
    bool gone = false;  ///< stolen with the trap before the keeper came
    bool queen_lost = false;
};
Taking take_swarm(const Swarm& swarm, Day caught, const TrapSeason& trap, const TrapKind& kind, const Keeper& keeper,
                  Date first_day, const KeeperParameters& parameters, const Chance& chance);

/// Hours for taking a swarm of usual size that has waited half of the time between visits.
double usual_taking_hours(const TrapKind& kind, int visit_every_days, const KeeperParameters& parameters);

/// The cost of having these traps for a season, apart from taking swarms.
struct Bill {
    double material = 0;  ///< this season's share of traps
    double outlay = 0;    ///< money to find before the season
    double lures = 0;
    double hours = 0;
    double km = 0;
    int rounds = 0;  ///< rounds of visits, all traps due that day in one drive
    double total(const Keeper& keeper) const {
        return material + lures + hours * keeper.hour_value + km * keeper.km_cost;
    }
};
Bill bill(const Placement& placement, std::span<const TrapKind> kinds, std::span<const Spot> spots,
          const Keeper& keeper, const KeeperParameters& parameters);

}  // namespace maybough::keeper

namespace maybough {
using namespace keeper;  // so that rooms to the right need no prefix
}
