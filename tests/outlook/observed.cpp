// A club's first swarms as CSV: what is read, and what is refused with its line.
#include <doctest/doctest.h>

#include "outlook/outlook.hpp"

using namespace maybough;

TEST_CASE("years and dates, empty dates, blanks, semicolons and a byte order mark") {
    const ObservedFirsts firsts =
        observed_firsts("\xEF\xBB\xBFyear;first_swarm\r\n2023; 2023-05-04 \r\n\r\n2024;\r\n\"2025\";\"2025-04-30\"\r\n",
                        "club.csv", 50);
    REQUIRE(firsts.size() == 2);
    CHECK(firsts.at(2023) == make_date(2023, 5, 4));
    CHECK(firsts.at(2025) == make_date(2025, 4, 30));
}

TEST_CASE("south of the equator the year is that of spring") {
    const ObservedFirsts firsts = observed_firsts("year,first_swarm\n2024,2025-01-02\n", "club.csv", -35);
    CHECK(firsts.at(2024) == make_date(2025, 1, 2));
    CHECK_THROWS_AS(observed_firsts("year,first_swarm\n2025,2025-01-02\n", "club.csv", -35), InputError);
}

TEST_CASE("bad rows are refused with their line") {
    CHECK_THROWS_WITH_AS(observed_firsts("year,date\n", "club.csv", 50),
                         "club.csv:1: found columns \"year\" and \"date\", expected year,first_swarm", InputError);
    CHECK_THROWS_WITH_AS(observed_firsts("year,first_swarm\n24,2024-05-01\n", "club.csv", 50),
                         "club.csv:2: found year \"24\", expected four digits", InputError);
    CHECK_THROWS_WITH_AS(observed_firsts("year,first_swarm\n2024,2023-05-01\n", "club.csv", 50),
                         "club.csv:2: found 2023-05-01 in year 2024, expected a date of the season of that year",
                         InputError);
    CHECK_THROWS_AS(observed_firsts("year,first_swarm\n2024,2024-05-01\n2024,2024-05-02\n", "club.csv", 50),
                    InputError);
    CHECK_THROWS_AS(observed_firsts("year,first_swarm\n2024,1 May\n", "club.csv", 50), InputError);
    CHECK_THROWS_AS(observed_firsts("year,first_swarm\n2024\n", "club.csv", 50), InputError);
    CHECK_THROWS_AS(observed_firsts("", "club.csv", 50), InputError);
}
