// The parallel loop: order, failures told together, the same for any number of threads.
#include <doctest/doctest.h>

#include <atomic>
#include <numeric>
#include <stdexcept>
#include <string>
#include <vector>

#include "ensemble/ensemble.hpp"

using namespace maybough;

namespace {
std::vector<double> draws(unsigned threads) {
    std::vector<double> values;
    run_in_order<double>(
        5, 205, threads,
        [](std::uint32_t i) {
            return Chance{7, i}.stream(Purpose::planner_bootstrap, 0U).uniform();
        },
        [&](std::uint32_t i, double&& value) {
            CHECK(i == 5 + values.size());
            values.push_back(value);
        });
    return values;
}
}  // namespace

TEST_CASE("results come in order and do not depend on threads") {
    const std::vector<double> one = draws(1);
    CHECK(one.size() == 200);
    CHECK(draws(8) == one);
    CHECK(draws(3) == one);
}

TEST_CASE("failures are told together and nothing after the first reaches the sink") {
    std::vector<std::uint32_t> seen;
    const auto run = [&] {
        run_in_order<int>(
            0, 20, 4,
            [](std::uint32_t i) -> int {
                if (i % 3 == 2) throw std::runtime_error("bees lost in " + std::to_string(i));
                return 0;
            },
            [&](std::uint32_t i, int&&) { seen.push_back(i); }, {}, season_of(7));
    };
    std::string told;
    try {
        run();
    } catch (const ModelFault& fault) {
        told = fault.what();
    }
    CHECK(seen == std::vector<std::uint32_t>{0, 1});
    CHECK(told.find("6 of 20") != std::string::npos);
    CHECK(told.find("--seed 7 --season 3): bees lost in 2") != std::string::npos);
    CHECK(told.find("season 12 ") != std::string::npos);
    CHECK(told.find("season 15 ") == std::string::npos);  // four at most
}

TEST_CASE("what the user can mend keeps its kind, is said once and stops the run") {
    std::atomic<int> lived{0};
    std::string told;
    try {
        run_in_order<int>(
            0, 5000, 3,
            [&](std::uint32_t i) -> int {
                ++lived;
                if (i >= 10) throw InputError("weather.csv:" + std::to_string(i), "no such day");
                return 0;
            },
            [](std::uint32_t, int&&) {}, {}, season_of(1));
    } catch (const InputError& mine) {
        told = mine.what();
    }
    CHECK(told == "weather.csv:10: no such day");
    CHECK(lived < 100);
    CHECK_THROWS_AS(
        run_in_order<int>(
            0, 5, 2, [](std::uint32_t) -> int { throw RunError("disk full"); }, [](std::uint32_t, int&&) {}),
        RunError);
}

TEST_CASE("a sink that throws stops the run with its own error") {
    CHECK_THROWS_AS(run_in_order<int>(
                        0, 50, 2, [](std::uint32_t) { return 1; },
                        [](std::uint32_t i, int&&) {
                            if (i == 3) throw RunError("disk full");
                        }),
                    RunError);
}

TEST_CASE("progress counts every season once") {
    std::vector<std::uint32_t> told;
    run_in_order<int>(
        10, 30, 2, [](std::uint32_t) { return 1; }, [](std::uint32_t, int&&) {},
        [&](std::uint32_t done, std::uint32_t total) {
            CHECK(total == 20);
            told.push_back(done);
        });
    std::vector<std::uint32_t> expected(20);
    std::iota(expected.begin(), expected.end(), 1U);
    CHECK(told == expected);
}
