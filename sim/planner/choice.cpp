// Fits the choice surrogate by Newton's method and measures its error on repeated hunts.
#include "planner/choice.hpp"

#include <algorithm>
#include <cmath>

namespace maybough::planner {

namespace {
using Square = std::array<std::array<double, choice_terms>, choice_terms>;

/// Keeps a term that no recorded hunt informs at zero without moving the others by more than rounding.
constexpr double ridge = 1e-4;
constexpr int most_steps = 60;
constexpr int most_halvings = 30;
constexpr double slope_tolerance = 1e-9;  ///< of the mean log-likelihood

ChoiceWeights terms_of(const SiteView& view, SiteSort sort, bool prime) {
    const double g = view.ln_find;
    const double q = view.log_odds;
    return {1, sort == SiteSort::trap ? 1.0 : 0.0, g, q, g * g, q * q, g * q, prime ? 0.0 : 1.0};
}

double dot(const ChoiceWeights& a, const ChoiceWeights& b) {
    double sum = 0;
    for (std::size_t i = 0; i < choice_terms; ++i) sum += a[i] * b[i];
    return sum;
}

/// Utilities beyond this would overflow sums of pulls; a hunt with one of them is decided anyway.
constexpr double utility_limit = 50;

struct Slope {
    double log_likelihood = 0;
    ChoiceWeights gradient{};
    Square information{};  ///< minus the Hessian
};

void add_hunt(const HuntData& data, const RecordedHunt& hunt, const ChoiceWeights& weights, Slope& slope) {
    double total = 1;  // none of them
    ChoiceWeights mean{};
    Square second{};
    double chosen_utility = 0;
    for (std::uint32_t s = hunt.first; s < hunt.last; ++s) {
        const SiteSort sort = s < hunt.first_trap ? SiteSort::natural : SiteSort::trap;
        const ChoiceWeights phi = terms_of(data.sites[s], sort, hunt.prime);
        const double utility = std::clamp(dot(weights, phi), -utility_limit, utility_limit);
        const double a = std::exp(utility);
        total += a;
        for (std::size_t i = 0; i < choice_terms; ++i) {
            mean[i] += a * phi[i];
            for (std::size_t j = 0; j <= i; ++j) second[i][j] += a * phi[i] * phi[j];
        }
        if (hunt.chosen == static_cast<std::int32_t>(s)) {
            chosen_utility = utility;
            for (std::size_t i = 0; i < choice_terms; ++i) slope.gradient[i] += phi[i];
        }
    }
    slope.log_likelihood += chosen_utility - std::log(total);
    for (std::size_t i = 0; i < choice_terms; ++i) {
        slope.gradient[i] -= mean[i] / total;
        for (std::size_t j = 0; j <= i; ++j) {
            slope.information[i][j] += second[i][j] / total - mean[i] / total * (mean[j] / total);
        }
    }
}

Slope slope_at(const HuntData& data, std::span<const std::uint32_t> use, const ChoiceWeights& weights) {
    Slope slope;
    for (const std::uint32_t h : use) add_hunt(data, data.hunts[h], weights, slope);
    const double n = std::max<double>(1, static_cast<double>(use.size()));
    slope.log_likelihood = slope.log_likelihood / n - 0.5 * ridge * dot(weights, weights);
    for (std::size_t i = 0; i < choice_terms; ++i) {
        slope.gradient[i] = slope.gradient[i] / n - ridge * weights[i];
        for (std::size_t j = 0; j <= i; ++j) slope.information[i][j] /= n;
        slope.information[i][i] += ridge;
    }
    return slope;
}

/// Solves information * step = gradient by Cholesky factors.
ChoiceWeights newton_step(Square m, ChoiceWeights right) {
    for (std::size_t i = 0; i < choice_terms; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double sum = m[i][j];
            for (std::size_t k = 0; k < j; ++k) sum -= m[i][k] * m[j][k];
            m[i][j] = i == j ? std::sqrt(std::max(sum, 1e-12)) : sum / m[j][j];
        }
    }
    for (std::size_t i = 0; i < choice_terms; ++i) {
        for (std::size_t k = 0; k < i; ++k) right[i] -= m[i][k] * right[k];
        right[i] /= m[i][i];
    }
    for (std::size_t i = choice_terms; i-- > 0;) {
        for (std::size_t k = i + 1; k < choice_terms; ++k) right[i] -= m[k][i] * right[k];
        right[i] /= m[i][i];
    }
    return right;
}
}  // namespace

double pull(const SiteView& view, SiteSort sort, bool prime, const ChoiceWeights& weights) {
    return std::exp(std::clamp(dot(weights, terms_of(view, sort, prime)), -utility_limit, utility_limit));
}

double rival_pull(std::span<const SiteView> natural, bool prime, const ChoiceWeights& weights) {
    double sum = 1;
    for (const SiteView& view : natural) sum += pull(view, SiteSort::natural, prime, weights);
    return sum;
}

ChoiceFit fit_choice(const HuntData& data, std::span<const std::uint32_t> use) {
    ChoiceFit fit;
    Slope here = slope_at(data, use, fit.weights);
    for (; fit.steps < most_steps; ++fit.steps) {
        if (dot(here.gradient, here.gradient) < slope_tolerance * slope_tolerance) {
            fit.converged = true;
            break;
        }
        const ChoiceWeights step = newton_step(here.information, here.gradient);
        if (dot(step, here.gradient) < slope_tolerance * slope_tolerance) {
            fit.converged = true;
            break;
        }
        double length = 1;
        Slope there;
        ChoiceWeights trial{};
        int halvings = 0;
        for (; halvings < most_halvings; ++halvings, length /= 2) {
            for (std::size_t i = 0; i < choice_terms; ++i) trial[i] = fit.weights[i] + length * step[i];
            there = slope_at(data, use, trial);
            if (there.log_likelihood >= here.log_likelihood) break;
        }
        if (halvings == most_halvings) {
            fit.converged = true;  // no step of any length climbs: the top, to rounding
            break;
        }
        fit.weights = trial;
        here = there;
    }
    fit.log_likelihood = here.log_likelihood;
    return fit;
}

ChoiceError choice_error(std::span<const RepeatedHunt> checks, const ChoiceWeights& weights) {
    ChoiceError error;
    double n = 0;
    double squares = 0;
    double noise = 0;
    double sum_seen = 0;
    double sum_seen_squared = 0;
    for (const RepeatedHunt& check : checks) {
        if (check.times < 2) continue;
        error.hunts += check.times;
        const double times = check.times;
        std::vector<double> pulls;
        double total = 1;
        for (std::size_t s = 0; s < check.sites.size(); ++s) {
            pulls.push_back(
                pull(check.sites[s], s < check.first_trap ? SiteSort::natural : SiteSort::trap, check.prime, weights));
            total += pulls.back();
        }
        for (std::size_t s = 0; s < pulls.size(); ++s) {
            const double foretold = pulls[s] / total;
            const double seen = check.moved[s] / times;
            n += 1;
            squares += (seen - foretold) * (seen - foretold);
            noise += seen * (1 - seen) / (times - 1);
            sum_seen += seen;
            sum_seen_squared += seen * seen;
            if (s >= check.first_trap) {
                error.traps_foretold += foretold * times;
                error.traps_seen += check.moved[s];
            }
        }
    }
    if (n < 1) return error;
    error.traps_foretold /= static_cast<double>(error.hunts);
    error.traps_seen /= static_cast<double>(error.hunts);
    const double model_squares = std::max(0.0, squares - noise);
    error.rms = std::sqrt(model_squares / n);
    const double true_squares = sum_seen_squared - sum_seen * sum_seen / n - noise;
    error.r_squared = true_squares > 0 ? 1 - model_squares / true_squares : 0;
    return error;
}

}  // namespace maybough::planner
