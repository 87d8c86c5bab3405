// What watched house-hunts looked like, against hunts of our scouts among ten natural cavities a square kilometre.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "scouts/hunts.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {

constexpr int swarms = 200;

/// All that is counted in `swarms` hunts, each in a land of its own.
struct Watched {
    std::vector<double> hours, sites_danced_for, visited_share, outside_at_piping, danced_m;
    std::vector<double> runs_sum = std::vector<double>(12, 0), runs_count = std::vector<double>(12, 0);
    int moved = 0, rested_first = 0, followed_first = 0;
};

/// Waggle runs of scouts with at least six dances for one site, by number of the return; and what the supporters of
/// losing sites did first: rest, or follow a dance for another site.
void count_dances(const HuntTrace& trace, SiteId chosen, Watched& watched) {
    std::map<int, std::pair<SiteId, std::vector<double>>> dances;
    const auto close = [&](std::pair<SiteId, std::vector<double>>& of_scout) {
        if (of_scout.second.size() >= 6) {
            for (std::size_t i = 0; i < std::min<std::size_t>(6, of_scout.second.size()); ++i) {
                watched.runs_sum[i] += of_scout.second[i];
                watched.runs_count[i] += 1;
            }
        }
        of_scout.second.clear();
    };
    for (const HuntEvent& event : trace) {
        if (event.scout < 0) continue;
        auto& of_scout = dances[event.scout];
        const bool lost = !of_scout.second.empty() && of_scout.first != chosen;
        switch (event.kind) {
            case HuntEvent::Kind::danced:
                if (event.site != of_scout.first) close(of_scout);
                of_scout.first = event.site;
                of_scout.second.push_back(event.amount);
                watched.danced_m.push_back(event.site.value);
                break;
            case HuntEvent::Kind::rested:
                watched.rested_first += lost ? 1 : 0;
                close(of_scout);
                break;
            case HuntEvent::Kind::stopped:
                close(of_scout);
                break;
            case HuntEvent::Kind::followed:
                watched.followed_first += lost && event.site != of_scout.first ? 1 : 0;
                close(of_scout);
                break;
            default:
                break;
        }
    }
}

Watched watch() {
    Watched watched;
    const ScoutParameters p;
    const auto sky = fine_sky(15);
    for (unsigned n = 0; n < swarms; ++n) {
        const auto sites = natural_sites(n, 10, p);
        const Swarm swarm = swarm_number(n);
        HuntTrace trace;
        const HuntResult result = hunt(swarm, sites, sky, p, Chance{2004, n}, &trace);
        watched.hours.push_back(result.scouting_h);
        watched.sites_danced_for.push_back(result.sites_danced_for);
        const std::size_t before = watched.danced_m.size();
        count_dances(trace, result.site, watched);
        for (std::size_t i = before; i < watched.danced_m.size(); ++i) {  // site to its distance
            const auto id = static_cast<std::uint32_t>(watched.danced_m[i]);
            watched.danced_m[i] = sites[id - 1].distance_m;
        }
        if (result.outcome != HuntOutcome::moved) continue;
        ++watched.moved;
        watched.visited_share.push_back(result.visitors_of_chosen / static_cast<double>(swarm.bees));
        for (const HuntEvent& event : trace) {
            if (event.kind == HuntEvent::Kind::quorum) watched.outside_at_piping.push_back(event.amount);
        }
    }
    return watched;
}

const Watched& watched() {
    static const Watched hunts = watch();
    return hunts;
}

double mean(const std::vector<double>& values) {
    double sum = 0;
    for (const double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

double median(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<long>(values.size() / 2), values.end());
    return values[values.size() / 2];
}

}  // namespace

TEST_CASE("house-hunting takes about 20 daylight hours (Villa 2004)") {
    MESSAGE("mean hours: " << mean(watched().hours));
    CHECK(mean(watched().hours) > 10);
    CHECK(mean(watched().hours) < 30);
    CHECK(watched().moved > 0.95 * swarms);  // Lindauer 1955: failures are rare
}

TEST_CASE("about a dozen sites are advertised (Seeley and Buhrman 1999; Schneider 1995)") {
    MESSAGE("mean sites: " << mean(watched().sites_danced_for));
    CHECK(mean(watched().sites_danced_for) > 6);
    CHECK(mean(watched().sites_danced_for) < 19);
}

TEST_CASE("dances are for places some 470 m away (Kohl and Rutschmann 2018)") {
    MESSAGE("median distance danced, m: " << median(watched().danced_m));
    CHECK(median(watched().danced_m) > 300);
    CHECK(median(watched().danced_m) < 1000);
}

TEST_CASE("3 to 5 % of the swarm have been at the chosen site (Seeley, Morse and Visscher 1979)") {
    MESSAGE("mean share: " << mean(watched().visited_share));
    CHECK(mean(watched().visited_share) > 0.02);
    CHECK(mean(watched().visited_share) < 0.06);
}

TEST_CASE("piping begins with 10 to 15 bees outside (Seeley and Visscher 2003)") {
    MESSAGE("mean outside: " << mean(watched().outside_at_piping));
    CHECK(mean(watched().outside_at_piping) > 8);
    CHECK(mean(watched().outside_at_piping) < 20);
}

TEST_CASE("a scout's waggle runs fall linearly by about 15 a return (Seeley 2003)") {
    // Least squares through the means of the first six dances.
    double sx = 0, sy = 0, sxx = 0, sxy = 0, syy = 0;
    const double n = 6;
    for (std::size_t i = 0; i < 6; ++i) {
        REQUIRE(watched().runs_count[i] > 100);
        const double x = static_cast<double>(i);
        const double y = watched().runs_sum[i] / watched().runs_count[i];
        sx += x;
        sy += y;
        sxx += x * x;
        sxy += x * y;
        syy += y * y;
    }
    const double slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
    const double r_squared = std::pow(n * sxy - sx * sy, 2) / ((n * sxx - sx * sx) * (n * syy - sy * sy));
    MESSAGE("slope " << slope << ", R squared " << r_squared);
    CHECK(slope < -10);
    CHECK(slope > -20);
    CHECK(r_squared > 0.95);
}

TEST_CASE("most losers retire before they follow a rival: 23 of 27 (Seeley 2003)") {
    const double share =
        static_cast<double>(watched().rested_first) / (watched().rested_first + watched().followed_first);
    MESSAGE("share: " << share);
    CHECK(share > 0.66);
    CHECK(share < 0.96);
}
