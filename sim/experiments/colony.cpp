// The colony experiments, in the order of MODEL.md.
#include "experiments/colony_themes.hpp"

namespace maybough::experiments {

std::vector<Experiment> colony_experiments() {
    std::vector<Experiment> all;
    for (auto some : {development_experiments(), limit_experiments(), founding_experiments(), timetable_experiments(),
                      season_experiments(), hive_experiments()}) {
        all.insert(all.end(), some.begin(), some.end());
    }
    return all;
}

}  // namespace maybough::experiments
