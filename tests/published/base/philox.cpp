// Philox4x32-10 against the known answers that come with its reference implementation.
#include <doctest/doctest.h>

#include "chance/chance.hpp"

using namespace maybough;

// Source: Salmon, Moraes, Dror and Shaw 2011, "Parallel random numbers: as easy as 1, 2, 3"; known-answer vectors of
// the authors' Random123 distribution (kat_vectors).
TEST_CASE("Philox4x32-10 gives the published known answers") {
    CHECK(philox_block({0, 0, 0, 0}, {0, 0}) == Block{0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8});
    const std::uint32_t ones = 0xffffffff;
    CHECK(philox_block({ones, ones, ones, ones}, {ones, ones}) ==
          Block{0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd});
    CHECK(philox_block({0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344}, {0xa4093822, 0x299f31d0}) ==
          Block{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1});
}

// Source: ISO C++ draft, std::philox4x32: the 10000th value with the default seed 20111115 is 1955073260.
TEST_CASE("the ten-thousandth number of the standard's Philox engine") {
    CHECK(philox_block({2499, 0, 0, 0}, {20111115, 0})[3] == 1955073260U);
}
