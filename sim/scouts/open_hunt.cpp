// Before the first event of a hunt: rates in ticks, the sites that can be found, and every scout's first rest.
#include <algorithm>
#include <cmath>

#include "scouts/scout_life.hpp"
#include "scouts/witness.hpp"

namespace maybough::scouts {

namespace {

HuntRates rates_of(const ScoutParameters& p, std::uint32_t scouts) {
    const auto ticks = [](double minutes) { return static_cast<float>(minutes * ticks_per_minute); };
    HuntRates r{};
    r.rest = ticks(p.rest_min);
    r.retire_rest = ticks(p.retire_rest_min);
    r.first_visit = ticks(p.first_visit_min);
    r.visit = ticks(p.visit_min);
    r.home = ticks(p.home_min);
    r.ticks_per_run = ticks(p.run_s / 60);
    r.search = static_cast<std::uint32_t>(std::lround(ticks(p.search_min)));
    r.follow_half = p.follow_half_share * scouts;
    r.switch_chance = p.switch_chance;
    r.stop_chance = p.stop_chance;
    r.outside_below = chance_below(p.outside_share);
    r.break_retire_below = chance_below(p.break_retire_chance);
    r.company_gain = p.company_find_gain;
    r.quorum = quorum_of(scouts, p);
    r.decay_runs = static_cast<float>(p.decay_runs);
    r.least_runs = static_cast<float>(p.least_dance_runs);
    r.standards = 1;
    r.most_runs = static_cast<float>(p.most_dance_runs);
    return r;
}

/// Keeps the sites that can be found, with bounds that leave "nothing" at the top of [0, 1).
void open_sites(HuntState& state, std::span<const SiteOffer> offers, const Swarm& swarm, const ScoutParameters& p,
                const Chance& chance) {
    state.sites.clear();
    std::uint64_t bound = 0;
    for (const SiteOffer& offer : offers) {
        if (!(offer.find_weight > 0)) continue;
        bound = find_bound(bound, offer, p);
        HuntedSite site;
        site.id = offer.id;
        site.open_from_h = offer.open_from_h;
        site.open_until_h = offer.open_until_h;
        site.distance_m = offer.distance_m;
        site.log_odds = offer.log_odds;
        site.find_below = bound;
        site.recruit_below = chance_below(p.recruit_success * std::exp(-offer.distance_m / p.recruit_length_m));
        site.travel_ticks = static_cast<float>(offer.distance_m / p.flight_ms / 60 * ticks_per_minute);
        Stream taste = chance.stream(Purpose::scout_assess, swarm.id, swarm.day,
                                     offer.taste_key != 0 ? offer.taste_key : offer.id.value);
        const double liking = offer.log_odds + p.distance_log_odds_per_km * offer.distance_m / 1000 +
                              p.taste_sd * static_cast<double>(state.laws->normal[taste.word() >> 24U]);
        site.first_runs = static_cast<float>(p.first_dance_runs * std::exp(p.dance_slope * liking));
        state.sites.push_back(site);
    }
}

/// The site that a scout found before the swarm left, or -1: one uniform for all her early flights, on the same
/// cumulative chances as a search flight.
std::int32_t known_before(HuntState& state, double early_flights, std::uint32_t word) {
    if (!(early_flights > 0)) return -1;
    return site_at(state, static_cast<std::uint64_t>(static_cast<double>(word) / early_flights));
}

/// Every scout begins at rest, or on the way to the site that she knows from before.
void send_out(HuntState& state, const ScoutParameters& p) {
    for (std::uint32_t scout = 0; scout < state.scout_count; ++scout) {
        Scout& bee = state.scouts[scout];
        bee = {};
        const Block words = draw_block(state, scout);
        bee.site = known_before(state, p.early_flights, words[1]);
        bee.fresh = bee.site >= 0;
        if (bee.fresh && state.trace != nullptr) {
            const SiteId site = state.sites[static_cast<std::size_t>(bee.site)].id;
            state.trace->push_back({0, HuntEvent::Kind::found, static_cast<int>(scout), site, 0});
        }
        schedule(state, scout, bee.fresh ? Doing::going : Doing::resting,
                 exponential_ticks(*state.laws, state.rates.rest, words[2]));
    }
}

}  // namespace

std::int32_t quorum_of(double scouts, const ScoutParameters& p) {
    const double most = std::min(std::max(p.scouts_max, p.scouts_min), static_cast<double>(max_scouts));
    const double quorum = std::max(p.quorum_least, p.quorum_outside * std::min(1.0, scouts / most));
    return static_cast<std::int32_t>(std::lround(quorum));
}

void open_hunt(HuntState& state, const Swarm& swarm, std::span<const SiteOffer> offers, const ScoutParameters& p,
               const Chance& chance, HuntTrace* trace) {
    const double share = p.scout_share * static_cast<double>(swarm.bees);
    const double most = std::min(std::max(p.scouts_max, p.scouts_min), static_cast<double>(max_scouts));
    state.scout_count = static_cast<std::uint32_t>(std::lround(std::clamp(share, p.scouts_min, most)));
    state.rates = rates_of(p, state.scout_count);
    state.laws = &law_tables();
    state.key = {chance.seed, chance.replicate};
    state.swarm = swarm.id.value;
    state.purpose_and_day = (static_cast<std::uint32_t>(Purpose::scout_event) << 16U) |
                            (static_cast<std::uint32_t>(swarm.day.value + 1) & 0xffffU);
    state.trace = trace;
    state.dancers = 0;
    state.quorum_site = -1;
    state.lowest_miss = ~0ULL;
    open_sites(state, offers, swarm, p, chance);
    state.been_words = (state.sites.size() + 63) / 64;
    state.been.assign(state.been_words * state.scout_count, 0);
    for (std::size_t i = 0; i < LawTables::normal_steps; ++i) {
        state.error_factor[i] = static_cast<float>(
            std::exp(p.dance_slope * p.judgement_error * static_cast<double>(state.laws->normal[i])));
    }
    state.wheel.clear(state.scout_count);
    send_out(state, p);
}

}  // namespace maybough::scouts
