// Sums over recorded hunts: what a set of options catches, is worth and costs.
#include "planner/demand.hpp"

#include <algorithm>

namespace maybough {

Spending spending(const Demand& demand, std::span<const std::size_t> chosen) {
    if (chosen.empty()) return {};
    Spending spent{demand.fixed_cost, demand.fixed_cash, demand.fixed_hours};
    std::vector<int> of_kind(demand.kinds.size(), 0);
    for (const std::size_t j : chosen) {
        const SearchOption& option = demand.options[j];
        spent.cost += option.cost;
        spent.cash += option.cash;
        spent.hours += option.hours;
        ++of_kind[option.kind];
    }
    for (std::size_t k = 0; k < of_kind.size(); ++k) {
        const SearchKind& kind = demand.kinds[k];
        const double made = std::max(0, of_kind[k] - kind.owned);
        spent.cost += made * kind.cost;
        spent.cash += made * kind.cash;
        spent.hours += made * kind.hours;
    }
    return spent;
}

bool within(const Spending& spent, const Limits& limits) {
    constexpr double rounding = 1e-9;
    return (limits.cash <= 0 || spent.cash <= limits.cash * (1 + rounding)) &&
           (limits.hours <= 0 || spent.hours <= limits.hours * (1 + rounding));
}

Tally::Tally(const Demand& demand)
    : demand_(&demand), pull_(demand.rivals.size(), 0), value_(demand.rivals.size(), 0) {}

double Tally::gain_in_catches(std::size_t option) const {
    double gain = 0;
    for (const Draw& draw : demand_->options[option].draws) {
        const double rivals = demand_->rivals[draw.hunt];
        const double before = rivals + pull_[draw.hunt];
        gain += rivals * draw.pull / (before * (before + draw.pull));
    }
    return gain / demand_->seasons;
}

double Tally::gain_in_worth(std::size_t option) const {
    double gain = 0;
    for (const Draw& draw : demand_->options[option].draws) {
        const double before = demand_->rivals[draw.hunt] + pull_[draw.hunt];
        const double pull = draw.pull;
        gain += pull * (draw.worth * before - value_[draw.hunt]) / (before * (before + pull));
    }
    return gain / demand_->seasons;
}

void Tally::change(std::size_t option, double sign) {
    for (const Draw& draw : demand_->options[option].draws) {
        const std::uint32_t h = draw.hunt;
        const double rivals = demand_->rivals[h];
        catches_ -= pull_[h] / (rivals + pull_[h]);
        worth_ -= value_[h] / (rivals + pull_[h]);
        pull_[h] = std::max(0.0, pull_[h] + sign * draw.pull);
        value_[h] += sign * draw.pull * draw.worth;
        catches_ += pull_[h] / (rivals + pull_[h]);
        worth_ += value_[h] / (rivals + pull_[h]);
    }
}

double net_of(const Demand& demand, std::span<const std::size_t> chosen) {
    Tally tally(demand);
    for (const std::size_t j : chosen) tally.add(j);
    return tally.worth() - spending(demand, chosen).cost;
}

double catches_of(const Demand& demand, std::span<const std::size_t> chosen) {
    Tally tally(demand);
    for (const std::size_t j : chosen) tally.add(j);
    return tally.catches();
}

Demand catches_only(Demand demand) {
    for (SearchOption& option : demand.options) {
        option.cost = option.cash = option.hours = 0;
        for (Draw& draw : option.draws) draw.worth = 1;
    }
    for (SearchKind& kind : demand.kinds) kind = {0, 0, 0, kind.owned};
    demand.fixed_cost = demand.fixed_cash = demand.fixed_hours = 0;
    return demand;
}

Demand at_greatest_worth(Demand demand) {
    std::vector<float> greatest(demand.rivals.size(), 0);
    for (const SearchOption& option : demand.options) {
        for (const Draw& draw : option.draws) greatest[draw.hunt] = std::max(greatest[draw.hunt], draw.worth);
    }
    for (SearchOption& option : demand.options) {
        for (Draw& draw : option.draws) draw.worth = greatest[draw.hunt];
    }
    return demand;
}

}  // namespace maybough
