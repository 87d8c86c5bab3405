// Diaries of a season's colonies, by living their year once more with the same luck: nothing is paid where none is
// kept.
#include <algorithm>

#include "season/process.hpp"

namespace maybough::season {

const NaturalSite& cavity_of(const Backdrop& backdrop, SiteId site) {
    const auto& cavities = backdrop.land.cavities;
    return *std::lower_bound(cavities.begin(), cavities.end(), site,
                             [](const NaturalSite& cavity, SiteId wanted) { return cavity.id < wanted; });
}

Colony colony_founded(const Scenario& scenario, const Backdrop& backdrop, const Swarm& swarm, SiteId site, double now_h,
                      const Parameters& parameters, const Chance& chance) {
    const NaturalSite& home = cavity_of(backdrop, site);
    const SwarmLeft left = left_after(swarm, now_h - hours_at(swarm.day, swarm.hour), parameters.scouts);
    const Settlers settlers{left.bees, swarm.prime, left.honey_g, swarm.queen_age_days};
    const ForageMix forage = forage_mix_at(scenario.land, home.at, parameters.landscape);
    return founded_colony(founder_of(swarm.id), home.at, settlers, home.cavity.volume_l, forage, day_at(now_h) + 1,
                          parameters.colony, chance);
}

void write_diary(ColonyDiary& diary, const Colony& colony, const DayOfColony& today) {
    ColonyDay day;
    day.bees = adults(colony);
    day.brood = all_brood(colony);
    day.honey_g = colony.honey_g;
    day.honey_in_g = today.honey_in_g;
    day.queen_cells = colony.queen_cells.sum() + colony.ripe_queens;
    day.episode = colony.episode;
    day.preparation = colony.preparation;
    // On the day cells are begun the sum is set back; the urge has then reached its limit.
    const bool begun = colony.episode == SwarmEpisode::preparing;
    day.urge = begun ? 1 : std::min(1.0, colony.summed_hazard / colony.hazard_limit);
    diary.days.push_back(day);
    diary.died = !colony.alive;
}

namespace {

ColonyDiary diary_of(const Colony& colony, int apiary, Day first, const Backdrop& backdrop,
                     const Parameters& parameters, const Chance& chance) {
    ColonyDiary diary{colony.id, colony.at, colony.origin, colony.volume_l, apiary, first, {}, {}, false};
    diary.cast = live_and_cast(colony, first, backdrop.sky, parameters, chance, &diary).cast;
    return diary;
}

}  // namespace

std::vector<ColonyDiary> keep_diaries(const Scenario& scenario, const Parameters& parameters, const Backdrop& backdrop,
                                      const SeasonLog& log, const Chance& chance) {
    std::vector<ColonyDiary> diaries;
    for (const DrawnColony& drawn : backdrop.land.colonies) {
        diaries.push_back(diary_of(colony_at_start(scenario, drawn, parameters, chance), drawn.apiary, {0}, backdrop,
                                   parameters, chance));
    }
    for (const LoggedSwarm& logged : log.swarms) {
        if (logged.fate != SeasonEvent::Kind::settled) continue;
        const Colony founded =
            colony_founded(scenario, backdrop, logged.swarm, logged.hunt.site, logged.ended_h, parameters, chance);
        diaries.push_back(diary_of(founded, -1, day_at(logged.ended_h) + 1, backdrop, parameters, chance));
    }
    return diaries;
}

}  // namespace maybough::season
