// The scout experiments, in the order of MODEL.md.
#include "experiments/experiments.hpp"

namespace maybough {

std::vector<Experiment> scout_experiments() {
    return {};
}

}  // namespace maybough
