// The choice surrogate: one multinomial logit that foretells which site a swarm moves into. Pure functions on data.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

namespace maybough::planner {

/// One site as one swarm sees it.
struct SiteView {
    float ln_find = 0;   ///< natural logarithm of the weight with which scouts come upon it
    float log_odds = 0;  ///< its quality
};

/// One recorded hunt: its sites lie in HuntData::sites, natural ones first, then traps.
struct RecordedHunt {
    std::uint32_t season = 0;
    std::uint32_t first = 0;       ///< index of its first site
    std::uint32_t first_trap = 0;  ///< index of its first trap
    std::uint32_t last = 0;        ///< one past its last site
    std::int32_t chosen = -1;      ///< index into sites, -1 = moved into none of them
    bool prime = true;
};

struct HuntData {
    std::vector<RecordedHunt> hunts;
    std::vector<SiteView> sites;
};

/// Terms of a site's systematic utility: trap, constant, ln find, log-odds, their squares and product, afterswarm.
inline constexpr std::size_t choice_terms = 8;
using ChoiceWeights = std::array<double, choice_terms>;

enum class SiteSort { natural, trap };

/// Weight of a site in the choice, relative to 1 for "none of them" (dispersed, built in the open).
double pull(const SiteView& view, SiteSort sort, bool prime, const ChoiceWeights& weights);

/// Sum of the pulls of a hunt's natural sites and of "none of them".
double rival_pull(std::span<const SiteView> natural, bool prime, const ChoiceWeights& weights);

struct ChoiceFit {
    ChoiceWeights weights{};
    double log_likelihood = 0;  ///< mean over hunts
    int steps = 0;              ///< Newton steps taken
    bool converged = false;
};

/// Maximum likelihood by Newton's method with step halving; the log-likelihood of a multinomial logit is concave
/// (McFadden 1974), a slight ridge keeps it strictly so. `use` picks hunts (indices into data.hunts).
ChoiceFit fit_choice(const HuntData& data, std::span<const std::uint32_t> use);

/// One situation in which the full model ran several times with fresh luck, for checking the surrogate.
struct RepeatedHunt {
    std::vector<SiteView> sites;
    std::uint32_t first_trap = 0;
    bool prime = true;
    std::vector<std::uint32_t> moved;  ///< per site, how often chosen
    std::uint32_t times = 0;
};

/// Error of the foretold choice of each site and of "none", with the binomial noise of `moved` taken out.
struct ChoiceError {
    std::int64_t hunts = 0;
    double rms = 0;
    double r_squared = 0;
    double traps_foretold = 0;  ///< mean share of hunts ending in a trap
    double traps_seen = 0;
};
ChoiceError choice_error(std::span<const RepeatedHunt> checks, const ChoiceWeights& weights);

}  // namespace maybough::planner
