// Private to experiments/: unmanaged nests of a place lived through years, and what was seen of them.
#pragma once

#include <vector>

#include "experiments/lives.hpp"
#include "outlook/outlook.hpp"

namespace maybough::experiments {

/// What years of unmanaged nests of 42 litres at a place came to.
struct Seasons {
    Share swarmed;             ///< of colonies alive on 1 May
    Share with_after;          ///< of colonies that swarmed
    Share with_second_after;   ///< of colonies that cast an afterswarm
    Share summer_survived;     ///< from 1 May to 1 October
    Share winter_survived;     ///< from 1 October to 1 May
    Share founder_survived;    ///< the same winter, colonies founded by the year's swarms
    Share founder_swarmed;     ///< in the summer of founding
    Share young_queen_failed;  ///< of nests that cast a prime swarm, alive but without a laying queen 60 days later
    Share main_season;         ///< of swarms, 15 May to 15 July
    Share late_season;         ///< of swarms, 15 August to 15 September
    Share of_usual_weight;     ///< of swarms, 0.17 to 4.30 kg
    Sample swarm_day;          ///< day of the year of every swarm, founders' own included
    Sample first_swarm_day;    ///< of each colony that swarmed
    Sample yearly_mean_day;
    Sample kilograms;
    Sample prime_bees;
    Sample swarms_per_colony;  ///< cast in a year by a colony alive on 1 May
    Sample forager_risk;       ///< on a day of flight, mean of a colony's summer
    Sample lays_again;         ///< days from the prime swarm to the first egg of the young queen
    std::vector<int> by_day = std::vector<int>(366);

    /// The day about which most swarms lie, from day `from` to `until`: the greatest weighted sum over ten days either
    /// side, nearer days counting more.
    int peak_day(int from, int until) const;
    /// Swarms a day from day `from` to `until`, both included.
    double per_day(int from, int until) const;
};

Seasons watch(const Place& place, const Parameters& parameters, std::uint32_t seed, std::uint32_t years,
              std::uint32_t nests, double warmer_c = 0);

}  // namespace maybough::experiments
