// Orders a set of traps by taking them away one by one.
#include "planner/build_order.hpp"

#include <algorithm>

namespace maybough {

Chosen build_order(const Chosen& set, const NetsOf& nets_of, const std::function<bool(std::size_t)>& stays,
                   const std::function<bool(std::size_t, std::size_t)>& before) {
    Chosen left = set;
    std::sort(left.begin(), left.end(), before);
    Chosen last_first;
    while (left.size() > 1) {
        Chosen may_go;
        std::copy_if(left.begin(), left.end(), std::back_inserter(may_go), [&](std::size_t j) { return !stays(j); });
        if (may_go.empty()) may_go = left;
        std::vector<Chosen> rests;
        for (const std::size_t gone : may_go) {
            rests.push_back(left);
            std::erase(rests.back(), gone);
        }
        const std::vector<double> nets = nets_of(rests);
        const auto best = static_cast<std::size_t>(std::max_element(nets.begin(), nets.end()) - nets.begin());
        last_first.push_back(may_go[best]);
        left = rests[best];
    }
    left.insert(left.end(), last_first.rbegin(), last_first.rend());
    return left;
}

}  // namespace maybough
