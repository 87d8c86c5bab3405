// The bound that no set of options can pass: tangent planes of a concave relaxation (Frank and Wolfe 1956).
#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <limits>
#include <map>
#include <optional>

#include "planner/search.hpp"

namespace maybough {

namespace {
/// Shares of the price at which a lone trap's catches in a round just fill it; 0 = traps never fill.
constexpr std::array<double, 3> price_shares{0, 0.7, 0.85};

/// One option on one hunt, its catch priced.
struct Claim {
    std::uint32_t option = 0;
    double pull = 0;
    double worth = 0;
};

/// Hunts with their claims, most worth first.
struct Relaxed {
    std::vector<double> rivals;
    std::vector<std::size_t> first;  ///< per hunt, of its claims; one more at the end
    std::vector<Claim> claims;
    std::vector<double> rent;  ///< per option: what its rounds earn at the prices of their catches
};

/// Draws of one option in one round.
using Round = std::span<const Draw>;

std::vector<Round> rounds_of(const Demand& demand, const SearchOption& option) {
    std::vector<Round> rounds;
    const std::span<const Draw> draws(option.draws);
    std::size_t from = 0;
    for (std::size_t i = 1; i <= draws.size(); ++i) {
        const bool same = i < draws.size() && !demand.rounds.empty() &&
                          demand.rounds[draws[i].hunt] == demand.rounds[draws[from].hunt];
        if (same) continue;
        rounds.push_back(draws.subspan(from, i - from));
        from = i;
    }
    return rounds;
}

/// What a lone trap catches in the round, and the worth of the catch that just fits, the dearest first.
struct Capacity {
    double catches = 0;
    double price = 0;
};

Capacity capacity_of(const Demand& demand, Round round) {
    std::vector<std::pair<double, double>> by_worth;
    double empty = 1;
    for (const Draw& draw : round) {
        const double share = draw.pull / (demand.rivals[draw.hunt] + draw.pull);
        empty *= 1 - share;
        by_worth.emplace_back(draw.worth, share);
    }
    Capacity capacity{1 - empty, 0};
    std::sort(by_worth.begin(), by_worth.end(), std::greater<>());
    double used = 0;
    for (const auto& [worth, share] : by_worth) {
        used += share;
        if (used >= capacity.catches && by_worth.size() > 1) return {capacity.catches, std::max(0.0, worth)};
    }
    return capacity;
}

Relaxed relax(const Demand& demand, double price_share) {
    Relaxed relaxed;
    relaxed.rivals = demand.rivals;
    relaxed.rent.assign(demand.options.size(), 0);
    std::vector<std::vector<Claim>> by_hunt(demand.rivals.size());
    for (std::size_t j = 0; j < demand.options.size(); ++j) {
        for (const Round round : rounds_of(demand, demand.options[j])) {
            const Capacity capacity = capacity_of(demand, round);
            const double price = price_share * capacity.price;
            relaxed.rent[j] += price * capacity.catches;
            for (const Draw& draw : round) {
                if (draw.worth <= price) continue;
                by_hunt[draw.hunt].push_back({static_cast<std::uint32_t>(j), draw.pull, draw.worth - price});
            }
        }
    }
    for (std::vector<Claim>& claims : by_hunt) {
        std::stable_sort(claims.begin(), claims.end(), [](const auto& a, const auto& b) { return a.worth > b.worth; });
        relaxed.first.push_back(relaxed.claims.size());
        relaxed.claims.insert(relaxed.claims.end(), claims.begin(), claims.end());
    }
    relaxed.first.push_back(relaxed.claims.size());
    return relaxed;
}

/// The concave worth at `part` of each option hung, and its slope in each part.
///
/// A hunt gives its options no more together than the surrogate's share of them all, and so for any of them alone; the
/// most worth within that is got by the dearest first: sum over levels of worth of the share of all above the level.
double worth_at(const Relaxed& relaxed, const std::vector<double>& part, std::vector<double>& slope) {
    slope.assign(part.size(), 0);
    double worth = 0;
    for (std::size_t h = 0; h + 1 < relaxed.first.size(); ++h) {
        const std::size_t from = relaxed.first[h];
        const std::size_t to = relaxed.first[h + 1];
        const double rivals = relaxed.rivals[h];
        double together = 0;
        for (std::size_t c = from; c < to; ++c) together += relaxed.claims[c].pull * part[relaxed.claims[c].option];
        double steep = 0;  // sum over levels from here down of step in worth times slope of the share
        for (std::size_t c = to; c-- > from;) {
            const Claim& claim = relaxed.claims[c];
            const double below = c + 1 < to ? relaxed.claims[c + 1].worth : 0;
            const double all = rivals + together;
            worth += (claim.worth - below) * together / all;
            steep += (claim.worth - below) * rivals / (all * all);
            slope[claim.option] += steep * claim.pull;
            together -= claim.pull * part[claim.option];
        }
    }
    return worth;
}

/// What hanging one option brings on a tangent plane, and what it needs beside material.
struct Offer {
    std::size_t option = 0;
    double gain = 0;
    double cash = 0;
    double hours = 0;
};

struct Corner {
    double value = 0;
    std::vector<std::size_t> options;
};

/// The best corner of a tangent plane where money and hours have these prices: the `count` best places, each with its
/// best option.
Corner best_corner(const Demand& demand, const std::vector<Offer>& offers, int count, double price_of_cash,
                   double price_of_hours) {
    std::map<std::uint64_t, std::pair<double, std::size_t>> best_of_place;
    for (const Offer& offer : offers) {
        const double gain = offer.gain - price_of_cash * offer.cash - price_of_hours * offer.hours;
        if (gain <= 0) continue;
        auto& best = best_of_place[demand.options[offer.option].place];
        if (gain > best.first) best = {gain, offer.option};
    }
    std::vector<std::pair<double, std::size_t>> gains;
    for (const auto& [place, best] : best_of_place) gains.push_back(best);
    std::sort(gains.begin(), gains.end(), std::greater<>());
    gains.resize(std::min(gains.size(), static_cast<std::size_t>(std::max(0, count))));
    Corner corner;
    for (const auto& [gain, option] : gains) {
        corner.value += gain;
        corner.options.push_back(option);
    }
    return corner;
}

/// Least corner over a price in [0, high], by golden section: convex in the price, and any price gives a bound.
Corner least_corner(const std::function<Corner(double)>& at, double high) {
    constexpr double golden = 0.6180339887498949;
    constexpr int cuts = 30;
    double a = 0;
    double b = high;
    Corner best = at(0);
    for (int i = 0; i < cuts; ++i) {
        const double left = b - golden * (b - a);
        const double right = a + golden * (b - a);
        Corner at_left = at(left);
        Corner at_right = at(right);
        const bool lower = at_left.value < at_right.value;
        (lower ? b : a) = lower ? right : left;
        Corner& better = lower ? at_left : at_right;
        if (better.value < best.value) best = std::move(better);
    }
    return best;
}

/// Where owned traps of a kind are free, either none of that kind pays (and none is free), or all pay and the owned
/// ones are given back: both lie above what it costs.
struct Material {
    std::vector<bool> paid;  ///< per kind
    double back = 0;
    double cash_back = 0;
    double hours_back = 0;
};

std::vector<Material> ways_to_pay(const Demand& demand) {
    constexpr std::size_t most_ways = 16;
    std::vector<Material> ways{{{}, 0, 0, 0}};
    for (const SearchKind& kind : demand.kinds) {
        std::vector<Material> more;
        for (const Material& way : ways) {
            Material pays = way;
            pays.paid.push_back(true);
            pays.back += kind.owned * kind.cost;
            pays.cash_back += kind.owned * kind.cash;
            pays.hours_back += kind.owned * kind.hours;
            Material free = way;
            free.paid.push_back(false);
            if (kind.owned == 0 || more.size() + 1 < most_ways) more.push_back(std::move(pays));
            if (kind.owned > 0) more.push_back(std::move(free));
        }
        ways = std::move(more);
    }
    return ways;
}

Corner corner_of(const Demand& demand, const Limits& limits, int count, const std::vector<double>& gains,
                 const Material& way) {
    std::vector<Offer> offers;
    double per_cash = 0;
    double per_hour = 0;
    for (std::size_t j = 0; j < gains.size(); ++j) {
        const SearchOption& option = demand.options[j];
        const SearchKind& kind = demand.kinds[option.kind];
        const double made = way.paid[option.kind] ? 1 : 0;
        const Offer offer{j, gains[j] - option.cost - made * kind.cost, option.cash + made * kind.cash,
                          option.hours + made * kind.hours};
        if (offer.gain <= 0) continue;
        if (offer.cash > 0) per_cash = std::max(per_cash, offer.gain / offer.cash);
        if (offer.hours > 0) per_hour = std::max(per_hour, offer.gain / offer.hours);
        offers.push_back(offer);
    }
    Corner best = best_corner(demand, offers, count, 0, 0);
    const auto priced = [&](double left, double high, bool cash) {
        const auto at = [&](double price) {
            Corner corner = best_corner(demand, offers, count, cash ? price : 0, cash ? 0 : price);
            corner.value += price * left;
            return corner;
        };
        Corner corner = least_corner(at, high);
        if (corner.value < best.value) best = std::move(corner);
    };
    if (limits.cash > 0) priced(limits.cash - demand.fixed_cash + way.cash_back, per_cash, true);
    if (limits.hours > 0) priced(limits.hours - demand.fixed_hours + way.hours_back, per_hour, false);
    best.value += way.back;
    return best;
}

double bound_at_prices(const Demand& demand, const Limits& limits, int count, const Chosen& start, int steps,
                       double price_share) {
    const Relaxed relaxed = relax(demand, price_share);
    const std::vector<Material> ways = ways_to_pay(demand);
    std::vector<double> part(demand.options.size(), 0);
    for (const std::size_t j : start) part[j] = 1;
    std::vector<double> slope;
    double bound = std::numeric_limits<double>::infinity();
    for (int step = 0; step < steps; ++step) {
        double plane = worth_at(relaxed, part, slope);
        std::vector<double> gains(part.size());
        for (std::size_t j = 0; j < part.size(); ++j) {
            plane -= slope[j] * part[j];
            gains[j] = (slope[j] + relaxed.rent[j]) / demand.seasons;
        }
        std::optional<Corner> corner;
        for (const Material& way : ways) {
            Corner trial = corner_of(demand, limits, count, gains, way);
            if (!corner || trial.value < corner->value) corner = std::move(trial);
        }
        bound = std::min(bound, plane / demand.seasons + corner->value);
        const double length = 2.0 / (step + 4);
        for (double& p : part) p *= 1 - length;
        for (const std::size_t j : corner->options) part[j] += length;
    }
    return bound - demand.fixed_cost;
}
}  // namespace

double upper_bound(const Demand& demand, const Limits& limits, int count, const Chosen& start, int steps) {
    double bound = std::numeric_limits<double>::infinity();
    for (const double share : price_shares) {
        if (share > 0 && demand.rounds.empty()) continue;
        bound = std::min(bound, bound_at_prices(demand, limits, count, start, steps, share));
    }
    return std::max(0.0, bound);  // hanging none costs nothing
}

}  // namespace maybough
