// The nests of wild colonies that die: cavities with comb that swarms may take once robbers are done.
#include <doctest/doctest.h>

#include <algorithm>

#include "season/process.hpp"

using namespace maybough;

TEST_CASE("every wild colony that dies leaves a free nest, none before robbers are done") {
    Scenario scenario = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    std::int64_t nests = 0;
    for (std::uint32_t replicate = 0; replicate < 3; ++replicate) {
        const Chance chance{21, replicate};
        const Backdrop backdrop = raise_backdrop(scenario, scenario.parameters, chance);
        const auto& cavities = backdrop.land.cavities;
        REQUIRE(backdrop.cavity_free_h.size() == cavities.size());
        CHECK(std::is_sorted(cavities.begin(), cavities.end(),
                             [](const NaturalSite& a, const NaturalSite& b) { return a.id < b.id; }));
        std::int64_t late = 0;
        for (std::size_t i = 0; i < cavities.size(); ++i) {
            if (backdrop.cavity_free_h[i] == 0) continue;
            ++late;
            CHECK(backdrop.cavity_free_h[i] >= 24 * scenario.parameters.scouts.robbed_days);
            CHECK(cavities[i].cavity.comb == 1);
            Swarm swarm;
            swarm.at = cavities[i].at;
            const auto offered = [&](double hour) {
                swarm.day = day_at(hour);
                swarm.hour = hour - 24.0 * swarm.day.value;
                const auto offers = natural_offers(backdrop, swarm, scenario.parameters.scouts);
                return std::any_of(offers.begin(), offers.end(),
                                   [&](const SiteOffer& offer) { return offer.id == cavities[i].id; });
            };
            CHECK_FALSE(offered(backdrop.cavity_free_h[i] - 1));
            CHECK(offered(backdrop.cavity_free_h[i] + 1));
        }
        CHECK(late <= backdrop.colonies_died);  // dead hives are shut
        nests += late;
    }
    CHECK(nests > 0);
}
