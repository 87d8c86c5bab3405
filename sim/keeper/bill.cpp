// The bill of a season: traps, vials, hours and kilometres, apart from taking swarms.
#include <algorithm>
#include <cmath>
#include <set>

#include "keeper/visits.hpp"

namespace maybough::keeper {

namespace {
/// Minutes to hang or take down beyond `plain_minutes`: ladder, height and weight.
double lifting_minutes(const TrapSetting& setting, const TrapKind& kind, double plain_minutes,
                       const KeeperParameters& parameters) {
    double minutes = plain_minutes;
    if (setting.height_m > parameters.ladder_above_m) {
        minutes += parameters.ladder_hang_minutes +
                   parameters.climb_minutes_per_m * (setting.height_m - parameters.ladder_above_m);
    }
    return minutes + parameters.heavy_minutes_per_kg * std::max(0.0, kind.mass_kg - parameters.light_trap_kg);
}

/// Minutes at the trap over the whole season, the walk there and back included.
double season_minutes(const TrapSetting& setting, const TrapKind& kind, const Spot& spot, std::size_t visits,
                      std::size_t vials, const KeeperParameters& parameters) {
    const double ladder = setting.height_m > parameters.ladder_above_m ? parameters.ladder_visit_minutes : 0;
    const double walks = 2 * spot.minutes_to_reach * static_cast<double>(visits + 2);
    const double mishaps = (parameters.tenant_per_100_days + parameters.damage_per_100_days) / 100 * days_hung(setting);
    return walks + lifting_minutes(setting, kind, parameters.hang_minutes, parameters) +
           lifting_minutes(setting, kind, parameters.take_down_minutes, parameters) +
           static_cast<double>(visits) * (parameters.visit_minutes + ladder) +
           static_cast<double>(vials) * parameters.lure_minutes + mishaps * parameters.mend_minutes;
}

/// Traps that have to be made, their material and hours: this season's share and the outlay.
void add_material(const Placement& placement, std::span<const TrapKind> kinds, Bill& bill) {
    std::vector<int> wanted(kinds.size(), 0);
    for (const TrapSetting& setting : placement) ++wanted[setting.kind];
    for (std::size_t k = 0; k < kinds.size(); ++k) {
        const int made = std::max(0, wanted[k] - kinds[k].owned);
        const double seasons = std::max(1.0, kinds[k].seasons_life);
        bill.outlay += made * kinds[k].cost;
        bill.material += made * kinds[k].cost / seasons;
        bill.hours += made * kinds[k].build_hours / seasons;
    }
}
}  // namespace

Bill bill(const Placement& placement, std::span<const TrapKind> kinds, std::span<const Spot> spots,
          const Keeper& keeper, const KeeperParameters& parameters) {
    Bill bill;
    add_material(placement, kinds, bill);
    std::set<Day> rounds;
    for (const TrapSetting& setting : placement) {
        if (days_hung(setting) == 0) continue;
        const TrapKind& kind = kinds[setting.kind];
        const Spot& spot = spots[setting.spot];
        const auto [visits, vials] = visits_of(setting, keeper);
        rounds.insert(setting.hang);
        rounds.insert(visits.begin(), visits.end());
        rounds.insert(setting.take_down);
        bill.km += spot.drive_km * static_cast<double>(visits.size() + 2);
        bill.lures += keeper.lure_cost * static_cast<double>(vials.size());
        bill.hours += season_minutes(setting, kind, spot, visits.size(), vials.size(), parameters) / 60;
        // What theft takes on average is part of the price, since the trap's other seasons go with it.
        bill.material += kind.cost * -std::expm1(-parameters.theft_per_100_days / 100 * days_hung(setting)) *
                         (1 - 1 / std::max(1.0, kind.seasons_life));
    }
    bill.outlay += bill.lures;
    bill.rounds = static_cast<int>(rounds.size());
    bill.km += keeper.base_km * bill.rounds;
    bill.hours += bill.km / parameters.drive_speed_kmh;
    return bill;
}

}  // namespace maybough::keeper
