// One swarm's house-hunt: hours of sky, the scouts' events in them, quorum, warming, lift-off and flight.
#include <algorithm>
#include <cmath>

#include "scouts/scout_life.hpp"
#include "scouts/scouts.hpp"

namespace maybough::scouts {

namespace {

using Kind = HuntEvent::Kind;

constexpr double ticks_per_hour = 60.0 * ticks_per_minute;

/// What the swarm as a whole is about.
struct Course {
    const Swarm& swarm;
    const ScoutParameters& parameters;
    HuntResult result;
    std::uint32_t now = 0;        ///< ticks of flyable time since the swarm hung
    std::int32_t piped_for = -1;  ///< site the swarm warms up for
    std::uint32_t lift_off = 0;   ///< tick at which it will fly
    double decision_h = 0;
    double hived_h = 1e9;  ///< somebody hives the cluster then
    bool ended = false;
};

void tell(HuntState& state, Kind kind, double hour, SiteId site, double amount) {
    if (state.trace != nullptr) state.trace->push_back({hour, kind, -1, site, amount});
}

bool rival_has_quorum(const HuntState& state, std::int32_t chosen) {
    for (std::size_t i = 0; i < state.sites.size(); ++i) {
        if (static_cast<std::int32_t>(i) != chosen && state.sites[i].outside >= state.rates.quorum) return true;
    }
    return false;
}

void stop_piping(HuntState& state, Course& course) {
    course.piped_for = -1;
    state.quorum_site = -1;
}

/// Somebody has hived the cluster, or the swarm on its way.
void taken_in(HuntState& state, Course& course) {
    course.result.outcome = HuntOutcome::hived;
    course.result.arrival_h = course.hived_h;
    course.ended = true;
    tell(state, Kind::rested, course.hived_h, {}, 0);
}

/// The warm swarm takes wing: home, or back to its branch if it is split or finds the site tenanted.
void fly(HuntState& state, Course& course, double hour) {
    const std::int32_t chosen = course.piped_for;
    HuntedSite& site = state.sites[static_cast<std::size_t>(chosen)];
    tell(state, Kind::lifted, hour, site.id, site.ever);
    if (rival_has_quorum(state, chosen)) {
        tell(state, Kind::split, hour, site.id, 0);
        stop_piping(state, course);
        return;
    }
    const ScoutParameters& p = course.parameters;
    const double arrival_h = hour + site.distance_m / p.swarm_flight_ms / 3600 + p.settle_min / 60;
    if (arrival_h > course.hived_h) {
        taken_in(state, course);
        return;
    }
    if (!site.open_at(hour) || !site.open_at(arrival_h)) {
        abandon_site(state, chosen, course.now);
        stop_piping(state, course);
        return;
    }
    tell(state, Kind::arrived, arrival_h, site.id, 0);
    course.result.outcome = HuntOutcome::moved;
    course.result.site = site.id;
    course.result.arrival_h = arrival_h;
    course.result.decision_h = course.decision_h;
    course.result.visitors_of_chosen = site.ever;
    course.ended = true;
}

void one_tick(HuntState& state, Course& course, double hour) {
    const std::uint32_t now = ++course.now;
    state.wheel.turn(now, [&](std::uint32_t scout) { live_event(state, scout, now, hour); });
    if (course.piped_for < 0 && state.quorum_site >= 0) {
        course.piped_for = state.quorum_site;
        course.lift_off = now + static_cast<std::uint32_t>(course.parameters.warm_up_min * ticks_per_minute);
        course.decision_h = hour;
    }
    if (course.piped_for >= 0 && now >= course.lift_off) fly(state, course, hour);
}

void give_up(HuntState& state, Course& course, double hour, const Chance& chance) {
    Stream stream = chance.stream(Purpose::scout_swarm, course.swarm.id, course.swarm.day);
    const bool open = bernoulli(stream, course.parameters.open_nest_chance);
    course.result.outcome = open ? HuntOutcome::built_in_open : HuntOutcome::dispersed;
    course.result.arrival_h = hour;
    course.ended = true;
    tell(state, Kind::rested, hour, {}, 0);
}

/// Hours until the carried honey is eaten or the swarm's patience ends.
double patience_h(const Swarm& swarm, const ScoutParameters& p) {
    const double use_g_day = p.honey_mg_per_bee_day / 1000 * static_cast<double>(std::max<std::int64_t>(swarm.bees, 1));
    return 24 * std::min(swarm.honey_g / use_g_day, p.longest_hunt_days);
}

/// The scouts' events of a stretch of one solar hour, from `from_h` to `to_h` after the swarm hung.
void live_hour(HuntState& state, Course& course, double from_h, double to_h, double share, bool light, bool& flying) {
    const auto ticks = std::lround(ticks_per_hour * share * (to_h - from_h));
    if (ticks == 0 && flying) {
        break_off(state, course.now);
        stop_piping(state, course);
        tell(state, light ? Kind::rain : Kind::night, from_h, {}, 0);
    }
    flying = ticks > 0;
    if (flying) relax_standards(state, course.parameters, course.result.scouting_h);
    const double step_h = flying ? (to_h - from_h) / static_cast<double>(ticks) : 0;
    for (long tick = 0; tick < ticks && !course.ended; ++tick) {
        const double hour = from_h + (static_cast<double>(tick) + 0.5) * step_h;
        if (hour >= course.hived_h) {
            taken_in(state, course);
            return;
        }
        one_tick(state, course, hour);
        course.result.scouting_h += 1 / ticks_per_hour;
    }
}

void bear_witness(const HuntState& state, HuntWitness& witness) {
    witness.lowest_miss = state.lowest_miss;
    std::uint64_t from = 0;
    for (const HuntedSite& site : state.sites) {
        if (site.met()) {
            witness.met.push_back({site.id, site.distance_m, site.log_odds, site.find_below - from, site.low_hit,
                                   site.high_hit, site.asked});
        }
        from = site.find_below;
    }
}

void count_sites(const HuntState& state, HuntResult& result) {
    result.scouts = static_cast<int>(state.scout_count);
    for (const HuntedSite& site : state.sites) {
        result.sites_found += site.found ? 1 : 0;
        result.found_mask |= site.found ? site_bit(site.id) : 0;
        result.sites_danced_for += site.danced_for ? 1 : 0;
    }
}

}  // namespace

HuntResult hunt(const Swarm& swarm, std::span<const SiteOffer> sites, std::span<const DayOfSky> sky,
                const ScoutParameters& parameters, const Chance& chance, HuntTrace* trace) {
    return hunt_until(1e9, swarm, sites, sky, parameters, chance, trace);
}

HuntResult hunt_until(double hived_h, const Swarm& swarm, std::span<const SiteOffer> sites,
                      std::span<const DayOfSky> sky, const ScoutParameters& parameters, const Chance& chance,
                      HuntTrace* trace, HuntWitness* witness) {
    thread_local HuntState state;
    open_hunt(state, swarm, sites, parameters, chance, trace);
    Course course{swarm, parameters, {}};
    course.hived_h = hived_h;
    const double patience = patience_h(swarm, parameters);
    bool flying = true;
    double end_h = 0;
    for (std::size_t day = 0; day < sky.size() && !course.ended; ++day) {
        for (int hour = 0; hour < 24 && !course.ended; ++hour) {
            const double to_h = 24.0 * static_cast<double>(day) + hour + 1 - swarm.hour;
            if (to_h <= 0) continue;
            const double from_h = std::max(0.0, to_h - 1);
            if (from_h >= std::min(patience, hived_h)) {
                if (hived_h < patience) {
                    taken_in(state, course);
                } else {
                    give_up(state, course, patience, chance);
                }
                break;
            }
            const double share = static_cast<double>(sky[day].scouting[static_cast<std::size_t>(hour)]);
            const bool light = hour >= sky[day].sunrise_h && hour < sky[day].sunset_h;
            live_hour(state, course, from_h, to_h, share, light, flying);
            end_h = to_h;
        }
    }
    if (!course.ended) course.result.arrival_h = end_h;
    count_sites(state, course.result);
    if (witness != nullptr) bear_witness(state, *witness);
    return course.result;
}

SwarmLeft left_after(const Swarm& swarm, double hours, const ScoutParameters& parameters) {
    const double days = std::max(0.0, hours) / 24;
    const auto bees = static_cast<double>(swarm.bees);
    const double alive = bees * std::exp(-parameters.hunt_death_per_day * days);
    const double eaten_g = parameters.honey_mg_per_bee_day / 1000 * (bees + alive) / 2 * days;
    return {std::max<std::int64_t>(1, std::llround(alive)), std::max(0.0, swarm.honey_g - eaten_g)};
}

}  // namespace maybough::scouts
