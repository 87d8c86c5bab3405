// Greedy orders, exchanges and enumeration over sets of options.
#include "planner/search.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>
#include <queue>
#include <tuple>

namespace maybough {

namespace {
constexpr double nothing = -std::numeric_limits<double>::infinity();
/// A change has to gain this much of the sums it is a difference of, so that rounding never makes a circle.
constexpr double least_relative_gain = 1e-11;

/// How closely an option's gain is looked at; they differ only where traps fill.
enum class Look { quick, close };
/// Of the options that look best at a glance, so many are lived through before one is taken.
constexpr std::size_t closely_looked_at = 6;

/// A set being built, with the sums that judging needs.
class Build {
  public:
    Build(const Demand& demand, const Limits& limits) : demand_(demand), limits_(limits), tally_(demand) {}

    void add(std::size_t option) {
        chosen_.push_back(option);
        tally_.add(option);
        spent_ = spending(demand_, chosen_);
    }
    void remove(std::size_t position) {
        tally_.remove(chosen_[position]);
        chosen_.erase(chosen_.begin() + static_cast<std::ptrdiff_t>(position));
        spent_ = spending(demand_, chosen_);
    }
    const Chosen& chosen() const { return chosen_; }

    bool place_free(std::size_t option) const {
        return std::none_of(chosen_.begin(), chosen_.end(), [&](std::size_t other) {
            return demand_.options[other].place == demand_.options[option].place;
        });
    }
    bool full() const { return static_cast<int>(chosen_.size()) >= limits_.max_traps; }

    /// What the judge thinks of adding `option`; `nothing` where the limits forbid it.
    double judged(std::size_t option, Judge judge, Look look) {
        chosen_.push_back(option);
        const Spending then = spending(demand_, chosen_);
        chosen_.pop_back();
        if (!within(then, limits_)) return nothing;
        const Filled gain = gained(option, judge, look);
        if (judge == Judge::catches) return gain.catches;
        // What having any trap at all costs is left out, so that gains only shrink as the set grows.
        const Spending now = chosen_.empty() ? fixed() : spent_;
        const double net = gain.worth - (then.cost - now.cost);
        if (judge == Judge::net) return net;
        const double cash = limits_.cash > 0 ? (then.cash - now.cash) / limits_.cash : 0;
        const double hours = limits_.hours > 0 ? (then.hours - now.hours) / limits_.hours : 0;
        constexpr double free_of_charge = 1e-9;
        return net > 0 ? net / std::max(free_of_charge, std::max(cash, hours)) : net;
    }
    /// The same without what any trap at all costs.
    double score(Judge judge) const {
        if (judge == Judge::catches) return tally_.catches();
        return tally_.worth() - spent_.cost + (chosen_.empty() ? 0 : demand_.fixed_cost);
    }

  private:
    Spending fixed() const { return {demand_.fixed_cost, demand_.fixed_cash, demand_.fixed_hours}; }
    Filled gained(std::size_t option, Judge judge, Look look) const {
        if (look == Look::close) return tally_.gain(option);
        if (judge == Judge::catches) return {tally_.gain_in_catches(option), 0};
        return {0, tally_.gain_in_worth(option)};
    }

    const Demand& demand_;
    const Limits& limits_;
    Tally tally_;
    Chosen chosen_;
    Spending spent_;
};

/// Ties go to the lower place, then kind: never to the position in a list.
auto tie_key(const Demand& demand, std::size_t option) {
    return std::tuple(demand.options[option].place, demand.options[option].kind);
}

struct Candidate {
    double judged = 0;
    std::size_t option = 0;
    std::size_t judged_at = 0;  ///< size of the set then
};

/// Best option to add now, of those `allowed`.
std::optional<Candidate> best_addition(const Demand& demand, Build& build, Judge judge,
                                       const std::vector<std::size_t>& allowed, std::int64_t* gains) {
    const auto better = [&demand](const Candidate& a, const Candidate& b) {
        if (a.judged != b.judged) return a.judged > b.judged;
        return tie_key(demand, a.option) < tie_key(demand, b.option);
    };
    std::vector<Candidate> fit;
    for (const std::size_t j : allowed) {
        if (!build.place_free(j)) continue;
        const double judged = build.judged(j, judge, Look::quick);
        if (gains != nullptr) ++*gains;
        if (judged != nothing) fit.push_back({judged, j, 0});
    }
    if (fit.empty()) return std::nullopt;
    if (demand.rounds.empty()) return *std::min_element(fit.begin(), fit.end(), better);
    const auto few = static_cast<std::ptrdiff_t>(std::min(closely_looked_at, fit.size()));
    std::partial_sort(fit.begin(), fit.begin() + few, fit.end(), better);
    for (auto one = fit.begin(); one != fit.begin() + few; ++one) {
        one->judged = build.judged(one->option, judge, Look::close);
    }
    return *std::min_element(fit.begin(), fit.begin() + few, better);
}

std::vector<std::size_t> all_of(const Demand& demand) {
    std::vector<std::size_t> all(demand.options.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

std::vector<std::size_t> of_must_places(const Demand& demand) {
    std::vector<std::size_t> must;
    for (std::size_t j = 0; j < demand.options.size(); ++j) {
        if (demand.options[j].must) must.push_back(j);
    }
    return must;
}

/// Puts the best option on each place that has to be used.
void fill_must_places(const Demand& demand, Build& build, Judge judge, std::int64_t* gains) {
    const std::vector<std::size_t> must = of_must_places(demand);
    while (!build.full()) {
        const auto best = best_addition(demand, build, judge, must, gains);
        if (!best) return;
        build.add(best->option);
    }
}

void grow_lazily(const Demand& demand, Build& build, Judge judge, const std::vector<std::size_t>& allowed,
                 std::int64_t* gains) {
    if (!demand.rounds.empty()) {  // gains may grow where one trap relieves another
        while (!build.full()) {
            const auto best = best_addition(demand, build, judge, allowed, gains);
            if (!best) return;
            build.add(best->option);
        }
        return;
    }
    const auto worse = [&demand](const Candidate& a, const Candidate& b) {
        if (a.judged != b.judged) return a.judged < b.judged;
        return tie_key(demand, a.option) > tie_key(demand, b.option);
    };
    std::priority_queue<Candidate, std::vector<Candidate>, decltype(worse)> queue(worse);
    constexpr std::size_t never = std::numeric_limits<std::size_t>::max();
    for (const std::size_t j : allowed) queue.push({std::numeric_limits<double>::infinity(), j, never});
    while (!build.full() && !queue.empty()) {
        Candidate top = queue.top();
        queue.pop();
        if (!build.place_free(top.option)) continue;
        if (top.judged_at == build.chosen().size()) {
            build.add(top.option);
            continue;
        }
        top.judged = build.judged(top.option, judge, Look::quick);
        top.judged_at = build.chosen().size();
        if (gains != nullptr) ++*gains;
        if (top.judged != nothing) queue.push(top);  // what the money does not reach now, it never will
    }
}

/// Options that may take the place of `member`: any, or those of its own place where that has to be used.
std::vector<std::size_t> in_stead_of(const Demand& demand, std::size_t member) {
    std::vector<std::size_t> allowed;
    for (std::size_t j = 0; j < demand.options.size(); ++j) {
        const bool same_place = demand.options[j].place == demand.options[member].place;
        if (!demand.options[member].must || same_place) allowed.push_back(j);
    }
    return allowed;
}

/// One pass over the set: each member goes if another does better in its stead. True where anything changed.
bool exchange_once(const Demand& demand, Build& build, Judge judge, Count count) {
    bool changed = false;
    // The first member goes out and the better one comes in last, so that all have had their turn after one round.
    for (std::size_t turns = build.chosen().size(); turns > 0; --turns) {
        const std::size_t member = build.chosen().front();
        const double before = build.score(judge);
        const double least = least_relative_gain * (1 + std::abs(before));
        build.remove(0);
        const double without = build.score(judge);
        const auto best = best_addition(demand, build, judge, in_stead_of(demand, member), nullptr);
        const bool may_drop = count == Count::free && !demand.options[member].must;
        if (may_drop && without > before + least && (!best || best->judged <= 0)) {
            changed = true;
        } else if (best && without + best->judged > before + least) {
            build.add(best->option);
            changed = true;
        } else {
            build.add(member);
        }
    }
    return changed;
}

/// The greedy order of the members of a set alone.
Chosen nested_order(const Demand& demand, const Limits& limits, const Chosen& members) {
    Build build(demand, limits);
    grow_lazily(demand, build, Judge::net, members, nullptr);
    return build.chosen();
}

/// The prefix of an order with the most net worth; with all must-places at least.
Chosen best_prefix(const Demand& demand, const Chosen& order) {
    std::size_t must = 0;
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (demand.options[order[i]].must) must = i + 1;
    }
    Tally tally(demand);
    double best = must == 0 ? 0 : nothing;
    std::size_t best_size = 0;
    for (std::size_t i = 0; i < order.size(); ++i) {
        tally.add(order[i]);
        const double net = tally.worth() - spending(demand, std::span(order).first(i + 1)).cost;
        if (i + 1 >= must && net > best) {
            best = net;
            best_size = i + 1;
        }
    }
    return {order.begin(), order.begin() + static_cast<std::ptrdiff_t>(best_size)};
}
}  // namespace

Chosen greedy(const Demand& demand, const Limits& limits, Judge judge, const Chosen& start, std::int64_t* gains) {
    Build build(demand, limits);
    for (const std::size_t j : start) build.add(j);
    fill_must_places(demand, build, judge, gains);
    grow_lazily(demand, build, judge, all_of(demand), gains);
    return build.chosen();
}

Chosen plain_greedy(const Demand& demand, const Limits& limits, Judge judge, const Chosen& start, std::int64_t* gains) {
    Build build(demand, limits);
    for (const std::size_t j : start) build.add(j);
    fill_must_places(demand, build, judge, gains);
    const std::vector<std::size_t> all = all_of(demand);
    while (!build.full()) {
        const auto best = best_addition(demand, build, judge, all, gains);
        if (!best) break;
        build.add(best->option);
    }
    return build.chosen();
}

std::optional<std::size_t> best_elsewhere(const Demand& demand, const Limits& limits, const Chosen& others,
                                          std::uint64_t refused) {
    Build build(demand, limits);
    for (const std::size_t j : others) build.add(j);
    std::vector<std::size_t> allowed;
    for (std::size_t j = 0; j < demand.options.size(); ++j) {
        if (demand.options[j].place != refused) allowed.push_back(j);
    }
    const auto best = best_addition(demand, build, Judge::net, allowed, nullptr);
    return best ? std::optional(best->option) : std::nullopt;
}

Chosen exchange(const Demand& demand, const Limits& limits, Chosen chosen, Count count, Judge judge, int sweeps) {
    Build build(demand, limits);
    for (const std::size_t j : chosen) build.add(j);
    for (int sweep = 0; sweep < sweeps; ++sweep) {
        bool changed = exchange_once(demand, build, judge, count);
        while (count == Count::free && !build.full()) {
            const auto best = best_addition(demand, build, judge, all_of(demand), nullptr);
            if (!best || best->judged <= least_relative_gain * (1 + std::abs(build.score(judge)))) break;
            build.add(best->option);
            changed = true;
        }
        if (!changed) break;
    }
    return build.chosen();
}

Found search(const Demand& demand, const Limits& limits, int exactly) {
    Limits asked = limits;
    if (exactly > 0) asked.max_traps = exactly;
    const bool short_of_means = limits.cash > 0 || limits.hours > 0;
    std::optional<Chosen> best;
    double best_net = nothing;
    for (const Judge judge : {Judge::net, Judge::rate, Judge::catches}) {
        if (judge == Judge::rate && !short_of_means) continue;
        Chosen trial = greedy(demand, asked, judge);
        if (exactly <= 0) trial = best_prefix(demand, trial);
        trial = exchange(demand, asked, trial, exactly > 0 ? Count::kept : Count::free);
        const double net = net_of(demand, trial);
        if (!best || net > best_net) {
            best = trial;
            best_net = net;
        }
    }
    // A set whose members pay one by one may still not pay for the drives.
    const bool must = !of_must_places(demand).empty();
    if (exactly <= 0 && !must && best_net < 0) best->clear();
    Found found;
    found.best = best->size();
    found.order = order_through(demand, limits, *best);
    return found;
}

Chosen order_through(const Demand& demand, const Limits& limits, const Chosen& set) {
    return greedy(demand, limits, Judge::net, nested_order(demand, limits, set));
}

namespace {
void try_all(const Demand& demand, const Limits& limits, int exactly, std::size_t from, Chosen& chosen, Chosen& best,
             double& best_net) {
    const auto size = static_cast<int>(chosen.size());
    if (exactly <= 0 || size == exactly) {
        const double net = net_of(demand, chosen);
        if (net > best_net && within(spending(demand, chosen), limits)) {
            best = chosen;
            best_net = net;
        }
    }
    if (size >= (exactly > 0 ? exactly : limits.max_traps)) return;
    for (std::size_t j = from; j < demand.options.size(); ++j) {
        const bool taken = std::any_of(chosen.begin(), chosen.end(), [&](std::size_t other) {
            return demand.options[other].place == demand.options[j].place;
        });
        if (taken) continue;
        chosen.push_back(j);
        try_all(demand, limits, exactly, j + 1, chosen, best, best_net);
        chosen.pop_back();
    }
}
}  // namespace

Chosen enumerate(const Demand& demand, const Limits& limits, int exactly) {
    Chosen chosen;
    Chosen best;
    double best_net = nothing;
    try_all(demand, limits, exactly, 0, chosen, best, best_net);
    return best;
}

}  // namespace maybough
