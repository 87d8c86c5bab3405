// What this machine can run at once, and what a season is called where it fails.
#include <algorithm>
#include <string>
#include <thread>

#include "ensemble/ensemble.hpp"

namespace maybough::ensemble {

unsigned machine_threads() {
    return std::max(1U, std::thread::hardware_concurrency());
}

FaultName season_of(std::uint32_t seed) {
    return [seed](std::uint32_t index) {
        const std::string season = std::to_string(index + 1);
        return "seed " + std::to_string(seed) + ", season " + season + " (maybough replay SCENARIO --seed " +
               std::to_string(seed) + " --season " + season + ")";
    };
}

}  // namespace maybough::ensemble
