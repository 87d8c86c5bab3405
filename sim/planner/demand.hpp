// What the search sees: recorded hunts with the pull of their natural sites, and of each option on each. Plain data.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace maybough {

/// One option's pull on one hunt.
struct Draw {
    std::uint32_t hunt = 0;
    float pull = 0;   ///< weight in the choice, relative to 1 for settling nowhere
    float worth = 0;  ///< of this swarm taken from this option, work of taking it paid
};

/// One thing the keeper may do: a kind of trap at a spot, height and facing settled.
struct SearchOption {
    std::uint64_t place = 0;  ///< options of one place exclude each other; also breaks ties, so it is not an index
    std::size_t kind = 0;
    double cost = 0;   ///< for the season, apart from material
    double cash = 0;   ///< money paid out in the season, apart from material
    double hours = 0;  ///< of the keeper's work, apart from building
    bool must = false;
    std::vector<Draw> draws;  ///< in increasing hunt
};

/// Material of one kind; the first `owned` cost nothing.
struct SearchKind {
    double cost = 0;   ///< share of this season, building work included
    double cash = 0;   ///< money to find
    double hours = 0;  ///< of building
    int owned = 0;
};

/// Everything a search needs.
struct Demand {
    double seasons = 1;
    std::vector<double> rivals;  ///< per hunt: pull of natural sites and of settling nowhere
    std::vector<SearchOption> options;
    std::vector<SearchKind> kinds;
    double fixed_cost = 0;  ///< of having any trap at all (drives)
    double fixed_cash = 0;
    double fixed_hours = 0;
};

/// Limits on a plan; 0 = none for cash and hours.
struct Limits {
    int max_traps = 15;
    double cash = 0;
    double hours = 0;
};

using Chosen = std::vector<std::size_t>;  ///< indices of options, in the order they were added

/// What a set of options costs.
struct Spending {
    double cost = 0;
    double cash = 0;
    double hours = 0;
};
Spending spending(const Demand& demand, std::span<const std::size_t> chosen);
bool within(const Spending& spent, const Limits& limits);

/// A set of options with its running sums; catches and worth are means per season.
class Tally {
  public:
    explicit Tally(const Demand& demand);
    void add(std::size_t option) { change(option, 1); }
    void remove(std::size_t option) { change(option, -1); }

    double catches() const { return catches_ / demand_->seasons; }
    double worth() const { return worth_ / demand_->seasons; }
    double gain_in_catches(std::size_t option) const;
    double gain_in_worth(std::size_t option) const;

  private:
    void change(std::size_t option, double sign);

    const Demand* demand_;
    std::vector<double> pull_;   ///< per hunt: of the chosen options together
    std::vector<double> value_;  ///< per hunt: sum of pull times worth
    double catches_ = 0;
    double worth_ = 0;
};

/// Mean worth less cost of a set.
double net_of(const Demand& demand, std::span<const std::size_t> chosen);
double catches_of(const Demand& demand, std::span<const std::size_t> chosen);

/// The same hunts and pulls with every catch worth 1 and nothing costing anything: for bounds on catches.
Demand catches_only(Demand demand);

/// Raises each pull's worth to the greatest that any option has for that hunt: from above, and submodular.
Demand at_greatest_worth(Demand demand);

}  // namespace maybough
