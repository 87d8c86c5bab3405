// Seasons of unmanaged nests against published ones: who swarms, when, how big; who survives the winter.
#include "experiments/colony_seasons.hpp"

#include <limits>

#include "experiments/colony_themes.hpp"

namespace maybough::experiments {

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr std::uint32_t years = 40;
constexpr std::uint32_t nests = 25;
// Days of the year, 1 January = 0.
constexpr int may_15 = 134;
constexpr int june_9 = 159;
constexpr int july_16 = 196;
constexpr int august_14 = 225;
constexpr int august_15 = 226;
constexpr int september_15 = 257;
constexpr const char* fell = "Fell et al. 1977, The seasonal cycle of swarming in honeybees";
constexpr const char* gilley =
    "Gilley et al. 2018, Swarming in New Jersey: 689 clusters in four years, Environmental Entomology 47:603";
constexpr const char* seeley = "Seeley 2017, Life-history traits of wild honey bee colonies near Ithaca";
constexpr const char* winston = "Winston 1980, Swarming, afterswarming, and reproductive rate of unmanaged colonies";

Finding share(std::string what, std::string published, const Share& got, double low, double high, std::string why,
              std::string source, Footing footing = Footing::calibrated, std::string departure = "") {
    return {std::move(what),   "",      std::move(published), got.value(), got.se(), low, high, std::move(why),
            std::move(source), footing, std::move(departure)};
}

Finding mean(std::string what, std::string unit, std::string published, const Sample& got, double low, double high,
             std::string why, std::string source, Footing footing = Footing::calibrated, std::string departure = "") {
    return {std::move(what),   std::move(unit), std::move(published), got.mean(), got.se(), low, high, std::move(why),
            std::move(source), footing,         std::move(departure)};
}

std::vector<Finding> dates_at_ithaca(const Seasons& s) {
    // The peak's standard error is that of the yearly means about it.
    const Finding peak{"day about which most swarms leave at Ithaca (1 January = 0)",
                       "d",
                       "9 June, day 159",
                       static_cast<double>(s.peak_day(90, july_16)),
                       s.yearly_mean_day.se(),
                       june_9 - 8,
                       june_9 + 8,
                       "+-8 d; a spread of 7.5 d is reported",
                       fell,
                       Footing::calibrated,
                       ""};
    const double gap = s.per_day(july_16, august_14);
    const double late = s.per_day(august_15, september_15);
    return {
        peak,
        share("swarms at Ithaca from 15 May to 15 July, share", "about 0.8", s.main_season, 0.70, 1, "at least 0.70",
              fell),
        {"swarms a day in late summer (15 August to 15 September) over those of the four weeks before", "",
         "a second peak: above 1", late / gap, 0, 1.2, infinity, "clearly above 1", fell, Footing::independent, ""},
        share("swarms at Ithaca from 15 August to 15 September, share", "0.10 to 0.20", s.late_season, 0.07, 0.23,
              "as published, +-0.03: given from memory", fell, Footing::calibrated,
              "a hazard that gives so many late swarms at Ithaca gives as many in New Jersey, whose dates spread far "
              "less; the colonies that swarmed in spring have young queens, who seldom swarm again in this model"),
    };
}

std::vector<Finding> run_ithaca(const Parameters& parameters, std::uint32_t seed) {
    const Seasons s = watch(ithaca(), parameters, seed, years, nests);
    std::vector<Finding> findings = dates_at_ithaca(s);
    const std::vector<Finding> rest{
        share("unmanaged colonies that swarm in a year, share", "0.87", s.swarmed, 0.75, 0.95,
              "0.87 requeen in a summer, probably by swarming; 0.92 in the 1970s", seeley),
        share("colonies that swarm and cast an afterswarm, share", "0.5 to 0.7", s.with_after, 0.5, 0.7, "as published",
              "Gilley and Tarpy 2005; Winston 1980; from memory"),
        share("colonies with an afterswarm that cast a second, share", "0.3 to 0.6", s.with_second_after, 0.2, 0.6,
              "as published, -0.1: given from memory", "Gilley and Tarpy 2005; Winston 1980; from memory"),
        mean("swarms of a colony in a year at Ithaca", "", "about 1 to 2.2", s.swarms_per_colony, 0.8, 2.4,
             "0.87 prime swarms, and afterswarms", "Seeley 1978, 2017, 2019; partly from memory"),
        mean("mean weight of a swarm, at 7000 bees a kg", "kg", "1.42", s.kilograms, 1.14, 1.70, "+-20 %",
             "Villa 2004, Swarming behavior of honey bees in southeastern Louisiana"),
        share("swarms of 0.17 to 4.30 kg, share", "range of all swarms weighed", s.of_usual_weight, 0.95, 1,
              "at least 0.95", "Villa 2004, Swarming behavior of honey bees in southeastern Louisiana"),
        mean("bees of a prime swarm at Ithaca", "bees", "mean 11 800, 2400 to 41 000", s.prime_bees, 9400, 14200,
             "+-20 %", "Fell et al. 1977; from memory", Footing::independent),
        share("established colonies that survive the summer, share", "0.97", s.summer_survived, 0.94, 1, "+-0.03",
              seeley),
        share("established colonies that survive the winter, share", "0.84", s.winter_survived, 0.78, 0.90, "+-0.06",
              seeley),
        share("colonies founded in the year that survive the winter, share", "0.23", s.founder_survived, 0.15, 0.31,
              "+-0.08", seeley),
        share("colonies founded in the year that swarm in it, share", "0 to 0.1", s.founder_swarmed, 0, 0.1,
              "as published", "Seeley 1978; Lee and Winston 1987; from memory", Footing::independent),
        share("nests without a laying queen 60 days after their prime swarm, share", "0.1 to 0.25",
              s.young_queen_failed, 0.10, 0.25, "as published", "common practice, no published source",
              Footing::calibrated,
              "mating losses are at the low end of what is published, and failed young queens are raised anew where "
              "there is young brood"),
        mean("young queen's first egg, days after the prime swarm", "d", "20 to 30", s.lays_again, 15, 35, "+-5 d",
             "Winston 1987; arithmetic of development and mating, from memory", Footing::independent),
        mean("foragers that die on a day of flight, share", "", "0.15 to 0.36", s.forager_risk, 0.10, 0.40,
             "between the older and the newer measurement, with margins", "Visscher and Dukas 1997; Prado et al. 2020"),
    };
    findings.insert(findings.end(), rest.begin(), rest.end());
    return findings;
}

std::vector<Finding> run_new_jersey(const Parameters& parameters, std::uint32_t seed) {
    const Seasons s = watch(new_jersey(), parameters, seed, years, nests);
    const double sd = s.yearly_mean_day.sd();
    return {
        mean("mean day of swarms in New Jersey (1 January = 0)", "d", "15 May, day 134", s.swarm_day, may_15 - 7,
             may_15 + 7, "+-7 d", gilley),
        {"spread of the yearly mean day in New Jersey, standard deviation", "d", "several days", sd,
         sd / std::sqrt(2.0 * (s.yearly_mean_day.count() - 1)), 0, 7, "at most 7 d", gilley, Footing::calibrated, ""},
    };
}

std::vector<Finding> run_kansas(const Parameters& parameters, std::uint32_t seed) {
    const Seasons s = watch(kansas(), parameters, seed, years, nests);
    const double swarms = s.swarms_per_colony.mean();
    // The parent nest with its young queen is a daughter colony too, unless that queen is lost.
    const double nests_requeened = s.swarmed.value() * (1 - s.young_queen_failed.value());
    const std::string why = "+-1; the paper's abstract does not say whether the parent nest is counted";
    return {
        {"daughter colonies of a queen in a year in Kansas, the parent nest counted", "", "3.6",
         swarms + nests_requeened, s.swarms_per_colony.se(), 2.6, 4.6, why, winston, Footing::calibrated, ""},
        {"daughter colonies of a queen in a year in Kansas, swarms only", "", "3.6", swarms, s.swarms_per_colony.se(),
         2.6, 4.6, why, winston, Footing::calibrated,
         "Kansas colonies cast 11 457 workers with each afterswarm; colonies of this model are smaller after a prime "
         "swarm and stop casting sooner"},
    };
}

std::vector<Finding> run_spring(const Parameters& parameters, std::uint32_t seed) {
    constexpr std::uint32_t few_years = 20;
    const Seasons cold = watch(ithaca(), parameters, seed, few_years, nests, -2);
    const Seasons warm = watch(ithaca(), parameters, seed, few_years, nests, 2);
    const double per_degree = (cold.first_swarm_day.mean() - warm.first_swarm_day.mean()) / 4;
    const double se = std::hypot(cold.first_swarm_day.se(), warm.first_swarm_day.se()) / 4;
    return {{"first swarms earlier for each degree of warmth", "d/C", "2 to 6 for plants", per_degree, se, 1, 6,
             "phenology of plants, a day less allowed", "common practice, no published source for swarms",
             Footing::independent, ""}};
}

}  // namespace

std::vector<Experiment> season_experiments() {
    return {
        {"ithaca-seasons", "colony", "forty years of unmanaged nests of 42 litres in the climate of Ithaca",
         run_ithaca},
        {"new-jersey-seasons", "colony", "the same in the climate of central New Jersey", run_new_jersey},
        {"kansas-seasons", "colony", "the same in the climate of eastern Kansas", run_kansas},
        {"warm-and-cold-springs", "colony", "the same years at Ithaca, two degrees warmer and two colder", run_spring},
    };
}

}  // namespace maybough::experiments
