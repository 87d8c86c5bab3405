// The weather experiments, in the order of MODEL.md: generator, sun and light, hours of flight, degree-days.
#include "experiments/weather.hpp"

namespace maybough::experiments {

std::vector<Experiment> weather_experiments() {
    return {
        {"weather-memory", "weather", "what one day hands on to the next, from the published correlations",
         memory_of_days},
        {"weather-given-back", "weather", "200 years generated from known parameters and fitted again", given_back},
        {"sun-and-light", "weather", "the handbook's worked examples and an ephemeris", sun_and_light},
        {"flight-weather", "weather", "hours of foraging and of leaving on fair days", flight_weather},
        {"degree-days", "weather", "documented examples of single-sine degree-days", degree_days},
    };
}

}  // namespace maybough::experiments
