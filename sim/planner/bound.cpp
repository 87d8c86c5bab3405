// The bound that no set of options can pass: tangent planes of a concave relaxation (Frank and Wolfe 1956).
#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <map>
#include <numeric>
#include <optional>

#include "planner/search.hpp"

namespace maybough::planner {

namespace {
/// One option on one hunt: the most it can count for.
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
};

/// Options on each hunt, in increasing index, with their pulls and worths.
std::vector<std::vector<Claim>> claims_by_hunt(const Demand& demand) {
    std::vector<std::vector<Claim>> by_hunt(demand.rivals.size());
    for (std::size_t j = 0; j < demand.options.size(); ++j) {
        for (const Draw& draw : demand.options[j].draws) {
            by_hunt[draw.hunt].push_back({static_cast<std::uint32_t>(j), draw.pull, draw.worth});
        }
    }
    return by_hunt;
}

/// The strongest pulls that traps at other places can set against one another on one hunt.
class Rivals {
  public:
    Rivals(const Demand& demand, std::size_t others) : others_(others) {
        std::map<std::uint64_t, std::size_t> number;
        for (const SearchOption& option : demand.options) {
            place_of_.push_back(number.emplace(option.place, number.size()).first->second);
        }
        strongest_.assign(number.size(), 0);
    }

    /// `empty`: per option, how likely it hangs empty at most.
    void meet(const std::vector<Claim>& claims, const std::vector<double>& empty) {
        std::fill(strongest_.begin(), strongest_.end(), 0.0);
        for (const Claim& claim : claims) {
            double& most = strongest_[place_of_[claim.option]];
            most = std::max(most, empty[claim.option] * claim.pull);
        }
        falling_ = strongest_;
        std::sort(falling_.begin(), falling_.end(), std::greater<>());
        falling_.resize(std::min(falling_.size(), others_ + 1));
        first_ = std::accumulate(falling_.begin(), falling_.end(), 0.0);
        last_ = falling_.size() > others_ ? falling_.back() : 0;
    }

    /// Sum of the strongest pulls of so many places other than the option's own.
    double against(std::size_t option) const { return first_ - std::max(strongest_[place_of_[option]], last_); }

  private:
    std::size_t others_;
    std::vector<std::size_t> place_of_;  ///< per option
    std::vector<double> strongest_;      ///< per place, on this hunt
    std::vector<double> falling_;        ///< the strongest, one more than there can be others
    double first_ = 0;                   ///< their sum
    double last_ = 0;                    ///< the one too many where the option's place is not among them
};

/// Hunts in which no trap is full any more, and whose shares no set of at most `count` options can pass in fill().
///
/// A trap hangs empty at a hunt no more often than it would, had each hunt of the round before it gone through the
/// strongest rivals that `count` - 1 other places can hold (`empty`). In fill() a trap with chance e of hanging empty
/// gets a / (R + A + b) of a hunt, where a = e p, b = (1 - e) p and A sums a over the set. Let q = R a / (R + b): the
/// pull that, always empty, gets alone what the trap gets alone. Over the set the shares add up to no more than
/// Q / (R + Q), Q the sum of q: with weights q they are means of x / (x + A), x = R + b, which is concave in x, so that
/// Jensen's inequality applies. Where traps do not meet the shares are those of fill().
Relaxed relax(const Demand& demand, int count) {
    Relaxed relaxed;
    relaxed.rivals = demand.rivals;
    Rivals rivals(demand, static_cast<std::size_t>(std::max(0, count - 1)));
    std::vector<std::vector<Claim>> by_hunt = claims_by_hunt(demand);
    std::vector<double> empty(demand.options.size(), 1);
    for (std::size_t h = 0; h < by_hunt.size(); ++h) {
        std::vector<Claim>& claims = by_hunt[h];
        const double natural = demand.rivals[h];
        const bool fills = !demand.rounds.empty();
        if (fills && h > 0 && demand.rounds[h] != demand.rounds[h - 1]) std::fill(empty.begin(), empty.end(), 1.0);
        if (fills) rivals.meet(claims, empty);
        for (Claim& claim : claims) {
            double& e = empty[claim.option];
            const double full_pull = claim.pull;
            claim.pull = natural * e * full_pull / (natural + (1 - e) * full_pull);
            if (fills) e *= 1 - full_pull / (natural + rivals.against(claim.option) + full_pull);
        }
        std::erase_if(claims, [](const Claim& claim) { return claim.worth <= 0; });
        std::stable_sort(claims.begin(), claims.end(), [](const auto& a, const auto& b) { return a.worth > b.worth; });
        relaxed.first.push_back(relaxed.claims.size());
        relaxed.claims.insert(relaxed.claims.end(), claims.begin(), claims.end());
    }
    relaxed.first.push_back(relaxed.claims.size());
    return relaxed;
}

/// The concave worth at `part` of each option hung, and its slope in each part.
///
/// A hunt gives its options no more together than the surrogate's share of them all, no more than the sum of what each
/// part would get alone, and so for any of them; the most worth within that is got by the dearest first: sum over
/// levels of worth of what all above the level get.
double worth_at(const Relaxed& relaxed, const std::vector<double>& part, std::vector<double>& slope) {
    slope.assign(part.size(), 0);
    double worth = 0;
    for (std::size_t h = 0; h + 1 < relaxed.first.size(); ++h) {
        const std::size_t from = relaxed.first[h];
        const std::size_t to = relaxed.first[h + 1];
        const double rivals = relaxed.rivals[h];
        double together = 0;
        double alone = 0;
        for (std::size_t c = from; c < to; ++c) {
            const Claim& claim = relaxed.claims[c];
            together += claim.pull * part[claim.option];
            alone += claim.pull / (rivals + claim.pull) * part[claim.option];
        }
        double steep = 0;  // sum over levels from here down of step in worth times slope of the share
        double flat = 0;   // the same of levels that the parts, each alone, do not fill
        for (std::size_t c = to; c-- > from;) {
            const Claim& claim = relaxed.claims[c];
            const double below = c + 1 < to ? relaxed.claims[c + 1].worth : 0;
            const double all = rivals + together;
            const double own = claim.pull / (rivals + claim.pull);
            const double step = claim.worth - below;
            if (together / all < alone) {
                worth += step * together / all;
                steep += step * rivals / (all * all);
            } else {
                worth += step * alone;
                flat += step;
            }
            slope[claim.option] += steep * claim.pull + flat * own;
            together -= claim.pull * part[claim.option];
            alone -= own * part[claim.option];
        }
    }
    return worth;
}

/// What hanging one option brings on a tangent plane, and what it needs beside material.
struct Offer {
    std::size_t option = 0;
    double gain = 0;
    double outlay = 0;
    double hours = 0;
};

struct Corner {
    double value = 0;
    std::vector<std::size_t> options;
};

/// The best corner of a tangent plane where money and hours have these prices: the `count` best places, each with its
/// best option.
Corner best_corner(const Demand& demand, const std::vector<Offer>& offers, int count, double price_of_outlay,
                   double price_of_hours) {
    std::map<std::uint64_t, std::pair<double, std::size_t>> best_of_place;
    for (const Offer& offer : offers) {
        const double gain = offer.gain - price_of_outlay * offer.outlay - price_of_hours * offer.hours;
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
    double outlay_back = 0;
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
            pays.outlay_back += kind.owned * kind.outlay;
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
    double per_outlay = 0;
    double per_hour = 0;
    for (std::size_t j = 0; j < gains.size(); ++j) {
        const SearchOption& option = demand.options[j];
        const SearchKind& kind = demand.kinds[option.kind];
        const double made = way.paid[option.kind] ? 1 : 0;
        const Offer offer{j, gains[j] - option.cost - made * kind.cost, option.outlay + made * kind.outlay,
                          option.hours + made * kind.hours};
        if (offer.gain <= 0) continue;
        if (offer.outlay > 0) per_outlay = std::max(per_outlay, offer.gain / offer.outlay);
        if (offer.hours > 0) per_hour = std::max(per_hour, offer.gain / offer.hours);
        offers.push_back(offer);
    }
    Corner best = best_corner(demand, offers, count, 0, 0);
    const auto priced = [&](double left, double high, bool outlay) {
        const auto at = [&](double price) {
            Corner corner = best_corner(demand, offers, count, outlay ? price : 0, outlay ? 0 : price);
            corner.value += price * left;
            return corner;
        };
        Corner corner = least_corner(at, high);
        if (corner.value < best.value) best = std::move(corner);
    };
    if (limits.outlay > 0) priced(limits.outlay + way.outlay_back, per_outlay, true);
    if (limits.hours > 0) priced(limits.hours - demand.fixed_hours + way.hours_back, per_hour, false);
    best.value += way.back;
    return best;
}

}  // namespace

double upper_bound(const Demand& demand, const Limits& limits, int count, const Chosen& start, int steps) {
    const Relaxed relaxed = relax(demand, count);
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
            gains[j] = slope[j] / demand.seasons;
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
    return std::max(0.0, bound - demand.fixed_cost);  // hanging none costs nothing
}

}  // namespace maybough::planner
