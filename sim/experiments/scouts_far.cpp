// Where swarms go: directions of settling, and swarms of African descent that search kilometres away.
#include <algorithm>

#include "experiments/scouts_setup.hpp"

namespace maybough::experiments {

namespace {

using namespace scout_trials;

const char* const schneider =
    "Schneider 1995, Swarm movement patterns inferred from waggle dance activity of the neotropical African honey bee "
    "in Costa Rica";

/// Scouts of African descent: indifferent to volume, long search flights by more finders, recruits that keep to far
/// dances.
ScoutParameters african(ScoutParameters p) {
    p.volume_coefficient = 0;
    p.search_length_m = 2700;
    p.far_search_share = 0;
    p.farthest_find_m = 16200;
    p.find_chance = 0.001;
    p.recruit_length_m = 12000;
    return p;
}

struct Far {
    std::vector<double> danced_m, chosen_m, sites_danced_for;
};

Far far_hunts(const ScoutParameters& p, unsigned swarms, std::uint32_t seed) {
    Far far;
    const auto sky = fine_sky(15);
    for (unsigned n = 0; n < swarms; ++n) {
        const Chance chance{seed, n};
        const auto sites = natural_sites(chance, n, 1.5, p);
        const Swarm swarm = swarm_number(n);
        HuntTrace trace;
        const HuntResult result = hunt(swarm, sites, sky, p, chance, &trace);
        const auto distance = [&](SiteId id) { return sites[id.value - 1].distance_m; };
        double sum_m = 0;
        double dances = 0;
        for (const HuntEvent& event : trace) {
            if (event.kind != HuntEvent::Kind::danced) continue;
            sum_m += distance(event.site);
            dances += 1;
        }
        far.sites_danced_for.push_back(result.sites_danced_for);
        if (result.outcome != HuntOutcome::moved) continue;
        far.danced_m.push_back(sum_m / dances);
        far.chosen_m.push_back(distance(result.site));
    }
    return far;
}

std::vector<Finding> far_searching(const Parameters& parameters, std::uint32_t seed) {
    const Far far = far_hunts(african(parameters.scouts), 200, seed);
    std::vector<double> farther_m;
    for (std::size_t i = 0; i < far.chosen_m.size(); ++i) farther_m.push_back(far.chosen_m[i] - far.danced_m[i]);
    const std::string spread = "one standard deviation between swarms either side";
    return {
        {"distance danced by scouts of African descent, mean of swarms' means", "m", "3429 (sd 894)",
         mean(far.danced_m), error_of_mean(far.danced_m), 2535, 4323, spread, schneider, Footing::calibrated, ""},
        {"sites they advertise, mean", "", "12.2 (sd 6.6)", mean(far.sites_danced_for),
         error_of_mean(far.sites_danced_for), 5.6, 18.8, spread, schneider, Footing::calibrated, ""},
        {"distance of the site they choose, mean", "m", "4693 (sd 1728)", mean(far.chosen_m),
         error_of_mean(far.chosen_m), 2965, 6421, spread, schneider, Footing::independent,
         "the model's swarms choose about where they dance: near sites are found first and no scout seeks distance"},
        {"how much farther they choose than they dance, mean", "m", "1264", mean(farther_m), error_of_mean(farther_m),
         0, 3000, "farther, by up to twice as much", schneider, Footing::independent,
         "the model's swarms choose about where they dance: near sites are found first and no scout seeks distance"}};
}

/// Directions in which swarms settle, in even country with cavities drawn as for a season.
std::vector<Finding> directions(const Parameters& parameters, std::uint32_t seed) {
    const ScoutParameters& p = parameters.scouts;
    Land land;
    land.centre = {46.8, 8.0};
    land.radius_m = 1500;
    land.elsewhere = Habitat::woodland;
    const auto sky = fine_sky(15);
    double east = 0;
    double north = 0;
    double moved = 0;
    for (unsigned n = 0; n < 160; ++n) {
        const Chance chance{seed, n};
        const DrawnLand drawn = draw_land(land, {}, parameters.landscape, chance);
        const SiteFinder finder(drawn.cavities, search_reach_m(p), p.coarse_beyond_m);
        std::vector<SiteOffer> sites;
        for (const std::uint32_t index : finder.near({})) {
            const NaturalSite& site = drawn.cavities[index];
            sites.push_back(offer_of(site.id, site.cavity, distance_m({}, site.at), p));
            sites.back().find_weight *= stands_for(sites.back().distance_m, p);
        }
        const HuntResult result = hunt(swarm_number(n), sites, sky, p, chance);
        if (result.outcome != HuntOutcome::moved) continue;
        const auto home = std::find_if(drawn.cavities.begin(), drawn.cavities.end(),
                                       [&](const NaturalSite& site) { return site.id == result.site; });
        const double away_m = distance_m({}, home->at);
        east += home->at.x_m / away_m;
        north += home->at.y_m / away_m;
        moved += 1;
    }
    // Rayleigh's test for many directions: n R^2 is exponential of mean 1 where they are uniform.
    const double rayleigh_p = std::exp(-(east * east + north * north) / moved);
    return {{"directions of new homes uniform: probability of so much leaning by chance (Rayleigh)", "", "uniform",
             rayleigh_p, 0, 0.05, 1, "not unlikely at one in twenty",
             "Villa 2004, Swarming behavior of honey bees in southeastern Louisiana", Footing::independent, ""}};
}

double share_within(const std::vector<double>& values, double low, double high) {
    double count = 0;
    for (const double value : values) count += value >= low && value <= high ? 1 : 0;
    return count / static_cast<double>(values.size());
}

/// Homes and the homeless, in country with many hollows and with few.
std::vector<Finding> new_homes(const Parameters& parameters, std::uint32_t seed) {
    const ScoutParameters& p = parameters.scouts;
    constexpr unsigned swarms = 600;
    const auto sky = fine_sky(20);
    std::vector<double> homes_m;
    double homeless_open = 0;
    for (const double per_km2 : {5.0, 1.0}) {
        for (unsigned n = 0; n < swarms; ++n) {
            const Chance chance{seed, n};
            const auto sites = natural_sites(chance, n, per_km2, p);
            const HuntResult result = hunt(swarm_number(n), sites, sky, p, chance);
            const bool moved = result.outcome == HuntOutcome::moved;
            if (per_km2 < 2) homeless_open += moved ? 0 : 1.0 / swarms;
            if (moved) homes_m.push_back(sites[result.site.value - 1].distance_m);
        }
    }
    std::sort(homes_m.begin(), homes_m.end());
    const auto at = [&](double share) {
        return homes_m[static_cast<std::size_t>(share * static_cast<double>(homes_m.size() - 1))];
    };
    const std::string villa =
        "Villa 2004, Swarming behavior of honey bees (Hymenoptera: Apidae) in southeastern Louisiana; Lindauer 1955, "
        "Schwarmbienen auf Wohnungssuche";
    const double mostly = share_within(homes_m, 500, 3000);
    return {{"distance of the new home, median, five hollows a square km or one", "m", "mostly 500 to 3000", at(0.5), 0,
             500, 3000, "within what most were", villa, Footing::calibrated, ""},
            {"homes 0.5 to 3 km away, share", "", "most", mostly, share_error(mostly, 2 * swarms), 0.5, 1,
             "more than half", villa, Footing::calibrated, ""},
            {"distance of the new home that one swarm in a hundred exceeds", "m", "about 10 000 at most", at(0.99), 0,
             4000, 10000, "kilometres, and not beyond the farthest", villa, Footing::calibrated, ""},
            {"swarms that find no home in open country, one hollow a square km, share", "", "0.01 to 0.05",
             homeless_open, share_error(homeless_open, swarms), 0, 0.05, "no more than the largest share given",
             "common practice, no published source", Footing::calibrated, ""}};
}

}  // namespace

std::vector<Experiment> far_searching_hunts() {
    return {{"directions", "scouts", "160 swarms in even woodland, each land drawn anew", directions},
            {"new-homes", "scouts", "600 swarms among five hollows a square km, and 600 among one", new_homes},
            {"far-searching", "scouts", "200 swarms whose scouts search kilometres away", far_searching}};
}

}  // namespace maybough::experiments
