// A set of options being built, and how the next option is judged. Shared by greedy orders and exchanges.
#pragma once

#include <algorithm>
#include <limits>
#include <optional>
#include <tuple>
#include <vector>

#include "planner/search.hpp"

namespace maybough::planner {

/// What an option that the limits forbid is worth.
constexpr double nothing = -std::numeric_limits<double>::infinity();
/// A change has to gain this much of the sums it is a difference of, so that rounding never makes a circle.
constexpr double least_relative_gain = 1e-11;

/// How closely an option's gain is looked at; they differ only where traps fill.
enum class Look { quick, close };

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
    double judged(std::size_t option, Judge judge, Look look);
    /// The same of the set as it is, without what any trap at all costs.
    double score(Judge judge) const;

  private:
    Spending fixed() const { return {demand_.fixed_cost, 0, demand_.fixed_hours}; }
    Filled gained(std::size_t option, Judge judge, Look look) const;

    const Demand& demand_;
    const Limits& limits_;
    Tally tally_;
    Chosen chosen_;
    Spending spent_;
};

/// Ties go to the lower place, then kind: never to the position in a list.
inline auto tie_key(const Demand& demand, std::size_t option) {
    return std::tuple(demand.options[option].place, demand.options[option].kind);
}

struct Candidate {
    double judged = 0;
    std::size_t option = 0;
    std::size_t judged_at = 0;  ///< size of the set then
};

/// Best option to add now, of those `allowed`. Where traps fill, Look::close lives the best few through.
std::optional<Candidate> best_addition(const Demand& demand, Build& build, Judge judge,
                                       const std::vector<std::size_t>& allowed, std::int64_t* gains = nullptr,
                                       Look look = Look::close);

std::vector<std::size_t> all_of(const Demand& demand);

}  // namespace maybough::planner
