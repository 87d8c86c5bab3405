// Nests and hives for tests, in ordinary country.
#pragma once

#include "colony/colony.hpp"

namespace maybough_test {

inline constexpr maybough::ForageMix ordinary_country{1, 1, 1, 1, 1};

inline maybough::DrawnColony wild_nest(std::uint32_t number, double volume_l = 42) {
    return {{number}, {0, 0}, maybough::ColonyOrigin::wild, volume_l, -1, ordinary_country};
}

inline maybough::DrawnColony hive(std::uint32_t number, double volume_l = 60) {
    return {{number}, {0, 0}, maybough::ColonyOrigin::managed, volume_l, 0, ordinary_country};
}

}  // namespace maybough_test
