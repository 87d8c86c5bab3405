// Watched house-hunts: how long, how many sites, how far, how many bees at the door, how dances fade.
#include <algorithm>
#include <map>

#include "experiments/scouts_setup.hpp"

namespace maybough::experiments {

namespace {

using namespace scout_trials;

constexpr unsigned swarms = 250;
constexpr double natural_per_km2 = 10;  // of the page's densities, between forest (2) and old park (20)

/// All that is counted in the hunts, each in a land of its own.
struct Watched {
    std::vector<double> hours, days, sites_danced_for, finders, visited_share, outside_at_piping, danced_m;
    std::vector<double> runs_sum = std::vector<double>(6, 0), runs_count = std::vector<double>(6, 0);
    double moved = 0, rested_first = 0, followed_first = 0, first_found_won = 0, dancing_for_chosen = 0, splits = 0;
};

/// Waggle runs of scouts with at least six dances for one site, by number of the return; and what the supporters of
/// losing sites did first: rest, or follow a dance for another site.
class Dances {
  public:
    Dances(Watched& watched, SiteId chosen) : watched_(watched), chosen_(chosen) {}
    void see(const HuntEvent& event) {
        Series& series = series_[event.scout];
        const bool lost = !series.runs.empty() && series.site != chosen_;
        if (event.kind == HuntEvent::Kind::danced) {
            if (event.site != series.site) close(series);
            series.site = event.site;
            series.runs.push_back(event.amount);
        } else if (event.kind == HuntEvent::Kind::rested) {
            watched_.rested_first += lost ? 1 : 0;
            close(series);
        } else if (event.kind == HuntEvent::Kind::followed) {
            watched_.followed_first += lost && event.site != series.site ? 1 : 0;
            close(series);
        } else if (event.kind == HuntEvent::Kind::stopped) {
            close(series);
        }
    }

  private:
    struct Series {
        SiteId site;
        std::vector<double> runs;
    };
    void close(Series& series) {
        for (std::size_t i = 0; series.runs.size() >= 6 && i < 6; ++i) {
            watched_.runs_sum[i] += series.runs[i];
            watched_.runs_count[i] += 1;
        }
        series.runs.clear();
    }
    Watched& watched_;
    SiteId chosen_;
    std::map<int, Series> series_;
};

/// Share of the last hour's dances before lift-off that were for the chosen site.
double share_for_chosen(const HuntTrace& trace, SiteId chosen, double lifted_h) {
    double all = 0;
    double for_chosen = 0;
    for (const HuntEvent& event : trace) {
        if (event.kind != HuntEvent::Kind::danced || event.hour < lifted_h - 1 || event.hour > lifted_h) continue;
        all += 1;
        for_chosen += event.site == chosen ? 1 : 0;
    }
    return all > 0 ? for_chosen / all : 0;
}

void watch(const std::vector<SiteOffer>& sites, const HuntTrace& trace, const HuntResult& result, const Swarm& swarm,
           Watched& watched) {
    watched.hours.push_back(result.scouting_h);
    watched.sites_danced_for.push_back(result.sites_danced_for);
    Dances dances(watched, result.site);
    double finders = 0;
    double lifted_h = result.arrival_h;
    SiteId first_danced;
    bool any_danced = false;
    for (const HuntEvent& event : trace) {
        if (event.kind == HuntEvent::Kind::split) watched.splits += 1;
        if (event.kind == HuntEvent::Kind::lifted) lifted_h = event.hour;
        if (event.scout < 0) continue;
        if (event.kind == HuntEvent::Kind::found) finders += 1;
        if (event.kind == HuntEvent::Kind::quorum) watched.outside_at_piping.push_back(event.amount);
        if (event.kind == HuntEvent::Kind::danced) {
            if (!any_danced) first_danced = event.site;
            any_danced = true;
            const auto site = std::lower_bound(sites.begin(), sites.end(), event.site,
                                               [](const SiteOffer& s, SiteId id) { return s.id < id; });
            watched.danced_m.push_back(site->distance_m);
        }
        dances.see(event);
    }
    watched.finders.push_back(finders);
    if (result.outcome != HuntOutcome::moved) return;
    watched.moved += 1;
    watched.days.push_back(std::floor((swarm.hour + result.arrival_h) / 24) + 1);
    watched.visited_share.push_back(result.visitors_of_chosen / static_cast<double>(swarm.bees));
    watched.first_found_won += first_danced == result.site ? 1 : 0;
    watched.dancing_for_chosen += share_for_chosen(trace, result.site, lifted_h);
}

Watched watch_hunts(const ScoutParameters& p, std::uint32_t seed) {
    Watched watched;
    const auto sky = fine_sky(15);
    for (unsigned n = 0; n < swarms; ++n) {
        const Chance chance{seed, n};
        const auto sites = natural_sites(chance, n, natural_per_km2, p);
        const Swarm swarm = swarm_number(n);
        HuntTrace trace;
        const HuntResult result = hunt(swarm, sites, sky, p, chance, &trace);
        watch(sites, trace, result, swarm, watched);
    }
    return watched;
}

/// Least squares through the means of the first six dances.
struct Line {
    double slope = 0;
    double r_squared = 0;
};
Line fading(const Watched& watched) {
    double sx = 0, sy = 0, sxx = 0, sxy = 0, syy = 0;
    const double n = 6;
    for (std::size_t i = 0; i < 6; ++i) {
        const auto x = static_cast<double>(i);
        const double y = watched.runs_sum[i] / watched.runs_count[i];
        sx += x;
        sy += y;
        sxx += x * x;
        sxy += x * y;
        syy += y * y;
    }
    const double across = n * sxy - sx * sy;
    const double r_squared = across * across / ((n * sxx - sx * sx) * (n * syy - sy * sy));
    return {across / (n * sxx - sx * sx), std::min(r_squared, 1.0)};  // rounding may pass one by a hair
}

double median(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<long>(values.size() / 2), values.end());
    return values[values.size() / 2];
}

std::vector<Finding> the_hunt(const Parameters& parameters, std::uint32_t seed) {
    const Watched w = watch_hunts(parameters.scouts, seed);
    const double moved_share = w.moved / swarms;
    return {
        {"daylight hours of house-hunting, mean", "h", "20", mean(w.hours), error_of_mean(w.hours), 10, 30,
         "half to one and a half times the mean, since weather and land differ",
         "Villa 2004, Swarming behavior of honey bees in southeastern Louisiana", Footing::calibrated, ""},
        {"days from hanging to the new home, both counted, in fine weather, mean", "d", "about 2", mean(w.days),
         error_of_mean(w.days), 1.5, 3.5, "hours to several days; a mean of two to three calendar days for 20 hours",
         "Villa 2004; Lindauer 1955, Schwarmbienen auf Wohnungssuche", Footing::calibrated, ""},
        {"swarms that find a home, share", "", "17 of 19", moved_share, share_error(moved_share, swarms),
         binomial_interval_95(17, 19).low, 1, "from the lower 95 % binomial limit of 17 of 19 on",
         "Lindauer 1955, Schwarmbienen auf Wohnungssuche", Footing::independent, ""},
        {"sites advertised by dances, mean", "", "12 (sd 6.6)", mean(w.sites_danced_for),
         error_of_mean(w.sites_danced_for), 6, 19, "one standard deviation between swarms either side",
         "Schneider 1995, Swarm movement patterns inferred from waggle dance activity; Seeley and Buhrman 1999, Group "
         "decision making in swarms of honey bees",
         Footing::calibrated, ""},
        {"scouts that come upon a site unaided, mean of a swarm", "", "about 25", mean(w.finders),
         error_of_mean(w.finders), 15, 50, "about the published figure, from a little below to twice it",
         "Seeley and Buhrman 1999, told in the press of 2009", Footing::independent, ""},
        {"distance danced, median, near apiaries", "m", "470", median(w.danced_m), 0, 300, 1000,
         "two thirds to twice the median: lands differ in cavities",
         "Kohl and Rutschmann 2018, The neglected bee trees", Footing::calibrated, ""},
        {"bees outside the site when piping starts, mean", "", "10 to 15", mean(w.outside_at_piping),
         error_of_mean(w.outside_at_piping), 8, 20, "a quarter beyond the published range, for bees not seen",
         "Seeley and Visscher 2003, Choosing a home: how the scouts in a honey bee swarm perceive the completion of "
         "their group decision making",
         Footing::calibrated, ""},
        {"bees of the swarm that had been at the chosen site at lift-off, share", "", "0.03 to 0.05",
         mean(w.visited_share), error_of_mean(w.visited_share), 0.03, 0.05, "the published range",
         "Seeley, Morse and Visscher 1979, The natural history of the flight of honey bee swarms; Seeley and Chilcott "
         "2015",
         Footing::independent,
         "six in ten of the model's scouts have been at the site when the swarm lifts; \"nearly all\" would need "
         "slower hunts"},
        {"dances of the last hour that are for the chosen site, share", "", "nearly all",
         w.dancing_for_chosen / w.moved, 0, 0.7, 1, "consensus usual but not needed (Seeley and Visscher 2003)",
         "Seeley and Buhrman 1999, Group decision making in swarms of honey bees", Footing::independent, ""},
        {"hunts won by the site advertised first, share", "", "some, not most", w.first_found_won / w.moved,
         share_error(w.first_found_won / w.moved, w.moved), 0.02, 0.5, "the first need not win, and may",
         "Seeley and Buhrman 1999, Group decision making in swarms of honey bees", Footing::independent, ""},
        {"swarms split in the air, share", "", "1 of 19", w.splits / swarms, share_error(w.splits / swarms, swarms), 0,
         binomial_interval_95(1, 19).high, "up to the upper 95 % binomial limit of 1 of 19",
         "Lindauer 1955, Schwarmbienen auf Wohnungssuche", Footing::independent, ""},
    };
}

std::vector<Finding> the_dances(const Parameters& parameters, std::uint32_t seed) {
    const Watched w = watch_hunts(parameters.scouts, seed);
    const Line line = fading(w);
    const double retired = w.rested_first / (w.rested_first + w.followed_first);
    Finding losers = against_count("scouts of losing sites that stop dancing before they follow a rival, share", 23, 27,
                                   retired, w.rested_first + w.followed_first,
                                   "Seeley 2003, Consensus building during nest-site selection in honey bee swarms: "
                                   "the expiration of dissent");
    return {
        {"waggle runs from one return to the next, slope", "1", "-15", line.slope, 0, -20, -10, "a third either side",
         "Seeley 2003, Consensus building during nest-site selection in honey bee swarms", Footing::calibrated, ""},
        {"the same: share of the means' variance on a straight line", "", "linear", line.r_squared, 0, 0.95, 1,
         "linear to within a twentieth",
         "Seeley 2003, Consensus building during nest-site selection in honey bee "
         "swarms",
         Footing::calibrated, ""},
        losers};
}

}  // namespace

std::vector<Experiment> watched_hunts() {
    return {{"house-hunts", "scouts", "250 swarms hunt among ten natural cavities a square kilometre, in fine weather",
             the_hunt},
            {"dances", "scouts", "dances of the same swarms, return by return", the_dances}};
}

}  // namespace maybough::experiments
