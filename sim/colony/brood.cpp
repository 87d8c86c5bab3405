// Brood ages by a day: eggs hatch, larvae are capped, bees emerge, some are lost at each step.
#include "colony/process.hpp"

namespace maybough::colony {

namespace {

/// How many of `count` survive a step; the lost are added to `died`.
std::int64_t survivors(std::int64_t count, double survival, Stream& luck, std::int64_t& died) {
    if (count == 0) return 0;
    const std::int64_t alive = std::min(count, round_at_random(luck, static_cast<double>(count) * survival));
    died += count - alive;
    return alive;
}

template <std::size_t days, std::size_t capped>
std::int64_t age(Brood<days, capped>& brood, const ColonyParameters& p, Stream& luck, std::int64_t& died) {
    if (brood.all() == 0) return 0;
    const std::int64_t ripe = brood.ages.turn();
    brood.sealed -= ripe;

    std::int64_t& hatching = brood.ages[egg_days];
    brood.eggs -= hatching;
    hatching = survivors(hatching, p.egg_survival, luck, died);
    brood.larvae += hatching;

    std::int64_t& sealing = brood.ages[capped];
    brood.larvae -= sealing;
    sealing = survivors(sealing, p.larva_survival, luck, died);
    brood.sealed += sealing;

    return survivors(ripe, p.pupa_survival, luck, died);
}

}  // namespace

Emerged age_brood(Colony& colony, const ColonyParameters& parameters, Stream& luck, DayOfColony& today) {
    Emerged emerged;
    emerged.workers = age(colony.workers, parameters, luck, today.brood_died);
    emerged.drones = age(colony.drone_brood, parameters, luck, today.brood_died);
    today.workers_emerged = emerged.workers;
    today.drones_emerged = emerged.drones;
    return emerged;
}

}  // namespace maybough::colony
