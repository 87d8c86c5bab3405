// What happens to a hanging cluster apart from its own choice: somebody may hive it.
#include "swarm/swarm.hpp"

namespace maybough::swarm {

ClusterFate cluster_fate(const Swarm& swarm, const SwarmParameters& parameters, const Chance& chance) {
    Stream luck = chance.stream(Purpose::swarm_hived, swarm.id);
    const double p = swarm.origin == ColonyOrigin::managed ? parameters.hived_managed : parameters.hived_wild;
    ClusterFate fate;
    fate.hived_by_someone = bernoulli(luck, p);
    fate.hived_after_h = lognormal(luck, parameters.hived_after_median_h, parameters.hived_after_sd_ln);
    return fate;
}

}  // namespace maybough::swarm
