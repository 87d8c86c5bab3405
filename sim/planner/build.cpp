// A set of options being built: what each further option gains, and the best of them.
#include "planner/build.hpp"

#include <algorithm>
#include <numeric>

namespace maybough::planner {

namespace {
/// Of the options that look best at a glance, so many are lived through before one is taken.
constexpr std::size_t closely_looked_at = 6;
}  // namespace

double Build::judged(std::size_t option, Judge judge, Look look) {
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
    const double outlay = limits_.outlay > 0 ? (then.outlay - now.outlay) / limits_.outlay : 0;
    const double hours = limits_.hours > 0 ? (then.hours - now.hours) / limits_.hours : 0;
    constexpr double free_of_charge = 1e-9;
    return net > 0 ? net / std::max(free_of_charge, std::max(outlay, hours)) : net;
}

Filled Build::gained(std::size_t option, Judge judge, Look look) const {
    if (look == Look::close) return tally_.gain(option);
    if (judge == Judge::catches) return {tally_.gain_in_catches(option), 0};
    return {0, tally_.gain_in_worth(option)};
}

double Build::score(Judge judge) const {
    if (judge == Judge::catches) return tally_.catches();
    return tally_.worth() - spent_.cost + (chosen_.empty() ? 0 : demand_.fixed_cost);
}

std::optional<Candidate> best_addition(const Demand& demand, Build& build, Judge judge,
                                       const std::vector<std::size_t>& allowed, std::int64_t* gains, Look look) {
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
    if (demand.rounds.empty() || look == Look::quick) return *std::min_element(fit.begin(), fit.end(), better);
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

}  // namespace maybough::planner
