// Private to experiments/: colonies lived through days and years, and samples of what they did.
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

#include "experiments/made_days.hpp"
#include "experiments/places.hpp"
#include "swarm/swarm.hpp"

namespace maybough::experiments {

inline constexpr int may_1 = 120;
inline constexpr int october_1 = 273;

/// Part of a year of one colony.
struct LifeOfColony {
    std::vector<Swarm> swarms;
    std::int64_t workers_emerged = 0;
    std::int64_t most_eggs = 0;  ///< in a day, of both castes
    std::int64_t most_adults = 0;
    std::int64_t most_sealed = 0;
    double honey_in_g = 0;
    double honey_eaten_g = 0;
    double least_honey_g = 1e9;
    std::int64_t forager_days = 0;    ///< on days with foraging
    std::int64_t forager_deaths = 0;  ///< on the same days
    int died_on = -1;
};

/// Lives `colony` from day `from` to day `until` (exclusive) of `sky`, casting swarms.
inline LifeOfColony live(Colony& colony, const SkyYear& sky, const Chance& chance, int from = 0, int until = 365,
                         const ColonyParameters& parameters = {}, const SwarmParameters& swarm_parameters = {}) {
    constexpr double hours_of_a_flight_day = 4;
    LifeOfColony life;
    for (Day day{from}; day.value < until && colony.alive; day = day + 1) {
        const std::int64_t foragers_before = colony.foragers;
        const DayOfColony today = live_one_day(colony, sky[day], day, parameters, chance);
        life.workers_emerged += today.workers_emerged;
        life.most_eggs = std::max(life.most_eggs, today.eggs_laid + today.drone_eggs_laid);
        life.honey_in_g += today.honey_in_g;
        life.honey_eaten_g += today.honey_eaten_g;
        if (sky[day].foraging_h > hours_of_a_flight_day) {
            life.forager_days += foragers_before;
            life.forager_deaths += today.foragers_died;
        }
        const auto swarm = issue_swarm(colony, sky[day], day, swarm_parameters, chance);
        if (swarm) life.swarms.push_back(*swarm);
        life.most_adults = std::max(life.most_adults, adults(colony));
        life.most_sealed = std::max(life.most_sealed, sealed_brood(colony));
        life.least_honey_g = std::min(life.least_honey_g, colony.honey_g);
        if (!colony.alive) life.died_on = day.value;
    }
    return life;
}

/// Numbers seen once each: their mean and spread.
class Sample {
  public:
    void add(double x) {
        n_ += 1;
        sum_ += x;
        squares_ += x * x;
    }
    double count() const { return n_; }
    double mean() const { return n_ > 0 ? sum_ / n_ : std::nan(""); }
    double sd() const { return n_ > 1 ? std::sqrt(std::max(0.0, (squares_ - sum_ * sum_ / n_) / (n_ - 1))) : 0; }
    double se() const { return n_ > 0 ? sd() / std::sqrt(n_) : 0; }

  private:
    double n_ = 0;
    double sum_ = 0;
    double squares_ = 0;
};

/// A share with its binomial standard error.
struct Share {
    std::int64_t taken = 0;
    std::int64_t offered = 0;
    void add(bool took) {
        taken += took ? 1 : 0;
        ++offered;
    }
    double value() const {
        return offered > 0 ? static_cast<double>(taken) / static_cast<double>(offered) : std::nan("");
    }
    double se() const { return offered > 0 ? std::sqrt(value() * (1 - value()) / static_cast<double>(offered)) : 0; }
};

}  // namespace maybough::experiments
