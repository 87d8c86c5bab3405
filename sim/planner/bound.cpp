// The bound that no set of options can pass: greedy prefixes, with money and hours relaxed by multipliers.
#include <algorithm>
#include <functional>
#include <limits>
#include <map>

#include "planner/search.hpp"

namespace maybough {

namespace {
/// What one option could add at most to a prefix, and what it surely needs.
struct Promise {
    std::uint64_t place = 0;
    double gain = 0;  ///< worth, less the least it can cost
    double cash = 0;
    double hours = 0;
};

std::vector<Promise> promises(const Demand& demand, const Tally& tally) {
    std::vector<Promise> all;
    for (std::size_t j = 0; j < demand.options.size(); ++j) {
        const SearchOption& option = demand.options[j];
        const SearchKind& kind = demand.kinds[option.kind];
        const double made = kind.owned > 0 ? 0 : 1;
        all.push_back({option.place, tally.gain_in_worth(j) - option.cost - made * kind.cost,
                       option.cash + made * kind.cash, option.hours + made * kind.hours});
    }
    return all;
}

/// Sum of the `count` best places, each with its best option, where money and hours have these prices.
double relaxed(const std::vector<Promise>& all, int count, double price_of_cash, double price_of_hours) {
    std::map<std::uint64_t, double> best_of_place;
    for (const Promise& p : all) {
        double& best = best_of_place[p.place];
        best = std::max(best, p.gain - price_of_cash * p.cash - price_of_hours * p.hours);
    }
    std::vector<double> gains;
    for (const auto& [place, gain] : best_of_place) gains.push_back(gain);
    std::sort(gains.begin(), gains.end(), std::greater<>());
    double sum = 0;
    for (std::size_t i = 0; i < gains.size() && static_cast<int>(i) < count; ++i) sum += gains[i];
    return sum;
}

/// Least value of a convex function on [0, high], by golden section; any point of it is a valid bound.
double least(const std::function<double(double)>& f, double high) {
    constexpr double golden = 0.6180339887498949;
    constexpr int steps = 50;
    double a = 0;
    double b = high;
    double best = f(0);
    for (int i = 0; i < steps; ++i) {
        const double left = b - golden * (b - a);
        const double right = a + golden * (b - a);
        const double at_left = f(left);
        const double at_right = f(right);
        best = std::min({best, at_left, at_right});
        (at_left < at_right ? b : a) = at_left < at_right ? right : left;
    }
    return best;
}

double bound_at(const Demand& demand, const Limits& limits, int count, const Tally& tally) {
    const std::vector<Promise> all = promises(demand, tally);
    double most_per_cash = 0;
    double most_per_hour = 0;
    for (const Promise& p : all) {
        if (p.cash > 0) most_per_cash = std::max(most_per_cash, p.gain / p.cash);
        if (p.hours > 0) most_per_hour = std::max(most_per_hour, p.gain / p.hours);
    }
    double add = relaxed(all, count, 0, 0);
    if (limits.cash > 0) {
        const double left = limits.cash - demand.fixed_cash;
        add = std::min(
            add, least([&](double price) { return price * left + relaxed(all, count, price, 0); }, most_per_cash));
    }
    if (limits.hours > 0) {
        const double left = limits.hours - demand.fixed_hours;
        add = std::min(
            add, least([&](double price) { return price * left + relaxed(all, count, 0, price); }, most_per_hour));
    }
    return tally.worth() - demand.fixed_cost + add;
}
}  // namespace

double upper_bound(const Demand& demand, const Limits& limits, int count, const Chosen& order) {
    Tally tally(demand);
    double bound = bound_at(demand, limits, count, tally);
    for (const std::size_t j : order) {
        tally.add(j);
        bound = std::min(bound, bound_at(demand, limits, count, tally));
    }
    return std::max(0.0, bound);  // hanging none costs nothing
}

}  // namespace maybough
