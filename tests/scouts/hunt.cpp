// What a hunt may and may not depend on: sites out of reach, order of hunts, tenants, weather, stores.
#include <doctest/doctest.h>

#include <algorithm>

#include "scouts/hunts.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {
bool found_in(const HuntTrace& trace, SiteId site) {
    return std::any_of(trace.begin(), trace.end(), [&](const HuntEvent& event) {
        return event.kind == HuntEvent::Kind::found && event.site == site;
    });
}
}  // namespace

TEST_CASE("a site that cannot be found changes no bit, wherever it stands in the list") {
    const ScoutParameters p;
    const auto sky = fine_sky(10);
    for (unsigned n = 0; n < 20; ++n) {
        const auto sites = natural_sites(n, 4, p);
        const HuntResult alone = hunt(swarm_number(n), sites, sky, p, Chance{1, n});
        auto more = sites;
        more.insert(more.begin(), offer_of({0}, Cavity{}, search_reach_m(p) + 1, p));
        more.push_back(offer_of({trap_bit | 7U}, Cavity{}, search_reach_m(p) + 1, p));
        CHECK(same(alone, hunt(swarm_number(n), more, sky, p, Chance{1, n})));
    }
}

TEST_CASE("a trap that no scout comes upon changes no bit") {
    const ScoutParameters p;
    const auto sky = fine_sky(10);
    const SiteId trap{trap_bit | 7U};
    int never_found = 0;
    for (unsigned n = 0; n < 40; ++n) {
        auto sites = natural_sites(n, 4, p);
        const HuntResult alone = hunt(swarm_number(n), sites, sky, p, Chance{1, n});
        sites.push_back(offer_of(trap, Cavity{}, 1100, p));
        HuntTrace trace;
        const HuntResult with = hunt(swarm_number(n), sites, sky, p, Chance{1, n}, &trace);
        if (found_in(trace, trap)) continue;
        ++never_found;
        CHECK(same(alone, with));
    }
    CHECK(never_found > 5);
    CHECK(never_found < 40);
}

TEST_CASE("a hunt depends neither on the hunts before it nor on being watched") {
    const ScoutParameters p;
    const auto sky = fine_sky(10);
    const auto sites = natural_sites(3, 8, p);
    const HuntResult first = hunt(swarm_number(3), sites, sky, p, Chance{1, 3});
    hunt(swarm_number(4, 30000), natural_sites(4, 20, p), sky, p, Chance{1, 4});
    HuntTrace trace;
    CHECK(same(first, hunt(swarm_number(3), sites, sky, p, Chance{1, 3}, &trace)));
    CHECK(!trace.empty());
}

TEST_CASE("a rival trap beside it takes from a trap's catch") {
    const ScoutParameters p;
    const auto sky = fine_sky(10);
    Cavity box;
    box.lure = 1;
    int alone = 0;
    int beside = 0;
    for (unsigned n = 0; n < 150; ++n) {
        auto sites = natural_sites(n, 4, p);
        sites.push_back(offer_of({trap_bit | 7U}, box, 400, p));
        alone += hunt(swarm_number(n), sites, sky, p, Chance{1, n}).site == SiteId{trap_bit | 7U} ? 1 : 0;
        sites.push_back(offer_of({trap_bit | 8U}, box, 400, p));
        beside += hunt(swarm_number(n), sites, sky, p, Chance{1, n}).site == SiteId{trap_bit | 7U} ? 1 : 0;
    }
    CHECK(alone >= 30);
    // the difference of two counts near 50 of 150 has a standard deviation of at most 8; it must exceed two of them
    CHECK(alone - beside > 16);
}

TEST_CASE("no bees move into a tenanted site, and the hunt goes on when the chosen one is lost") {
    const ScoutParameters p;
    const auto sky = fine_sky(12);
    int moved_to_second = 0;
    for (unsigned n = 0; n < 30; ++n) {
        std::vector<SiteOffer> sites{offer({1}, 200, 1.5, 10, p), offer({2}, 300, -1, 10, p)};
        const HuntResult free = hunt(swarm_number(n), sites, sky, p, Chance{1, n});
        if (free.outcome != HuntOutcome::moved || free.site != SiteId{1}) continue;
        sites[0].open_until_h = 0.5 * (free.decision_h + free.arrival_h);  // taken by others while the swarm warms up
        const HuntResult lost = hunt(swarm_number(n), sites, sky, p, Chance{1, n});
        CHECK(lost.decision_h >= free.decision_h);
        CHECK(lost.site != SiteId{1});
        CHECK(lost.arrival_h > free.arrival_h);
        moved_to_second += lost.site == SiteId{2} ? 1 : 0;
        sites[0].open_until_h = 1e9;
        sites[0].open_from_h = 30;  // freed on the second day only
        const HuntResult late = hunt(swarm_number(n), sites, sky, p, Chance{1, n});
        if (late.site == SiteId{1}) CHECK(late.decision_h > 30);
    }
    CHECK(moved_to_second > 15);
}

TEST_CASE("scouts rest at night and in rain: the hunt takes longer on the clock, never in the dark") {
    const ScoutParameters p;
    const auto sky = fine_sky(14);
    auto rainy = sky;
    rainy[1].scouting = {};
    rainy[2].scouting = {};
    for (unsigned n = 0; n < 10; ++n) {
        const auto sites = natural_sites(n, 8, p);
        HuntTrace trace;
        const HuntResult fine = hunt(swarm_number(n), sites, sky, p, Chance{1, n}, &trace);
        for (const HuntEvent& event : trace) {
            if (event.kind != HuntEvent::Kind::danced) continue;
            const double clock_h = std::fmod(event.hour + 12, 24);
            CHECK(clock_h >= 8);
            CHECK(clock_h < 18);
        }
        const HuntResult rain = hunt(swarm_number(n), sites, rainy, p, Chance{1, n});
        const bool stores_last = fine.arrival_h + 48 < 24 * 40 / p.honey_mg_per_bee_day;
        if (fine.arrival_h > 20 && stores_last) CHECK(rain.arrival_h == doctest::Approx(fine.arrival_h + 48));
    }
}

TEST_CASE("a swarm that finds nothing gives up when its stores end") {
    const ScoutParameters p;
    const auto sky = fine_sky(20);
    int open = 0;
    for (unsigned n = 0; n < 200; ++n) {
        Swarm swarm = swarm_number(n, 2000);
        swarm.honey_g = 3 * p.honey_mg_per_bee_day / 1000 * 2000;
        const HuntResult result = hunt(swarm, {}, sky, p, Chance{1, n});
        REQUIRE(result.outcome != HuntOutcome::moved);
        CHECK(result.arrival_h == doctest::Approx(72));
        CHECK(result.sites_found == 0);
        open += result.outcome == HuntOutcome::built_in_open ? 1 : 0;
    }
    CHECK(std::abs(open - 100) < 4 * std::sqrt(200 * 0.25));  // z = 4
}

TEST_CASE("a swarm with stores gives up after the longest hunt") {
    Swarm swarm = swarm_number(1, 2000);
    swarm.honey_g = 1e5;
    CHECK(hunt(swarm, {}, fine_sky(30), {}, Chance{1, 1}).arrival_h == doctest::Approx(24 * 14));
    CHECK(hunt(swarm, {}, fine_sky(2), {}, Chance{1, 1}).outcome == HuntOutcome::dispersed);  // the sky ends first
}

TEST_CASE("some scouts know a site when the swarm hangs, as many as their early flights find") {
    ScoutParameters p;
    p.find_chance = 0.01;
    const auto sky = fine_sky(2);
    const std::vector<SiteOffer> sites{{{1}, 200, 1, 0}, {{2}, 300, 2, 0}};
    for (const double flights : {0.0, 1.0, 4.0}) {
        p.early_flights = flights;
        double known = 0;
        double scouts = 0;
        for (unsigned n = 0; n < 40; ++n) {
            HuntTrace trace;
            scouts += hunt(swarm_number(n), sites, sky, p, Chance{1, n}, &trace).scouts;
            for (const HuntEvent& event : trace) {
                known += event.kind == HuntEvent::Kind::found && event.hour == 0 ? 1 : 0;
            }
        }
        const double expected = 0.03 * flights * scouts;  // binomial, z = 4
        CHECK(std::abs(known - expected) <= 4 * std::sqrt(expected));
    }
}

TEST_CASE("bees at a site's door draw searching scouts of their swarm to it") {
    ScoutParameters p;
    p.follow_half_share = 1e9;  // nobody follows a dance: all come by searching
    p.quorum_least = p.quorum_outside = 60;
    const auto sky = fine_sky(3);
    const std::vector<SiteOffer> sites{{{1}, 200, 10, 2}};
    const auto finders = [&](double gain) {
        p.company_find_gain = gain;
        double count = 0;
        for (unsigned n = 0; n < 20; ++n) {
            HuntTrace trace;
            hunt(swarm_number(n), sites, sky, p, Chance{1, n}, &trace);
            for (const HuntEvent& event : trace) count += event.kind == HuntEvent::Kind::found ? 1 : 0;
        }
        return count;
    };
    const double alone = finders(0);
    CHECK(finders(1) > alone + 4 * std::sqrt(2 * alone));  // counts near Poisson, z = 4
}

TEST_CASE("supporters that give their site up over night start anew in the morning") {
    ScoutParameters p;
    p.quorum_least = p.quorum_outside = 1000;  // no decision
    const auto sky = fine_sky(3);
    const auto morning_visits = [&](double chance) {
        p.break_retire_chance = chance;
        double count = 0;
        for (unsigned n = 0; n < 10; ++n) {
            HuntTrace trace;
            hunt(swarm_number(n), natural_sites(n, 10, p), sky, p, Chance{1, n}, &trace);
            // Hung at noon: hours 20 to 21 are the second day's first hour of flight.
            for (const HuntEvent& event : trace) {
                count += event.kind == HuntEvent::Kind::visited && event.hour >= 20 && event.hour < 21 ? 1 : 0;
            }
        }
        return count;
    };
    CHECK(morning_visits(0) > 100);
    CHECK(morning_visits(1) < 0.3 * morning_visits(0));  // new finds alone
}
