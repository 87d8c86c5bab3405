// One scout's life between rest, search, visit and dance, as events on the wheel.
#include "scouts/scout_life.hpp"

#include <algorithm>
#include <cmath>

namespace maybough::scouts {

namespace {

using Kind = HuntEvent::Kind;

constexpr double word_scale = 0x1.0p-32;

double unit(std::uint32_t word) {
    return (static_cast<double>(word) + 0.5) * word_scale;
}

std::uint32_t pick(std::uint32_t word, std::uint32_t count) {
    return static_cast<std::uint32_t>((static_cast<std::uint64_t>(word) * count) >> 32U);
}

void tell(HuntState& state, Kind kind, double hour, std::uint32_t scout, std::int32_t site, double amount) {
    if (state.trace == nullptr) return;
    const SiteId id = site >= 0 ? state.sites[static_cast<std::size_t>(site)].id : SiteId{};
    state.trace->push_back({hour, kind, static_cast<int>(scout), id, amount});
}

HuntedSite& site_of(HuntState& state, const Scout& bee) {
    return state.sites[static_cast<std::size_t>(bee.site)];
}

void step_on_floor(HuntState& state, std::uint32_t scout) {
    Scout& bee = state.scouts[scout];
    bee.place = static_cast<std::uint16_t>(state.dancers);
    state.floor[state.dancers++] = static_cast<std::uint16_t>(scout);
    ++site_of(state, bee).dancing;
}

void step_off_floor(HuntState& state, std::uint32_t scout) {
    Scout& bee = state.scouts[scout];
    const std::uint16_t last = state.floor[--state.dancers];
    state.floor[bee.place] = last;
    state.scouts[last].place = bee.place;
    --site_of(state, bee).dancing;
}

void retire(HuntState& state, std::uint32_t scout, std::uint32_t now, double hour, std::uint32_t word) {
    Scout& bee = state.scouts[scout];
    tell(state, Kind::rested, hour, scout, bee.site, bee.runs);
    bee.site = -1;
    schedule(state, scout, Doing::resting, now + exponential_ticks(*state.laws, state.rates.retire_rest, word));
}

/// Sets out for a site after `delay` ticks at home or on the search.
void set_out(HuntState& state, std::uint32_t scout, std::int32_t site, bool fresh, std::uint32_t due) {
    Scout& bee = state.scouts[scout];
    bee.site = site;
    bee.fresh = fresh;
    schedule(state, scout, Doing::going, due);
}

std::uint32_t travel(const HuntedSite& site, std::uint32_t word) {
    return std::max(1U,
                    static_cast<std::uint32_t>(site.travel_ticks + static_cast<float>(word & 0xffffU) * 0x1.0p-16F));
}

/// She reads the dance of `leader` and looks for its site; more often in vain when it is far.
void follow(HuntState& state, std::uint32_t scout, std::uint32_t leader, std::uint32_t now, double hour,
            const Block& words) {
    const std::int32_t index = state.scouts[leader].site;
    const HuntedSite& site = state.sites[static_cast<std::size_t>(index)];
    tell(state, Kind::followed, hour, scout, index, 0);
    if (words[3] < site.recruit_below) {
        set_out(state, scout, index, true, now + travel(site, words[2]));
        return;
    }
    state.scouts[scout].site = -1;
    const std::uint32_t rest = exponential_ticks(*state.laws, state.rates.rest, words[2]);
    schedule(state, scout, Doing::resting, now + state.rates.search + rest);
}

/// The site to which a searching scout is drawn by bees of her swarm at its door, or -1. The chances stand in the order
/// of the sites, so that a site without bees outside changes nothing for the others.
std::int32_t drawn_by_company(const HuntState& state, std::uint32_t word) {
    const double gain = state.rates.company_gain;
    const double most = gain * state.rates.quorum * static_cast<double>(state.sites.back().find_below);
    if (static_cast<double>(word) >= most) return -1;
    double cumulative = 0;
    std::uint64_t below = 0;
    for (std::size_t i = 0; i < state.sites.size(); ++i) {
        const HuntedSite& site = state.sites[i];
        cumulative += gain * std::min(site.outside, state.rates.quorum) * static_cast<double>(site.find_below - below);
        below = site.find_below;
        if (static_cast<double>(word) < cumulative) return static_cast<std::int32_t>(i);
    }
    return -1;
}

/// The site at the end of a search flight, or -1: its one uniform falls on a site or, above all of them, on nothing. A
/// new site at the end of the list can only turn nothing into a find.
std::int32_t come_upon(HuntState& state, const Block& words) {
    const std::int32_t site = site_at(state, words[1]);
    return site < 0 && !state.sites.empty() ? drawn_by_company(state, words[3]) : site;
}

void search(HuntState& state, std::uint32_t scout, std::uint32_t now, double hour, const Block& words) {
    const std::int32_t index = come_upon(state, words);
    if (index < 0) {
        const std::uint32_t rest = exponential_ticks(*state.laws, state.rates.rest, words[2]);
        schedule(state, scout, Doing::resting, now + state.rates.search + rest);
        return;
    }
    tell(state, Kind::found, hour, scout, index, 0);
    set_out(state, scout, index, true, now + std::max(1U, state.rates.search / 2));
}

void rested(HuntState& state, std::uint32_t scout, std::uint32_t now, double hour) {
    const Block words = draw_block(state, scout);
    const double dancers = state.dancers;
    if (dancers > 0 && unit(words[0]) * (dancers + state.rates.follow_half) < dancers) {
        follow(state, scout, state.floor[pick(words[1], state.dancers)], now, hour, words);
    } else {
        search(state, scout, now, hour, words);
    }
}

void arrived(HuntState& state, std::uint32_t scout, std::uint32_t now, double hour) {
    const Block words = draw_block(state, scout);
    Scout& bee = state.scouts[scout];
    HuntedSite& site = site_of(state, bee);
    if (!site.open_at(hour)) {
        retire(state, scout, now, hour, words[2]);
        return;
    }
    site.found = true;
    std::uint64_t& word = state.been[scout * state.been_words + static_cast<std::size_t>(bee.site) / 64];
    const std::uint64_t bit = std::uint64_t{1} << (static_cast<unsigned>(bee.site) & 63U);
    if ((word & bit) == 0) ++site.ever;
    word |= bit;
    bee.spare = words[3];
    bee.outside = words[0] < state.rates.outside_below;
    ++site.visitors;
    if (bee.outside) ++site.outside;
    tell(state, Kind::visited, hour, scout, bee.site, site.outside);
    const float mean = bee.fresh ? state.rates.first_visit : state.rates.visit;
    schedule(state, scout, Doing::visiting, now + exponential_ticks(*state.laws, mean, words[2]));
}

void leave_site(HuntState& state, Scout& bee) {
    HuntedSite& site = site_of(state, bee);
    --site.visitors;
    if (bee.outside) --site.outside;
    bee.outside = false;
}

void visited(HuntState& state, std::uint32_t scout, std::uint32_t now, double hour) {
    Scout& bee = state.scouts[scout];
    HuntedSite& site = site_of(state, bee);
    bee.sensed = site.outside >= state.rates.quorum && site.open_at(hour);
    leave_site(state, bee);
    schedule(state, scout, Doing::homing, now + travel(site, bee.spare));
}

void came_home(HuntState& state, std::uint32_t scout, std::uint32_t now, double hour) {
    const Block words = draw_block(state, scout);
    Scout& bee = state.scouts[scout];
    HuntedSite& site = site_of(state, bee);
    const HuntRates& rates = state.rates;
    if (bee.sensed && state.quorum_site < 0) {
        state.quorum_site = bee.site;
        tell(state, Kind::quorum, hour, scout, bee.site, site.outside);
    }
    bee.sensed = false;
    if (bee.fresh) {
        bee.runs = std::min(rates.most_runs, rates.standards * site.first_runs * state.error_factor[words[0] >> 24U]);
        bee.fresh = false;
    } else {
        bee.runs -= rates.decay_runs;
    }
    if (bee.runs < rates.least_runs) {
        retire(state, scout, now, hour, words[2]);
        return;
    }
    const double rivals = static_cast<double>(state.dancers) - site.dancing;
    if (rivals > 0 && unit(words[1]) * (rivals + rates.follow_half) < rates.switch_chance * rivals) {
        const std::uint32_t leader = state.floor[pick(words[3], state.dancers)];
        if (state.scouts[leader].site != bee.site) {
            const Block more = draw_block(state, scout);
            follow(state, scout, leader, now, hour, more);
            return;
        }
    }
    site.danced_for = true;
    tell(state, Kind::danced, hour, scout, bee.site, bee.runs);
    step_on_floor(state, scout);
    const float dance = bee.runs * rates.ticks_per_run + static_cast<float>(words[2] & 0xffffU) * 0x1.0p-16F;
    schedule(state, scout, Doing::dancing, now + std::max(1U, static_cast<std::uint32_t>(dance)));
}

void danced(HuntState& state, std::uint32_t scout, std::uint32_t now, double hour) {
    const Block words = draw_block(state, scout);
    Scout& bee = state.scouts[scout];
    step_off_floor(state, scout);
    if (state.dancers > 0 && unit(words[0]) < state.rates.stop_chance) {
        const std::uint32_t rival = state.floor[pick(words[1], state.dancers)];
        if (state.scouts[rival].site != bee.site) {
            step_off_floor(state, rival);
            state.wheel.unset(rival);
            tell(state, Kind::stopped, hour, rival, state.scouts[rival].site, state.scouts[rival].runs);
            retire(state, rival, now, hour, words[3]);
        }
    }
    const std::uint32_t pause = exponential_ticks(*state.laws, state.rates.home, words[2]);
    set_out(state, scout, bee.site, false, now + pause + travel(site_of(state, bee), words[3]));
}

}  // namespace

std::int32_t site_at(HuntState& state, std::uint64_t draw) {
    if (state.sites.empty() || draw >= state.sites.back().find_below) {
        state.lowest_miss = std::min(state.lowest_miss, draw);
        return -1;
    }
    const auto hit = std::upper_bound(state.sites.begin(), state.sites.end(), draw,
                                      [](std::uint64_t u, const HuntedSite& s) { return u < s.find_below; });
    hit->hit(draw);
    return static_cast<std::int32_t>(hit - state.sites.begin());
}

void relax_standards(HuntState& state, const ScoutParameters& p, double scouting_h) {
    state.rates.standards = static_cast<float>(std::exp(p.dance_slope * p.relax_per_h * scouting_h));
}

void live_event(HuntState& state, std::uint32_t scout, std::uint32_t now, double hour) {
    switch (state.scouts[scout].doing) {
        case Doing::resting:
            rested(state, scout, now, hour);
            return;
        case Doing::going:
            arrived(state, scout, now, hour);
            return;
        case Doing::visiting:
            visited(state, scout, now, hour);
            return;
        case Doing::homing:
            came_home(state, scout, now, hour);
            return;
        case Doing::dancing:
            danced(state, scout, now, hour);
            return;
    }
}

void break_off(HuntState& state, std::uint32_t now) {
    for (HuntedSite& site : state.sites) {
        site.visitors = 0;
        site.outside = 0;
        site.dancing = 0;
    }
    state.dancers = 0;
    state.quorum_site = -1;
    state.wheel.clear(state.scout_count);
    for (std::uint32_t scout = 0; scout < state.scout_count; ++scout) {
        Scout& bee = state.scouts[scout];
        bee.outside = false;
        bee.sensed = false;
        const Block words = draw_block(state, scout);
        const std::uint32_t rest = exponential_ticks(*state.laws, state.rates.rest, words[2]);
        if (words[0] < state.rates.break_retire_below) bee.site = -1;
        if (bee.site < 0) {
            schedule(state, scout, Doing::resting, now + rest);
        } else {
            schedule(state, scout, Doing::going, now + rest + travel(site_of(state, bee), words[3]));
        }
    }
}

void abandon_site(HuntState& state, std::int32_t site, std::uint32_t now) {
    for (std::uint32_t scout = 0; scout < state.scout_count; ++scout) {
        Scout& bee = state.scouts[scout];
        if (bee.site != site) continue;
        if (bee.doing == Doing::dancing) step_off_floor(state, scout);
        if (bee.doing == Doing::visiting) leave_site(state, bee);
        bee.site = -1;
        bee.sensed = false;
        state.wheel.unset(scout);
        const Block words = draw_block(state, scout);
        schedule(state, scout, Doing::resting, now + exponential_ticks(*state.laws, state.rates.retire_rest, words[2]));
    }
}

}  // namespace maybough::scouts
