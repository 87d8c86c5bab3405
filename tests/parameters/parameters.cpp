// The parameter table: sound rows, unique keys, beliefs that keep their quantiles, helpful nearest names.
#include "parameters/parameters.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace maybough;

TEST_CASE("every row is sound and every key unique") {
    std::set<std::string> keys;
    for (const ParameterEntry& entry : parameter_table()) {
        const ParameterRow& row = entry.row;
        INFO(row.key);
        CHECK(keys.insert(std::string(row.key)).second);
        CHECK(row.min <= row.low);
        CHECK(row.low <= row.value);
        CHECK(row.value <= row.high);
        CHECK(row.high <= row.max);
        CHECK_FALSE(row.meaning.empty());
        CHECK_FALSE(row.unit.empty());
        if (row.spread == Spread::ratio) CHECK(row.low > 0);
        if (row.spread != Spread::fixed) CHECK(row.low < row.high);
        if (row.standing == Standing::published || row.standing == Standing::from_memory)
            CHECK_FALSE(row.source.empty());
    }
}

TEST_CASE("the struct's default is the row's default, through the same entry") {
    Parameters parameters;
    for (const ParameterEntry& entry : parameter_table()) {
        CHECK(entry.get(parameters) == entry.row.value);
        entry.of(parameters) = entry.row.max;
        CHECK(entry.get(parameters) == entry.row.max);
    }
}

TEST_CASE("a belief's 5, 50 and 95 % points are low, median and high") {
    const ParameterRow ratio{"x.y", "1", 2, 0.01, 100, Spread::ratio, 0.5, 6, Standing::assumed, "", "m"};
    const Belief belief = belief_of(ratio);
    CHECK(belief_quantile(ratio, belief, 0.05) == doctest::Approx(0.5));
    CHECK(belief_quantile(ratio, belief, 0.5) == doctest::Approx(2));
    CHECK(belief_quantile(ratio, belief, 0.95) == doctest::Approx(6));
    const ParameterRow additive{"x.z", "1", 1, -10, 10, Spread::additive, -1, 2, Standing::assumed, "", "m"};
    CHECK(belief_quantile(additive, belief_of(additive), 0.05) == doctest::Approx(-1));
    CHECK(belief_quantile(additive, belief_of(additive), 0.95) == doctest::Approx(2));
    const ParameterRow fixed{"x.w", "1", 3, 0, 10, Spread::fixed, 1, 9, Standing::assumed, "", "m"};
    CHECK(belief_quantile(fixed, belief_of(fixed), 0.01) == 3);
}

TEST_CASE("a mistyped key is answered with the nearest known ones") {
    const auto near = nearest_keys("volum_l", {"volume_l", "height_m", "entrance_area_cm2"});
    REQUIRE(near.size() == 1);
    CHECK(near[0] == "volume_l");
    CHECK(nearest_keys("zzzzzzzzzz", {"volume_l"}).empty());
}
