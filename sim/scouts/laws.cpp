// Fills the tables of the exponential and the normal law.
#include "scouts/laws.hpp"

#include <cmath>
#include <numbers>

#include "chance/chance.hpp"

namespace maybough::scouts {

namespace {

/// Integral of -ln(s) from 0 to s.
double exponential_tail(double s) {
    return s > 0 ? s * (1 - std::log(s)) : 0;
}

double normal_density(double z) {
    return std::exp(-0.5 * z * z) / std::sqrt(2 * std::numbers::pi);
}

LawTables make_tables() {
    LawTables tables{};
    const double n = LawTables::exponential_steps;
    for (std::size_t i = 0; i < LawTables::exponential_steps; ++i) {
        const double below = static_cast<double>(i) / n;
        const double above = static_cast<double>(i + 1) / n;
        tables.exponential[i] = static_cast<float>(n * (exponential_tail(above) - exponential_tail(below)));
    }
    const double m = LawTables::normal_steps;
    double square_sum = 0;
    std::array<double, LawTables::normal_steps> normal{};
    for (std::size_t i = 0; i < LawTables::normal_steps; ++i) {
        const double below = i == 0 ? 0 : normal_density(normal_quantile(static_cast<double>(i) / m));
        const double above =
            i + 1 == LawTables::normal_steps ? 0 : normal_density(normal_quantile(static_cast<double>(i + 1) / m));
        normal[i] = m * (below - above);
        square_sum += normal[i] * normal[i];
    }
    const double sd = std::sqrt(square_sum / m);
    for (std::size_t i = 0; i < LawTables::normal_steps; ++i) tables.normal[i] = static_cast<float>(normal[i] / sd);
    return tables;
}

}  // namespace

const LawTables& law_tables() {
    static const LawTables tables = make_tables();
    return tables;
}

}  // namespace maybough::scouts
