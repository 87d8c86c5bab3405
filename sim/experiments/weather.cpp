// The weather experiments, in the order of MODEL.md, and generated weather against a record.
#include "experiments/experiments.hpp"

namespace maybough {

std::vector<Experiment> weather_experiments() {
    return {};
}

Experiment record_experiment(const WeatherRecord& record, double latitude_deg, const std::string& record_name) {
    static_cast<void>(latitude_deg);
    static_cast<void>(record_name);
    return {"record", "weather", "generated weather against the record it was fitted to",
            [record](const Parameters&, std::uint32_t) { return std::vector<Finding>{}; }};
}

}  // namespace maybough
