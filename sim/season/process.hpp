// What the processes of a season share within the room.
#pragma once

#include <vector>

#include "season/season.hpp"

namespace maybough::season {

/// Swarming is over by this day of the simulated year (mid-October north of the equator): colonies are not followed
/// further, since nothing a trap catches comes later.
inline constexpr int last_swarm_day = 288;

/// Adds the day that `colony` has just lived.
void write_diary(ColonyDiary& diary, const Colony& colony, const DayOfColony& today);

/// A colony of the start of the season, and one founded by `swarm` that moved into cavity `site` at `now_h`.
Colony colony_at_start(const Scenario& scenario, const DrawnColony& drawn, const Parameters& parameters,
                       const Chance& chance);
Colony colony_founded(const Scenario& scenario, const Backdrop& backdrop, const Swarm& swarm, SiteId site, double now_h,
                      const Parameters& parameters, const Chance& chance);
/// The natural cavity of this id.
const NaturalSite& cavity_of(const Backdrop& backdrop, SiteId site);

/// What came of a colony's year: the swarms it cast, and the day it died, forever_day where it lived on.
struct ColonyYear {
    std::vector<Swarm> cast;
    Day died{0};
};
inline constexpr Day forever_day{1 << 20};

/// The colony is lived through and its swarms are let go, day by day from `from`. `diary`, where given, receives its
/// days.
ColonyYear live_and_cast(Colony colony, Day from, const SkyYear& sky, const Parameters& parameters,
                         const Chance& chance, ColonyDiary* diary = nullptr);

/// The cavities that scouts of `swarm` can find, free when it hangs, in increasing id.
std::vector<SiteOffer> natural_offers(const Backdrop& backdrop, const Swarm& swarm, const ScoutParameters& parameters);

/// Order in which swarms hang: day, hour, id.
bool hangs_before(const Swarm& a, const Swarm& b);

/// Hours of the day at which a trap is hung, mended or taken down, and at which one that caught is open again.
inline constexpr double keeper_at_work_h = 12;
inline constexpr double hung_again_h = 18;

/// Later than anything that happens in a year, in hours.
inline constexpr double forever_h = 1e9;

/// Hours since the simulated year began.
inline double hours_at(Day day, double hour) {
    return 24.0 * day.value + hour;
}
inline Day day_at(double hours) {
    return {static_cast<int>(hours / 24.0)};
}

/// When a site may be moved into, in hours of the simulated year.
struct Window {
    double from_h = 0;
    double until_h = forever_h;
};

/// First stretch at or after `now_h` in which the trap hangs, is whole, untenanted and has no swarm in it.
/// `emptied_h`: when the keeper last took a swarm out of it (or will).
Window open_window(const TrapSeason& trap, double now_h, double emptied_h);

}  // namespace maybough::season
