// Lives through seasons under random placements and writes down every hunt as plain numbers.
#include "planner/record.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>
#include <unordered_map>

namespace maybough::planner {

namespace {
/// Shares of spots used in the three kinds of recorded season.
constexpr double sparse_share = 0.1;
constexpr double dense_share = 0.5;
/// Every fourth belief is held out of the trial fit; in its seasons some hunts are run again with fresh luck.
constexpr std::uint32_t held_out_every = 4;
constexpr int checks_a_season = 4;
constexpr std::uint32_t check_times = 16;
/// Fresh luck for a repeated hunt: replicate numbers that no season uses.
constexpr std::uint32_t first_check_luck = 1'000'000;

bool held_out(std::uint32_t season) {
    return (season / seasons_per_belief) % held_out_every == held_out_every - 1;
}

double hour_of_year(Day day, double hour) {
    return 24.0 * day.value + hour;
}

bool reaches_a_spot(const Scenario& scenario, Point at, double reach_m) {
    return std::any_of(scenario.spots.begin(), scenario.spots.end(),
                       [&](const Spot& spot) { return !spot.never && distance_m(spot.at, at) < reach_m; });
}

/// Cavities a swarm's scouts can find. Those of the backdrop's own swarms are known already.
std::vector<SiteOffer> natural_sites(const Backdrop& backdrop, const Swarm& swarm, const ScoutParameters& parameters) {
    std::vector<SiteOffer> sites;
    for (const std::uint32_t index : backdrop.finder.near(swarm.at)) {
        if (backdrop.cavity_free_h[index] > hour_of_year(swarm.day, swarm.hour)) continue;
        const NaturalSite& site = backdrop.land.cavities[index];
        const double away_m = distance_m(swarm.at, site.at);
        const double weight = stands_for(away_m, parameters) * find_weight(site.cavity, away_m, parameters);
        if (weight > 0) sites.push_back({site.id, away_m, weight, backdrop.cavity_log_odds[index]});
    }
    return sites;
}

/// Hour of the year from which each natural site that was settled has tenants, by its id.
using Tenancy = std::unordered_map<std::uint32_t, double>;

Tenancy tenancy_of(const std::vector<SwarmStory>& stories) {
    Tenancy tenanted_h;
    for (const SwarmStory& story : stories) {
        if (story.hunt.outcome != HuntOutcome::moved || is_trap(story.hunt.site)) continue;
        tenanted_h[story.hunt.site.value] = hour_of_year(story.swarm.day, story.swarm.hour) + story.hunt.arrival_h;
    }
    return tenanted_h;
}

/// Cavities that the swarm's scouts can find and that had no tenants when it hung.
std::vector<SiteOffer> free_sites(const Backdrop& backdrop, const Swarm& swarm, const ScoutParameters& parameters,
                                  const Tenancy& tenanted_h) {
    std::vector<SiteOffer> offers = natural_sites(backdrop, swarm, parameters);
    const double hung_h = hour_of_year(swarm.day, swarm.hour);
    std::erase_if(offers, [&](const SiteOffer& offer) {
        const auto taken = tenanted_h.find(offer.id.value);
        return taken != tenanted_h.end() && taken->second <= hung_h;
    });
    return offers;
}

/// Stories come as they end; traps fill about as swarms hang.
void sort_as_they_hung(std::vector<SwarmStory>& stories) {
    std::sort(stories.begin(), stories.end(), [](const SwarmStory& a, const SwarmStory& b) {
        return std::tuple(a.swarm.day, a.swarm.hour, a.swarm.id) < std::tuple(b.swarm.day, b.swarm.hour, b.swarm.id);
    });
}

SiteView view_of(double weight, double log_odds) {
    return {static_cast<float>(std::log(weight)), static_cast<float>(log_odds)};
}

/// One season being written down.
struct Desk {
    const Scenario& scenario;
    const Parameters& parameters;
    const Backdrop& backdrop;
    const Placement& placement;
    const Chance& chance;
    const SeasonRecord& record;
    std::vector<TrapSeason> traps;
    Tenancy tenanted_h;
    RecordedSeason out;
};

/// Traps that hang open when the swarm's scouts set out, as offers.
std::vector<SiteOffer> open_traps(const Desk& desk, const Swarm& swarm) {
    std::vector<SiteOffer> offers;
    for (const TrapSeason& trap : desk.traps) {
        const bool hangs = trap.hang <= swarm.day && swarm.day < trap.take_down;
        const bool out = std::any_of(trap.outages.begin(), trap.outages.end(), [&](const Outage& outage) {
            return outage.from <= swarm.day && swarm.day < outage.until;
        });
        const bool full = std::any_of(desk.record.catches.begin(), desk.record.catches.end(), [&](const Catch& caught) {
            return caught.trap == trap.setting && caught.swarm != swarm.id && caught.caught <= swarm.day &&
                   swarm.day < caught.taking.taken;
        });
        if (!hangs || out || full) continue;
        const TrapSetting& setting = desk.placement[trap.setting];
        const Cavity cavity = trap_cavity(trap, setting, desk.scenario.kinds[setting.kind],
                                          desk.scenario.spots[setting.spot], swarm.day, desk.parameters.keeper);
        const double away_m = distance_m(swarm.at, trap.at);
        const double weight = find_weight(cavity, away_m, desk.parameters.scouts);
        const bool south = is_southern(desk.scenario.land.centre);
        if (weight > 0) {
            const double log_odds = site_log_odds(cavity, desk.parameters.scouts, south);
            offers.push_back({trap.site, away_m, weight, log_odds, 0, 1e9, shared_taste(trap.at, log_odds)});
        }
    }
    return offers;
}

/// Runs the same hunt several times with fresh luck and counts where it ended.
RepeatedHunt repeat_hunt(const Desk& desk, const Swarm& swarm, const std::vector<SiteOffer>& offers,
                         std::size_t natural) {
    RepeatedHunt check;
    check.prime = swarm.prime;
    check.first_trap = static_cast<std::uint32_t>(natural);
    check.times = check_times;
    check.moved.assign(offers.size(), 0);
    for (const SiteOffer& offer : offers) check.sites.push_back(view_of(offer.find_weight, offer.log_odds));
    const auto& days = desk.backdrop.sky.days;
    const std::span<const DayOfSky> sky(days.begin() + swarm.day.value, days.end());
    for (std::uint32_t time = 0; time < check_times; ++time) {
        const Chance luck{desk.chance.seed, first_check_luck + desk.chance.replicate * check_times + time};
        const HuntResult result = hunt(swarm, offers, sky, desk.parameters.scouts, luck);
        if (result.outcome != HuntOutcome::moved) continue;
        for (std::size_t s = 0; s < offers.size(); ++s) check.moved[s] += offers[s].id == result.site ? 1 : 0;
    }
    return check;
}

void write_down(Desk& desk, const SwarmStory& story) {
    RecordedSeason& out = desk.out;
    if (story.hunt.outcome == HuntOutcome::hived ||
        !reaches_a_spot(desk.scenario, story.swarm.at, search_reach_m(desk.parameters.scouts)))
        return;
    std::vector<SiteOffer> offers = free_sites(desk.backdrop, story.swarm, desk.parameters.scouts, desk.tenanted_h);
    const std::size_t natural = offers.size();
    for (const SiteOffer& offer : open_traps(desk, story.swarm)) offers.push_back(offer);

    RecordedHunt hunt;
    hunt.first = static_cast<std::uint32_t>(out.hunts.sites.size());
    hunt.first_trap = hunt.first + static_cast<std::uint32_t>(natural);
    hunt.prime = story.swarm.prime;
    for (const SiteOffer& offer : offers) {
        const bool moved = story.hunt.outcome == HuntOutcome::moved && story.hunt.site == offer.id;
        if (moved) hunt.chosen = static_cast<std::int32_t>(out.hunts.sites.size());
        out.hunts.sites.push_back(view_of(offer.find_weight, offer.log_odds));
    }
    hunt.last = static_cast<std::uint32_t>(out.hunts.sites.size());
    out.hunts.hunts.push_back(hunt);
    out.cases.push_back({story.swarm, 0, 1});
    if (story.hunt.outcome == HuntOutcome::moved) {
        out.days_to_settle += story.hunt.arrival_h / 24;
        ++out.moved;
    }
    const bool wanted = held_out(desk.chance.replicate) && static_cast<int>(out.checks.size()) < checks_a_season;
    if (wanted && natural < offers.size()) out.checks.push_back(repeat_hunt(desk, story.swarm, offers, natural));
}

RecordedSeason record_season(const Scenario& scenario, const Effort& effort, std::uint32_t season) {
    const Parameters parameters = draw_beliefs(scenario, effort.seed, season);
    const Chance chance{effort.seed, season};
    const Backdrop backdrop = raise_backdrop(scenario, parameters, chance);
    const Placement placement = random_placement(scenario, effort.seed, season);
    HuntMemo memo;
    std::vector<SwarmStory> stories;
    const SeasonRecord record = run_season(scenario, parameters, backdrop, placement, chance, &memo, &stories);
    sort_as_they_hung(stories);
    Desk desk{scenario, parameters, backdrop, placement, chance, record, {}, tenancy_of(stories), {}};
    for (std::size_t i = 0; i < placement.size(); ++i) {
        desk.traps.push_back(plan_trap_season(placement[i], i, scenario.kinds[placement[i].kind],
                                              scenario.spots[placement[i].spot], scenario.keeper, parameters.keeper,
                                              chance));
    }
    std::sort(desk.traps.begin(), desk.traps.end(), [](const auto& a, const auto& b) { return a.site < b.site; });
    for (const SwarmStory& story : stories) {
        if (distance_m(story.swarm.at, {}) <= scenario.land.radius_m)
            desk.out.swarm_days.push_back(story.swarm.day.value);
    }
    for (const SwarmStory& story : stories) write_down(desk, story);
    desk.out.asked = memo.asked;
    desk.out.run = memo.run;
    return std::move(desk.out);
}

void append(Records& all, RecordedSeason&& season, std::uint32_t index) {
    const auto offset = static_cast<std::uint32_t>(all.hunts.sites.size());
    for (RecordedHunt hunt : season.hunts.hunts) {
        hunt.season = index;
        hunt.first += offset;
        hunt.first_trap += offset;
        hunt.last += offset;
        if (hunt.chosen >= 0) hunt.chosen += static_cast<std::int32_t>(offset);
        all.hunts.hunts.push_back(hunt);
    }
    all.hunts.sites.insert(all.hunts.sites.end(), season.hunts.sites.begin(), season.hunts.sites.end());
    for (SwarmCase& one : season.cases) {
        one.season = index;
        all.cases.push_back(one);
    }
    std::move(season.checks.begin(), season.checks.end(), std::back_inserter(all.checks));
    all.swarm_days.insert(all.swarm_days.end(), season.swarm_days.begin(), season.swarm_days.end());
    all.asked += season.asked;
    all.run += season.run;
}
}  // namespace

Placement random_placement(const Scenario& scenario, std::uint32_t seed, std::uint32_t season) {
    Placement placement;
    const std::uint32_t sort = season % 3;  // none, sparse, dense
    if (sort == 0 || scenario.kinds.empty()) return placement;
    const double share =
        sort == 1 ? std::max(sparse_share, 2.0 / static_cast<double>(scenario.spots.size())) : dense_share;
    std::map<SiteId, TrapSetting> by_site;  // one trap a square, whatever the order of spots
    for (std::size_t i = 0; i < scenario.spots.size(); ++i) {
        const Spot& spot = scenario.spots[i];
        if (spot.never) continue;
        const SiteId site = trap_site(spot.at);
        Stream luck = Chance{seed, season}.stream(Purpose::planner_design, site);
        if (!bernoulli(luck, share)) continue;
        TrapSetting setting;
        setting.spot = i;
        const double u_kind = luck.uniform();
        setting.kind = static_cast<std::size_t>(u_kind * static_cast<double>(scenario.kinds.size()));
        const double u_height = luck.uniform();
        setting.height_m = spot.min_height_m + u_height * (spot.max_height_m - spot.min_height_m);
        const double u_facing = luck.uniform();
        setting.facing_deg =
            spot.facings_deg.empty()
                ? 360 * u_facing
                : spot.facings_deg[static_cast<std::size_t>(u_facing * static_cast<double>(spot.facings_deg.size()))];
        setting.hang = {0};
        setting.take_down = {scenario.days() - 1};
        setting.lured = scenario.keeper.use_lure && bernoulli(luck, 0.5);
        by_site.emplace(site, setting);
    }
    for (const auto& [site, setting] : by_site) placement.push_back(setting);
    return placement;
}

void refuse_overlap(std::uint32_t first, std::uint32_t count) {
    for (const SeasonRange& range : season_ranges.all) {
        if (range.holds(first, count)) return;
    }
    // For measuring the planner itself, on seasons that no plan uses.
    constexpr SeasonRange study_range{600'000, 400'000};
    static_assert(study_range.first >= season_ranges.all.back().end());
    if (study_range.holds(first, count)) return;
    throw ModelFault("seasons " + std::to_string(first) + " to " + std::to_string(first + count) +
                     " are not within one range");
}

Records record_seasons(const Scenario& scenario, const Effort& effort, std::uint32_t first, std::uint32_t count,
                       const Progress& progress) {
    refuse_overlap(first, count);
    Records all;
    all.first_season = first;
    all.seed = effort.seed;
    double days = 0;
    double moved = 0;
    run_in_order<RecordedSeason>(
        first, first + count, effort.threads,
        [&](std::uint32_t season) { return record_season(scenario, effort, season); },
        [&](std::uint32_t season, RecordedSeason&& result) {
            days += result.days_to_settle;
            moved += static_cast<double>(result.moved);
            append(all, std::move(result), season - first);
        },
        progress, season_of(effort.seed));
    for (std::uint32_t i = 0; i < count; ++i) all.parameters.push_back(draw_beliefs(scenario, effort.seed, first + i));
    if (moved > 0) all.days_to_settle = static_cast<int>(std::lround(days / moved));
    return all;
}

std::vector<SwarmCase> situations_of(const Scenario& scenario, const Backdrop& backdrop, const Parameters& parameters,
                                     std::vector<SwarmStory> stories, const ChoiceWeights& weights) {
    sort_as_they_hung(stories);
    const Tenancy tenanted_h = tenancy_of(stories);
    std::vector<SwarmCase> cases;
    for (const SwarmStory& story : stories) {
        if (story.hunt.outcome == HuntOutcome::hived ||
            !reaches_a_spot(scenario, story.swarm.at, search_reach_m(parameters.scouts)))
            continue;
        std::vector<SiteView> views;
        for (const SiteOffer& offer : free_sites(backdrop, story.swarm, parameters.scouts, tenanted_h)) {
            views.push_back(view_of(offer.find_weight, offer.log_odds));
        }
        cases.push_back({story.swarm, 0, rival_pull(views, story.swarm.prime, weights)});
    }
    return cases;
}

void settle_rivals(Records& records, const ChoiceWeights& weights) {
    for (std::size_t i = 0; i < records.cases.size(); ++i) {
        const RecordedHunt& hunt = records.hunts.hunts[i];
        const std::span<const SiteView> sites(records.hunts.sites);
        records.cases[i].rivals =
            rival_pull(sites.subspan(hunt.first, hunt.first_trap - hunt.first), hunt.prime, weights);
    }
    records.hunts = {};
}

ChoiceFit fit_records(const Records& records, SurrogateCheck& check) {
    constexpr std::size_t most_hunts = 8000;  // beyond it the fit is surer than the form it fits
    const std::size_t n = records.hunts.hunts.size();
    const std::size_t stride = std::max<std::size_t>(1, n / most_hunts);
    std::vector<std::uint32_t> all;
    std::vector<std::uint32_t> learned;
    for (std::size_t i = 0; i < n; i += stride) {
        all.push_back(static_cast<std::uint32_t>(i));
        if (!held_out(records.first_season + records.hunts.hunts[i].season)) {
            learned.push_back(static_cast<std::uint32_t>(i));
        }
    }
    const ChoiceError error = choice_error(records.checks, fit_choice(records.hunts, learned).weights);
    check = {error.hunts, error.rms, error.r_squared, error.traps_foretold, error.traps_seen};
    return fit_choice(records.hunts, all);
}

}  // namespace maybough::planner
