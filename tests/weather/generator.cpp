// Generator: keys, continuation, and the laws it was given.
#include <doctest/doctest.h>

#include <cmath>

#include "climates.hpp"
#include "weather/seasons.hpp"

using namespace maybough;

namespace {
const Date new_year = make_date(2026, 1, 1);

bool same(const DayOfWeather& a, const DayOfWeather& b) {
    return a.tmax_c == b.tmax_c && a.tmin_c == b.tmin_c && a.rain_mm == b.rain_mm && a.wind_ms == b.wind_ms;
}

/// The same chances and means all year, so that laws can be checked on long runs.
Climate flat_climate() {
    Climate climate = test::cool_climate();
    climate.wet_after_dry.fill(0.25);
    climate.wet_after_wet.fill(0.6);
    climate.amount_mean_mm.fill(7);
    climate.amount_shape.fill(0.8);
    climate.tmax_mean_c = {Harmonic{20, {}, {}}, Harmonic{17, {}, {}}};
    climate.tmin_mean_c = Harmonic{2, {}, {}};
    climate.year_sd_c = 0;
    return climate;
}
}  // namespace

TEST_CASE("the same chance gives the same year, another replicate or seed another") {
    const Climate climate = test::cool_climate();
    const WeatherYear year = generate_year(climate, new_year, 365, Chance{1, 4});
    const WeatherYear again = generate_year(climate, new_year, 365, Chance{1, 4});
    const WeatherYear shorter = generate_year(climate, new_year, 100, Chance{1, 4});
    REQUIRE(year.days.size() == 365);
    for (std::size_t i = 0; i < 365; ++i) REQUIRE(same(year.days[i], again.days[i]));
    for (std::size_t i = 0; i < 100; ++i) REQUIRE(same(year.days[i], shorter.days[i]));
    CHECK_FALSE(same(year.days[0], generate_year(climate, new_year, 1, Chance{1, 5}).days[0]));
    CHECK_FALSE(same(year.days[0], generate_year(climate, new_year, 1, Chance{2, 4}).days[0]));
    CHECK(generate_year(climate, new_year, 0, Chance{1, 4}).days.empty());
}

TEST_CASE("generated days are whole and in order") {
    const Climate climate = test::cool_climate();
    for (std::uint32_t k = 0; k < 50; ++k) {
        for (const DayOfWeather& day : generate_year(climate, new_year, 366, Chance{1, k}).days) {
            REQUIRE(std::isfinite(day.tmax_c));
            REQUIRE(day.tmin_c <= day.tmax_c - climate.least_range_c);
            REQUIRE((day.rain_mm == 0 || day.rain_mm >= climate.wet_day_mm));
            REQUIRE(day.wind_ms >= 0);
        }
    }
}

TEST_CASE("a year to date that the generator itself made goes on as the generator went on") {
    Climate climate = test::cool_climate();
    climate.year_sd_c = 0;
    climate.least_range_c = 0;
    const WeatherYear whole = generate_year(climate, new_year, 365, Chance{3, 9});
    WeatherYear so_far = whole;
    so_far.days.resize(150);
    const WeatherYear year = continue_year(so_far, climate, 365, Chance{3, 9});
    REQUIRE(year.days.size() == 365);
    for (std::size_t i = 0; i < 365; ++i) {
        REQUIRE(year.days[i].tmax_c == doctest::Approx(whole.days[i].tmax_c).epsilon(1e-9));
        REQUIRE(year.days[i].rain_mm == doctest::Approx(whole.days[i].rain_mm).epsilon(1e-9));
        REQUIRE(year.days[i].wind_ms == doctest::Approx(whole.days[i].wind_ms).epsilon(1e-9));
    }
}

TEST_CASE("tomorrow's update keeps the draws of the days to come") {
    const Climate climate = test::cool_climate();
    WeatherYear so_far = generate_year(climate, new_year, 101, Chance{8, 0});
    const WeatherYear updated = continue_year(so_far, climate, 365, Chance{3, 2});
    so_far.days.resize(100);
    const WeatherYear earlier = continue_year(so_far, climate, 365, Chance{3, 2});
    // The two futures differ by what one more day tells, which fades: after two months they agree within a tenth of a
    // degree but for wet days that fell otherwise.
    double difference = 0;
    for (std::size_t i = 160; i < 365; ++i)
        difference += std::abs(updated.days[i].tmax_c - earlier.days[i].tmax_c) / 205;
    CHECK(difference < 0.5);
}

TEST_CASE("a cold day is followed by cold days, the less the later") {
    Climate climate = flat_climate();
    WeatherYear cold = generate_year(climate, new_year, 30, Chance{1, 0});
    cold.days.back() = {8, -8, 0, 3};
    WeatherYear warm = cold;
    warm.days.back() = {32, 12, 0, 3};
    double tomorrow = 0;
    double in_five_days = 0;
    double in_a_month = 0;
    const int members = 400;
    for (std::uint32_t k = 0; k < members; ++k) {
        const WeatherYear after_cold = continue_year(cold, climate, 62, Chance{2, k});
        const WeatherYear after_warm = continue_year(warm, climate, 62, Chance{2, k});
        tomorrow += (after_warm.days[30].tmax_c - after_cold.days[30].tmax_c) / members;
        in_five_days += (after_warm.days[34].tmax_c - after_cold.days[34].tmax_c) / members;
        in_a_month += (after_warm.days[61].tmax_c - after_cold.days[61].tmax_c) / members;
    }
    CHECK(tomorrow > 8);
    CHECK(in_five_days > 1);
    CHECK(in_five_days < tomorrow / 2);
    CHECK(std::abs(in_a_month) < 0.2);
}

TEST_CASE("a warm year to date is carried on in part, the more the longer it has lasted") {
    Climate climate = flat_climate();
    climate.year_sd_c = 1;
    const auto lasting_warmth = [&](int days_known) {
        WeatherYear so_far = generate_year(climate, new_year, days_known, Chance{1, 0});
        WeatherYear warm = so_far;
        for (DayOfWeather& day : warm.days) {
            day.tmax_c += 2;
            day.tmin_c += 2;
        }
        const WeatherYear plain = continue_year(so_far, climate, 365, Chance{2, 7});
        const WeatherYear warmer = continue_year(warm, climate, 365, Chance{2, 7});
        return warmer.days[364].tmax_c - plain.days[364].tmax_c;
    };
    const double after_ten = lasting_warmth(10);
    const double after_hundred = lasting_warmth(100);
    CHECK(after_ten > 0);
    CHECK(after_hundred > after_ten);
    CHECK(after_hundred < 2);
    CHECK(after_hundred > 1);
}

TEST_CASE("wet and dry spells are geometric with the chain's chances") {
    // Mean spell lengths 1/0.25 and 1/0.4 days, share of wet days 0.25/0.65. Tolerances: z = 4.4 (family-wise 1e-4 over
    // eight checks) times the spread of a geometric mean over the spells counted.
    const auto misses = [](const Climate& made) {
        std::array<double, 2> spells{};
        std::array<double, 2> days{};
        std::array<double, 2> single{};
        for (std::uint32_t k = 0; k < 100; ++k) {
            bool last = false;
            int length = 0;
            for (const DayOfWeather& day : generate_year(made, new_year, 365, Chance{21, k}).days) {
                const bool wet = day.rain_mm > 0;
                if (length > 0 && wet != last) {
                    spells[last ? 1 : 0] += 1;
                    days[last ? 1 : 0] += length;
                    single[last ? 1 : 0] += length == 1 ? 1 : 0;
                    length = 0;
                }
                last = wet;
                ++length;
            }
        }
        const double z = 4.4;
        int missed = 0;
        for (std::size_t wet = 0; wet < 2; ++wet) {
            const double end = wet == 1 ? 0.4 : 0.25;
            const double n = spells[wet];
            missed += std::abs(days[wet] / n - 1 / end) > z * std::sqrt((1 - end) / n) / end ? 1 : 0;
            missed += std::abs(single[wet] / n - end) > z * std::sqrt(end * (1 - end) / n) ? 1 : 0;
        }
        return missed;
    };
    CHECK(misses(flat_climate()) == 0);
    Climate wrong = flat_climate();
    wrong.wet_after_wet.fill(0.65);  // spells a seventh longer
    CHECK(misses(wrong) > 0);
}

TEST_CASE("amounts follow their gamma law above the threshold") {
    // Mean 7, threshold 1, shape 0.8: excess has mean 6 and variance 36/0.8. z = 4.4.
    double n = 0;
    double sum = 0;
    double squares = 0;
    for (std::uint32_t k = 0; k < 100; ++k) {
        for (const DayOfWeather& day : generate_year(flat_climate(), new_year, 365, Chance{22, k}).days) {
            if (day.rain_mm <= 0) continue;
            const double excess = day.rain_mm - 1;
            n += 1;
            sum += excess;
            squares += (excess - 6) * (excess - 6);
        }
    }
    const double variance = 36 / 0.8;
    CHECK(std::abs(sum / n - 6) < 4.4 * std::sqrt(variance / n));
    // Spread of a sample variance: fourth moment of a gamma law is 3 v^2 (1 + 2/shape).
    CHECK(std::abs(squares / n - variance) < 4.4 * variance * std::sqrt((2 + 6 / 0.8) / n));
}

TEST_CASE("residuals are stationary with unit variance, and their law is undone by its own statistics") {
    const WeatherParameters p;
    const Matrix m0{1, p.lag0_max_min, p.lag0_max_min, 1};
    const Matrix m1{p.lag1_max_max, p.lag1_max_min, p.lag1_min_max, p.lag1_min_min};
    const ResidualLaw law = residual_law(m0, m1);
    const Matrix covariance = stationary_covariance(law.a, law.b);
    for (std::size_t i = 0; i < 4; ++i) CHECK(covariance[i] == doctest::Approx(m0[i]).epsilon(1e-6));
    const Matrix root = lower_root(m0);
    CHECK(root[2] * root[2] + root[3] * root[3] == doctest::Approx(1));
}

TEST_CASE("wind scores go there and back") {
    for (const double shape : {2.0, 5.0, 12.0}) {
        for (double wind = 0.3; wind < 12; wind += 0.7) {
            CHECK(wind_from_score(score_of_wind(wind, shape, 3), shape, 3) == doctest::Approx(wind));
        }
    }
    CHECK(wind_from_score(-50, 5, 3) == 0);
}
