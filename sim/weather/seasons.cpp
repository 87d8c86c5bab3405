// The yearly cycle, the residuals' 2 x 2 algebra, and gamma laws in normal form.
#include "weather/seasons.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace maybough::weather {

const std::array<Phase, 367>& phases() {
    static const std::array<Phase, 367> table = [] {
        std::array<Phase, 367> made;
        for (std::size_t day = 0; day < made.size(); ++day) {
            const double angle = 2 * std::numbers::pi * static_cast<double>(day) / 365.25;
            made[day] = {{std::cos(angle), std::cos(2 * angle)}, {std::sin(angle), std::sin(2 * angle)}};
        }
        return made;
    }();
    return table;
}

double Harmonic::at(int day_of_year) const {
    return at_phase(*this, phases()[static_cast<std::size_t>(std::clamp(day_of_year, 1, 366))]);
}

namespace {
Matrix times(const Matrix& x, const Matrix& y) {
    return {x[0] * y[0] + x[1] * y[2], x[0] * y[1] + x[1] * y[3], x[2] * y[0] + x[3] * y[2], x[2] * y[1] + x[3] * y[3]};
}
Matrix transposed(const Matrix& x) {
    return {x[0], x[2], x[1], x[3]};
}
Matrix inverse(const Matrix& x) {
    const double determinant = x[0] * x[3] - x[1] * x[2];
    return {x[3] / determinant, -x[1] / determinant, -x[2] / determinant, x[0] / determinant};
}
}  // namespace

Matrix lower_root(const Matrix& m) {
    // A hair above zero, so that nearly exact dependence in a short record cannot break the root.
    const double l00 = std::sqrt(std::max(m[0], 1e-9));
    const double l10 = m[2] / l00;
    return {l00, 0, l10, std::sqrt(std::max(m[3] - l10 * l10, 1e-9))};
}

ResidualLaw residual_law(const Matrix& m0, const Matrix& m1) {
    const Matrix a = times(m1, inverse(m0));
    const Matrix explained = times(a, transposed(m1));
    return {a, lower_root({m0[0] - explained[0], m0[1] - explained[1], m0[2] - explained[2], m0[3] - explained[3]})};
}

Matrix stationary_covariance(const Matrix& a, const Matrix& b) {
    const Matrix noise = times(b, transposed(b));
    Matrix covariance = noise;
    for (int step = 0; step < 60; ++step) {
        const Matrix carried = times(times(a, covariance), transposed(a));
        for (std::size_t i = 0; i < 4; ++i) covariance[i] = carried[i] + noise[i];
    }
    return covariance;
}

double wind_from_score(double score, double shape, double mean_ms) {
    const double root = 1 - 1 / (9 * shape) + score / (3 * std::sqrt(shape));
    return root <= 0 ? 0 : mean_ms * root * root * root;
}

double score_of_wind(double wind_ms, double shape, double mean_ms) {
    return 3 * std::sqrt(shape) * (std::cbrt(std::max(wind_ms, 0.0) / mean_ms) - 1 + 1 / (9 * shape));
}

double gamma_shape(double mean, double mean_ln) {
    const double a = std::log(mean) - mean_ln;
    if (!(a > 0)) return 50;
    return std::clamp((1 + std::sqrt(1 + 4 * a / 3)) / (4 * a), 0.2, 50.0);
}

}  // namespace maybough::weather
