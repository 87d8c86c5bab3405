// A set trap's season apart from swarms: visits, vials, and the mishaps that put it out of use.
#include <algorithm>
#include <cmath>

#include "keeper/visits.hpp"

namespace maybough::keeper {

namespace {
std::vector<Day> common_rounds(const TrapSetting& setting) {
    std::vector<Day> visits;
    if (setting.visit_every_days <= 0) return visits;
    const int every = setting.visit_every_days;
    for (int day = (setting.hang.value / every + 1) * every; day < setting.take_down.value; day += every) {
        visits.push_back({day});
    }
    return visits;
}
}  // namespace

int days_hung(const TrapSetting& setting) {
    return std::max(0, setting.take_down - setting.hang);
}

Rounds visits_of(const TrapSetting& setting, const Keeper& keeper) {
    Rounds rounds{common_rounds(setting), {}};
    if (!setting.lured || !keeper.use_lure || days_hung(setting) == 0) return rounds;
    rounds.lures.push_back(setting.hang);
    for (const Day visit : rounds.visits) {
        if (visit - rounds.lures.back() >= keeper.relure_after_days) rounds.lures.push_back(visit);
    }
    return rounds;
}

Day next_visit(const TrapSeason& trap, Day day) {
    const auto visit = std::lower_bound(trap.visits.begin(), trap.visits.end(), day);
    return visit == trap.visits.end() ? trap.take_down : *visit;
}

namespace {
/// Chance of at least one event in a day.
double daily_chance(double per_100_days) {
    return -std::expm1(-per_100_days / 100);
}

/// Gnawing and moths, each day's luck keyed by place and day alone like that of the mishaps.
void add_wear(TrapSeason& trap, const TrapKind& kind, const KeeperParameters& parameters, const Chance& chance) {
    constexpr std::uint32_t gnawing = 1;  // numbers of the decision within keeper_tenant; 0 is the tenant itself
    constexpr std::uint32_t moths = 2;
    const double gnaw = kind.plate ? 0 : daily_chance(parameters.gnaw_per_100_days);
    const double spoil = kind.comb > 0 ? daily_chance(parameters.moths_per_100_days) : 0;
    Day mended = trap.hang;
    bool spoiled = false;
    for (Day day = trap.hang; day < trap.take_down; day = day + 1) {
        Stream gnawer = chance.stream(Purpose::keeper_tenant, trap.site, day, gnawing);
        if (bernoulli(gnawer, gnaw) && mended <= day) {
            mended = next_visit(trap, day + 1);
            trap.wear.push_back({Wear::Cause::gnawed, day, mended});
        }
        Stream moth = chance.stream(Purpose::keeper_tenant, trap.site, day, moths);
        if (bernoulli(moth, spoil) && !spoiled) {
            spoiled = true;
            trap.wear.push_back({Wear::Cause::spoiled, day, trap.take_down});
        }
    }
}
}  // namespace

TrapSeason plan_trap_season(const TrapSetting& setting, std::size_t index, const TrapKind& kind, const Spot& spot,
                            const Keeper& keeper, const KeeperParameters& parameters, const Chance& chance) {
    TrapSeason trap;
    trap.site = trap_site(spot.at);
    trap.at = spot.at;
    trap.setting = index;
    trap.hang = setting.hang;
    trap.take_down = {std::max(setting.hang.value, setting.take_down.value)};
    Rounds rounds = visits_of(setting, keeper);
    trap.visits = std::move(rounds.visits);
    trap.lured_on = std::move(rounds.lures);
    add_wear(trap, kind, parameters, chance);

    // Each day's luck is keyed by place and day alone, so that hanging a week earlier shifts nothing later. What
    // happens on a day happens after that day's visit.
    const double tenant = daily_chance(parameters.tenant_per_100_days);
    const double damage = daily_chance(parameters.damage_per_100_days);
    const double theft = daily_chance(parameters.theft_per_100_days);
    for (Day day = trap.hang; day < trap.take_down; day = day + 1) {
        const bool in_use = trap.outages.empty() || trap.outages.back().until <= day;
        Stream mishap = chance.stream(Purpose::keeper_damage, trap.site, day);
        const double u_theft = mishap.uniform();
        const double u_damage = mishap.uniform();
        if (u_theft < theft) {
            // Gone for the season: the keeper carries no spare.
            if (!in_use) trap.outages.back().until = day;
            trap.outages.push_back({Outage::Cause::stolen, day, trap.take_down});
            break;
        }
        if (!in_use) continue;
        if (u_damage < damage) {
            trap.outages.push_back({Outage::Cause::damage, day, next_visit(trap, day + 1)});
            continue;
        }
        Stream tenants = chance.stream(Purpose::keeper_tenant, trap.site, day);
        if (bernoulli(tenants, tenant)) {
            trap.outages.push_back({Outage::Cause::tenant, day, next_visit(trap, day + 1)});
        }
    }
    return trap;
}

}  // namespace maybough::keeper
