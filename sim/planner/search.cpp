// Greedy orders, the search over sets, and enumeration.
#include "planner/search.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <queue>

#include "planner/build.hpp"

namespace maybough::planner {

namespace {
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
/// So many of the options that are best alone are tried as the first of a set.
constexpr std::size_t guessed_first = 8;

/// What a judge makes of a set that begins with `first`, by quick looks. With Count::free it grows while that pays.
Build grown_from(const Demand& demand, const Limits& limits, std::size_t first, Judge judge, Count count) {
    Build build(demand, limits);
    build.add(first);
    const std::vector<std::size_t> all = all_of(demand);
    while (!build.full()) {
        const auto best = best_addition(demand, build, judge, all, nullptr, Look::quick);
        if (!best || (count == Count::free && best->judged <= 0)) break;
        build.add(best->option);
    }
    return build;
}

/// The options that are best alone, best first.
Chosen guesses(const Demand& demand, const Limits& limits) {
    Build empty(demand, limits);
    std::vector<Candidate> alone;
    for (const std::size_t j : all_of(demand)) {
        const double judged = empty.judged(j, Judge::net, Look::quick);
        if (judged != nothing) alone.push_back({judged, j, 0});
    }
    std::sort(alone.begin(), alone.end(), [&](const Candidate& a, const Candidate& b) {
        return a.judged != b.judged ? a.judged > b.judged : tie_key(demand, a.option) < tie_key(demand, b.option);
    });
    Chosen first;
    for (std::size_t i = 0; i < std::min(guessed_first, alone.size()); ++i) first.push_back(alone[i].option);
    return first;
}

/// The best set that begins with a guess and goes on greedily: partial enumeration, as in Sviridenko 2004, "A note on
/// maximizing a submodular set function subject to a knapsack constraint", with one guess. Where the greedy order's
/// first step is wrong, exchanges one for one may not mend it. None where places have to be used.
std::optional<Chosen> best_of_guesses(const Demand& demand, const Limits& limits, Count count) {
    if (!of_must_places(demand).empty()) return std::nullopt;
    std::optional<Chosen> best;
    double best_score = nothing;
    for (const std::size_t first : guesses(demand, limits)) {
        for (const Judge judge : {Judge::net, Judge::rate}) {
            if (judge == Judge::rate && limits.outlay <= 0 && limits.hours <= 0) continue;
            const Build build = grown_from(demand, limits, first, judge, count);
            if (count == Count::kept && !build.full()) continue;
            const double score = build.score(Judge::net);
            if (score > best_score + least_relative_gain * (1 + std::abs(score))) {
                best = build.chosen();
                best_score = score;
            }
        }
    }
    return best;
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

Found search(const Demand& demand, const Limits& limits, int exactly) {
    Limits asked = limits;
    if (exactly > 0) asked.max_traps = exactly;
    const bool short_of_means = limits.outlay > 0 || limits.hours > 0;
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
    const Count count = exactly > 0 ? Count::kept : Count::free;
    if (const auto guessed = best_of_guesses(demand, asked, count)) {
        const Chosen trial = exchange(demand, asked, *guessed, count);
        const double net = net_of(demand, trial);
        if (net > best_net + least_relative_gain * (1 + std::abs(best_net))) {
            best = trial;
            best_net = net;
        }
    }
    // A set whose members pay one by one may still not pay for the drives.
    const bool must = !of_must_places(demand).empty();
    if (exactly <= 0 && !must && best_net < 0) best->clear();
    Found found;
    found.best = best->size();
    found.order = greedy(demand, limits, Judge::net, nested_order(demand, limits, *best));
    return found;
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

}  // namespace maybough::planner
