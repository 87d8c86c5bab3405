// One scout's life between rest, search, visit and dance, as events on the wheel; private to scouts/.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include "scouts/laws.hpp"
#include "scouts/scouts.hpp"
#include "scouts/wheel.hpp"

namespace maybough::scouts {

/// What a scout is about to finish at her next event.
enum class Doing : std::uint8_t {
    resting,   ///< at the cluster or on a vain flight, without a site
    going,     ///< on the way to a site
    visiting,  ///< in or before a site
    homing,    ///< on the way back with news
    dancing,   ///< on the floor
};

struct Scout {
    float runs = 0;           ///< waggle runs of her next dance
    std::uint32_t event = 0;  ///< events so far: part of the key of her next block
    std::int32_t site = -1;   ///< index of the site she is for
    std::uint32_t spare = 0;  ///< random bits left from her arrival, for the way home
    std::uint16_t place = 0;  ///< place on the dance floor, valid while dancing
    Doing doing = Doing::resting;
    bool fresh = false;    ///< she has not judged this site yet
    bool outside = false;  ///< seen outside the site during this visit
    bool sensed = false;   ///< met a quorum on this visit
};

/// A findable site with what the hunt precomputes of it and the counts at its door.
struct HuntedSite {
    SiteId id;
    double open_from_h = 0;
    double open_until_h = 0;
    double distance_m = 0;
    double log_odds = 0;
    std::uint64_t find_below = 0;     ///< cumulative chance of a find per flight, in 2^-32
    std::uint64_t recruit_below = 0;  ///< chance that a recruit finds it, in 2^-32
    float travel_ticks = 1;
    float first_runs = 0;       ///< first dance without error of judgement
    std::int32_t visitors = 0;  ///< there now
    std::int32_t outside = 0;   ///< seen outside now
    std::int32_t ever = 0;      ///< different scouts that have been there
    std::int32_t dancing = 0;   ///< dancers for it now
    bool found = false;
    bool danced_for = false;
    std::uint64_t low_hit = ~0ULL;  ///< the lowest and the highest draw that a search flight ended with at it
    std::uint64_t high_hit = 0;
    Asked asked;

    bool open_at(double hour) {
        if (hour < open_from_h) {
            asked.last_early_h = std::max(asked.last_early_h, hour);
            return false;
        }
        if (hour >= open_until_h) {
            asked.first_late_h = std::min(asked.first_late_h, hour);
            return false;
        }
        asked.first_open_h = std::min(asked.first_open_h, hour);
        asked.last_open_h = std::max(asked.last_open_h, hour);
        return true;
    }
    void hit(std::uint64_t draw) {
        low_hit = std::min(low_hit, draw);
        high_hit = std::max(high_hit, draw);
    }
    bool met() const { return low_hit <= high_hit; }
};

/// Mean durations in ticks and chances in the form the events need.
struct HuntRates {
    float rest, retire_rest, first_visit, visit, home, ticks_per_run;
    std::uint32_t search;
    double follow_half, switch_chance, stop_chance;
    std::uint64_t outside_below, break_retire_below;
    std::int32_t quorum;
    double company_gain;
    float decay_runs, least_runs, most_runs;
    float standards;  ///< factor on first dances, grown as the swarm lowers its standards
};

/// All that one hunt changes; reused by the next hunt on the thread, so that nothing is allocated.
struct HuntState {
    std::vector<HuntedSite> sites;
    std::vector<std::uint64_t> been;  ///< one bit for each scout and site
    std::size_t been_words = 0;       ///< words for each scout
    std::array<Scout, max_scouts> scouts;
    std::array<std::uint16_t, max_scouts> floor;  ///< scouts dancing now
    std::array<float, LawTables::normal_steps> error_factor;
    Wheel wheel;
    std::uint32_t scout_count = 0;
    std::uint32_t dancers = 0;
    std::int32_t quorum_site = -1;      ///< set by the scout that brings the news
    std::uint64_t lowest_miss = ~0ULL;  ///< the lowest draw of a search flight that ended at nothing
    HuntRates rates;
    std::array<std::uint32_t, 2> key;
    std::uint32_t swarm = 0;
    std::uint32_t purpose_and_day = 0;
    const LawTables* laws = nullptr;
    HuntTrace* trace = nullptr;
};

/// One block of four words for this event of this scout alone.
inline Block draw_block(HuntState& state, std::uint32_t scout) {
    return philox_block({state.scouts[scout].event++, state.swarm, scout, state.purpose_and_day}, state.key);
}

/// She is about to finish `doing` at tick `due`.
inline void schedule(HuntState& state, std::uint32_t scout, Doing doing, std::uint32_t due) {
    state.scouts[scout].doing = doing;
    state.wheel.set(scout, due);
}

/// The site on which the draw of a search flight falls, or -1 above all of them.
std::int32_t site_at(HuntState& state, std::uint64_t draw);

/// Prepares `state` for the hunt: drops sites that cannot be found, sends every scout to a first rest.
void open_hunt(HuntState& state, const Swarm& swarm, std::span<const SiteOffer> offers,
               const ScoutParameters& parameters, const Chance& chance, HuntTrace* trace);

/// The swarm has scouted for `scouting_h` hours: it lowers its standards.
void relax_standards(HuntState& state, const ScoutParameters& parameters, double scouting_h);

/// The next event of `scout` at tick `now`, which is `hour` hours after the swarm hung.
void live_event(HuntState& state, std::uint32_t scout, std::uint32_t now, double hour);

/// Night or rain from tick `now` on: everyone comes home, the floor empties; supporters go back to their sites after
/// it.
void break_off(HuntState& state, std::uint32_t now);

/// The supporters of `site` give it up (it proved tenanted under the swarm's nose).
void abandon_site(HuntState& state, std::int32_t site, std::uint32_t now);

}  // namespace maybough::scouts
