// The season of swarms over one placement: swarms hang, hunt, settle; the keeper takes, re-hangs and pays.
#include <algorithm>
#include <map>
#include <set>

#include "season/process.hpp"

namespace maybough::season {

namespace {

/// One swarm that hangs or hunts.
struct Pending {
    Swarm swarm;
    std::vector<SiteOffer> offers;
    HuntResult hunt;
    double hived_after_h = 0;  ///< its hunt ends then at the latest
    double hung_h = 0;
    double ends_h = 0;  ///< settled, hived or lost
};

/// The running state of one season under one placement.
struct SeasonState {
    const Scenario& scenario;
    const Parameters& parameters;
    const Backdrop& backdrop;
    const Placement& placement;
    const Chance& chance;
    HuntMemo& memo;
    std::vector<TrapSeason> traps;        ///< in increasing site id
    std::vector<double> emptied_h;        ///< per trap: open to the next swarm from here on
    std::map<SiteId, double> tenanted_h;  ///< natural cavities taken in this season, and when
    std::vector<Swarm> to_hang;           ///< in order; founders' swarms are put in as they come
    std::size_t next_to_hang = 0;
    std::vector<Pending> hanging;
    SeasonRecord record;
    std::vector<SwarmStory>* stories = nullptr;
    SeasonLog* log = nullptr;
};

SeasonState open_season(const Scenario& scenario, const Parameters& parameters, const Backdrop& backdrop,
                        const Placement& placement, const Chance& chance, HuntMemo& memo) {
    SeasonState season{scenario, parameters, backdrop, placement, chance, memo, {}, {}, {}, backdrop.swarms, 0, {}, {}};
    for (std::size_t i = 0; i < placement.size(); ++i) {
        const TrapSetting& setting = placement[i];
        season.traps.push_back(plan_trap_season(setting, i, scenario.kinds[setting.kind], scenario.spots[setting.spot],
                                                scenario.keeper, parameters.keeper, chance));
    }
    std::sort(season.traps.begin(), season.traps.end(), [](const auto& a, const auto& b) { return a.site < b.site; });
    season.emptied_h.assign(season.traps.size(), 0);
    season.record.bill = bill(placement, scenario.kinds, scenario.spots, scenario.keeper, parameters.keeper);
    return season;
}

/// All that the scouts of `swarm` can find: natural cavities, then traps, with the hours in which each is free.
std::vector<SiteOffer> offers_to(const SeasonState& season, const Swarm& swarm, std::vector<SiteOffer> offers) {
    const double now_h = hours_at(swarm.day, swarm.hour);
    for (SiteOffer& offer : offers) {
        const auto taken = season.tenanted_h.find(offer.id);
        if (taken != season.tenanted_h.end()) offer.open_until_h = std::max(0.0, taken->second - now_h);
    }
    const bool south = is_southern(season.scenario.land.centre);
    const double reach_m = search_reach_m(season.parameters.scouts);
    const double longest_h = 24 * (season.parameters.scouts.longest_hunt_days + 1);  // and a day to fly over
    for (std::size_t t = 0; t < season.traps.size(); ++t) {
        const TrapSeason& trap = season.traps[t];
        const double away_m = distance_m(swarm.at, trap.at);
        if (away_m > reach_m || swarm.day > trap.take_down) continue;
        const TrapSetting& setting = season.placement[trap.setting];
        const Cavity cavity = trap_cavity(trap, setting, season.scenario.kinds[setting.kind],
                                          season.scenario.spots[setting.spot], swarm.day, season.parameters.keeper);
        const double weight = find_weight(cavity, away_m, season.parameters.scouts);
        if (!(weight > 0)) continue;
        const Window open = open_window(trap, now_h, season.emptied_h[t]);
        // What closes after the longest hunt closes never for this one: the same hunt, whatever the day of taking down.
        const double closes_h = open.until_h - now_h > longest_h ? forever_h : open.until_h - now_h;
        const double log_odds = site_log_odds(cavity, season.parameters.scouts, south);
        offers.push_back(
            {trap.site, away_m, weight, log_odds, open.from_h - now_h, closes_h, shared_taste(trap.at, log_odds)});
    }
    return offers;
}

/// Runs the hunt, or takes it from the memo, and says when the swarm's hanging ends and how.
void decide(SeasonState& season, Pending& pending) {
    const ScoutParameters& parameters = season.parameters.scouts;
    ++season.memo.asked;
    std::vector<KnownHunt>& known = season.memo.hunts[pending.swarm.id.value];
    auto same = std::find_if(known.begin(), known.end(), [&](const KnownHunt& each) {
        return each.swarm == pending.swarm && same_hunt(each.witness, pending.offers, parameters);
    });
    if (same == known.end()) {
        ++season.memo.run;
        const auto& days = season.backdrop.sky.days;
        const std::span<const DayOfSky> sky(days.begin() + pending.swarm.day.value, days.end());
        same = known.insert(same, {pending.swarm, {}, {}});
        same->result = hunt_until(pending.hived_after_h, pending.swarm, pending.offers, sky, parameters, season.chance,
                                  nullptr, &same->witness);
    }
    pending.hunt = same->result;
    pending.ends_h = pending.hung_h + pending.hunt.arrival_h;
}

void note(SeasonState& season, SeasonEvent::Kind kind, double hour, SwarmId swarm, SiteId site = {}) {
    if (season.log != nullptr) season.log->events.push_back({kind, hour, swarm, site});
}

/// A swarm leaves the air and hangs; its scouts set out.
void hang(SeasonState& season, const Swarm& swarm, std::vector<SiteOffer> natural) {
    Pending pending;
    pending.swarm = swarm;
    pending.hung_h = hours_at(swarm.day, swarm.hour);
    pending.hived_after_h = cluster_fate(swarm, season.parameters.swarm, season.chance).ends_h();
    pending.offers = offers_to(season, swarm, std::move(natural));
    decide(season, pending);
    note(season, SeasonEvent::Kind::hung, pending.hung_h, swarm.id);
    season.hanging.push_back(std::move(pending));
    SeasonRecord& record = season.record;
    ++record.swarms;
    record.prime_swarms += swarm.prime ? 1 : 0;
    record.in_area += distance_m(swarm.at, {}) <= season.scenario.land.radius_m ? 1 : 0;
}

/// Other swarms whose scouts come upon the site find it tenanted from this hour on, and may choose anew. The hunt up to
/// that hour stays as it was, since its draws are keyed; hunts that never find the site are left alone.
void close_to_others(SeasonState& season, SiteId site, double from_h) {
    for (Pending& other : season.hanging) {
        if (!found_site(other.hunt, site)) continue;
        for (SiteOffer& offer : other.offers) {
            if (offer.id != site || offer.open_until_h <= from_h - other.hung_h) continue;
            offer.open_until_h = from_h - other.hung_h;
            decide(season, other);
            note(season, SeasonEvent::Kind::forestalled, from_h, other.swarm.id, site);
        }
    }
}

/// The swarm founds a colony in a natural cavity; what that colony casts later in the year is put in the queue.
void found_colony(SeasonState& season, const Pending& pending, double now_h) {
    const Swarm& swarm = pending.swarm;
    if (casts_no_more(founder_of(swarm.id))) return;
    const std::tuple key{swarm.id, pending.hunt.site, day_at(now_h)};
    auto known = season.memo.founders.find(key);
    if (known == season.memo.founders.end()) {
        known =
            season.memo.founders
                .emplace(key, live_and_cast(colony_founded(season.scenario, season.backdrop, swarm, pending.hunt.site,
                                                           now_h, season.parameters, season.chance),
                                            day_at(now_h) + 1, season.backdrop.sky, season.parameters, season.chance)
                                  .cast)
                .first;
    }
    for (const Swarm& late : known->second) {
        season.to_hang.insert(
            std::upper_bound(season.to_hang.begin() + static_cast<std::ptrdiff_t>(season.next_to_hang),
                             season.to_hang.end(), late, hangs_before),
            late);
    }
}

std::vector<TrapSeason>::const_iterator trap_at(const SeasonState& season, SiteId site) {
    return std::find_if(season.traps.begin(), season.traps.end(),
                        [site](const auto& trap) { return trap.site == site; });
}

/// The swarm is in a trap; the keeper takes it at the next visit and hangs the trap again.
void catch_swarm(SeasonState& season, const Pending& pending, double now_h) {
    const auto trap = trap_at(season, pending.hunt.site);
    const auto t = static_cast<std::size_t>(trap - season.traps.begin());
    const TrapSetting& setting = season.placement[trap->setting];
    Catch caught;
    caught.swarm = pending.swarm.id;
    caught.trap = trap->setting;
    caught.caught = day_at(now_h);
    caught.bees = pending.swarm.bees;
    caught.prime = pending.swarm.prime;
    caught.origin = pending.swarm.origin;
    caught.distance_m = distance_m(pending.swarm.at, trap->at);
    caught.taking =
        take_swarm(pending.swarm, caught.caught, *trap, season.scenario.kinds[setting.kind], season.scenario.keeper,
                   season.scenario.first_day(), season.parameters.keeper, season.chance);
    season.emptied_h[t] = hours_at(caught.taking.taken, hung_again_h);
    note(season, SeasonEvent::Kind::taken, season.emptied_h[t], pending.swarm.id, trap->site);
    season.record.catches.push_back(caught);
    close_to_others(season, trap->site, now_h);
}

/// What ends the swarm's hanging.
SeasonEvent::Kind fate_of(const Pending& pending) {
    if (pending.hunt.outcome == HuntOutcome::hived) return SeasonEvent::Kind::hived;
    if (pending.hunt.outcome != HuntOutcome::moved) return SeasonEvent::Kind::lost;
    return is_trap(pending.hunt.site) ? SeasonEvent::Kind::caught : SeasonEvent::Kind::settled;
}

void log_swarm(SeasonState& season, const Pending& pending, SeasonEvent::Kind fate) {
    if (season.log == nullptr) return;
    const SiteId site = pending.hunt.site;
    Point ended_at = pending.swarm.at;
    if (fate == SeasonEvent::Kind::settled) ended_at = cavity_of(season.backdrop, site).at;
    if (fate == SeasonEvent::Kind::caught) ended_at = trap_at(season, site)->at;
    const bool housed = fate == SeasonEvent::Kind::caught || fate == SeasonEvent::Kind::settled;
    note(season, fate, pending.ends_h, pending.swarm.id, housed ? site : SiteId{});
    season.log->swarms.push_back(
        {pending.swarm, pending.offers, pending.hunt, fate, pending.hung_h, pending.ends_h, ended_at});
}

/// The swarm's hanging ends: hived by someone, lost, settled in a cavity, or caught.
void settle(SeasonState& season, std::size_t index) {
    const Pending pending = std::move(season.hanging[index]);
    season.hanging.erase(season.hanging.begin() + static_cast<std::ptrdiff_t>(index));
    const double now_h = pending.ends_h;
    season.record.scouting_h += pending.hunt.scouting_h;
    if (season.stories != nullptr) season.stories->push_back({pending.swarm, pending.hunt});
    const SeasonEvent::Kind fate = fate_of(pending);
    log_swarm(season, pending, fate);
    if (fate == SeasonEvent::Kind::hived) {
        ++season.record.hived_by_others;
    } else if (fate == SeasonEvent::Kind::lost) {
        ++season.record.lost;
    } else if (fate == SeasonEvent::Kind::caught) {
        catch_swarm(season, pending, now_h);
    } else {
        ++season.record.settled_in_cavities;
        season.tenanted_h[pending.hunt.site] = now_h;
        close_to_others(season, pending.hunt.site, now_h);
        found_colony(season, pending, now_h);
    }
}

/// Swarms counted in must be swarms counted out; no trap holds two at once.
void check_ledger(const SeasonState& season) {
    const SeasonRecord& record = season.record;
    const auto out = record.settled_in_cavities + record.hived_by_others + record.lost +
                     static_cast<std::int64_t>(record.catches.size());
    if (out != record.swarms) {
        throw ModelFault("swarms cast " + std::to_string(record.swarms) + " but accounted for " + std::to_string(out) +
                         " (seed " + std::to_string(season.chance.seed) + ", season " +
                         std::to_string(season.chance.replicate) + ")");
    }
}

/// The log is kept as things happen; it is read in order of hour and of hanging.
void close_log(SeasonLog& log) {
    std::stable_sort(log.events.begin(), log.events.end(),
                     [](const SeasonEvent& a, const SeasonEvent& b) { return a.hour < b.hour; });
    std::sort(log.swarms.begin(), log.swarms.end(),
              [](const LoggedSwarm& a, const LoggedSwarm& b) { return hangs_before(a.swarm, b.swarm); });
}

SeasonRecord close_season(SeasonState& season) {
    check_ledger(season);
    if (season.log != nullptr) close_log(*season.log);
    SeasonRecord& record = season.record;
    record.cost = record.bill.total(season.scenario.keeper);
    for (const Catch& caught : record.catches) {
        record.value += caught.taking.value;
        record.cost += caught.taking.hours * season.scenario.keeper.hour_value;
    }
    return std::move(record);
}

}  // namespace

SeasonRecord run_season(const Scenario& scenario, const Parameters& parameters, const Backdrop& backdrop,
                        const Placement& placement, const Chance& chance, HuntMemo* memo,
                        std::vector<SwarmStory>* stories, SeasonLog* log) {
    HuntMemo own;
    SeasonState season = open_season(scenario, parameters, backdrop, placement, chance, memo != nullptr ? *memo : own);
    season.stories = stories;
    season.log = log;
    std::size_t original = 0;  // swarms of the backdrop hung so far; founders' swarms come between them
    for (;;) {
        // What comes next: a swarm hangs, or one that hangs moves in somewhere.
        const auto first =
            std::min_element(season.hanging.begin(), season.hanging.end(), [](const auto& a, const auto& b) {
                return std::pair(a.ends_h, a.swarm.id) < std::pair(b.ends_h, b.swarm.id);
            });
        const bool more = season.next_to_hang < season.to_hang.size();
        if (!more && first == season.hanging.end()) break;
        const double hangs_h =
            more ? hours_at(season.to_hang[season.next_to_hang].day, season.to_hang[season.next_to_hang].hour)
                 : forever_h;
        if (first != season.hanging.end() && first->ends_h <= hangs_h) {
            settle(season, static_cast<std::size_t>(first - season.hanging.begin()));
        } else {
            const Swarm swarm = season.to_hang[season.next_to_hang++];
            const bool known = original < backdrop.swarms.size() && backdrop.swarms[original].id == swarm.id;
            hang(season, swarm,
                 known ? backdrop.natural_offers[original] : natural_offers(backdrop, swarm, parameters.scouts));
            original += known ? 1 : 0;
        }
    }
    return close_season(season);
}

}  // namespace maybough::season
