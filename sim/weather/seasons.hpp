// The yearly cycle shared by fit and generator: phases of the day of year, and 2 x 2 algebra of the residuals.
#pragma once

#include <algorithm>
#include <array>

#include "weather/weather.hpp"

namespace maybough::weather {

/// Constant, and cosine and sine of the first two yearly harmonics at one day of year.
struct Phase {
    std::array<double, 2> cosine{};
    std::array<double, 2> sine{};
};

/// The phase of each day of year, 0 (unused) to 366.
const std::array<Phase, 367>& phases();

inline double at_phase(const Harmonic& h, const Phase& phase) {
    return h.mean + h.cosine[0] * phase.cosine[0] + h.sine[0] * phase.sine[0] + h.cosine[1] * phase.cosine[1] +
           h.sine[1] * phase.sine[1];
}

/// Least spread and wind: harmonics fitted to few days may dip too low.
inline constexpr double least_sd_c = 0.3;
inline constexpr double least_wind_ms = 0.2;

inline double tmax_sd(const Climate& climate, bool wet, const Phase& phase) {
    return std::max(least_sd_c, at_phase(climate.tmax_sd_c[wet ? 1 : 0], phase));
}
inline double tmin_sd(const Climate& climate, const Phase& phase) {
    return std::max(least_sd_c, at_phase(climate.tmin_sd_c, phase));
}
inline double mean_wind(const Climate& climate, const Phase& phase) {
    return std::max(least_wind_ms, at_phase(climate.wind_mean_ms, phase));
}

/// A 2 x 2 matrix, row by row: (tmax, tmin).
using Matrix = std::array<double, 4>;

/// A = M1 M0^-1 and lower-triangular B with B B' = M0 - M1 M0^-1 M1', from the same-day and day-before correlation
/// matrices of the residuals (Richardson 1981, eqs. 6 and 7; Matalas 1967).
struct ResidualLaw {
    Matrix a{};
    Matrix b{};
};
ResidualLaw residual_law(const Matrix& m0, const Matrix& m1);

/// Stationary covariance of chi_t = A chi_{t-1} + B epsilon_t.
Matrix stationary_covariance(const Matrix& a, const Matrix& b);

/// Lower-triangular root of a positive 2 x 2 matrix.
Matrix lower_root(const Matrix& m);

/// Wind of the day from its standard normal score and back: the cube-root normal form of the gamma law (Wilson and
/// Hilferty 1931).
double wind_from_score(double score, double shape, double mean_ms);
double score_of_wind(double wind_ms, double shape, double mean_ms);

/// Gamma shape by Thom (1958) from the mean and the mean logarithm, kept within 0.2 and 50.
double gamma_shape(double mean, double mean_ln);

}  // namespace maybough::weather
