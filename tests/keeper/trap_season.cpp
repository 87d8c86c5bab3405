// A set trap's season: rounds, vials, mishaps and what they depend on; the trap as the scouts meet it.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "sample.hpp"

using namespace maybough;
using namespace maybough::testing;

namespace {
TrapSeason season_of(const TrapSetting& setting, const KeeperParameters& parameters, Chance chance = {1, 0},
                     const Keeper& keeper = {}) {
    return plan_trap_season(setting, 0, sample_kind(), sample_spot(), keeper, parameters, chance);
}
}  // namespace

TEST_CASE("visits fall on common rounds between hanging and taking down") {
    const TrapSeason trap = season_of(sample_setting(), no_mishaps());
    REQUIRE(trap.visits.size() == 15);  // day 98 is a round day, as is 210: 105, 112, ... 203 between them
    CHECK(trap.visits.front() == Day{105});
    CHECK(trap.visits.back() == Day{203});
    TrapSetting later = sample_setting();
    later.hang = {101};
    CHECK(season_of(later, no_mishaps()).visits.front() == Day{105});
    later.visit_every_days = 14;
    for (const Day visit : season_of(later, no_mishaps()).visits) CHECK(visit.value % 14 == 0);
    CHECK(trap.outages.empty());
}

TEST_CASE("the next visit is on or after the day, and taking down is the last") {
    const TrapSeason trap = season_of(sample_setting(), no_mishaps());
    CHECK(next_visit(trap, {99}) == Day{105});
    CHECK(next_visit(trap, {105}) == Day{105});
    CHECK(next_visit(trap, {204}) == Day{210});
    CHECK(next_visit(trap, {300}) == Day{210});
}

TEST_CASE("a trap that is never hung has no visits, vials or mishaps") {
    TrapSetting setting = sample_setting();
    setting.take_down = setting.hang;
    const TrapSeason trap = season_of(setting, {});
    CHECK(trap.visits.empty());
    CHECK(trap.lured_on.empty());
    CHECK(trap.outages.empty());
}

TEST_CASE("vials go in at hanging and when the last is old, and only where wanted") {
    Keeper keeper;
    keeper.relure_after_days = 30;
    const TrapSeason trap = season_of(sample_setting(), no_mishaps(), {1, 0}, keeper);
    REQUIRE(trap.lured_on.size() == 4);
    CHECK(trap.lured_on[0] == Day{98});
    CHECK(trap.lured_on[1] == Day{133});  // the first round at least 30 days on
    TrapSetting bare = sample_setting();
    bare.lured = false;
    CHECK(season_of(bare, {}).lured_on.empty());
    keeper.use_lure = false;
    CHECK(season_of(sample_setting(), {}, {1, 0}, keeper).lured_on.empty());
}

TEST_CASE("mishaps come as often as stated and end at the next visit") {
    // Tenants and damage end at a round, so a trap is open to them for part of the time only: compare per open day.
    KeeperParameters parameters;
    parameters.tenant_per_100_days = 2;
    parameters.damage_per_100_days = 1;
    parameters.theft_per_100_days = 0;
    double open_days = 0, tenants = 0, damages = 0;
    for (std::uint32_t replicate = 0; replicate < 400; ++replicate) {
        const TrapSeason trap = season_of(sample_setting(), parameters, {9, replicate});
        open_days += 112;
        for (const Outage& outage : trap.outages) {
            CHECK(outage.from < outage.until);
            CHECK((outage.until.value % 7 == 0 || outage.until == trap.take_down));
            CHECK(outage.until - outage.from <= 7);
            (outage.cause == Outage::Cause::tenant ? tenants : damages) += 1;
            open_days -= outage.until - outage.from - 1;
        }
    }
    const double damage = -std::expm1(-0.01);
    const double tenant = (1 - damage) * -std::expm1(-0.02);
    // Binomial over some 38 000 open days; z = 4.
    CHECK(std::abs(damages - damage * open_days) < 4 * std::sqrt(damage * open_days));
    CHECK(std::abs(tenants - tenant * open_days) < 4 * std::sqrt(tenant * open_days));
}

TEST_CASE("a stolen trap is gone for the season") {
    KeeperParameters parameters = no_mishaps();
    parameters.theft_per_100_days = 1;
    int stolen = 0;
    constexpr int n = 1000;
    for (std::uint32_t replicate = 0; replicate < n; ++replicate) {
        const TrapSeason trap = season_of(sample_setting(), parameters, {9, replicate});
        if (trap.outages.empty()) continue;
        ++stolen;
        CHECK(trap.outages.size() == 1);
        CHECK(trap.outages.back().cause == Outage::Cause::stolen);
        CHECK(trap.outages.back().until == trap.take_down);
    }
    const double p = -std::expm1(-1.12);  // 112 days at 1 in 100
    CHECK(std::abs(stolen - n * p) < 4 * std::sqrt(n * p * (1 - p)));
}

TEST_CASE("hanging earlier, another kind or another name shifts no later day's luck") {
    KeeperParameters parameters = no_mishaps();
    parameters.damage_per_100_days = 3;
    TrapSetting early = sample_setting();
    early.hang = {70};
    Spot renamed = sample_spot();
    renamed.id = "another";
    TrapKind other = sample_kind();
    other.volume_l = 13;
    for (std::uint32_t replicate = 0; replicate < 50; ++replicate) {
        const TrapSeason a = season_of(sample_setting(), parameters, {4, replicate});
        const TrapSeason b = plan_trap_season(early, 3, other, renamed, {}, parameters, {4, replicate});
        // Once both are in use on the same day they fare alike from there on; day 105 is a round for both.
        std::vector<Outage> later_a, later_b;
        std::copy_if(a.outages.begin(), a.outages.end(), std::back_inserter(later_a),
                     [](const Outage& o) { return o.from >= Day{105}; });
        std::copy_if(b.outages.begin(), b.outages.end(), std::back_inserter(later_b),
                     [](const Outage& o) { return o.from >= Day{105}; });
        REQUIRE(later_a.size() == later_b.size());
        for (std::size_t i = 0; i < later_a.size(); ++i) {
            CHECK(later_a[i].from == later_b[i].from);
            CHECK(later_a[i].until == later_b[i].until);
        }
    }
}

TEST_CASE("the trap as a cavity: kind, setting and spot, with the lure's release falling") {
    KeeperParameters parameters = no_mishaps();
    const TrapSeason trap = season_of(sample_setting(), parameters);
    Spot shaded = sample_spot();
    shaded.shade = 1;
    const auto lure_on = [&](const Spot& spot, int day) {
        return trap_cavity(trap, sample_setting(), sample_kind(), spot, {day}, parameters).lure;
    };
    CHECK(lure_on(shaded, 97) == 0);
    CHECK(lure_on(shaded, 98) == 1);
    CHECK(lure_on(shaded, 98 + static_cast<int>(parameters.lure_half_life_days)) == doctest::Approx(0.5));
    shaded.shade = 0;
    const double half_life_sun = parameters.lure_half_life_days / (1 + parameters.lure_sun_speed);
    CHECK(lure_on(shaded, 98 + static_cast<int>(half_life_sun)) == doctest::Approx(0.5));

    const Cavity cavity = trap_cavity(trap, sample_setting(), sample_kind(), sample_spot(), {120}, parameters);
    CHECK(cavity.volume_l == 30);
    CHECK(cavity.height_m == 2);
    CHECK(cavity.facing_deg == 135);
    CHECK(cavity.shade == 0.6);
    CHECK(cavity.visibility == 0.7);
    CHECK(cavity.comb == 1);
    CHECK(cavity.dryness == 0.9);
}

TEST_CASE("a fresh vial brings the release back to one") {
    Keeper keeper;
    keeper.relure_after_days = 30;
    const TrapSeason trap = season_of(sample_setting(), no_mishaps(), {1, 0}, keeper);
    const auto lure_on = [&](int day) {
        return trap_cavity(trap, sample_setting(), sample_kind(), sample_spot(), {day}, {}).lure;
    };
    CHECK(lure_on(132) < 0.75);
    CHECK(lure_on(133) == 1);
}

TEST_CASE("animals gnaw entrances as often as stated, never a plated one, and the next visit mends them") {
    KeeperParameters parameters = no_mishaps();
    parameters.gnaw_per_100_days = 2;
    TrapKind plated = sample_kind();
    plated.plate = true;
    double open_days = 0, gnawed = 0;
    for (std::uint32_t replicate = 0; replicate < 300; ++replicate) {
        const Chance chance{6, replicate};
        CHECK(plan_trap_season(sample_setting(), 0, plated, sample_spot(), {}, parameters, chance).wear.empty());
        const TrapSeason trap = season_of(sample_setting(), parameters, chance);
        open_days += 112;
        for (const Wear& wear : trap.wear) {
            CHECK(wear.cause == Wear::Cause::gnawed);
            CHECK(wear.until == next_visit(trap, wear.from + 1));
            const auto entrance_on = [&](Day day) {
                return trap_cavity(trap, sample_setting(), sample_kind(), sample_spot(), day, parameters)
                    .entrance_area_cm2;
            };
            const double made = sample_kind().entrance_area_cm2;
            CHECK(entrance_on(wear.from + 1) == made * parameters.gnawed_entrance_ratio);
            CHECK(entrance_on(wear.until + 1) <= made * parameters.gnawed_entrance_ratio);
            gnawed += 1;
            open_days -= wear.until - wear.from - 1;
        }
    }
    const double chance = -std::expm1(-0.02);
    CHECK(std::abs(gnawed - chance * open_days) < 4 * std::sqrt(chance * open_days));  // binomial, z = 4
}

TEST_CASE("moths spoil old comb for the rest of the season, and trouble no trap without comb") {
    KeeperParameters parameters = no_mishaps();
    parameters.moths_per_100_days = 1;
    TrapKind bare = sample_kind();
    bare.comb = 0;
    int spoiled = 0;
    constexpr int n = 600;
    for (std::uint32_t replicate = 0; replicate < n; ++replicate) {
        const Chance chance{7, replicate};
        CHECK(plan_trap_season(sample_setting(), 0, bare, sample_spot(), {}, parameters, chance).wear.empty());
        const TrapSeason trap = season_of(sample_setting(), parameters, chance);
        if (trap.wear.empty()) continue;
        ++spoiled;
        REQUIRE(trap.wear.size() == 1);
        const auto comb_on = [&](Day day) {
            return trap_cavity(trap, sample_setting(), sample_kind(), sample_spot(), day, parameters).comb;
        };
        CHECK(comb_on(trap.wear[0].from) == 1);
        CHECK(comb_on(trap.wear[0].from + 1) == 0);
        CHECK(comb_on(trap.take_down) == 0);
    }
    const double p = -std::expm1(-1.12);  // 112 days at 1 in 100
    CHECK(std::abs(spoiled - n * p) < 4 * std::sqrt(n * p * (1 - p)));
}
