// Where swarms hang: each is counted once, in the square that holds it, as a mean over seasons.
#include "planner/swarm_squares.hpp"

#include <doctest/doctest.h>

using namespace maybough;

TEST_CASE("swarms are counted in their squares and shared out over all seasons") {
    // Squares of 100 m; two seasons, the second with one swarm.
    const auto squares = swarm_squares({{{10, 10}, {90, 99}, {-1, 10}}, {{10, 20}}}, 900);
    REQUIRE(squares.size() == 2);
    CHECK(squares[0].centre == Point{-50, 50});
    CHECK(squares[0].swarms == 0.5);
    CHECK(squares[1].centre == Point{50, 50});
    CHECK(squares[1].side_m == 100);
    CHECK(squares[1].swarms == 1.5);
    double all = 0;
    for (const SwarmSquare& square : squares) all += square.swarms;
    CHECK(all == 2);
    CHECK(swarm_squares({{}, {}}, 900).empty());
}
