// One house-hunt taken out of its season, to be run again as it was or with one thing changed.
#include <algorithm>
#include <cmath>
#include <sstream>

#include "season/process.hpp"

namespace maybough::season {

namespace {

/// A measure of a trap that a replay may change, and what it may be.
struct Changeable {
    const char* key;
    double Cavity::*field;
    double low;
    double high;
};
constexpr Changeable measures[]{
    {"volume_l", &Cavity::volume_l, 2, 200},
    {"entrance_area_cm2", &Cavity::entrance_area_cm2, 0.5, 500},
    {"height_m", &Cavity::height_m, 0, 30},
    {"facing_deg", &Cavity::facing_deg, 0, 360},
    {"lure", &Cavity::lure, 0, 1},
    {"comb", &Cavity::comb, 0, 1},
    {"shade", &Cavity::shade, 0, 1},
    {"dryness", &Cavity::dryness, 0, 1},
    {"visibility", &Cavity::visibility, 0, 1},
};
constexpr Changeable rival{"rival_m", nullptr, 5, 2000};

void must_lie_within(const Changeable& what, double value) {
    if (value >= what.low && value <= what.high) return;
    std::ostringstream problem;
    problem << "--change " << what.key << " is " << value << ", expected a number from " << what.low << " to "
            << what.high;
    throw InputError("command line", problem.str());
}

/// The offer of a cavity that stands where it stands and has changed.
SiteOffer offered_anew(SiteOffer offer, Point at, const Cavity& cavity, const Scenario& scenario,
                       const Parameters& parameters) {
    offer.find_weight = find_weight(cavity, offer.distance_m, parameters.scouts);
    offer.log_odds = site_log_odds(cavity, parameters.scouts, is_southern(scenario.land.centre));
    if (is_trap(offer.id)) offer.taste_key = shared_taste(at, offer.log_odds);
    return offer;
}

const Changeable& changeable(const std::string& key) {
    if (key == rival.key) return rival;
    const auto measure =
        std::find_if(std::begin(measures), std::end(measures), [&](const Changeable& each) { return each.key == key; });
    if (measure == std::end(measures)) throw InputError("command line", "--change knows no '" + key + "'");
    return *measure;
}

}  // namespace

void check_hunt_change(const std::string& key, double value) {
    must_lie_within(changeable(key), value);
}

HuntScene hunt_scene(const Scenario& scenario, const Parameters& parameters, const Backdrop& backdrop,
                     const Placement& placement, const LoggedSwarm& logged, const Chance& chance) {
    HuntScene scene{logged.swarm, {}, cluster_fate(logged.swarm, parameters.swarm, chance).ends_h()};
    for (const SiteOffer& offer : logged.offers) {
        if (!is_trap(offer.id)) {
            const NaturalSite& site = cavity_of(backdrop, offer.id);
            scene.sites.push_back({offer, site.at, site.cavity, -1});
        }
    }
    for (std::size_t i = 0; i < placement.size(); ++i) {
        const TrapSetting& setting = placement[i];
        const TrapKind& kind = scenario.kinds[setting.kind];
        const Spot& spot = scenario.spots[setting.spot];
        const TrapSeason trap = plan_trap_season(setting, i, kind, spot, scenario.keeper, parameters.keeper, chance);
        const auto offer = std::find_if(logged.offers.begin(), logged.offers.end(),
                                        [&](const SiteOffer& each) { return each.id == trap.site; });
        if (offer == logged.offers.end()) continue;
        const Cavity cavity = trap_cavity(trap, setting, kind, spot, logged.swarm.day, parameters.keeper);
        scene.sites.push_back({*offer, trap.at, cavity, static_cast<int>(i)});
    }
    std::sort(scene.sites.begin(), scene.sites.end(),
              [](const SceneSite& a, const SceneSite& b) { return a.offer.id < b.offer.id; });
    return scene;
}

std::vector<std::string> hunt_changes() {
    std::vector<std::string> keys;
    for (const Changeable& measure : measures) keys.emplace_back(measure.key);
    keys.emplace_back(rival.key);
    return keys;
}

HuntScene with_change(const HuntScene& scene, std::size_t site, const std::string& key, double value,
                      const Scenario& scenario, const Parameters& parameters) {
    HuntScene changed = scene;
    SceneSite& trap = changed.sites[site];
    const Changeable& what = changeable(key);
    must_lie_within(what, value);
    if (what.field == nullptr) {
        SceneSite second = trap;
        second.at = {trap.at.x_m + value, trap.at.y_m};
        second.offer.id = trap_site(second.at);
        second.offer.distance_m = distance_m(scene.swarm.at, second.at);
        second.offer = offered_anew(second.offer, second.at, second.cavity, scenario, parameters);
        second.trap = -1;
        const auto place = std::find_if(changed.sites.begin(), changed.sites.end(),
                                        [&](const SceneSite& each) { return !(each.offer.id < second.offer.id); });
        if (place != changed.sites.end() && place->offer.id == second.offer.id) {
            throw InputError("command line", "--change rival_m: a trap hangs there already", "try another distance");
        }
        changed.sites.insert(place, second);
        return changed;
    }
    trap.cavity.*(what.field) = value;
    trap.offer = offered_anew(trap.offer, trap.at, trap.cavity, scenario, parameters);
    return changed;
}

HuntResult hunt_again(const HuntScene& scene, const Backdrop& backdrop, const Parameters& parameters,
                      const Chance& chance, HuntTrace* trace) {
    std::vector<SiteOffer> offers;
    for (const SceneSite& site : scene.sites) offers.push_back(site.offer);
    const auto& days = backdrop.sky.days;
    const std::span<const DayOfSky> sky(days.begin() + scene.swarm.day.value, days.end());
    return hunt_until(scene.hived_h, scene.swarm, offers, sky, parameters.scouts, chance, trace);
}

}  // namespace maybough::season
