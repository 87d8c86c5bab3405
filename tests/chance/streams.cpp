// Streams: a draw's value depends on its name alone, and no two names share a number.
#include <doctest/doctest.h>

#include <set>

#include "chance/chance.hpp"

using namespace maybough;

TEST_CASE("the same name gives the same draws; any other part of the name gives others") {
    const Chance chance{5, 9};
    const auto first = [](Stream s) { return s.word(); };
    const auto base = first(chance.stream(Purpose::scout_event, 17U, Day{100}, 3));
    CHECK(base == first(chance.stream(Purpose::scout_event, 17U, Day{100}, 3)));
    std::set<std::uint32_t> others{
        first(Chance{6, 9}.stream(Purpose::scout_event, 17U, Day{100}, 3)),
        first(Chance{5, 10}.stream(Purpose::scout_event, 17U, Day{100}, 3)),
        first(chance.stream(Purpose::scout_assess, 17U, Day{100}, 3)),
        first(chance.stream(Purpose::scout_event, 18U, Day{100}, 3)),
        first(chance.stream(Purpose::scout_event, 17U, Day{101}, 3)),
        first(chance.stream(Purpose::scout_event, 17U, Day{100}, 4)),
    };
    CHECK(others.size() == 6);
    CHECK(others.count(base) == 0);
}

TEST_CASE("draws stay inside the open unit interval") {
    Stream s = Chance{1, 1}.stream(Purpose::belief, 1U);
    for (int i = 0; i < 100000; ++i) {
        const double u = s.uniform();
        REQUIRE(u > 0);
        REQUIRE(u < 1);
    }
}
