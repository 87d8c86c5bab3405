// Colonies in the limits of Khoury, Myerscough and Barron 2011 and of Khoury, Barron and Myerscough 2013.
#include "experiments/colony_limits.hpp"

#include <array>

#include "experiments/colony_themes.hpp"
#include "experiments/lives.hpp"

namespace maybough::experiments {

namespace {

constexpr double laying = 2000;      // L, eggs a day, both papers
constexpr double half_2011 = 27000;  // w, bees
constexpr double plenty_g = 1e9;     // with food for ever the onset of foraging is that of the 2011 model
constexpr double slowed = 100;
constexpr double forager_gain_g = 0.1;     // c, 2013
constexpr double adult_eats_mg = 7;        // gamma A
constexpr double open_brood_eats_mg = 18;  // gamma B
constexpr double open_brood_days = 9;      // 1 / phi
constexpr const char* paper_2011 =
    "Khoury, Myerscough and Barron 2011, A quantitative model of honey bee colony population dynamics";
constexpr const char* paper_2013 =
    "Khoury, Barron and Myerscough 2013, Modelling food and population dynamics in honey bee colonies";

struct Two {
    double nest = 0;
    double foragers = 0;
    double bees() const { return nest + foragers; }
};

/// The model's own functions in place of the equations of 2011, by Euler's rule in steps of a hundredth of a day.
Two flow_2011(const ColonyParameters& p, double m, Two x, double days) {
    constexpr double step = 0.01;
    for (int i = 0; i < static_cast<int>(days / step); ++i) {
        const double emergence = laying * share_reared(x.bees(), half_2011);
        const double onset = foraging_onset(x.nest, x.foragers, plenty_g, p) * x.nest;
        x = {x.nest + step * (emergence - onset), x.foragers + step * (onset - m * x.foragers)};
    }
    return x;
}

/// The same with whole bees, in steps of a quarter of a day.
Two bees_2011(const ColonyParameters& p, double m, Two start, double days, Stream& luck) {
    constexpr double step = 0.25;
    auto nest = static_cast<std::int64_t>(start.nest);
    auto foragers = static_cast<std::int64_t>(start.foragers);
    for (int i = 0; i < static_cast<int>(days / step); ++i) {
        const auto h = static_cast<double>(nest);
        const auto f = static_cast<double>(foragers);
        const std::int64_t born = round_at_random(luck, step * laying * share_reared(h + f, half_2011));
        const std::int64_t begun = round_at_random(luck, step * foraging_onset(h, f, plenty_g, p) * h);
        const std::int64_t died = binomial(luck, foragers, step * m);
        nest += born - begun;
        foragers += begun - died;
    }
    return {static_cast<double>(nest), static_cast<double>(foragers)};
}

/// The forager loss at which a small colony neither grows nor shrinks, by bisection on runs.
double threshold_2011(const ColonyParameters& p) {
    double low = 0.30;
    double high = 0.40;
    while (high - low > 2e-4) {
        const double m = (low + high) / 2;
        const Two early = flow_2011(p, m, {7.5, 2.0}, 100);
        const Two late = flow_2011(p, m, early, 50);
        (late.bees() > early.bees() ? low : high) = m;
    }
    return (low + high) / 2;
}

std::vector<Finding> run_2011(const Parameters& parameters, std::uint32_t seed) {
    const ColonyParameters& p = parameters.colony;
    constexpr int runs = 24;
    Sample nest;
    Sample foragers;
    Sample bees_at_100;
    for (std::uint32_t run = 0; run < runs; ++run) {
        Stream luck = Chance{seed, run}.stream(Purpose::colony_day, 1U);
        const Two settled = bees_2011(p, 0.24, {16000, 8000}, 800, luck);
        nest.add(settled.nest);
        foragers.add(settled.foragers);
        bees_at_100.add(bees_2011(p, 0.40, {16000, 8000}, 100, luck).bees());
    }
    const Two at_equilibrium = flow_2011(p, 0.24, {16000, 8000}, 1500);
    const double age = 1 / foraging_onset(at_equilibrium.nest, at_equilibrium.foragers, plenty_g, p);
    const double critical = threshold_2011(p);
    // At the threshold the share of foragers is F/H = 0.263494 whatever the size.
    const double age_at_threshold = 1 / foraging_onset(1, 0.263494, plenty_g, p);
    const std::string exact = "0.1 % of the equations' own solution";
    const std::string whole = "5 % of the equations' solution, mean of 24 runs";
    const auto finding = [](std::string what, std::string unit, std::string published, double got, double se,
                            double value, double tolerance, std::string why) {
        return Finding{
            std::move(what), std::move(unit), std::move(published), got, se, value - tolerance, value + tolerance,
            std::move(why),  paper_2011,      Footing::calibrated,  ""};
    };
    const double at_100 = flow_2011(p, 0.24, {16000, 8000}, 100).bees();
    const double falling = flow_2011(p, 0.40, {16000, 8000}, 100).bees();
    return {
        finding("forager loss a day beyond which a colony dies out", "1/d", "0.3552", critical, 0, 0.355197, 0.002,
                "bisection on runs, +-0.002"),
        finding("nest bees at rest, forager loss 0.24 a day", "bees", "6470", at_equilibrium.nest, 0, 6470.04, 6.5,
                exact),
        finding("foragers at rest, forager loss 0.24 a day", "bees", "1988", at_equilibrium.foragers, 0, 1987.76, 2.0,
                exact),
        finding("the same nest bees as whole bees", "bees", "6470", nest.mean(), nest.se(), 6470.04, 323, whole),
        finding("the same foragers as whole bees", "bees", "1988", foragers.mean(), foragers.se(), 1987.76, 99, whole),
        finding("bees after 100 days from 24 000, forager loss 0.24 a day", "bees", "10 353", at_100, 0, 10352.9, 21,
                "0.2 % of the equations' own solution"),
        finding("bees after 100 days from 24 000, forager loss 0.40 a day", "bees", "2441", falling, 0, 2441.0, 5,
                "0.2 % of the equations' own solution"),
        finding("the same as whole bees", "bees", "2441", bees_at_100.mean(), bees_at_100.se(), 2441.0, 122, whole),
        finding("age at first foraging, forager loss 0.24 a day", "d", "13.6", age, 0, 13.562, 0.41, "3 %"),
        finding("age at first foraging at the threshold", "d", "10.7", age_at_threshold, 0, 10.685, 0.32, "3 %"),
    };
}

/// The forager loss at which food neither grows nor shrinks, food being plentiful: between it and the next threshold
/// food is finite.
double food_threshold(const ColonyParameters& model, const Chance& chance) {
    double low = 0.38;
    double high = 0.43;
    while (high - low > 5e-4) {
        const LimitOf2013 limit{(low + high) / 2, slowed, model};
        const Settled at = settle(limit, limit.start(15000, 3750, 50000), 40000, 20000, chance);
        (at.food_gain_g_per_day > 0 ? low : high) = limit.forager_loss_per_day;
    }
    return (low + high) / 2;
}

std::vector<Finding> run_2013(const Parameters& parameters, std::uint32_t seed) {
    const Chance chance{seed, 0};
    const auto at = [&](double m, double nest, double foragers, double food_g, int days) {
        const LimitOf2013 limit{m, slowed, parameters.colony};
        return settle(limit, limit.start(nest, foragers, food_g), days, days / 4, chance);
    };
    const Settled rich = at(0.154, 20000, 8000, 50000, 60000);
    const Settled finite = at(0.42, 9800, 2750, 1300, 400000);
    const Settled lost = at(0.50, 16000, 8000, 1000, 200000);
    const auto finding = [](std::string what, std::string unit, std::string published, double got, double low,
                            double high, std::string why) {
        return Finding{std::move(what), std::move(unit), std::move(published), got, 0, low, high,
                       std::move(why),  paper_2013,      Footing::calibrated,  ""};
    };
    const std::string one = "1 % of the equations' equilibrium: steps of a hundredth of a day";
    return {
        finding("nest bees at rest with plentiful food, forager loss 0.154 a day", "bees", "31 798", rich.nest, 31480,
                32115, one),
        finding("foragers at rest with plentiful food, forager loss 0.154 a day", "bees", "11 222", rich.foragers,
                11110, 11335, one),
        finding("food gained a day, forager loss 0.154 a day", "g/d", "541", rich.food_gain_g_per_day, 525, 557,
                "3 %: a difference of larger sums"),
        finding("age at first foraging, forager loss 0.154 a day", "d", "18.4", rich.first_foraging_age_days, 17.85,
                18.95, "3 %"),
        finding("forager loss at which food ceases to pile up", "1/d", "0.4010",
                food_threshold(parameters.colony, chance), 0.399, 0.403, "+-0.002, bisection on runs"),
        finding("bees at rest with finite food, forager loss 0.42 a day", "bees", "12 551", finite.bees(), 12170, 12930,
                "3 %: near the threshold small errors of a step count"),
        finding("food at rest, forager loss 0.42 a day", "g", "1304", finite.food_g, 1264, 1343, "3 %"),
        finding("bees after 2000 days, forager loss 0.50 a day, beyond the threshold 0.462", "bees", "collapse",
                lost.bees(), 0, 480, "below 2 % of 24 000"),
    };
}

}  // namespace

ColonyParameters LimitOf2013::parameters() const {
    ColonyParameters p = model;
    p.laying_peak_eggs_per_day = laying / slowed;
    p.laying_half_nest_bees = model.laying_half_nest_bees;
    p.foraging_onset_per_day /= slowed;
    p.foraging_onset_hungry_per_day /= slowed;
    p.foraging_inhibition_per_day /= slowed;
    p.forager_death_per_day = forager_loss_per_day / slowed;
    p.forager_death_per_foraging_h = 0;
    p.foraging_min_age_days = 1;
    p.nest_death_per_day = p.winter_death_per_day = p.winter_small_cluster_bees = 0;
    p.egg_survival = p.larva_survival = p.pupa_survival = 1;
    // Food: what the papers give to every open brood cell is eaten in the days as a larva.
    constexpr double larva_days = static_cast<double>(worker_capped_day - egg_days);
    const DayOfSky sky = fair_day();
    const double flow =
        static_cast<double>(sky.bloom[1]) * p.nectar_fruit + static_cast<double>(sky.bloom[2]) * p.nectar_spring_trees;
    const double offer = flow + static_cast<double>(sky.bloom[1]) * p.pollen_fruit +
                         static_cast<double>(sky.bloom[2]) * p.pollen_spring_trees;
    const double hours = sky.foraging_h * share_reared(offer, p.foraging_half_offer);
    p.honey_per_forager_h_g = forager_gain_g / slowed / (hours * flow);
    p.upkeep_rest_mg = p.upkeep_active_mg = adult_eats_mg / slowed;
    p.larva_honey_mg = open_brood_eats_mg * open_brood_days / larva_days;
    p.pollen_forager_share = p.larva_pollen_mg = 0;
    p.laying_half_pollen_g = 1e-3;
    p.laying_stored_pollen_share = 1;
    // Room, season, drones, queens, swarms: out of play.
    p.honey_per_cell_g = 1e6;
    p.laying_free_cell_share = 1;
    p.comb_cells_per_bee_day = 0;
    p.laying_half_tmax_c = -1000;
    p.laying_spring_daylight_h = 0;
    p.drone_egg_share = p.prepare_per_day = p.queen_failure_per_day = 0;
    p.laying_loss_per_queen_year = 0;
    p.min_adults = 0;
    return p;
}

Colony LimitOf2013::start(double nest, double foragers, double food_g) const {
    Colony colony;
    colony.forage = ordinary_country;
    colony.volume_l = 1000;
    colony.comb_cells = 1000000;
    colony.older_nest = static_cast<std::int64_t>(nest);
    colony.foragers = static_cast<std::int64_t>(foragers);
    colony.honey_g = food_g;
    colony.pollen_g = 1000;
    colony.queen.age_days = 0;
    return colony;
}

Settled settle(const LimitOf2013& limit, Colony colony, int run_days, int days, const Chance& chance) {
    const ColonyParameters p = limit.parameters();
    const DayOfSky sky = fair_day();
    Settled mean;
    double took_up = 0;
    double food_before_g = 0;
    for (int day = 0; day < run_days; ++day) {
        if (day == run_days - days) food_before_g = colony.honey_g;
        colony.hazard_limit = 1e9;
        const DayOfColony today = live_one_day(colony, sky, {day % 365}, p, chance);
        if (day < run_days - days) continue;
        mean.nest += static_cast<double>(nest_bees(colony)) / days;
        mean.foragers += static_cast<double>(colony.foragers) / days;
        mean.food_g += colony.honey_g / days;
        took_up += static_cast<double>(today.foraging_began) / days;
    }
    mean.food_gain_g_per_day = limit.slowed * (colony.honey_g - food_before_g) / days;
    mean.first_foraging_age_days = mean.nest / took_up / limit.slowed;
    return mean;
}

std::vector<Experiment> limit_experiments() {
    return {{"two-equation-limit", "colony", "nest bees and foragers alone, against the equations of 2011", run_2011},
            {"brood-and-food-limit", "colony",
             "whole colonies with brood and food alone, against the equations of 2013", run_2013}};
}

}  // namespace maybough::experiments
