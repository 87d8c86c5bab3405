// When traps hang and come down, from the days on which swarms hung.
#include <algorithm>
#include <array>
#include <cmath>

#include "keeper/keeper.hpp"

namespace maybough::keeper {

namespace {
constexpr double first_share = 0.05;
constexpr std::array<double, 4> last_shares{0.97, 0.9, 0.8, 0.7};

int day_at_share(const std::vector<int>& sorted, double share) {
    return sorted[static_cast<std::size_t>(share * static_cast<double>(sorted.size() - 1))];
}
}  // namespace

Day hang_day(std::vector<int> swarm_days, const KeeperParameters& parameters) {
    if (swarm_days.empty()) return {0};
    std::sort(swarm_days.begin(), swarm_days.end());
    const int before = static_cast<int>(std::lround(parameters.hang_before_days));
    return {std::max(0, day_at_share(swarm_days, first_share) - before)};
}

std::vector<Day> take_down_days(std::vector<int> swarm_days, Day last, const KeeperParameters& parameters) {
    if (swarm_days.empty()) return {last};
    std::sort(swarm_days.begin(), swarm_days.end());
    const int after = static_cast<int>(std::lround(parameters.stay_after_days));
    std::vector<Day> days;
    for (const double share : last_shares) {
        days.push_back({std::min(last.value, day_at_share(swarm_days, share) + after)});
    }
    days.erase(std::unique(days.begin(), days.end()), days.end());
    return days;
}

}  // namespace maybough::keeper
