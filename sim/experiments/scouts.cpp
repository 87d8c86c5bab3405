// The scout experiments, in the order of MODEL.md.
#include "experiments/scouts_setup.hpp"

namespace maybough::experiments {

std::vector<Experiment> scout_experiments() {
    std::vector<Experiment> all;
    for (auto topic : {watched_hunts(), far_searching_hunts(), box_trials(), quorum_trials(), dance_rule_models(),
                       trap_programmes()}) {
        all.insert(all.end(), topic.begin(), topic.end());
    }
    return all;
}

}  // namespace maybough::experiments
