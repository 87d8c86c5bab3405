// What is counted in a year of weather, so that generated years can stand beside observed ones. Private to the room.
#pragma once

#include <string>
#include <vector>

#include "experiments/experiments.hpp"

namespace maybough::experiments {

/// What of a figure is compared between generated and observed years.
enum class Compared { mean, mean_and_spread };

/// One figure of one year; NaN where the year has nothing to count.
struct YearFigure {
    std::string what;
    std::string unit;
    double value = 0;
    Compared compared = Compared::mean;
};

/// What a record has besides temperatures.
struct RecordHas {
    bool rain = false;
    bool wind = false;
};

/// Figures of one whole simulated year, always the same ones in the same order for the same `has`.
std::vector<YearFigure> figures_of(const WeatherYear& year, double latitude_deg, const WeatherParameters& parameters,
                                   RecordHas has);

}  // namespace maybough::experiments
