// Sobol indices by the pick-freeze estimators of Saltelli and of Jansen.
#include "planner/sobol.hpp"

namespace maybough::planner {

SobolIndices sobol_indices(const std::function<double(std::span<const double>)>& f, std::size_t inputs, std::uint32_t n,
                           Stream luck) {
    SobolIndices indices;
    indices.first.assign(inputs, 0);
    indices.total.assign(inputs, 0);
    if (n == 0) return indices;
    double sum = 0;
    double squares = 0;
    std::vector<double> a(inputs);
    std::vector<double> b(inputs);
    for (std::uint32_t i = 0; i < n; ++i) {
        for (double& x : a) x = luck.uniform();
        for (double& x : b) x = luck.uniform();
        const double at_a = f(a);
        const double at_b = f(b);
        sum += at_a + at_b;
        squares += at_a * at_a + at_b * at_b;
        for (std::size_t d = 0; d < inputs; ++d) {
            const double own = a[d];
            a[d] = b[d];
            const double mixed = f(a);
            a[d] = own;
            indices.first[d] += at_b * (mixed - at_a) / n;
            indices.total[d] += (at_a - mixed) * (at_a - mixed) / (2.0 * n);
        }
    }
    const double mean = sum / (2.0 * n);
    indices.variance = squares / (2.0 * n) - mean * mean;
    for (std::size_t d = 0; d < inputs; ++d) {
        indices.first[d] = indices.variance > 0 ? indices.first[d] / indices.variance : 0;
        indices.total[d] = indices.variance > 0 ? indices.total[d] / indices.variance : 0;
    }
    return indices;
}

}  // namespace maybough::planner
