// The time wheel against a sorted list, and the tables of the exponential and the normal law against their moments.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "chance/chance.hpp"
#include "scouts/laws.hpp"
#include "scouts/wheel.hpp"

using namespace maybough;
using namespace maybough::scouts;

TEST_CASE("the wheel calls each scout at its tick, in order, also beyond one round") {
    Wheel wheel;
    wheel.clear(200);
    Stream stream = Chance{1, 0}.stream(Purpose::scout_event, 1U);
    std::vector<std::pair<std::uint32_t, std::uint32_t>> expected;
    for (std::uint32_t scout = 0; scout < 200; ++scout) {
        const std::uint32_t due = 1 + stream.word() % 2000;
        wheel.set(scout, due);
        expected.emplace_back(due, scout);
    }
    std::sort(expected.begin(), expected.end());
    std::vector<std::pair<std::uint32_t, std::uint32_t>> called;
    for (std::uint32_t now = 1; now <= 2000; ++now) {
        wheel.turn(now, [&](std::uint32_t scout) { called.emplace_back(now, scout); });
    }
    CHECK(called == expected);
}

TEST_CASE("a scout taken out and set anew is called once, at the new tick") {
    Wheel wheel;
    wheel.clear(64);
    wheel.set(3, 10);
    wheel.set(5, 10);
    std::vector<std::uint32_t> called;
    for (std::uint32_t now = 1; now < 700; ++now) {
        wheel.turn(now, [&](std::uint32_t scout) {
            called.push_back(1000 * now + scout);
            if (scout == 3) {  // stops number 5, due at this very tick
                wheel.unset(5);
                wheel.set(5, 10 + 512);
            }
        });
    }
    CHECK(called == std::vector<std::uint32_t>{10003, 522005});
}

TEST_CASE("the tables have the moments of their laws") {
    const LawTables& tables = law_tables();
    double mean = 0;
    double square = 0;
    for (const float x : tables.exponential) {
        mean += static_cast<double>(x) / LawTables::exponential_steps;
        square += static_cast<double>(x) * static_cast<double>(x) / LawTables::exponential_steps;
    }
    CHECK(mean == doctest::Approx(1).epsilon(1e-5));
    CHECK(square - mean * mean == doctest::Approx(1).epsilon(0.005));  // the law in 1024 steps
    mean = 0;
    square = 0;
    for (const float x : tables.normal) {
        mean += static_cast<double>(x) / LawTables::normal_steps;
        square += static_cast<double>(x) * static_cast<double>(x) / LawTables::normal_steps;
    }
    CHECK(std::abs(mean) < 1e-5);
    CHECK(square == doctest::Approx(1).epsilon(1e-5));
}

TEST_CASE("rounding to ticks does not shift the mean") {
    // 40 000 draws of a mean of 60 ticks: s.e. 60 / sqrt(40 000) = 0.3; z = 4. Rounding down would lose 0.5.
    Stream stream = Chance{2, 0}.stream(Purpose::scout_event, 2U);
    double sum = 0;
    for (int i = 0; i < 40000; ++i) sum += exponential_ticks(law_tables(), 60, stream.word());
    CHECK(std::abs(sum / 40000 - 60) < 1.2);
    double below = 0;
    for (std::uint32_t dither = 0; dither < 4; ++dither) {
        for (std::uint32_t step = 0; step < 1024; ++step) {
            below += exponential_ticks(law_tables(), 60, (step << 22U) | (dither << 20U) | (1U << 19U));
        }
    }
    CHECK(below / 4096 == doctest::Approx(60).epsilon(0.001));  // every step of the table with four even ditherings
}
