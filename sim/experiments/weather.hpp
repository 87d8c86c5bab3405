// The weather experiments' runs, and how a finding with a plain tolerance is written. Private to the room.
#pragma once

#include <string>
#include <vector>

#include "experiments/experiments.hpp"

namespace maybough::experiments {

std::vector<Finding> memory_of_days(const Parameters& parameters, std::uint32_t seed);
std::vector<Finding> given_back(const Parameters& parameters, std::uint32_t seed);
std::vector<Finding> sun_and_light(const Parameters& parameters, std::uint32_t seed);
std::vector<Finding> flight_weather(const Parameters& parameters, std::uint32_t seed);
std::vector<Finding> degree_days(const Parameters& parameters, std::uint32_t seed);

/// A source and the interval its figures are taken with.
struct Origin {
    std::string source;
    std::string why_interval;
    Footing footing = Footing::independent;
};

/// An exact figure within `tolerance` of the published one, which is printed as `published`.
inline Finding within_range(const std::string& what, const std::string& unit, const std::string& published,
                            double value, double tolerance, double simulated, const Origin& origin) {
    Finding finding;
    finding.what = what;
    finding.unit = unit;
    finding.published = published;
    finding.simulated = simulated;
    finding.low = value - tolerance;
    finding.high = value + tolerance;
    finding.why_interval = origin.why_interval;
    finding.source = origin.source;
    finding.footing = origin.footing;
    return finding;
}

}  // namespace maybough::experiments
