// The table of all rows, look-up by key, nearest keys, and the table as Markdown.
#include "parameters/parameters.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <sstream>

#include "base/base.hpp"
#include "chance/chance.hpp"

namespace maybough::parameters {

std::string_view word(Standing standing) {
    switch (standing) {
        case Standing::published:
            return "published";
        case Standing::from_memory:
            return "from memory";
        case Standing::derived:
            return "derived";
        case Standing::practice:
            return "common practice";
        case Standing::assumed:
            return "assumed";
        case Standing::fitted:
            return "fitted";
    }
    return "";
}

std::string_view word(Spread spread) {
    switch (spread) {
        case Spread::fixed:
            return "fixed";
        case Spread::additive:
            return "additive";
        case Spread::ratio:
            return "ratio";
    }
    return "";
}

#define MAYBOUGH_ENTRY(room, name, unit, value, min, max, spread, low, high, standing, source, meaning)           \
    table.push_back(                                                                                              \
        {{room "." #name, unit, value, min, max, Spread::spread, low, high, Standing::standing, source, meaning}, \
         [](Parameters& p) -> double& { return p.MAYBOUGH_ROOM.name; }});
#define MAYBOUGH_ENTER(...) MAYBOUGH_ENTRY(MAYBOUGH_PREFIX, __VA_ARGS__)

const std::vector<ParameterEntry>& parameter_table() {
    static const std::vector<ParameterEntry> entries = [] {
        std::vector<ParameterEntry> table;
#define MAYBOUGH_ROOM weather
#define MAYBOUGH_PREFIX "weather"
        MAYBOUGH_WEATHER_ROWS(MAYBOUGH_ENTER)
#undef MAYBOUGH_ROOM
#undef MAYBOUGH_PREFIX
#define MAYBOUGH_ROOM landscape
#define MAYBOUGH_PREFIX "landscape"
        MAYBOUGH_LANDSCAPE_ROWS(MAYBOUGH_ENTER)
#undef MAYBOUGH_ROOM
#undef MAYBOUGH_PREFIX
#define MAYBOUGH_ROOM colony
#define MAYBOUGH_PREFIX "colony"
        MAYBOUGH_COLONY_ROWS(MAYBOUGH_ENTER)
#undef MAYBOUGH_ROOM
#undef MAYBOUGH_PREFIX
#define MAYBOUGH_ROOM swarm
#define MAYBOUGH_PREFIX "swarm"
        MAYBOUGH_SWARM_ROWS(MAYBOUGH_ENTER)
#undef MAYBOUGH_ROOM
#undef MAYBOUGH_PREFIX
#define MAYBOUGH_ROOM scouts
#define MAYBOUGH_PREFIX "scouts"
        MAYBOUGH_SCOUTS_ROWS(MAYBOUGH_ENTER)
#undef MAYBOUGH_ROOM
#undef MAYBOUGH_PREFIX
#define MAYBOUGH_ROOM keeper
#define MAYBOUGH_PREFIX "keeper"
        MAYBOUGH_KEEPER_ROWS(MAYBOUGH_ENTER)
#undef MAYBOUGH_ROOM
#undef MAYBOUGH_PREFIX
#define MAYBOUGH_ROOM outlook
#define MAYBOUGH_PREFIX "outlook"
        MAYBOUGH_OUTLOOK_ROWS(MAYBOUGH_ENTER)
#undef MAYBOUGH_ROOM
#undef MAYBOUGH_PREFIX
        return table;
    }();
    return entries;
}

const ParameterEntry* find_parameter(std::string_view key) {
    const auto& table = parameter_table();
    const auto found = std::find_if(table.begin(), table.end(), [&](const auto& e) { return e.row.key == key; });
    return found == table.end() ? nullptr : &*found;
}

namespace {
std::size_t edit_distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t substituted = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({substituted, row[j] + 1, row[j - 1] + 1});
        }
    }
    return row[b.size()];
}
}  // namespace

std::vector<std::string> nearest_keys(std::string_view key, const std::vector<std::string>& known) {
    std::vector<std::pair<std::size_t, std::string>> scored;
    for (const std::string& other : known) {
        const std::size_t distance = edit_distance(key, other);
        const bool part = key.size() > 3 && other.find(key) != std::string::npos;
        if (distance <= std::max<std::size_t>(2, key.size() / 3) || part)
            scored.emplace_back(part ? 1 : distance, other);
    }
    std::sort(scored.begin(), scored.end());
    std::vector<std::string> nearest;
    for (const auto& [distance, name] : scored) {
        if (nearest.size() < 3) nearest.push_back(name);
    }
    return nearest;
}

Belief belief_of(const ParameterRow& row) {
    return {row.value, row.low, row.high};
}

double belief_quantile(const ParameterRow& row, const Belief& belief, double u) {
    if (row.spread == Spread::fixed) return belief.median;
    const double z95 = 1.6448536269514722;
    const double z = std::clamp(normal_quantile(u), -2.5, 2.5) / z95;
    double value = 0;
    if (row.spread == Spread::additive) {
        value = belief.median + (z < 0 ? belief.median - belief.low : belief.high - belief.median) * z;
    } else {
        value = belief.median *
                (z < 0 ? std::pow(belief.low / belief.median, -z) : std::pow(belief.high / belief.median, z));
    }
    return std::clamp(value, row.min, row.max);
}

void check_across(const Parameters& parameters, const std::string& place) {
    for (const ParameterEntry& entry : parameter_table()) {
        const double value = entry.get(parameters);
        if (!(value >= entry.row.min && value <= entry.row.max)) {
            std::ostringstream problem;
            problem << entry.row.key << " is " << value << ", expected " << entry.row.min << " to " << entry.row.max
                    << " " << entry.row.unit;
            throw InputError(place, problem.str());
        }
    }
}

std::string parameter_table_markdown() {
    std::ostringstream out;
    out << "| key | default | unit | plausible | accepted | unknown as | standing | source | meaning |\n"
        << "|---|---|---|---|---|---|---|---|---|\n";
    for (const ParameterEntry& entry : parameter_table()) {
        const ParameterRow& r = entry.row;
        out << "| `" << r.key << "` | " << r.value << " | " << r.unit << " | " << r.low << " to " << r.high << " | "
            << r.min << " to " << r.max << " | " << word(r.spread) << " | " << word(r.standing) << " | " << r.source
            << " | " << r.meaning << " |\n";
    }
    return out.str();
}

}  // namespace maybough::parameters
