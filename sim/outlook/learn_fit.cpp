// The law of catches given the unknowns, fitted to simulated seasons.
#include <algorithm>
#include <cmath>

#include "outlook/learn.hpp"

namespace maybough::outlook {

namespace {
/// A symmetric positive system, solved by Cholesky's decomposition; the inverse's diagonal serves for errors.
class System {
  public:
    explicit System(std::size_t size) : size_(size), left_(size * size), right(size) {}
    double& at(std::size_t i, std::size_t j) { return left_[i * size_ + j]; }

    void decompose() {
        for (std::size_t j = 0; j < size_; ++j) {
            double pivot = at(j, j);
            for (std::size_t k = 0; k < j; ++k) pivot -= at(j, k) * at(j, k);
            if (!(pivot > 0)) throw ModelFault("the regression of catches on the unknowns is singular");
            at(j, j) = std::sqrt(pivot);
            for (std::size_t i = j + 1; i < size_; ++i) {
                double rest = at(i, j);
                for (std::size_t k = 0; k < j; ++k) rest -= at(i, k) * at(j, k);
                at(i, j) = rest / at(j, j);
            }
        }
    }

    std::vector<double> solve(std::vector<double> x) {
        for (std::size_t i = 0; i < size_; ++i) {
            for (std::size_t k = 0; k < i; ++k) x[i] -= at(i, k) * x[k];
            x[i] /= at(i, i);
        }
        for (std::size_t i = size_; i-- > 0;) {
            for (std::size_t k = i + 1; k < size_; ++k) x[i] -= at(k, i) * x[k];
            x[i] /= at(i, i);
        }
        return x;
    }

  private:
    std::size_t size_;
    std::vector<double> left_;

  public:
    std::vector<double> right;
};

/// Where the coefficients lie in the system: levels by cell, common effects, effects by place.
struct Layout {
    std::size_t cells;
    std::size_t unknowns;
    std::size_t places;
    std::size_t size() const { return cells + unknowns * (1 + places); }
    std::size_t common(std::size_t k) const { return cells + k; }
    std::size_t own(std::size_t place, std::size_t k) const { return cells + unknowns * (1 + place) + k; }
};

/// Normal priors: means and precisions. Levels are drawn towards the mean of all, weakly.
struct Prior {
    std::vector<double> mean;
    std::vector<double> precision;
};

Prior prior_of(const CatchTable& table, const Layout& layout, double dispersion, const OutlookParameters& p) {
    double caught = 0.5;
    for (const auto& row : table.counts) {
        for (const int count : row) caught += count;
    }
    const double cells = static_cast<double>(table.counts.size() * table.cells.size());
    Prior prior{std::vector<double>(layout.size(), 0), std::vector<double>(layout.size(), 0)};
    for (std::size_t c = 0; c < layout.cells; ++c) {
        prior.mean[c] = std::log(caught / cells);
        prior.precision[c] = dispersion;
    }
    for (std::size_t k = 0; k < layout.unknowns; ++k) {
        prior.precision[layout.common(k)] = dispersion / (p.effect_sd_ln * p.effect_sd_ln);
        for (std::size_t place = 0; place < layout.places; ++place) {
            prior.precision[layout.own(place, k)] = dispersion / (p.trap_effect_sd_ln * p.trap_effect_sd_ln);
        }
    }
    return prior;
}

double linear(const std::vector<double>& x, const Layout& layout, const CatchCell& cell, std::size_t c,
              const std::vector<double>& scores) {
    double sum = x[c];
    for (std::size_t k = 0; k < layout.unknowns; ++k) {
        sum += (x[layout.common(k)] + x[layout.own(cell.place, k)]) * scores[k];
    }
    return std::min(sum, 5.0);
}

/// Newton's equations at `x`: second derivatives of minus the penalised log likelihood, and its gradient.
System equations(const CatchTable& table, const Layout& layout, const Prior& prior, const std::vector<double>& x) {
    System system(layout.size());
    for (std::size_t i = 0; i < layout.size(); ++i) {
        system.at(i, i) = prior.precision[i];
        system.right[i] = prior.precision[i] * (prior.mean[i] - x[i]);
    }
    std::vector<std::size_t> index(1 + 2 * layout.unknowns);
    std::vector<double> value(index.size(), 1);
    for (std::size_t row = 0; row < table.counts.size(); ++row) {
        for (std::size_t k = 0; k < layout.unknowns; ++k) {
            value[1 + k] = value[1 + layout.unknowns + k] = table.scores[row][k];
        }
        for (std::size_t c = 0; c < layout.cells; ++c) {
            const CatchCell& cell = table.cells[c];
            index[0] = c;
            for (std::size_t k = 0; k < layout.unknowns; ++k) {
                index[1 + k] = layout.common(k);
                index[1 + layout.unknowns + k] = layout.own(cell.place, k);
            }
            const double mean = std::exp(linear(x, layout, cell, c, table.scores[row]));
            const double miss = table.counts[row][c] - mean;
            for (std::size_t i = 0; i < index.size(); ++i) {
                system.right[index[i]] += value[i] * miss;
                // Indices rise, so that the lower half alone is filled: all that the decomposition reads.
                for (std::size_t j = 0; j <= i; ++j) system.at(index[i], index[j]) += mean * value[i] * value[j];
            }
        }
    }
    return system;
}

struct Solution {
    std::vector<double> x;
    std::vector<double> variance;  ///< of the common effects
};

Solution solve(const CatchTable& table, const Layout& layout, const Prior& prior, double dispersion) {
    Solution solution{prior.mean, {}};
    constexpr int most_rounds = 50;
    constexpr double settled = 1e-9;
    constexpr double longest_step = 1;
    for (int round = 0; round < most_rounds; ++round) {
        System system = equations(table, layout, prior, solution.x);
        system.decompose();
        const std::vector<double> step = system.solve(system.right);
        double longest = 0;
        for (const double part : step) longest = std::max(longest, std::abs(part));
        const double scale = longest > longest_step ? longest_step / longest : 1;
        for (std::size_t i = 0; i < step.size(); ++i) solution.x[i] += scale * step[i];
        if (longest < settled || round + 1 == most_rounds) {
            for (std::size_t k = 0; k < layout.unknowns; ++k) {
                std::vector<double> unit(layout.size(), 0);
                unit[layout.common(k)] = 1;
                solution.variance.push_back(system.solve(unit)[layout.common(k)] * dispersion);
            }
            break;
        }
    }
    return solution;
}

/// Variances of luck by moments: cells of one season share the area's; what a cell varies beyond that is its place's.
struct Luck {
    double area = 0;
    double place = 0;
    double dispersion = 1;  ///< of a season's total against a Poisson law
};
Luck luck_of(const CatchTable& table, const CatchLaw& law) {
    double own = 0;
    double own_weight = 0;
    double across = 0;
    double across_weight = 0;
    double total = 0;
    double totals = 0;
    std::size_t seasons = 0;
    for (const CatchCell& cell : table.cells) seasons = std::max(seasons, cell.season + 1);
    for (std::size_t row = 0; row < table.counts.size(); ++row) {
        const std::vector<double> mean = law.expected(table.scores[row]);
        std::vector<double> miss(seasons, 0);
        std::vector<double> miss_squares(seasons, 0);
        std::vector<double> means(seasons, 0);
        std::vector<double> mean_squares(seasons, 0);
        for (std::size_t c = 0; c < mean.size(); ++c) {
            const std::size_t season = table.cells[c].season;
            const double difference = table.counts[row][c] - mean[c];
            own += difference * difference - table.counts[row][c];
            own_weight += mean[c] * mean[c];
            miss[season] += difference;
            miss_squares[season] += difference * difference;
            means[season] += mean[c];
            mean_squares[season] += mean[c] * mean[c];
        }
        for (std::size_t season = 0; season < seasons; ++season) {
            across += miss[season] * miss[season] - miss_squares[season];
            across_weight += means[season] * means[season] - mean_squares[season];
            total += miss[season] * miss[season];
            totals += means[season];
        }
    }
    Luck luck;
    luck.area = across_weight > 0 ? std::max(0.0, across / across_weight) : 0;
    const double both = own_weight > 0 ? std::max(0.0, own / own_weight) : 0;
    luck.place = std::max(0.0, (1 + both) / (1 + luck.area) - 1);
    luck.dispersion = totals > 0 ? std::max(1.0, total / totals) : 1;
    return luck;
}

CatchLaw law_of(const CatchTable& table, const Layout& layout, const Solution& solution) {
    CatchLaw law;
    law.cells = table.cells;
    law.places = table.places;
    law.level.assign(solution.x.begin(), solution.x.begin() + static_cast<std::ptrdiff_t>(layout.cells));
    for (std::size_t k = 0; k < layout.unknowns; ++k) {
        law.effect.push_back(solution.x[layout.common(k)]);
        law.effect_se.push_back(std::sqrt(solution.variance[k]));
    }
    for (std::size_t place = 0; place < layout.places; ++place) {
        law.place_effect.emplace_back();
        for (std::size_t k = 0; k < layout.unknowns; ++k) {
            law.place_effect.back().push_back(solution.x[layout.own(place, k)]);
        }
    }
    return law;
}
}  // namespace

std::vector<double> CatchLaw::expected(const std::vector<double>& scores) const {
    std::vector<double> means;
    means.reserve(cells.size());
    for (std::size_t c = 0; c < cells.size(); ++c) {
        double sum = level[c];
        const std::vector<double>& own = place_effect[cells[c].place];
        for (std::size_t k = 0; k < scores.size(); ++k) sum += (effect[k] + own[k]) * scores[k];
        means.push_back(std::exp(std::min(sum, 5.0)));
    }
    return means;
}

CatchLaw fit_catches(const CatchTable& table, const OutlookParameters& parameters) {
    if (table.counts.empty() || table.cells.empty()) throw ModelFault("no catches were simulated to learn from");
    const Layout layout{table.cells.size(), table.scores.front().size(), table.places};
    // The first round takes counts for Poisson; later ones give the data less weight where seasons vary beyond that.
    double dispersion = 1;
    CatchLaw law;
    constexpr int rounds = 3;
    for (int round = 0; round < rounds; ++round) {
        law = law_of(table, layout, solve(table, layout, prior_of(table, layout, dispersion, parameters), dispersion));
        const Luck luck = luck_of(table, law);
        law.area_variance = luck.area;
        law.place_variance = luck.place;
        dispersion = luck.dispersion;
    }
    return law;
}

}  // namespace maybough::outlook
