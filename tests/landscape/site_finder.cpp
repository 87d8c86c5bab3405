// Sites near a point: against looking at every site, in increasing id, whatever the order given.
#include <doctest/doctest.h>

#include <algorithm>

#include "chance/chance.hpp"
#include "landscape/landscape.hpp"

using namespace maybough;

namespace {
std::vector<NaturalSite> scattered(std::uint32_t count, double half_m) {
    std::vector<NaturalSite> sites;
    Stream stream = Chance{5, 0}.stream(Purpose::landscape_cavities, 1U);
    for (std::uint32_t i = 0; i < count; ++i) {
        const double x_m = half_m * (2 * stream.uniform() - 1);
        const double y_m = half_m * (2 * stream.uniform() - 1);
        sites.push_back({{(i * 7919U) % 100003U}, {x_m, y_m}, {}});  // ids out of order, all different
    }
    return sites;
}

std::vector<std::uint32_t> ids_of(const std::vector<NaturalSite>& sites, const std::vector<std::uint32_t>& indices) {
    std::vector<std::uint32_t> ids;
    for (const std::uint32_t index : indices) ids.push_back(sites[index].id.value);
    return ids;
}
}  // namespace

TEST_CASE("the finder gives just the sites within reach, in increasing id") {
    const std::vector<NaturalSite> sites = scattered(600, 3000);
    for (const double reach_m : {0.5, 90.0, 700.0, 2500.0, 90000.0}) {
        const SiteFinder finder(sites, reach_m);
        for (const Point p : {Point{0, 0}, Point{2990, -2990}, Point{-4000, 100}, Point{1e6, 0}, sites[17].at}) {
            std::vector<std::uint32_t> expected;
            for (const NaturalSite& site : sites) {
                if (distance_m(site.at, p) <= reach_m) expected.push_back(site.id.value);
            }
            std::sort(expected.begin(), expected.end());
            CHECK(ids_of(sites, finder.near(p)) == expected);
        }
    }
}

TEST_CASE("the order in which sites are given does not matter") {
    std::vector<NaturalSite> sites = scattered(300, 2000);
    const std::vector<std::uint32_t> before = ids_of(sites, SiteFinder(sites, 900).near({100, -200}));
    std::reverse(sites.begin(), sites.end());
    CHECK(ids_of(sites, SiteFinder(sites, 900).near({100, -200})) == before);
    CHECK(before.size() > 20);
}

TEST_CASE("an empty land and a single site are found as such") {
    CHECK(SiteFinder({}, 1000).near({0, 0}).empty());
    const std::vector<NaturalSite> one{{{4}, {10, 10}, {}}};
    CHECK(SiteFinder(one, 100).near({10, 100}).size() == 1);
    CHECK(SiteFinder(one, 100).near({10, 110.5}).empty());
}

TEST_CASE("far from the point one site in eight stands for all, whatever the point; near ones are all there") {
    const std::vector<NaturalSite> sites = scattered(20000, 6000);
    const SiteFinder all(sites, 5000);
    const SiteFinder finder(sites, 5000, 1500);
    const std::vector<std::uint32_t> from_here = finder.near({0, 0});
    double near = 0;
    double far = 0;
    double all_far = 0;
    for (const std::uint32_t index : from_here) (distance_m(sites[index].at, {0, 0}) <= 1500 ? near : far) += 1;
    for (const std::uint32_t index : all.near({0, 0})) {
        (distance_m(sites[index].at, {0, 0}) <= 1500 ? near : all_far) +=
            distance_m(sites[index].at, {0, 0}) <= 1500 ? -1 : 1;
    }
    CHECK(near == 0);
    const double expected = all_far / SiteFinder::coarse_one_in;
    CHECK(std::abs(far - expected) < 4 * std::sqrt(expected));  // binomial of one in eight, z = 4
}
