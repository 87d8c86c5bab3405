// Cautions shown wherever traps are hung.
#include "report/report.hpp"

namespace maybough::report {

std::vector<std::string> cautions() {
    return {
        "Ladders: most harm in this work comes from falls. Go no higher than you can safely work with both hands, have "
        "someone foot the ladder, and lower a full trap on a rope: with bees and comb it may weigh 20 kg (45 lb).",
        "Stings and allergy: wear veil and gloves, close the entrance before moving a trap, carry a phone. Whoever has "
        "had a severe reaction should not do this alone or at all.",
        "Defensive bees: a trapped colony with comb defends it. Where strongly defensive bees live, move nothing by "
        "day, keep people and animals away, and call someone who is trained for them.",
        "Disease: swarms bring mites and may bring brood disease. Keep a caught colony apart, look at its brood before "
        "it joins others, treat for mites early, never bait with old comb from a colony of unknown health, and report "
        "notifiable disease.",
        "Buildings and wires: hang nothing on a chimney, power line, street light or weak roof. A colony already "
        "living in a wall is no work for a trap: do not cut into a building, leave that to qualified people.",
        "Law and leave: ask the owner of each tree or wall in writing, mark traps with a name and a telephone number, "
        "and look up your rules for keeping, moving and registering bees, and for parks and reserves.",
        "Other animals: birds, bats, wasps and squirrels move in too. Leave a nesting bird or a roosting bat in peace.",
        "This is a simulation. It tells odds, not what will happen; a few traps in one year may all stay empty.",
    };
}

}  // namespace maybough::report
