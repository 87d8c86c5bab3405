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
        const SiteFinder finder(drawn.cavities, search_reach_m(p));
        std::vector<SiteOffer> sites;
        for (const std::uint32_t index : finder.near({})) {
            const NaturalSite& site = drawn.cavities[index];
            sites.push_back(offer_of(site.id, site.cavity, distance_m({}, site.at), p));
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

}  // namespace

std::vector<Experiment> far_searching_hunts() {
    return {{"directions", "scouts", "160 swarms in even woodland, each land drawn anew", directions},
            {"far-searching", "scouts", "200 swarms whose scouts search kilometres away", far_searching}};
}

}  // namespace maybough::experiments
