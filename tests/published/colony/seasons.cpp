// Seasons of simulated colonies against published ones: who swarms, when, how big; who survives the winter.
// Skies are generated from monthly normals (from memory); colonies are unmanaged nests of 42 litres.
#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "colony/years.hpp"

using namespace maybough;
using namespace maybough_test;

namespace {

struct Mean {
    double n = 0;
    double sum = 0;
    double squares = 0;
    void add(double x) {
        ++n;
        sum += x;
        squares += x * x;
    }
    double mean() const { return n > 0 ? sum / n : 0; }
    double sd() const { return n > 1 ? std::sqrt(std::max(0.0, (squares - sum * sum / n) / (n - 1))) : 0; }
};

struct Seasons {
    int colonies = 0;  ///< alive on 1 May
    int swarmed = 0;
    int with_after = 0;
    int in_main = 0;  ///< 15 May to 15 July
    int summer_survivors = 0;
    int winter_survivors = 0;
    int founders = 0;  ///< alive on 1 October
    int founders_survived = 0;
    Mean day;
    Mean yearly_mean_day;
    Mean kilograms;
    Mean forager_risk;
    int light_or_heavy = 0;  ///< swarms outside 0.17 to 4.30 kg
    std::vector<int> by_week = std::vector<int>(53);

    int modal_day() const {
        std::size_t best = 1;
        const auto three = [this](std::size_t w) { return by_week[w - 1] + by_week[w] + by_week[w + 1]; };
        for (std::size_t w = 1; w + 1 < by_week.size(); ++w) {
            if (three(w) > three(best)) best = w;
        }
        return static_cast<int>(7 * best) + 3;
    }
};

constexpr int may_1 = 120;
constexpr int october_1 = 273;
constexpr double bees_per_kg = 7000;  // 6600 to 8000 in swarms: Otis 1982, from memory

using Sky = SkyYear (*)(const Chance&);

void winter_founder(Seasons& s, const Swarm& swarm, const SkyYear& sky, const Chance& chance, const SkyYear& next,
                    const Chance& next_chance) {
    const int day = swarm.day.value + 3;
    Colony founder = founded_colony(founder_of(swarm.id), swarm.at,
                                    {swarm.bees, swarm.prime, 0.8 * swarm.honey_g, swarm.queen_age_days}, 42,
                                    ordinary_country, {day}, {}, chance);
    live(founder, sky, chance, day, std::max(day, october_1));
    if (!founder.alive) return;
    ++s.founders;
    live(founder, sky, chance, october_1, 365);
    begin_year(founder);
    live(founder, next, next_chance, 0, may_1);
    s.founders_survived += founder.alive ? 1 : 0;
}

void count_swarms(Seasons& s, const std::vector<Swarm>& swarms, Mean& this_year) {
    bool after = false;
    for (const Swarm& swarm : swarms) {
        s.day.add(swarm.day.value);
        this_year.add(swarm.day.value);
        const double kg = static_cast<double>(swarm.bees) / bees_per_kg;
        s.kilograms.add(kg);
        s.light_or_heavy += kg < 0.17 || kg > 4.30 ? 1 : 0;
        s.in_main += swarm.day.value >= 134 && swarm.day.value <= 195 ? 1 : 0;
        ++s.by_week[static_cast<std::size_t>(swarm.day.value / 7)];
        after = after || !swarm.prime;
    }
    s.swarmed += swarms.empty() ? 0 : 1;
    s.with_after += after ? 1 : 0;
}

Seasons watch(Sky sky_of_year, std::uint32_t years, std::uint32_t nests) {
    Seasons s;
    for (std::uint32_t year = 0; year < years; ++year) {
        const Chance chance{41, year};
        const Chance next_chance{41, 5000 + year};
        const SkyYear sky = sky_of_year(chance);
        const SkyYear next = sky_of_year(next_chance);
        Mean this_year;
        for (std::uint32_t nest = 1; nest <= nests; ++nest) {
            Colony colony = overwintered_colony(wild_nest(nest), {}, {}, chance);
            const YearOfColony spring = live(colony, sky, chance, 0, may_1);
            if (!colony.alive) continue;
            ++s.colonies;
            const YearOfColony summer = live(colony, sky, chance, may_1, october_1);
            std::vector<Swarm> swarms = spring.swarms;
            swarms.insert(swarms.end(), summer.swarms.begin(), summer.swarms.end());
            count_swarms(s, swarms, this_year);
            if (summer.forager_days > 0) {
                s.forager_risk.add(static_cast<double>(summer.forager_deaths) /
                                   static_cast<double>(summer.forager_days));
            }
            for (const Swarm& swarm : swarms) winter_founder(s, swarm, sky, chance, next, next_chance);
            if (!colony.alive) continue;
            ++s.summer_survivors;
            live(colony, sky, chance, october_1, 365);
            begin_year(colony);
            live(colony, next, next_chance, 0, may_1);
            s.winter_survivors += colony.alive ? 1 : 0;
        }
        s.yearly_mean_day.add(this_year.mean());
    }
    return s;
}

const Seasons& ithaca() {
    static const Seasons seasons = watch([](const Chance& c) { return ithaca_sky(c); }, 12, 30);
    return seasons;
}

const Seasons& new_jersey() {
    static const Seasons seasons = watch([](const Chance& c) { return new_jersey_sky(c); }, 12, 30);
    return seasons;
}

double share(int part, int whole) {
    return whole > 0 ? static_cast<double>(part) / whole : 0;
}

}  // namespace

// 360 nests: binomial standard errors up to 0.026 are well inside the published bands.

TEST_CASE("Ithaca: share of unmanaged colonies that swarm, 0.87 (Seeley 2017), band 0.75 to 0.95 (check 14)") {
    CHECK(share(ithaca().swarmed, ithaca().colonies) >= 0.75);
    CHECK(share(ithaca().swarmed, ithaca().colonies) <= 0.95);
}

TEST_CASE("Ithaca: main peak 9 June +-8 d, at least 70 % from 15 May to 15 July (Fell et al. 1977) (check 11)") {
    CHECK(std::abs(ithaca().modal_day() - 159) <= 8);
    CHECK(ithaca().in_main >= 0.70 * ithaca().day.n);
}

TEST_CASE("Ithaca: summer survival 0.97 +-0.03, winter 0.84 +-0.06, founders' winter 0.23 +-0.08 (Seeley 2017)") {
    CHECK(share(ithaca().summer_survivors, ithaca().colonies) == doctest::Approx(0.97).epsilon(0.03 / 0.97));
    CHECK(share(ithaca().winter_survivors, ithaca().summer_survivors) == doctest::Approx(0.84).epsilon(0.06 / 0.84));
    CHECK(share(ithaca().founders_survived, ithaca().founders) == doctest::Approx(0.23).epsilon(0.08 / 0.23));
}

TEST_CASE("swarms weigh 1.42 kg +-20 % in the mean, 95 % from 0.17 to 4.30 kg (Villa 2004) (check 9)") {
    CHECK(ithaca().kilograms.mean() == doctest::Approx(1.42).epsilon(0.20));
    CHECK(ithaca().light_or_heavy <= 0.05 * ithaca().kilograms.n);
}

TEST_CASE("swarms per colony and year at an Ithaca-like site, 0.8 to 2.4 (check 21)") {
    CHECK(ithaca().day.n / ithaca().colonies >= 0.8);
    CHECK(ithaca().day.n / ithaca().colonies <= 2.4);
}

TEST_CASE("an afterswarm follows in 0.5 to 0.7 of colonies, at most 0.8 (Gilley and Tarpy 2005; Winston 1980)") {
    CHECK(share(ithaca().with_after, ithaca().swarmed) >= 0.45);
    CHECK(share(ithaca().with_after, ithaca().swarmed) <= 0.80);
}

TEST_CASE("foragers die at 0.10 to 0.40 a flight day (Visscher and Dukas 1997; Prado et al. 2020) (check 18)") {
    CHECK(ithaca().forager_risk.mean() >= 0.10);
    CHECK(ithaca().forager_risk.mean() <= 0.40);
}

TEST_CASE("New Jersey: years differ by several days, at most 7 (Gilley et al. 2018) (check 12)") {
    CHECK(new_jersey().yearly_mean_day.sd() <= 7 + 2.5);  // 12 years: the spread of a spread is 1/5 of it
}

TEST_CASE("New Jersey swarms before Ithaca (Gilley et al. 2018; Fell et al. 1977)") {
    CHECK(new_jersey().modal_day() < ithaca().modal_day());
    CHECK(new_jersey().day.mean() < ithaca().day.mean());
}

TEST_CASE("a warm spring swarms earlier, by 1 to 6 days per degree") {
    // Phenology of plants moves by 2 to 6 days per degree: common practice, no published source for swarms.
    const auto mean_day = [](double warmer_c) {
        Mean day;
        for (std::uint32_t year = 0; year < 6; ++year) {
            const Chance chance{43, year};
            const SkyYear sky = ithaca_sky(chance, warmer_c);
            for (std::uint32_t nest = 1; nest <= 25; ++nest) {
                Colony colony = overwintered_colony(wild_nest(nest), {}, {}, chance);
                for (const Swarm& swarm : live(colony, sky, chance, 0, 195).swarms) day.add(swarm.day.value);
            }
        }
        return day.mean();
    };
    const double per_degree = (mean_day(-2) - mean_day(2)) / 4;
    CHECK(per_degree >= 1);
    CHECK(per_degree <= 6);
}
