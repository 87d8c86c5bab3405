// The log of a season changes no bit of it, agrees with its record, and is enough to hunt and live again.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

#include "season/season.hpp"

using namespace maybough;

namespace {

using Kind = SeasonEvent::Kind;

struct Logged {
    Scenario scenario = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    Chance chance{1, 2};
    Backdrop backdrop = raise_backdrop(scenario, scenario.parameters, chance);
    std::vector<SwarmStory> stories;
    SeasonLog log;
    SeasonRecord record =
        run_season(scenario, scenario.parameters, backdrop, scenario.placement, chance, nullptr, &stories, &log);
};

const Logged& logged() {
    static const Logged logged;
    return logged;
}

std::int64_t count_fate(Kind fate) {
    return std::count_if(logged().log.swarms.begin(), logged().log.swarms.end(),
                         [fate](const LoggedSwarm& swarm) { return swarm.fate == fate; });
}

bool same(const HuntResult& a, const HuntResult& b) {
    return a.outcome == b.outcome && a.site == b.site && a.arrival_h == b.arrival_h && a.decision_h == b.decision_h &&
           a.scouting_h == b.scouting_h && a.scouts == b.scouts && a.sites_found == b.sites_found &&
           a.visitors_of_chosen == b.visitors_of_chosen && a.found_mask == b.found_mask;
}

}  // namespace

TEST_CASE("a season is the same to the bit whether or not its log is kept") {
    const Logged& kept = logged();
    std::vector<SwarmStory> stories;
    const SeasonRecord plain = run_season(kept.scenario, kept.scenario.parameters, kept.backdrop,
                                          kept.scenario.placement, kept.chance, nullptr, &stories);
    CHECK(plain.swarms == kept.record.swarms);
    CHECK(plain.scouting_h == kept.record.scouting_h);
    CHECK(plain.value == kept.record.value);
    CHECK(plain.cost == kept.record.cost);
    REQUIRE(plain.catches.size() == kept.record.catches.size());
    for (std::size_t i = 0; i < plain.catches.size(); ++i) {
        CHECK(plain.catches[i].swarm == kept.record.catches[i].swarm);
        CHECK(plain.catches[i].caught == kept.record.catches[i].caught);
        CHECK(plain.catches[i].taking.value == kept.record.catches[i].taking.value);
    }
    REQUIRE(stories.size() == kept.stories.size());
    for (std::size_t i = 0; i < stories.size(); ++i) {
        CHECK(stories[i].swarm.id == kept.stories[i].swarm.id);
        CHECK(same(stories[i].hunt, kept.stories[i].hunt));
    }
}

TEST_CASE("the log agrees with the season's record, and every swarm has one fate") {
    const Logged& s = logged();
    REQUIRE(s.record.swarms > 20);
    REQUIRE(!s.record.catches.empty());
    CHECK(static_cast<std::int64_t>(s.log.swarms.size()) == s.record.swarms);
    CHECK(count_fate(Kind::settled) == s.record.settled_in_cavities);
    CHECK(count_fate(Kind::hived) == s.record.hived_by_others);
    CHECK(count_fate(Kind::lost) == s.record.lost);
    CHECK(count_fate(Kind::caught) == static_cast<std::int64_t>(s.record.catches.size()));
    std::map<SwarmId, int> hung;
    std::map<SwarmId, int> ended;
    for (const SeasonEvent& event : s.log.events) {
        hung[event.swarm] += event.kind == Kind::hung ? 1 : 0;
        const bool ends = event.kind != Kind::hung && event.kind != Kind::forestalled && event.kind != Kind::taken;
        ended[event.swarm] += ends ? 1 : 0;
    }
    for (const LoggedSwarm& swarm : s.log.swarms) {
        CHECK(hung[swarm.swarm.id] == 1);
        CHECK(ended[swarm.swarm.id] == 1);
        CHECK(swarm.hung_h <= swarm.ended_h);
    }
    for (const Catch& caught : s.record.catches) {
        const auto in_log = [&](Kind kind) {
            return std::count_if(s.log.events.begin(), s.log.events.end(), [&](const SeasonEvent& event) {
                const Day day = kind == Kind::caught ? caught.caught : caught.taking.taken;
                return event.kind == kind && event.swarm == caught.swarm &&
                       static_cast<int>(event.hour / 24) == day.value && is_trap(event.site);
            });
        };
        CHECK(in_log(Kind::caught) == 1);
        CHECK(in_log(Kind::taken) == 1);
    }
    CHECK(std::is_sorted(s.log.events.begin(), s.log.events.end(),
                         [](const SeasonEvent& a, const SeasonEvent& b) { return a.hour < b.hour; }));
}

TEST_CASE(
    "a colony's diary is the year it lived: it casts the same swarms, each after cells at the limit of its urge") {
    const Logged& s = logged();
    const auto diaries = keep_diaries(s.scenario, s.scenario.parameters, s.backdrop, s.log, s.chance);
    std::set<SwarmId> cast;
    std::size_t founded = 0;
    for (const ColonyDiary& diary : diaries) {
        founded += is_founder(diary.id) ? 1 : 0;
        for (const Swarm& swarm : diary.cast) {
            cast.insert(swarm.id);
            if (!swarm.prime) continue;
            const auto left = static_cast<std::size_t>(swarm.day - diary.first);
            REQUIRE(left < diary.days.size());
            REQUIRE(left > 0);
            CHECK(diary.days[left].bees < diary.days[left - 1].bees);
            CHECK(diary.days[left - 1].urge == 1);
            CHECK(diary.days[left - 1].queen_cells > 0);
        }
    }
    std::set<SwarmId> logged;
    for (const LoggedSwarm& swarm : s.log.swarms) logged.insert(swarm.swarm.id);
    CHECK(cast == logged);
    CHECK(static_cast<std::int64_t>(founded) == s.record.settled_in_cavities);
}

TEST_CASE("every logged hunt, hunted again with or without a trace, ends as it did") {
    const Logged& s = logged();
    int traps_offered = 0;
    for (const LoggedSwarm& logged : s.log.swarms) {
        const HuntScene scene =
            hunt_scene(s.scenario, s.scenario.parameters, s.backdrop, s.scenario.placement, logged, s.chance);
        REQUIRE(scene.sites.size() == logged.offers.size());
        HuntTrace trace;
        CHECK(same(hunt_again(scene, s.backdrop, s.scenario.parameters, s.chance, &trace), logged.hunt));
        CHECK(same(hunt_again(scene, s.backdrop, s.scenario.parameters, s.chance), logged.hunt));
        for (const SceneSite& site : scene.sites) {
            if (!is_trap(site.offer.id)) continue;
            ++traps_offered;
            CHECK(find_weight(site.cavity, site.offer.distance_m, s.scenario.parameters.scouts) ==
                  site.offer.find_weight);
            CHECK(site_log_odds(site.cavity, s.scenario.parameters.scouts) == site.offer.log_odds);
        }
    }
    CHECK(traps_offered > 0);
}

TEST_CASE("changing a trap changes that trap alone; what cannot be changed is told") {
    const Logged& s = logged();
    HuntScene scene;
    std::size_t trap = 0;
    for (const LoggedSwarm& logged : s.log.swarms) {
        if (logged.fate != Kind::caught) continue;
        scene = hunt_scene(s.scenario, s.scenario.parameters, s.backdrop, s.scenario.placement, logged, s.chance);
        while (scene.sites[trap].offer.id != logged.hunt.site) ++trap;
        break;
    }
    REQUIRE(trap < scene.sites.size());
    const auto change = [&](const std::string& key, double value) {
        return with_change(scene, trap, key, value, s.scenario, s.scenario.parameters);
    };
    const HuntScene small = change("volume_l", 10);
    for (std::size_t i = 0; i < scene.sites.size(); ++i) {
        CHECK(small.sites[i].offer.id == scene.sites[i].offer.id);
        if (i == trap) {
            CHECK(small.sites[i].offer.log_odds < scene.sites[i].offer.log_odds);
        } else {
            CHECK(small.sites[i].offer.log_odds == scene.sites[i].offer.log_odds);
        }
    }
    const HuntScene rivalled = change("rival_m", 60);
    CHECK(rivalled.sites.size() == scene.sites.size() + 1);
    CHECK(std::is_sorted(rivalled.sites.begin(), rivalled.sites.end(),
                         [](const SceneSite& a, const SceneSite& b) { return a.offer.id < b.offer.id; }));
    CHECK_THROWS_AS(change("volume_l", 0), InputError);
    CHECK_THROWS_AS(change("colour", 1), InputError);
}

TEST_CASE("a quorum is told only where so many were seen outside, and never with more than were needed at first") {
    const Logged& s = logged();
    int met = 0;
    int just = 0;
    for (const LoggedSwarm& logged : s.log.swarms) {
        const HuntScene scene =
            hunt_scene(s.scenario, s.scenario.parameters, s.backdrop, s.scenario.placement, logged, s.chance);
        HuntTrace trace;
        const HuntResult result = hunt_again(scene, s.backdrop, s.scenario.parameters, s.chance, &trace);
        const int quorum = quorum_of(result.scouts, s.scenario.parameters.scouts);
        std::map<SiteId, int> most;
        for (const HuntEvent& event : trace) {
            if (event.kind == HuntEvent::Kind::visited) {
                most[event.site] = std::max(most[event.site], static_cast<int>(event.amount));
            }
            if (event.kind != HuntEvent::Kind::quorum) continue;
            ++met;
            CHECK(most[event.site] >= quorum);
            just += most[event.site] <= quorum + 2 ? 1 : 0;
            break;
        }
    }
    CHECK(met > 10);
    // A scout flies home as soon as she has seen it: at most hunts hardly more have gathered by then.
    CHECK(2 * just > met);
}

TEST_CASE("a founder begins with what its hunt has left of bees and honey") {
    const Logged& s = logged();
    const std::vector<ColonyDiary> diaries =
        keep_diaries(s.scenario, s.scenario.parameters, s.backdrop, s.log, s.chance);
    std::size_t at = s.backdrop.land.colonies.size();
    int founders = 0;
    for (const LoggedSwarm& logged_swarm : s.log.swarms) {
        if (logged_swarm.fate != Kind::settled) continue;
        const ColonyDiary& diary = diaries.at(at++);
        const Swarm& swarm = logged_swarm.swarm;
        const SwarmLeft left =
            left_after(swarm, logged_swarm.ended_h - logged_swarm.hung_h, s.scenario.parameters.scouts);
        CHECK(left.honey_g < swarm.honey_g);
        CHECK(left.bees <= swarm.bees);
        if (diary.days.empty()) continue;
        const ColonyDay& first = diary.days.front();
        CHECK(first.honey_g - first.honey_in_g <= left.honey_g + 1e-9);
        CHECK(first.bees <= left.bees);
        ++founders;
    }
    CHECK(founders > 0);
}
