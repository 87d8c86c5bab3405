// One draw of all that is not known, for a group of seasons: each unknown stratified over a block of beliefs.
#include <array>

#include "ensemble/ensemble.hpp"

namespace maybough::ensemble {

namespace {
/// Probability, in (0, 1), at which belief `index` takes the unknown `entity`.
double stratified_uniform(std::uint32_t seed, std::uint32_t index, std::uint32_t entity) {
    const std::uint32_t block = index / beliefs_per_block;
    const std::uint32_t place = index % beliefs_per_block;
    Stream shuffle = Chance{seed, block}.stream(Purpose::belief, entity, {-1}, 0);
    std::array<std::uint32_t, beliefs_per_block> stratum{};
    for (std::uint32_t i = 0; i < beliefs_per_block; ++i) stratum[i] = i;
    for (std::uint32_t i = beliefs_per_block - 1; i > 0; --i) {
        const auto other = static_cast<std::uint32_t>(shuffle.uniform() * (i + 1));
        std::swap(stratum[i], stratum[other]);
    }
    Stream within = Chance{seed, block}.stream(Purpose::belief, entity, {-1}, 1 + place);
    return (stratum[place] + within.uniform()) / beliefs_per_block;
}
}  // namespace

std::uint32_t belief_entity(std::string_view key) {
    std::uint32_t hash = 2166136261U;  // FNV-1a, 32 bits (Fowler, Noll and Vo)
    for (const char c : key) hash = (hash ^ static_cast<unsigned char>(c)) * 16777619U;
    return hash;
}

const Belief* drawn_belief(const Scenario& scenario, const ParameterEntry& entry, Belief& own) {
    const auto named = scenario.beliefs.find(std::string(entry.row.key));
    if (named != scenario.beliefs.end()) return &named->second;
    if (entry.row.spread == Spread::fixed) return nullptr;
    // A value the scenario sets is known to its user: it is not drawn unless a belief is given too.
    if (entry.get(scenario.parameters) != entry.row.value) return nullptr;
    own = belief_of(entry.row);
    return &own;
}

Parameters draw_beliefs(const Scenario& scenario, std::uint32_t seed, std::uint32_t replicate) {
    Parameters drawn = scenario.parameters;
    const std::uint32_t index = replicate / seasons_per_belief;
    for (const ParameterEntry& entry : parameter_table()) {
        Belief own;
        const Belief* belief = drawn_belief(scenario, entry, own);
        if (belief == nullptr) continue;
        const double u = stratified_uniform(seed, index, belief_entity(entry.row.key));
        entry.of(drawn) = belief_quantile(entry.row, *belief, u);
    }
    return drawn;
}

}  // namespace maybough::ensemble
