// New nests and lost queens: comb and drone comb of a hived prime swarm, and how long a queenless colony lasts.
#include "experiments/colony_themes.hpp"
#include "experiments/lives.hpp"

namespace maybough::experiments {

namespace {

constexpr const char* lee = "Lee and Winston 1985, The effect of swarm size and date of issue on comb construction";

/// The comb of one founder's first summer.
struct Comb {
    int ninety_percent = -1;  ///< day from founding by which 90 % stands
    int drone_begins = -1;
    int drone_ninety = -1;  ///< days from its beginning to 90 % of the drone comb
    double first_two_weeks = 0;
    double cells = 0;
};

Comb watch_comb(const Parameters& parameters, const SkyYear& sky, const Chance& chance, std::uint32_t number,
                int founded) {
    constexpr std::int64_t bees = 12000;  // a prime swarm: Fell et al. 1977, from memory
    const double honey_g = static_cast<double>(bees) * 1e-3 * parameters.swarm.honey_per_bee_mg;
    Colony colony = founded_colony({number}, {}, {bees, true, honey_g, 365}, 42, ordinary_country, {founded},
                                   parameters.colony, chance);
    std::vector<std::int64_t> comb;
    std::vector<std::int64_t> drone_comb;
    for (Day day{founded}; day.value < october_1; day = day + 1) {
        live_one_day(colony, sky[day], day, parameters.colony, chance);
        if (!colony.alive) return {};
        comb.push_back(colony.comb_cells);
        drone_comb.push_back(colony.drone_comb_cells);
    }
    const auto reaches = [](const std::vector<std::int64_t>& cells, double share) {
        const double goal = share * static_cast<double>(cells.back());
        const auto at = std::find_if(cells.begin(), cells.end(),
                                     [goal](std::int64_t n) { return n > 0 && static_cast<double>(n) >= goal; });
        return static_cast<int>(at - cells.begin()) + 1;
    };
    Comb out;
    out.ninety_percent = reaches(comb, 0.9);
    out.cells = static_cast<double>(comb.back());
    out.first_two_weeks = static_cast<double>(comb[13]) / out.cells;
    if (drone_comb.back() > 0) {
        out.drone_begins = reaches(drone_comb, 0);
        out.drone_ninety = reaches(drone_comb, 0.9) - out.drone_begins;
    }
    return out;
}

std::vector<Finding> run_comb(const Parameters& parameters, std::uint32_t seed) {
    constexpr std::uint32_t years = 12;
    constexpr std::uint32_t swarms = 10;
    constexpr int first_day = 145;  // 26 May, and every third day after
    Sample ninety;
    Sample begins;
    Sample drone_ninety;
    Sample two_weeks;
    for (std::uint32_t year = 0; year < years; ++year) {
        const Chance chance{seed, year};
        const SkyYear sky = year_at(ithaca(), parameters.weather, chance);
        for (std::uint32_t number = 1; number <= swarms; ++number) {
            const Comb comb = watch_comb(parameters, sky, chance, number, first_day + 3 * static_cast<int>(number - 1));
            if (comb.ninety_percent < 0) continue;
            ninety.add(comb.ninety_percent);
            two_weeks.add(comb.first_two_weeks);
            if (comb.drone_begins >= 0) {
                begins.add(comb.drone_begins);
                drone_ninety.add(comb.drone_ninety);
            }
        }
    }
    return {
        {"nine tenths of the first year's comb stand, days from founding", "d", "44", ninety.mean(), ninety.se(), 34,
         54, "+-10 d", lee, Footing::independent, ""},
        {"drone comb begun, days from founding", "d", "22", begins.mean(), begins.se(), 15, 29, "+-7 d", lee,
         Footing::calibrated, ""},
        {"nine tenths of the drone comb, days from its beginning", "d", "42", drone_ninety.mean(), drone_ninety.se(),
         32, 52, "+-10 d", lee, Footing::independent, ""},
        {"first year's comb built in the first two weeks, share", "", "0.20 to 0.35", two_weeks.mean(), two_weeks.se(),
         0.15, 0.40, "as published, +-0.05: the source is given from memory",
         "Smith et al. 2016, Honey bee colonies' life history; from memory", Footing::independent, ""},
    };
}

std::vector<Finding> run_queenless(const Parameters& parameters, std::uint32_t seed) {
    constexpr std::uint32_t colonies = 20;
    Sample weeks;
    Share requeened;
    for (std::uint32_t number = 1; number <= colonies; ++number) {
        const Chance chance{seed, number};
        Colony colony = crowded_colony(number, parameters.colony, chance);
        colony.hazard_limit = 1e9;
        colony.queen.state = QueenState::none;
        Colony with_brood = colony;
        with_brood.queen.state = QueenState::laying;
        with_brood.queen.age_days = 1e6;  // fails today
        colony.workers = {};
        const std::int64_t start = adults(colony);
        int day = 0;
        while (colony.alive && adults(colony) > start / 10 && day < 365) {
            live_one_day(colony, fair_day(), {day}, parameters.colony, chance);
            ++day;
        }
        weeks.add(day / 7.0);
        for (day = 0; day < 60; ++day) {
            live_one_day(with_brood, fair_day(), {day}, parameters.colony, chance);
            issue_swarm(with_brood, fair_day(), {day}, parameters.swarm, chance);
        }
        requeened.add(with_brood.queen.state == QueenState::laying && with_brood.queen.age_days < 365);
    }
    return {
        {"queenless and broodless in summer, weeks to a tenth of the bees", "weeks", "4 to 9", weeks.mean(), weeks.se(),
         4, 9, "summer workers live 15 to 45 days: the last few near twice the mean",
         "Winston 1987, The Biology of the Honey Bee; from memory", Footing::independent, ""},
        {"colonies that lose their queen with young brood present and lay again within 60 days, share", "",
         "0.75 to 0.95", requeened.value(), requeened.se(), 0.75, 1,
         "0.05 to 0.25 of virgins are lost on mating flights", "Ratnieks 1990; extension texts; from memory",
         Footing::calibrated, ""},
    };
}

}  // namespace

std::vector<Experiment> founding_experiments() {
    return {
        {"comb-building", "colony", "prime swarms of 12 000 bees hived from late May to late June", run_comb},
        {"lost-queen", "colony", "strong colonies that lose their queen, without and with young brood", run_queenless}};
}

}  // namespace maybough::experiments
