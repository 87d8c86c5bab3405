// Beliefs: shared within a group, stratified over a block, silent where a value is known.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <string>
#include <vector>

#include "ensemble/ensemble.hpp"

using namespace maybough;

namespace {
const ParameterEntry& some_unknown() {
    const auto& table = parameter_table();
    const auto found =
        std::find_if(table.begin(), table.end(), [](const auto& e) { return e.row.spread != Spread::fixed; });
    REQUIRE(found != table.end());
    return *found;
}
}  // namespace

TEST_CASE("no two parameter keys are drawn under one entity") {
    std::set<std::uint32_t> entities;
    for (const ParameterEntry& entry : parameter_table()) {
        CHECK_MESSAGE(entities.insert(belief_entity(entry.row.key)).second, entry.row.key);
    }
}

TEST_CASE("seasons of one belief share their unknowns, the next belief differs, fixed rows stay") {
    const Scenario scenario;
    const ParameterEntry& unknown = some_unknown();
    const double first = unknown.get(draw_beliefs(scenario, 1, 0));
    CHECK(unknown.get(draw_beliefs(scenario, 1, seasons_per_belief - 1)) == first);
    CHECK(unknown.get(draw_beliefs(scenario, 1, seasons_per_belief)) != first);
    CHECK(unknown.get(draw_beliefs(scenario, 2, 0)) != first);
    const Parameters drawn = draw_beliefs(scenario, 1, 8);
    for (const ParameterEntry& entry : parameter_table()) {
        if (entry.row.spread == Spread::fixed) CHECK(entry.get(drawn) == entry.row.value);
        CHECK(entry.get(drawn) >= entry.row.min);
        CHECK(entry.get(drawn) <= entry.row.max);
    }
}

TEST_CASE("the two beliefs of a block visit either half of the law once") {
    const Scenario scenario;
    const ParameterEntry& unknown = some_unknown();
    const double middle = belief_quantile(unknown.row, belief_of(unknown.row), 0.5);
    int first_above = 0;
    constexpr std::uint32_t blocks = 200;
    for (std::uint32_t block = 0; block < blocks; ++block) {
        const std::uint32_t start = block * seasons_per_block;
        const bool one = unknown.get(draw_beliefs(scenario, 3, start)) > middle;
        const bool other = unknown.get(draw_beliefs(scenario, 3, start + seasons_per_belief)) > middle;
        CHECK(one != other);
        first_above += one ? 1 : 0;
    }
    // Either order is as likely: a binomial's standard deviation is 7; four of them.
    CHECK(std::abs(first_above - static_cast<int>(blocks / 2)) < 28);
}

TEST_CASE("what the scenario knows is not drawn, what it believes is") {
    Scenario scenario;
    const ParameterEntry& unknown = some_unknown();
    const double known = 0.5 * (unknown.row.value + unknown.row.low);
    unknown.of(scenario.parameters) = known;
    CHECK(unknown.get(draw_beliefs(scenario, 1, 0)) == known);
    const Belief narrow{known, known * 0.999, known * 1.001};
    scenario.beliefs[std::string(unknown.row.key)] = narrow;
    const double drawn = unknown.get(draw_beliefs(scenario, 1, 0));
    CHECK(drawn != known);
    CHECK(std::abs(drawn - known) < 0.01 * std::abs(known));
}
