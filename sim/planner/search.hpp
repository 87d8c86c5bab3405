// Search over sets of options: lazy greedy, exchanges, and a bound that no set can pass. Pure functions on data.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "planner/demand.hpp"

namespace maybough::planner {

/// How the next option is judged.
enum class Judge {
    net,      ///< worth less cost
    catches,  ///< swarms
    rate,     ///< worth per money, where money is short
};

/// The greedy order: each step adds the feasible option that the judge likes best, whether or not it pays, until
/// limits.max_traps, the money or the places run out. Starts from `start`. Lazily evaluated (Minoux 1978): the same set
/// as judging every option at every step where gains only shrink.
Chosen greedy(const Demand& demand, const Limits& limits, Judge judge, const Chosen& start = {},
              std::int64_t* gains = nullptr);

/// The same by brute force, for tests.
Chosen plain_greedy(const Demand& demand, const Limits& limits, Judge judge, const Chosen& start = {},
                    std::int64_t* gains = nullptr);

/// The option that best joins `others`, not at the place `refused`; none where nothing fits.
std::optional<std::size_t> best_elsewhere(const Demand& demand, const Limits& limits, const Chosen& others,
                                          std::uint64_t refused);

/// What an exchange may do to the number of traps.
enum class Count { kept, free };

/// Exchanges one option for another (with Count::free also adds and drops) while that raises worth less cost, at most
/// `sweeps` times over the set. Options of must-places stay on their place.
Chosen exchange(const Demand& demand, const Limits& limits, Chosen chosen, Count count, Judge judge = Judge::net,
                int sweeps = 10);

/// The best set the search finds, in the order in which its members are best added, and what follows it.
struct Found {
    Chosen order;          ///< nested: the first k are the plan of k traps
    std::size_t best = 0;  ///< how many of them are best by the surrogate
};
/// `exactly` > 0 asks for the best set of just that many.
Found search(const Demand& demand, const Limits& limits, int exactly = 0);

/// No set of at most `count` options within the limits has more worth less cost than this, by the surrogate.
///
/// The search is relaxed to a concave one, in which options may be hung by parts, a part gets no more than its part of
/// what the option would get alone, and a trap hangs empty as often as it could beside the strongest rivals. Money and
/// hours are relaxed by multipliers. Whatever point the climb of Frank and Wolfe 1956 has reached, the tangent plane
/// there lies above the concave function, and its best corner is the bound; the least over `steps` points is kept.
/// `start` is where the climb begins: a good set makes it short.
double upper_bound(const Demand& demand, const Limits& limits, int count, const Chosen& start, int steps = 25);

/// The best set by trying all, for tests and for few options.
Chosen enumerate(const Demand& demand, const Limits& limits, int exactly = 0);

}  // namespace maybough::planner
