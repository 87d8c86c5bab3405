// The batch-means interval of the optimality gap.
#include "planner/gap.hpp"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

namespace maybough::planner {

Gap gap_of(const std::vector<double>& batch_gaps) {
    Gap gap;
    gap.batches = static_cast<int>(batch_gaps.size());
    if (batch_gaps.empty()) return gap;
    const auto m = static_cast<double>(batch_gaps.size());
    for (const double g : batch_gaps) gap.mean += g / m;
    gap.limit_95 = gap.mean;
    if (batch_gaps.size() < 2) return gap;
    double squares = 0;
    for (const double g : batch_gaps) squares += (g - gap.mean) * (g - gap.mean);
    const double one_sided = boost::math::quantile(boost::math::students_t(m - 1), 0.95);
    gap.limit_95 = std::max(0.0, gap.mean + one_sided * std::sqrt(squares / (m - 1) / m));
    return gap;
}

double batch_gap_found(const Demand& batch, const Limits& limits, const Chosen& chosen, int exactly) {
    const Found found = search(batch, limits, exactly);
    const Chosen best(found.order.begin(), found.order.begin() + static_cast<std::ptrdiff_t>(found.best));
    return std::max(0.0, net_of(batch, best) - net_of(batch, chosen));
}

double batch_gap(const Demand& batch, const Limits& limits, const Chosen& chosen, int count, const Chosen& start) {
    return std::max(0.0, upper_bound(batch, limits, count, start) - net_of(batch, chosen));
}

}  // namespace maybough::planner
