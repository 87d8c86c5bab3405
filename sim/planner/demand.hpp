// What the search sees: recorded hunts with the pull of their natural sites, and of each option on each. Plain data.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace maybough::planner {

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
    double cost = 0;    ///< for the season, apart from material
    double outlay = 0;  ///< money to spend before the season, apart from material
    double hours = 0;   ///< of the keeper's work, apart from building; taking what it would catch alone included
    bool must = false;
    std::vector<Draw> draws;  ///< in increasing hunt
};

/// Material of one kind; the first `owned` cost nothing.
struct SearchKind {
    double cost = 0;    ///< share of this season, building work included
    double outlay = 0;  ///< money to spend
    double hours = 0;   ///< of building
    int owned = 0;
};

/// Everything a search needs.
struct Demand {
    double seasons = 1;
    std::vector<double> rivals;  ///< per hunt: pull of natural sites and of settling nowhere
    /// Per hunt: the keeper's round that takes what it brings. Hunts of one round follow one another in the order in
    /// which they settle; a trap that has caught is full for the rest of its round. Empty = no trap ever fills.
    std::vector<std::uint32_t> rounds;
    std::vector<SearchOption> options;
    std::vector<SearchKind> kinds;
    double fixed_cost = 0;  ///< of having any trap at all (drives)
    double fixed_hours = 0;
};

/// Limits on a plan; 0 = none for outlay and hours.
struct Limits {
    int max_traps = 15;
    double outlay = 0;
    double hours = 0;
};

using Chosen = std::vector<std::size_t>;  ///< indices of options, in the order they were added

/// What a set of options costs.
struct Spending {
    double cost = 0;
    double outlay = 0;
    double hours = 0;
};
Spending spending(const Demand& demand, std::span<const std::size_t> chosen);
bool within(const Spending& spent, const Limits& limits);

/// What a set of options catches and what that is worth, summed over hunts.
struct Filled {
    double catches = 0;
    double worth = 0;
};

/// How strongly one hunt is drawn to the set's traps as they hang, full ones left out, and what those traps would lose
/// were the swarm to go elsewhere: what it brings less what the trap could still catch in that round.
struct Held {
    double pull = 0;
    double catches = 0;  ///< sum of pull times loss in catches
    double worth = 0;    ///< sum of pull times loss in worth
};

/// Lives through the hunts with the set's traps hung. Each trap's chance of hanging empty falls with each hunt of a
/// round by the chance that the hunt ends in it, and is back at 1 with the next round (a mean-field: traps fill
/// independently of one another). Exact for one trap, and where no trap fills. `held`, where given, gets one entry a
/// hunt.
Filled fill(const Demand& demand, std::span<const std::size_t> chosen, std::vector<Held>* held = nullptr);

/// A set of options with its sums; catches and worth are means per season. Gains are exact where no trap fills;
/// elsewhere they leave out that traps relieved of a swarm draw others from one another, so the best few are measured
/// by with().
class Tally {
  public:
    explicit Tally(const Demand& demand);
    void add(std::size_t option);
    void remove(std::size_t option);

    double catches() const { return sums_.catches / demand_->seasons; }
    double worth() const { return sums_.worth / demand_->seasons; }
    double gain_in_catches(std::size_t option) const;
    double gain_in_worth(std::size_t option) const;
    /// What adding the option gains, lived through anew.
    Filled gain(std::size_t option) const;

  private:
    const Demand* demand_;
    Chosen members_;
    std::vector<Held> held_;
    Filled sums_;
};

/// Mean worth less cost of a set.
double net_of(const Demand& demand, std::span<const std::size_t> chosen);
double catches_of(const Demand& demand, std::span<const std::size_t> chosen);

/// Multiplies what every catch is worth.
void scale_worth(Demand& demand, double factor);

/// The same hunts and pulls with every catch worth 1 and nothing costing anything: for bounds on catches.
Demand catches_only(Demand demand);

}  // namespace maybough::planner
