// Fits the coefficients of the cavity score to published choice counts: conditional logit with normal priors.
// Usage: fit_traps <trials.csv> <priors.csv>. Prints coefficients with standard errors, and fitted against observed.
// Exit code 1 where the model's defaults are not the fitted values, rounded to two places.
#include <array>
#include <boost/math/distributions/beta.hpp>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "scouts/scouts.hpp"

namespace {

using namespace maybough;

constexpr std::size_t coefficients = 7;
constexpr std::array<double ScoutParameters::*, coefficients> member{
    &ScoutParameters::volume_coefficient, &ScoutParameters::entrance_coefficient, &ScoutParameters::height_log_odds,
    &ScoutParameters::facing_log_odds,    &ScoutParameters::comb_log_odds,        &ScoutParameters::lure_log_odds,
    &ScoutParameters::shade_log_odds};
using Vector = std::array<double, coefficients>;
using Matrix = std::array<Vector, coefficients>;

struct Prior {
    std::string name;
    double mean = 0;
    double sd = 1;
};

/// Boxes of one trial that were counted together.
struct Group {
    std::string name;
    std::vector<std::pair<Cavity, int>> boxes;  ///< kind of box and how many of it
    int chosen = 0;
};

struct Trial {
    std::string name;
    std::string source;
    bool fitted = true;
    std::vector<Group> groups;
    int total() const {
        int sum = 0;
        for (const Group& group : groups) sum += group.chosen;
        return sum;
    }
};

std::vector<std::vector<std::string>> read_rows(const std::string& path) {
    std::ifstream file(path);
    if (!file) throw InputError(path, "cannot be read");
    std::vector<std::vector<std::string>> rows;
    bool header = true;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line[0] == '#') continue;
        if (std::exchange(header, false)) continue;
        std::vector<std::string> cells;
        std::istringstream text(line);
        for (std::string cell; std::getline(text, cell, ',');) cells.push_back(cell);
        rows.push_back(cells);
    }
    return rows;
}

std::vector<Trial> read_trials(const std::string& path) {
    std::vector<Trial> trials;
    for (const auto& row : read_rows(path)) {
        if (row.size() < 13) throw InputError(path, "a line has fewer than 13 columns", "see the header line");
        if (trials.empty() || trials.back().name != row[0]) trials.push_back({row[0], row[12], row[11] == "fit", {}});
        std::vector<Group>& groups = trials.back().groups;
        if (groups.empty() || groups.back().name != row[1]) groups.push_back({row[1], {}, 0});
        Cavity box;
        box.volume_l = std::stod(row[3]);
        box.entrance_area_cm2 = std::stod(row[4]);
        box.height_m = std::stod(row[5]);
        box.facing_deg = std::stod(row[6]);
        box.comb = std::stod(row[7]);
        box.lure = std::stod(row[8]);
        box.shade = std::stod(row[9]);
        groups.back().boxes.emplace_back(box, std::stoi(row[2]));
        groups.back().chosen += std::stoi(row[10]);
    }
    return trials;
}

std::vector<Prior> read_priors(const std::string& path) {
    std::vector<Prior> priors;
    for (const auto& row : read_rows(path)) priors.push_back({row.at(0), std::stod(row.at(1)), std::stod(row.at(2))});
    if (priors.size() != coefficients) throw InputError(path, "expected one line for each of the seven coefficients");
    return priors;
}

/// Shares of the trial's groups under the score. Choice counts mix finding and judging, so the whole lure is in them.
std::vector<double> shares(const Trial& trial, const Vector& values) {
    ScoutParameters p;
    p.lure_finding_share = 0;
    for (std::size_t i = 0; i < coefficients; ++i) p.*member[i] = values[i];
    std::vector<double> share;
    double sum = 0;
    for (const Group& group : trial.groups) {
        double weight = 0;
        for (const auto& [box, count] : group.boxes) weight += count * std::exp(site_log_odds(box, p));
        share.push_back(weight);
        sum += weight;
    }
    for (double& s : share) s /= sum;
    return share;
}

/// Minus the log of posterior density, up to a constant.
double loss(const std::vector<Trial>& trials, const std::vector<Prior>& priors, const Vector& values) {
    double sum = 0;
    for (const Trial& trial : trials) {
        if (!trial.fitted) continue;
        const std::vector<double> share = shares(trial, values);
        for (std::size_t g = 0; g < share.size(); ++g) sum -= trial.groups[g].chosen * std::log(share[g]);
    }
    for (std::size_t i = 0; i < coefficients; ++i) {
        const double z = (values[i] - priors[i].mean) / priors[i].sd;
        sum += 0.5 * z * z;
    }
    return sum;
}

struct Slope {
    Vector gradient{};
    Matrix hessian{};
};

/// Central differences: the loss is smooth and cheap, and seven coefficients are few.
Slope slope_at(const std::vector<Trial>& trials, const std::vector<Prior>& priors, const Vector& at) {
    constexpr double h = 1e-4;
    const auto shifted = [&](std::size_t i, double di, std::size_t j, double dj) {
        Vector v = at;
        v[i] += di;
        v[j] += dj;
        return loss(trials, priors, v);
    };
    Slope slope;
    for (std::size_t i = 0; i < coefficients; ++i) {
        slope.gradient[i] = (shifted(i, h, i, 0) - shifted(i, -h, i, 0)) / (2 * h);
        for (std::size_t j = 0; j < coefficients; ++j) {
            slope.hessian[i][j] =
                (shifted(i, h, j, h) - shifted(i, h, j, -h) - shifted(i, -h, j, h) + shifted(i, -h, j, -h)) /
                (4 * h * h);
        }
    }
    return slope;
}

/// Inverse of a positive definite matrix by Gauss-Jordan elimination.
Matrix inverse(Matrix m) {
    Matrix out{};
    for (std::size_t i = 0; i < coefficients; ++i) out[i][i] = 1;
    for (std::size_t i = 0; i < coefficients; ++i) {
        const double pivot = m[i][i];
        if (!(pivot > 1e-12)) throw ModelFault("the Hessian of the fit is not positive definite");
        for (std::size_t j = 0; j < coefficients; ++j) {
            m[i][j] /= pivot;
            out[i][j] /= pivot;
        }
        for (std::size_t k = 0; k < coefficients; ++k) {
            if (k == i) continue;
            const double factor = m[k][i];
            for (std::size_t j = 0; j < coefficients; ++j) {
                m[k][j] -= factor * m[i][j];
                out[k][j] -= factor * out[i][j];
            }
        }
    }
    return out;
}

/// Newton steps from the prior means; returns the mode and leaves the inverse Hessian in `covariance`.
Vector fit(const std::vector<Trial>& trials, const std::vector<Prior>& priors, Matrix& covariance) {
    Vector values{};
    for (std::size_t i = 0; i < coefficients; ++i) values[i] = priors[i].mean;
    for (int step = 0; step < 50; ++step) {
        const Slope slope = slope_at(trials, priors, values);
        covariance = inverse(slope.hessian);
        double moved = 0;
        for (std::size_t i = 0; i < coefficients; ++i) {
            double move = 0;
            for (std::size_t j = 0; j < coefficients; ++j) move -= covariance[i][j] * slope.gradient[j];
            values[i] += move;
            moved += std::abs(move);
        }
        if (moved < 1e-7) return values;
    }
    throw ModelFault("the fit did not settle in 50 Newton steps");
}

/// Exact (Clopper-Pearson) 95 % limits of a share.
std::pair<double, double> exact_limits(int chosen, int total) {
    using boost::math::beta_distribution;
    const double low = chosen == 0 ? 0 : quantile(beta_distribution<>(chosen, total - chosen + 1), 0.025);
    const double high = chosen == total ? 1 : quantile(beta_distribution<>(chosen + 1, total - chosen), 0.975);
    return {low, high};
}

void print(const std::vector<Trial>& trials, const std::vector<Prior>& priors, const Vector& values,
           const Matrix& covariance) {
    std::printf("%-22s %8s %8s %8s %8s %8s %8s\n", "coefficient", "fitted", "s.e.", "5 %", "95 %", "prior", "default");
    for (std::size_t i = 0; i < coefficients; ++i) {
        const double se = std::sqrt(covariance[i][i]);
        std::printf("%-22s %8.3f %8.3f %8.3f %8.3f %8.2f %8.2f\n", priors[i].name.c_str(), values[i], se,
                    values[i] - 1.645 * se, values[i] + 1.645 * se, priors[i].mean, ScoutParameters{}.*member[i]);
    }
    std::printf("\n%-34s %-8s %8s %8s %16s %8s  %s\n", "trial", "took", "count", "observed", "95 % limits", "fitted",
                "source");
    for (const Trial& trial : trials) {
        const double share = shares(trial, values)[0];
        const int chosen = trial.groups[0].chosen;
        const auto [low, high] = exact_limits(chosen, trial.total());
        std::printf("%-34s %-8s %3d of %2d %7.2f    %5.2f to %5.2f %8.2f  %s%s%s\n", trial.name.c_str(),
                    trial.groups[0].name.c_str(), chosen, trial.total(), static_cast<double>(chosen) / trial.total(),
                    low, high, share, trial.source.c_str(), trial.fitted ? "" : " (not in the fit)",
                    share < low || share > high ? " OUTSIDE" : "");
    }
}

/// Whether the declared defaults are the fitted values, rounded to two places.
bool defaults_are(const Vector& values) {
    bool same = true;
    for (std::size_t i = 0; i < coefficients; ++i) same &= std::abs(ScoutParameters{}.*member[i] - values[i]) < 0.0051;
    if (!same) std::printf("\nThe defaults in sim/parameters/scouts.hpp are not the fitted values.\n");
    return same;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::cerr << "usage: fit_traps <trials.csv> <priors.csv>\n";
        return 2;
    }
    try {
        const std::vector<Trial> trials = read_trials(argv[1]);
        const std::vector<Prior> priors = read_priors(argv[2]);
        Matrix covariance{};
        const Vector values = fit(trials, priors, covariance);
        print(trials, priors, values, covariance);
        return defaults_are(values) ? 0 : 1;
    } catch (const std::exception& error) {
        std::cerr << "fit_traps: " << error.what() << '\n';
        return 2;
    }
}
