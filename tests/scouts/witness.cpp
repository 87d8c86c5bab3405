// A hunt known again by what it met: reuse is right to the bit, and is not refused where it need not be.
#include <doctest/doctest.h>

#include "hunts.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {

struct Known {
    HuntResult result;
    HuntWitness witness;
};

Known known_hunt(unsigned n, const std::vector<SiteOffer>& sites, const ScoutParameters& p, double hived_h = 1e9) {
    Known known;
    known.result = hunt_until(hived_h, swarm_number(n), sites, fine_sky(15), p, Chance{31, n}, nullptr, &known.witness);
    return known;
}

const MetSite* met(const Known& known, SiteId id) {
    for (const MetSite& site : known.witness.met) {
        if (site.id == id) return &site;
    }
    return nullptr;
}

/// Ten natural cavities or so, and four traps of different worth.
std::vector<SiteOffer> a_land(unsigned n, const ScoutParameters& p) {
    std::vector<SiteOffer> sites = natural_sites(n, 6, p);
    for (unsigned t = 0; t < 4; ++t) sites.push_back(offer({trap_bit | (t + 1)}, 250 + 150 * t, 0.3 * t, 1, p));
    return sites;
}

/// One thing changed about the land, by the number of the trial.
std::vector<SiteOffer> changed_land(unsigned n, unsigned change, const std::vector<SiteOffer>& sites,
                                    const ScoutParameters& p) {
    std::vector<SiteOffer> changed = sites;
    const std::size_t first_trap = sites.size() - 4;
    SiteOffer& site = changed[(n + change / 8) % changed.size()];
    switch (change % 8) {
        case 0:
            changed.erase(changed.begin() + static_cast<std::ptrdiff_t>(first_trap + change / 8 % 4));
            break;
        case 1:
            changed.push_back(offer({trap_bit | 99U}, 400 + 40 * change, 0.5, 1, p));
            break;
        case 2:
            changed[first_trap + change / 8 % 4].log_odds += 0.4;
            break;
        case 3:
            changed[first_trap + change / 8 % 4].find_weight *= 1.3;
            break;
        case 4:
            site.open_until_h = 0.8 * change;
            break;
        case 5:
            site.open_from_h = 0.3 * change;
            break;
        case 6:
            site.distance_m *= 1.1;
            break;
        default:
            site.open_from_h = 3;
            site.open_until_h = 3 + 0.5 * change;
    }
    return changed;
}

}  // namespace

TEST_CASE("what is told to be the same hunt is the same to the bit, whatever has changed; most others differ") {
    ScoutParameters p;
    p.company_find_gain = std::max(p.company_find_gain, 1.0);
    int reused = 0;
    int refused = 0;
    int refused_yet_same = 0;
    for (unsigned n = 0; n < 12; ++n) {
        const std::vector<SiteOffer> sites = a_land(n, p);
        const Known before = known_hunt(n, sites, p, n % 3 == 0 ? 40.0 : 1e9);
        for (unsigned change = 0; change < 64; ++change) {
            const std::vector<SiteOffer> changed = changed_land(n, change, sites, p);
            const Known after = known_hunt(n, changed, p, n % 3 == 0 ? 40.0 : 1e9);
            INFO("swarm ", n, ", change ", change);
            if (same_hunt(before.witness, changed, p)) {
                ++reused;
                CHECK(same(before.result, after.result));
                CHECK(before.result.found_mask == after.result.found_mask);
            } else {
                ++refused;
                refused_yet_same += same(before.result, after.result) ? 1 : 0;
            }
        }
    }
    CHECK(reused > 100);
    CHECK(refused > 100);
    // A hunt may be refused for a draw that would have come to the same end; if that were the rule, little were saved.
    CHECK(refused_yet_same < refused / 2);
}

TEST_CASE("a witness knows its own hunt, and each thing the hunt met stands in it") {
    const ScoutParameters p;
    for (unsigned n = 0; n < 10; ++n) {
        const std::vector<SiteOffer> sites = a_land(n, p);
        const Known known = known_hunt(n, sites, p);
        CHECK(same_hunt(known.witness, sites, p));
        CHECK(known.result.sites_found <= static_cast<int>(known.witness.met.size()));
        std::vector<std::uint64_t> bounds;
        find_bounds(sites, p, bounds);
        REQUIRE(bounds.size() == sites.size());
        CHECK(known.witness.lowest_miss >= bounds.back());
        for (std::size_t s = 0; s < sites.size(); ++s) {
            const MetSite* site = met(known, sites[s].id);
            if (site == nullptr) continue;
            CHECK(site->low_hit >= (s == 0 ? 0 : bounds[s - 1]));
            CHECK(site->high_hit < bounds[s]);
            CHECK(site->width == bounds[s] - (s == 0 ? 0 : bounds[s - 1]));
        }
        if (known.result.outcome != HuntOutcome::moved) continue;
        const MetSite* home = met(known, known.result.site);
        REQUIRE(home != nullptr);
        CHECK(home->asked.last_open_h == known.result.arrival_h);
    }
}

TEST_CASE("a site's width is the same wherever it stands in the list") {
    const ScoutParameters p;
    std::vector<SiteOffer> sites = a_land(1, p);
    std::vector<std::uint64_t> bounds;
    find_bounds(sites, p, bounds);
    const std::uint64_t last = bounds.back() - bounds[bounds.size() - 2];
    sites.erase(sites.begin());
    find_bounds(sites, p, bounds);
    CHECK(bounds.back() - bounds[bounds.size() - 2] == last);
}

TEST_CASE("a hunt ends where somebody hives the cluster, and is the same until then") {
    const ScoutParameters p;
    int ended_early = 0;
    for (unsigned n = 0; n < 20; ++n) {
        const std::vector<SiteOffer> sites = a_land(n, p);
        HuntTrace whole_trace;
        const HuntResult whole = hunt(swarm_number(n), sites, fine_sky(15), p, Chance{31, n}, &whole_trace);
        const double hived_h = 0.6 * whole.arrival_h;
        HuntTrace cut_trace;
        const HuntResult cut = hunt_until(hived_h, swarm_number(n), sites, fine_sky(15), p, Chance{31, n}, &cut_trace);
        CHECK(cut.outcome == HuntOutcome::hived);
        CHECK(cut.arrival_h == hived_h);
        CHECK(cut.scouting_h < whole.scouting_h);
        REQUIRE(!cut_trace.empty());
        REQUIRE(cut_trace.size() <= whole_trace.size());
        for (std::size_t i = 0; i + 1 < cut_trace.size(); ++i) {  // the last tells that it was hived
            CHECK(cut_trace[i].hour == whole_trace[i].hour);
            CHECK(cut_trace[i].scout == whole_trace[i].scout);
            CHECK(cut_trace[i].hour < hived_h);
        }
        ended_early += cut_trace.size() < whole_trace.size() ? 1 : 0;
        const HuntResult late = hunt_until(whole.arrival_h, swarm_number(n), sites, fine_sky(15), p, Chance{31, n});
        CHECK(same(late, whole));
    }
    CHECK(ended_early > 15);
}
