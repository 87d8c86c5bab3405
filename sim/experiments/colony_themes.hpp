// Private to experiments/: the colony experiments of each file.
#pragma once

#include "experiments/experiments.hpp"

namespace maybough::experiments {

std::vector<Experiment> development_experiments();
std::vector<Experiment> limit_experiments();
std::vector<Experiment> timetable_experiments();
std::vector<Experiment> season_experiments();
std::vector<Experiment> hive_experiments();
std::vector<Experiment> founding_experiments();

}  // namespace maybough::experiments
