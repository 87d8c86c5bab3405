// The order in which to build: worths made up so that the right order is known.
#include "planner/build_order.hpp"

#include <doctest/doctest.h>

#include <map>
#include <numeric>

using namespace maybough;
using namespace maybough::planner;

namespace {

/// Worth of a set where traps 1 and 2 share their swarms: either brings 10, both together 11; 3 brings 6, 4 brings 2.
double worth(const Chosen& set) {
    const std::map<std::size_t, double> alone{{1, 10}, {2, 10}, {3, 6}, {4, 2}};
    double sum = 0;
    bool first = false;
    bool second = false;
    for (const std::size_t j : set) {
        sum += alone.at(j);
        first = first || j == 1;
        second = second || j == 2;
    }
    return sum - (first && second ? 9 : 0);
}

std::vector<double> worths(const std::vector<Chosen>& sets) {
    std::vector<double> all;
    for (const Chosen& set : sets) all.push_back(worth(set));
    return all;
}

Chosen ordered(const Chosen& set, std::size_t must = 0) {
    return build_order(
        set, worths, [must](std::size_t j) { return j == must; }, [](std::size_t a, std::size_t b) { return a < b; });
}

}  // namespace

TEST_CASE("what adds least goes last, judged beside the others and not alone") {
    // Trap 4 adds 2; of 1 and 2 the second of the pair adds 1 only: one of them is spared before trap 4.
    const Chosen order = ordered({1, 2, 3, 4});
    CHECK(order.size() == 4);
    CHECK(order[3] == 1);  // 1 and 2 are worth the same: the tie falls to the one that stands first
    CHECK(order[2] == 4);
    CHECK(order[1] == 3);
    CHECK(order[0] == 2);
}

TEST_CASE("marginal worths along the order never rise where the whole set's worths fall") {
    const Chosen order = ordered({4, 3, 2, 1});
    double before = 0;
    double margin = 1e9;
    for (std::size_t k = 1; k <= order.size(); ++k) {
        const double now = worth({order.begin(), order.begin() + static_cast<std::ptrdiff_t>(k)});
        CHECK(now - before <= margin);
        margin = now - before;
        before = now;
    }
}

TEST_CASE("only members that might be missed least are asked again") {
    Chosen set;
    for (std::size_t j = 0; j < 10; ++j) set.push_back(j);
    std::size_t asked = 0;
    const NetsOf nets_of = [&](const std::vector<Chosen>& sets) {
        asked += sets.size();
        std::vector<double> nets;
        for (const Chosen& one : sets) {
            double sum = 0;  // each brings its number, and nobody shares
            for (const std::size_t j : one) sum += static_cast<double>(j);
            nets.push_back(sum);
        }
        return nets;
    };
    const Chosen order = build_order(
        set, nets_of, [](std::size_t) { return false; }, std::less<std::size_t>());
    CHECK(order == Chosen{9, 8, 7, 6, 5, 4, 3, 2, 1, 0});
    CHECK(asked == 1 + 10 + 8);  // the whole set, each once, and then the next at each of eight steps
}

TEST_CASE("the order of the set does not matter; what must stay is built first") {
    CHECK(ordered({1, 2, 3, 4}) == ordered({4, 2, 1, 3}));
    CHECK(ordered({1, 2, 3, 4}, 4).front() == 4);
    CHECK(ordered({}).empty());
    CHECK(ordered({3}) == Chosen{3});
}
