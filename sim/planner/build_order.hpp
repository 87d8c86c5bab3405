// The order in which to build the traps of a set, so that keeping only the first k costs least: by taking away.
#pragma once

#include <functional>
#include <vector>

#include "planner/search.hpp"

namespace maybough::planner {

/// Mean net worth of each of several sets.
using NetsOf = std::function<std::vector<double>(const std::vector<Chosen>&)>;

/// Members of `set`, the one that can be spared least first: again and again the member goes without which the rest is
/// worth most, and stands last (backward elimination). What a member is missed by is taken to grow as others go, so
/// that only members that might be missed least are asked again (the lazy rule of Minoux 1978, turned round). Members
/// that `stays` names go after all others, whatever that costs. Ties fall to `before`, an order that does not depend on
/// how spots are named or listed.
Chosen build_order(const Chosen& set, const NetsOf& nets_of, const std::function<bool(std::size_t)>& stays,
                   const std::function<bool(std::size_t, std::size_t)>& before);

}  // namespace maybough::planner
