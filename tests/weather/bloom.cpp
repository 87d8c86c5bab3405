// Bloom: order of kinds, warm years early, and a year without heat that still flowers.
#include <doctest/doctest.h>

#include <algorithm>

#include "climates.hpp"
#include "weather/hours.hpp"

using namespace maybough;

namespace {
const WeatherParameters defaults;

/// First day of the year on which a kind flowers at least by half; 999 if it never does.
int opening_day(const SkyYear& sky, Bloom kind) {
    for (std::size_t i = 0; i < sky.days.size(); ++i) {
        if (sky.days[i].bloom[static_cast<std::size_t>(kind)] >= 0.5F) return static_cast<int>(i);
    }
    return 999;
}

SkyYear shifted_sky(double warmer_c, std::uint32_t replicate) {
    WeatherYear year = generate_year(test::cool_climate(), make_date(2026, 1, 1), 365, Chance{11, replicate});
    for (DayOfWeather& day : year.days) {
        day.tmax_c += warmer_c;
        day.tmin_c += warmer_c;
    }
    return sky_of(year, 42, defaults);
}
}  // namespace

TEST_CASE("kinds flower in their order, by degree-days") {
    const auto at = [](double degree_days, Bloom kind) {
        return bloom_of(degree_days, 60, 5, defaults)[static_cast<std::size_t>(kind)];
    };
    CHECK(at(0, Bloom::early_pollen) == 0);
    CHECK(at(25, Bloom::early_pollen) == 1);
    CHECK(at(140, Bloom::fruit) == 1);
    CHECK(at(300, Bloom::spring_trees) == 1);
    CHECK(at(650, Bloom::summer) == 1);
    CHECK(at(5000, Bloom::summer) == 0);
    CHECK(at(100, Bloom::spring_trees) == 0);
}

TEST_CASE("warm years flower earlier, cold ones later") {
    for (std::uint32_t replicate = 0; replicate < 10; ++replicate) {
        const SkyYear cold = shifted_sky(-2, replicate);
        const SkyYear normal = shifted_sky(0, replicate);
        const SkyYear warm = shifted_sky(2, replicate);
        for (const Bloom kind : {Bloom::fruit, Bloom::spring_trees, Bloom::summer}) {
            CHECK(opening_day(warm, kind) < opening_day(normal, kind));
            CHECK(opening_day(normal, kind) < opening_day(cold, kind));
        }
        CHECK(opening_day(warm, Bloom::late) == opening_day(cold, Bloom::late));
    }
}

TEST_CASE("a year without any heat flowers by the calendar, all kinds in order") {
    const SkyYear sky = sky_of(test::steady_year(make_date(2026, 1, 1), 365, {9, 1, 0, 2}), 60, defaults);
    CHECK(sky.days.back().degree_days_sum_c == 0);
    int last = 0;
    for (const Bloom kind : {Bloom::early_pollen, Bloom::fruit, Bloom::spring_trees, Bloom::summer, Bloom::late}) {
        const int opens = opening_day(sky, kind);
        CHECK(opens > last);
        CHECK(opens < 270);
        last = opens;
    }
}

TEST_CASE("flowering stays within 0 and 1, ends in autumn, and shuts in hard frost") {
    for (int degree_days = 0; degree_days < 3000; degree_days += 7) {
        for (int day = 0; day < 366; day += 5) {
            for (const float share : bloom_of(degree_days, day, 5, defaults)) {
                REQUIRE(share >= 0);
                REQUIRE(share <= 1);
            }
        }
    }
    const auto winter = bloom_of(700, 350, 5, defaults);
    CHECK(winter[3] == 0);
    CHECK(winter[4] == 0);
    const auto frost = bloom_of(140, 120, -8, defaults);
    CHECK(*std::max_element(frost.begin(), frost.end()) == 0);
}
