// Sums over recorded hunts: what a set of options catches, is worth and costs.
#include "planner/demand.hpp"

#include <algorithm>

namespace maybough::planner {

Spending spending(const Demand& demand, std::span<const std::size_t> chosen) {
    if (chosen.empty()) return {};
    Spending spent{demand.fixed_cost, 0, demand.fixed_hours};
    std::vector<int> of_kind(demand.kinds.size(), 0);
    for (const std::size_t j : chosen) {
        const SearchOption& option = demand.options[j];
        spent.cost += option.cost;
        spent.outlay += option.outlay;
        spent.hours += option.hours;
        ++of_kind[option.kind];
    }
    for (std::size_t k = 0; k < of_kind.size(); ++k) {
        const SearchKind& kind = demand.kinds[k];
        const double made = std::max(0, of_kind[k] - kind.owned);
        spent.cost += made * kind.cost;
        spent.outlay += made * kind.outlay;
        spent.hours += made * kind.hours;
    }
    return spent;
}

bool within(const Spending& spent, const Limits& limits) {
    constexpr double rounding = 1e-9;
    return (limits.outlay <= 0 || spent.outlay <= limits.outlay * (1 + rounding)) &&
           (limits.hours <= 0 || spent.hours <= limits.hours * (1 + rounding));
}

namespace {
/// One of the set's traps while hunts go by.
struct Hung {
    std::span<const Draw> draws;
    std::size_t next = 0;  ///< of its draws
    double empty = 1;      ///< chance that it hangs empty in this round
    Filled to_come;        ///< while going back: what it still catches in this round, were it empty
};

/// One trap in one hunt, kept for the way back.
struct Visit {
    std::uint32_t trap = 0;
    double pull = 0;   ///< times the chance that the trap hangs empty
    double share = 0;  ///< of the hunt, where the trap hangs empty
    double worth = 0;
};

bool round_ends_before(const Demand& demand, std::uint32_t hunt) {
    return demand.rounds.empty() || hunt == 0 || demand.rounds[hunt] != demand.rounds[hunt - 1];
}

/// The set's traps that this hunt can find, with their pulls as they hang.
void call_up(std::vector<Hung>& traps, std::uint32_t hunt, std::vector<Visit>& visits) {
    for (std::size_t t = 0; t < traps.size(); ++t) {
        Hung& trap = traps[t];
        if (trap.next == trap.draws.size() || trap.draws[trap.next].hunt != hunt) continue;
        const Draw& draw = trap.draws[trap.next++];
        visits.push_back({static_cast<std::uint32_t>(t), draw.pull, 0, draw.worth});
    }
}

/// From the last hunt to the first: what each trap would lose by losing the hunt.
void price(const Demand& demand, std::vector<Hung>& traps, const std::vector<Visit>& visits,
           const std::vector<std::size_t>& first_visit, std::vector<Held>& held) {
    for (Hung& trap : traps) trap.to_come = {};
    for (std::size_t h = held.size(); h-- > 0;) {
        for (std::size_t v = first_visit[h]; v < first_visit[h + 1]; ++v) {
            const Visit& visit = visits[v];
            Filled& to_come = traps[visit.trap].to_come;
            held[h].catches += visit.pull * (1 - to_come.catches);
            held[h].worth += visit.pull * (visit.worth - to_come.worth);
            to_come.catches += visit.share * (1 - to_come.catches);
            to_come.worth += visit.share * (visit.worth - to_come.worth);
        }
        if (!round_ends_before(demand, static_cast<std::uint32_t>(h))) continue;
        for (Hung& trap : traps) trap.to_come = {};
    }
}
}  // namespace

Filled fill(const Demand& demand, std::span<const std::size_t> chosen, std::vector<Held>* held) {
    std::vector<Hung> traps(chosen.size());
    for (std::size_t t = 0; t < chosen.size(); ++t) traps[t].draws = demand.options[chosen[t]].draws;
    std::vector<Visit> visits;
    std::vector<std::size_t> first_visit;
    if (held != nullptr) held->assign(demand.rivals.size(), {});
    Filled sums;
    for (std::uint32_t h = 0; h < demand.rivals.size(); ++h) {
        if (round_ends_before(demand, h)) {
            for (Hung& trap : traps) trap.empty = 1;
        }
        if (held == nullptr) visits.clear();
        const std::size_t first = visits.size();
        first_visit.push_back(first);
        call_up(traps, h, visits);
        double together = demand.rivals[h];
        for (std::size_t v = first; v < visits.size(); ++v) together += traps[visits[v].trap].empty * visits[v].pull;
        for (std::size_t v = first; v < visits.size(); ++v) {
            Visit& visit = visits[v];
            double& empty = traps[visit.trap].empty;
            visit.share = visit.pull / (together + (1 - empty) * visit.pull);
            visit.pull *= empty;
            sums.catches += empty * visit.share;
            sums.worth += empty * visit.share * visit.worth;
            empty *= 1 - visit.share;
            if (held != nullptr) (*held)[h].pull += visit.pull;
        }
    }
    if (held == nullptr) return sums;
    first_visit.push_back(visits.size());
    price(demand, traps, visits, first_visit, *held);
    return sums;
}

Tally::Tally(const Demand& demand) : demand_(&demand), held_(demand.rivals.size()) {}

void Tally::add(std::size_t option) {
    members_.push_back(option);
    sums_ = fill(*demand_, members_, &held_);
}

void Tally::remove(std::size_t option) {
    members_.erase(std::find(members_.begin(), members_.end(), option));
    sums_ = fill(*demand_, members_, &held_);
}

Filled Tally::gain(std::size_t option) const {
    Chosen with = members_;
    with.push_back(option);
    const Filled then = fill(*demand_, with);
    return {(then.catches - sums_.catches) / demand_->seasons, (then.worth - sums_.worth) / demand_->seasons};
}

namespace {
/// What the option gains in chance of a catch and loses to the set, hunt by hunt.
template <class Of>
double gain_over(const Demand& demand, std::size_t option, const std::vector<Held>& held, Of own, double Held::*lost) {
    double gain = 0;
    double empty = 1;
    std::uint32_t before = 0;
    for (const Draw& draw : demand.options[option].draws) {
        const std::uint32_t h = draw.hunt;
        const bool same_round = !demand.rounds.empty() && demand.rounds[h] == demand.rounds[before];
        if (!same_round) empty = 1;
        before = h;
        const double others = demand.rivals[h] + held[h].pull;
        const double share = draw.pull / (others + draw.pull);
        gain += empty * share * (own(draw) - held[h].*lost / others);
        empty *= 1 - share;
    }
    return gain / demand.seasons;
}
}  // namespace

double Tally::gain_in_catches(std::size_t option) const {
    return gain_over(
        *demand_, option, held_, [](const Draw&) { return 1.0; }, &Held::catches);
}

double Tally::gain_in_worth(std::size_t option) const {
    return gain_over(
        *demand_, option, held_, [](const Draw& draw) { return double{draw.worth}; }, &Held::worth);
}

double net_of(const Demand& demand, std::span<const std::size_t> chosen) {
    return fill(demand, chosen).worth / demand.seasons - spending(demand, chosen).cost;
}

double catches_of(const Demand& demand, std::span<const std::size_t> chosen) {
    return fill(demand, chosen).catches / demand.seasons;
}

void scale_worth(Demand& demand, double factor) {
    for (SearchOption& option : demand.options) {
        for (Draw& draw : option.draws) draw.worth *= static_cast<float>(factor);
    }
}

Demand catches_only(Demand demand) {
    for (SearchOption& option : demand.options) {
        option.cost = option.outlay = option.hours = 0;
        for (Draw& draw : option.draws) draw.worth = 1;
    }
    for (SearchKind& kind : demand.kinds) kind = {0, 0, 0, kind.owned};
    demand.fixed_cost = demand.fixed_hours = 0;
    return demand;
}

}  // namespace maybough::planner
