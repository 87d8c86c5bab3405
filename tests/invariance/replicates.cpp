// What may not change: threads, far traps, order of spots, margin; and the memo must not change a bit.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "planner/small_scenario.hpp"

using namespace maybough;

namespace {

const Scenario& demo() {
    static const Scenario scenario = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    return scenario;
}

Placement every_third_spot(const Scenario& scenario) {
    Placement placement;
    for (std::size_t i = 0; i < scenario.spots.size(); i += 3) placement.push_back(test::trap_at(scenario, i));
    return placement;
}

struct Outcome {
    std::uint32_t swarm;
    std::uint32_t site;
    double arrival_h;
    bool operator==(const Outcome&) const = default;
};

std::vector<Outcome> outcomes(const Scenario& scenario, const Placement& placement, const Chance& chance,
                              HuntMemo* memo = nullptr) {
    const Backdrop backdrop = raise_backdrop(scenario, scenario.parameters, chance);
    std::vector<SwarmStory> stories;
    run_season(scenario, scenario.parameters, backdrop, placement, chance, memo, &stories);
    std::vector<Outcome> all;
    for (const SwarmStory& story : stories) {
        all.push_back({story.swarm.id.value, story.hunt.site.value, story.hunt.arrival_h});
    }
    return all;
}

}  // namespace

TEST_CASE("one thread and eight give the same seasons to the bit") {
    Effort effort;
    effort.confirm_seasons = 12;
    effort.threads = 1;
    const Placement placement = every_third_spot(demo());
    const SeasonSummary one = simulate_seasons(demo(), placement, effort);
    effort.threads = 8;
    const SeasonSummary eight = simulate_seasons(demo(), placement, effort);
    REQUIRE(one.seasons.size() == 12);
    std::int64_t swarms = 0;
    for (std::size_t i = 0; i < one.seasons.size(); ++i) {
        const SeasonRecord& a = one.seasons[i];
        const SeasonRecord& b = eight.seasons[i];
        REQUIRE(a.catches.size() == b.catches.size());
        for (std::size_t c = 0; c < a.catches.size(); ++c) {
            CHECK(a.catches[c].swarm == b.catches[c].swarm);
            CHECK(a.catches[c].taking.value == b.catches[c].taking.value);
        }
        CHECK(a.swarms == b.swarms);
        CHECK(a.scouting_h == b.scouting_h);
        CHECK(a.cost == b.cost);
        swarms += a.swarms;
    }
    CHECK(swarms > 100);
    CHECK(one.catches.mean == eight.catches.mean);
    CHECK(one.net.se == eight.net.se);
}

TEST_CASE("a trap too far to be found changes no hunt") {
    Scenario with_far = demo();
    Spot far = with_far.spots.front();
    far.id = "far-away";
    far.at = {31000, 31000};
    with_far.spots.push_back(far);
    const Placement near = every_third_spot(demo());
    Placement both = near;
    TrapSetting setting = near.front();
    setting.spot = with_far.spots.size() - 1;
    both.push_back(setting);
    const Chance chance{11, 3};
    CHECK(outcomes(with_far, near, chance) == outcomes(with_far, both, chance));
}

TEST_CASE("reusing hunts that nothing met has changed changes no outcome, and saves most of them") {
    const Placement all = every_third_spot(demo());
    for (std::uint32_t season = 0; season < 4; ++season) {
        const Chance chance{11, season};
        HuntMemo memo;
        outcomes(demo(), all, chance, &memo);
        const auto first = memo.run;
        std::int64_t changed = 0;
        for (std::size_t t = 0; t < all.size(); ++t) {
            Placement placement = all;
            if (t % 3 == 0) placement.erase(placement.begin() + static_cast<std::ptrdiff_t>(t));
            if (t % 3 == 1) placement[t].height_m = 2;
            if (t % 3 == 2) placement[t].hang = {130};
            CHECK(outcomes(demo(), placement, chance, &memo) == outcomes(demo(), placement, chance));
            ++changed;
        }
        // Each change of one trap runs less than a quarter of the season's hunts again.
        CHECK(4 * (memo.run - first) < changed * first);
    }
}

TEST_CASE("the order of spots in the file changes no outcome") {
    Scenario reversed = demo();
    std::reverse(reversed.spots.begin(), reversed.spots.end());
    Placement placement = every_third_spot(demo());
    Placement same = placement;
    for (TrapSetting& setting : same) setting.spot = reversed.spots.size() - 1 - setting.spot;
    std::reverse(same.begin(), same.end());
    const Chance chance{11, 5};
    CHECK(outcomes(demo(), placement, chance) == outcomes(reversed, same, chance));
}

TEST_CASE("no trap holds two swarms at once, and no cavity is taken twice") {
    const Placement placement = every_third_spot(demo());
    for (std::uint32_t r = 0; r < 6; ++r) {
        const Chance chance{12, r};
        const Backdrop backdrop = raise_backdrop(demo(), demo().parameters, chance);
        std::vector<SwarmStory> stories;
        const SeasonRecord record =
            run_season(demo(), demo().parameters, backdrop, placement, chance, nullptr, &stories);
        std::set<std::uint32_t> taken;
        for (const SwarmStory& story : stories) {
            if (story.hunt.outcome != HuntOutcome::moved || is_trap(story.hunt.site)) continue;
            CHECK(taken.insert(story.hunt.site.value).second);
        }
        for (std::size_t i = 0; i < record.catches.size(); ++i) {
            for (std::size_t j = i + 1; j < record.catches.size(); ++j) {
                if (record.catches[i].trap == record.catches[j].trap) {
                    CHECK(record.catches[j].caught >= record.catches[i].taking.taken);
                }
            }
        }
    }
}
