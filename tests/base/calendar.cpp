// Dates: reading, writing, simulated years on both hemispheres.
#include <doctest/doctest.h>

#include "base/base.hpp"

using namespace maybough;

TEST_CASE("dates are read strictly and written as ISO 8601") {
    CHECK(iso(parse_date("2024-02-29", "x")) == "2024-02-29");
    CHECK_THROWS_AS(parse_date("2023-02-29", "x"), InputError);
    CHECK_THROWS_AS(parse_date("2023-2-9", "x"), InputError);
    CHECK_THROWS_AS(parse_date("29/02/2024", "x"), InputError);
    CHECK(short_date(make_date(2026, 4, 5)) == "5 Apr");
    CHECK(day_of_year(make_date(2024, 12, 31)) == 366);
}

TEST_CASE("the simulated year starts in January north and in July south") {
    CHECK(iso(simulated_year_start(make_date(2026, 3, 1), 47)) == "2026-01-01");
    CHECK(iso(simulated_year_start(make_date(2026, 3, 1), -34)) == "2025-07-01");
    CHECK(iso(simulated_year_start(make_date(2026, 8, 1), -34)) == "2026-07-01");
    CHECK(days_in_year_from(make_date(2024, 1, 1)) == 366);
    CHECK(days_in_year_from(make_date(2023, 7, 1)) == 366);
}

TEST_CASE("ids of colonies, swarms and founders never meet") {
    const ColonyId colony{12345};
    const SwarmId prime = swarm_of(colony, 0);
    const SwarmId after = swarm_of(colony, 2);
    CHECK(prime != after);
    const ColonyId founder = founder_of(prime);
    CHECK(is_founder(founder));
    CHECK_FALSE(casts_no_more(founder));
    const SwarmId late = swarm_of(founder, 0);
    CHECK(late != prime);
    CHECK(casts_no_more(founder_of(late)));
    CHECK(founder_of(late) != founder);
}

TEST_CASE("a trap's id is its square of the plane") {
    CHECK(trap_site({10, 10}) == trap_site({11, 11}));
    CHECK(trap_site({10, 10}) != trap_site({14, 10}));
    CHECK(is_trap(trap_site({-30000, 30000})));
    CHECK_THROWS_AS(trap_site({40000, 0}), ModelFault);
}
