// The colony experiments, in the order of MODEL.md.
#include "experiments/experiments.hpp"

namespace maybough {

std::vector<Experiment> colony_experiments() {
    return {};
}

}  // namespace maybough
