// Orders a set of traps by taking them away one by one.
#include "planner/build_order.hpp"

#include <algorithm>

namespace maybough::planner {

namespace {
/// A member of what is left, and what the others would be worth less without it.
struct Member {
    std::size_t option = 0;
    double loss = 0;
    double rest = 0;  ///< worth of the others
    bool fresh = false;
};

/// The member that costs least; where its loss is from a larger set it is asked anew, and so on until one is fresh.
std::size_t cheapest(std::vector<Member>& members, double worth, const NetsOf& nets_of,
                     const std::function<bool(std::size_t)>& may_go) {
    const auto without = [&](std::size_t m) {
        Chosen others;
        for (std::size_t i = 0; i < members.size(); ++i) {
            if (i != m) others.push_back(members[i].option);
        }
        return others;
    };
    while (true) {
        std::size_t least = members.size();
        for (std::size_t m = 0; m < members.size(); ++m) {
            if (!may_go(members[m].option)) continue;
            if (least == members.size() || members[m].loss < members[least].loss) least = m;
        }
        Member& member = members[least];
        if (member.fresh) return least;
        member.rest = nets_of({without(least)}).front();
        member.loss = worth - member.rest;
        member.fresh = true;
    }
}
}  // namespace

Chosen build_order(const Chosen& set, const NetsOf& nets_of, const std::function<bool(std::size_t)>& stays,
                   const std::function<bool(std::size_t, std::size_t)>& before) {
    Chosen left = set;
    std::sort(left.begin(), left.end(), before);
    if (left.size() < 2) return left;
    std::vector<Member> members;
    for (const std::size_t option : left) members.push_back({option, -1e300, 0, false});
    double worth = nets_of({left}).front();
    Chosen last_first;
    while (members.size() > 1) {
        const bool all_stay =
            std::all_of(members.begin(), members.end(), [&](const Member& m) { return stays(m.option); });
        const std::size_t gone =
            cheapest(members, worth, nets_of, [&](std::size_t option) { return all_stay || !stays(option); });
        worth = members[gone].rest;
        last_first.push_back(members[gone].option);
        members.erase(members.begin() + static_cast<std::ptrdiff_t>(gone));
        for (Member& member : members) member.fresh = false;
    }
    last_first.push_back(members.front().option);
    return {last_first.rbegin(), last_first.rend()};
}

}  // namespace maybough::planner
