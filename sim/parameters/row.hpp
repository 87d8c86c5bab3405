// What a parameter row says of itself, and the macro pair that makes a struct and its table from one list of rows.
#pragma once

#include <string_view>

namespace maybough::parameters {

/// How well a default is founded.
enum class Standing {
    published,    ///< read in the source
    from_memory,  ///< quoted from memory of the source
    derived,      ///< computed by us from published numbers
    practice,     ///< common practice, no published source
    assumed,      ///< our own assumption
    fitted,       ///< fitted by a program in tools/ to published counts
};

/// What is not known about a parameter: drawn once per belief, from a two-piece law whose 5 %, 50 % and 95 % quantiles
/// are low, default and high.
enum class Spread {
    fixed,     ///< not drawn
    additive,  ///< two-piece normal
    ratio,     ///< two-piece lognormal
};

/// One parameter. `key` is room.name; limits are what is accepted; low and high what is plausible.
struct ParameterRow {
    std::string_view key;
    std::string_view unit;
    double value;
    double min;
    double max;
    Spread spread;
    double low;
    double high;
    Standing standing;
    std::string_view source;
    std::string_view meaning;
};

std::string_view word(Standing standing);
std::string_view word(Spread spread);

}  // namespace maybough::parameters

// A room's list is a macro LIST(ROW) of ROW(name, unit, default, min, max, spread, low, high, standing, source,
// meaning): the default is accepted between min and max, and plausible between low and high. From the list come the
// members:
#define MAYBOUGH_MEMBER(name, unit, value, min, max, spread, low, high, standing, source, meaning) double name = value;

namespace maybough {
using namespace parameters;  // so that rooms to the right need no prefix
}
