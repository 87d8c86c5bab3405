// Years of unmanaged nests: every nest lives through a year and the next winter, and so do the founders it casts.
#include "experiments/colony_seasons.hpp"

namespace maybough::experiments {

namespace {

constexpr double nest_l = 42;
constexpr double bees_per_kg = 7000;  // 6600 to 8000 in swarms: Otis 1982, from memory
constexpr int may_15 = 134;
constexpr int july_15 = 195;
constexpr int august_15 = 226;
constexpr int september_15 = 257;
constexpr int search_days = 3;  // from leaving to moving in, about two days: Villa 2004
constexpr double honey_left = 0.8;

/// Two years of weather of one replicate, and the model.
struct Years {
    SkyYear sky;
    SkyYear next;
    Chance chance;
    Chance next_chance;
    const Parameters& parameters;

    LifeOfColony live(Colony& colony, int from, int until) const {
        return experiments::live(colony, sky, chance, from, until, parameters.colony, parameters.swarm);
    }
    /// From 1 October to 1 May.
    bool winters(Colony& colony) const {
        live(colony, october_1, 365);
        begin_year(colony);
        experiments::live(colony, next, next_chance, 0, may_1, parameters.colony, parameters.swarm);
        return colony.alive;
    }
};

void count(Seasons& s, const Swarm& swarm, Sample& this_year) {
    const int day = swarm.day.value;
    s.swarm_day.add(day);
    this_year.add(day);
    s.main_season.add(day >= may_15 && day <= july_15);
    s.late_season.add(day >= august_15 && day <= september_15);
    ++s.by_day[static_cast<std::size_t>(day)];
    const double kg = static_cast<double>(swarm.bees) / bees_per_kg;
    s.kilograms.add(kg);
    s.of_usual_weight.add(kg >= 0.17 && kg <= 4.30);
    if (swarm.prime) s.prime_bees.add(static_cast<double>(swarm.bees));
}

/// The swarm moves into a cavity like its parent's and lives to the next spring; what it casts itself is counted.
void found(Seasons& s, const Swarm& swarm, const Years& years, Sample& this_year) {
    const int day = swarm.day.value + search_days;
    Colony founder = founded_colony(founder_of(swarm.id), swarm.at,
                                    {swarm.bees, swarm.prime, honey_left * swarm.honey_g, swarm.queen_age_days}, nest_l,
                                    ordinary_country, {day}, years.parameters.colony, years.chance);
    const LifeOfColony summer = years.live(founder, day, std::max(day, october_1));
    for (const Swarm& late : summer.swarms) count(s, late, this_year);
    s.founder_swarmed.add(!summer.swarms.empty());
    if (founder.alive) s.founder_survived.add(years.winters(founder));
}

/// Lives from the prime swarm until a young queen lays, or for 60 days.
void wait_for_eggs(Seasons& s, Colony& colony, int from, const Years& years, std::vector<Swarm>& swarms) {
    constexpr int patience_days = 60;
    int day = from;
    while (day < october_1 && colony.alive && colony.queen.state != QueenState::laying) {
        const LifeOfColony today = years.live(colony, day, day + 1);
        swarms.insert(swarms.end(), today.swarms.begin(), today.swarms.end());
        ++day;
        if (day - from >= patience_days) break;
    }
    if (!colony.alive || day >= october_1) return;
    s.young_queen_failed.add(colony.queen.state != QueenState::laying);
    if (colony.queen.state == QueenState::laying) s.lays_again.add(day - from);
}

/// The nest's summer to 1 October, day by day at its prime swarm.
std::vector<Swarm> live_summer(Seasons& s, Colony& colony, const Years& years) {
    std::vector<Swarm> swarms;
    LifeOfColony whole;
    for (int day = may_1; day < october_1 && colony.alive; ++day) {
        const LifeOfColony today = years.live(colony, day, day + 1);
        whole.forager_days += today.forager_days;
        whole.forager_deaths += today.forager_deaths;
        swarms.insert(swarms.end(), today.swarms.begin(), today.swarms.end());
    }
    if (whole.forager_days > 0) {
        s.forager_risk.add(static_cast<double>(whole.forager_deaths) / static_cast<double>(whole.forager_days));
    }
    return swarms;
}

void live_nest(Seasons& s, Colony& colony, const Years& years, Sample& this_year) {
    std::vector<Swarm> swarms = years.live(colony, 0, may_1).swarms;
    if (!colony.alive) return;
    Colony twin = colony;  // lives the same days, for a look at its young queen
    const std::vector<Swarm> summer = live_summer(s, colony, years);
    swarms.insert(swarms.end(), summer.begin(), summer.end());
    if (!summer.empty() && summer.front().prime) {
        const int left = summer.front().day.value;
        years.live(twin, may_1, left + 1);
        std::vector<Swarm> seen;
        wait_for_eggs(s, twin, left + 1, years, seen);
    }
    s.swarmed.add(!swarms.empty());
    s.swarms_per_colony.add(static_cast<double>(swarms.size()));
    if (!swarms.empty()) {
        const auto after = std::count_if(swarms.begin(), swarms.end(), [](const Swarm& w) { return !w.prime; });
        s.first_swarm_day.add(swarms.front().day.value);
        s.with_after.add(after > 0);
        if (after > 0) s.with_second_after.add(after > 1);
    }
    for (const Swarm& swarm : swarms) {
        count(s, swarm, this_year);
        found(s, swarm, years, this_year);
    }
    s.summer_survived.add(colony.alive);
    if (colony.alive) s.winter_survived.add(years.winters(colony));
}

}  // namespace

int Seasons::peak_day(int from, int until) const {
    constexpr int reach = 11;
    int best = from;
    int most = -1;
    for (int day = std::max(from, reach); day <= std::min(until, 365 - reach); ++day) {
        int about = 0;
        for (int away = 1 - reach; away < reach; ++away) {
            about += (reach - std::abs(away)) * by_day[static_cast<std::size_t>(day + away)];
        }
        if (about > most) {
            most = about;
            best = day;
        }
    }
    return best;
}

double Seasons::per_day(int from, int until) const {
    int sum = 0;
    for (int day = from; day <= until; ++day) sum += by_day[static_cast<std::size_t>(day)];
    return static_cast<double>(sum) / (until - from + 1);
}

Seasons watch(const Place& place, const Parameters& parameters, std::uint32_t seed, std::uint32_t years,
              std::uint32_t nests, double warmer_c) {
    constexpr std::uint32_t next_years = 5000;  // replicates of the years after
    Seasons s;
    for (std::uint32_t year = 0; year < years; ++year) {
        const Chance chance{seed, year};
        const Chance next_chance{seed, next_years + year};
        const Years both{year_at(place, parameters.weather, chance, warmer_c),
                         year_at(place, parameters.weather, next_chance, warmer_c), chance, next_chance, parameters};
        Sample this_year;
        for (std::uint32_t nest = 1; nest <= nests; ++nest) {
            Colony colony = overwintered_colony(wild_nest(nest, nest_l), {}, parameters.colony, chance);
            live_nest(s, colony, both, this_year);
        }
        if (this_year.count() > 0) s.yearly_mean_day.add(this_year.mean());
    }
    return s;
}

}  // namespace maybough::experiments
