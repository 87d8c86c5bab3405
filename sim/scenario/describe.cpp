// What `check` prints: the scenario as understood, where each value came from, and what looks implausible.
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <sstream>

#include "base/base.hpp"
#include "scenario/places.hpp"
#include "scenario/records.hpp"
#include "scenario/scenario.hpp"
#include "scenario/text_file.hpp"

namespace maybough::scenario {

namespace {

constexpr std::size_t label_width = 26;
constexpr std::size_t value_width = 34;

std::string padded(std::string text, std::size_t width) {
    const auto shown = static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
    if (shown < width) text.append(width - shown, ' ');
    return text;
}

void line(std::ostream& out, const std::string& label, const std::string& value, const std::string& from = "") {
    out << "  " << padded(label, label_width) << (from.empty() ? value : padded(value, value_width) + "  " + from)
        << "\n";
}

void tell_place(std::ostream& out, const Scenario& s) {
    out << "Place\n";
    line(out, "centre",
         shortest(s.land.centre.latitude_deg) + ", " + shortest(s.land.centre.longitude_deg) + " degrees");
    line(out, "area", "all within " + shortest(s.land.radius_m) + " m");
    line(out, "simulated year", iso(s.first_day()) + ", " + std::to_string(s.days()) + " days");
    std::map<std::string_view, int> patches;
    for (const HabitatPatch& patch : s.land.patches)
        ++patches[habitat_names.at(static_cast<std::size_t>(patch.habitat))];
    std::string words;
    for (const auto& [name, count] : patches)
        words += (words.empty() ? "" : ", ") + std::to_string(count) + " " + std::string(name);
    line(out, "habitat patches", words.empty() ? "none drawn" : words);
    line(out, "everywhere else", std::string(habitat_names.at(static_cast<std::size_t>(s.land.elsewhere))));
    int hives = 0;
    for (const Apiary& apiary : s.apiaries) hives += apiary.hives;
    line(out, "hives known",
         std::to_string(hives) + " in " + std::to_string(s.apiaries.size()) + " apiaries; others are drawn");
}

void tell_spots(std::ostream& out, const Scenario& s) {
    const auto count = [&](bool Spot::*flag) {
        return std::to_string(
            std::count_if(s.spots.begin(), s.spots.end(), [flag](const Spot& spot) { return spot.*flag; }));
    };
    out << "\nSpots and traps\n";
    line(out, "spots",
         std::to_string(s.spots.size()) + ", of which " + count(&Spot::must) + " must and " + count(&Spot::never) +
             " never be used");
    double low_m = s.spots.front().min_height_m;
    double high_m = s.spots.front().max_height_m;
    for (const Spot& spot : s.spots) {
        low_m = std::min(low_m, spot.min_height_m);
        high_m = std::max(high_m, spot.max_height_m);
    }
    line(out, "heights allowed", shortest(low_m) + " to " + shortest(high_m) + " m");
    for (const TrapKind& kind : s.kinds) {
        line(out, "kind " + kind.id,
             kind.name + ": " + shortest(kind.volume_l) + " l, entrance " + shortest(kind.entrance_area_cm2) +
                 " cm2, " + shortest(kind.cost) + " " + s.keeper.currency + ", " + std::to_string(kind.owned) +
                 " owned");
    }
    line(out, "traps as set", s.placement.empty() ? "none" : std::to_string(s.placement.size()));
}

/// The keeper's fields by their own records, each with where it came from.
void tell_keeper(std::ostream& out, const Scenario& s) {
    out << "\nKeeper (money in " << s.keeper.currency << ")\n";
    WrittenKeeper keeper;
    static_cast<Keeper&>(keeper) = s.keeper;
    std::array<char, 8> late{};
    std::snprintf(late.data(), late.size(), "%02d-%02d", s.keeper.late_month % 100, s.keeper.late_day % 100);
    keeper.late_from = late.data();
    struct Words {
        std::string operator()(const std::string& v) const { return v; }
        std::string operator()(double v) const { return shortest(v); }
        std::string operator()(int v) const { return std::to_string(v); }
        std::string operator()(bool v) const { return v ? "yes" : "no"; }
        std::string operator()(const std::array<double, 12>&) const { return "12 values"; }
    };
    for (const auto& [field, member] : keeper_fields()) {
        const std::string key(field.key);
        const bool given = s.given.count("/keeper/" + key) != 0;
        std::string value = std::visit([&](auto m) { return Words{}(keeper.*m); }, member);
        if (key == "budget" && s.keeper.budget == 0) value = "no limit";
        line(out, key, value, given ? "as given" : "default");
    }
}

void tell_weather(std::ostream& out, const Scenario& s) {
    out << "\nWeather\n";
    if (s.record.days.empty()) {
        line(out, "from", "twelve monthly normals; every season is generated");
        return;
    }
    const QualityReport& q = s.weather_quality;
    const Date last = s.record.first + std::chrono::days{static_cast<int>(s.record.days.size()) - 1};
    line(out, "from", s.record.source);
    line(out, "days", std::to_string(s.record.days.size()) + ", " + iso(s.record.first) + " to " + iso(last));
    line(out, "missing",
         std::to_string(q.missing_days) + " days in " + std::to_string(q.gaps) + " gaps, longest " +
             std::to_string(q.longest_gap_days));
    line(out, "doubtful",
         std::to_string(q.swapped_days) + " swapped, " + std::to_string(q.spike_days) + " impossible, " +
             std::to_string(q.stuck_runs) + " runs of equal values");
    line(out, "rain, wind",
         std::string(q.has_rain ? "rain read" : "no rain: taken from the climate") + ", " +
             (q.has_wind ? "wind read" : "no wind: taken from the climate"));
}

void tell_parameters(std::ostream& out, const Scenario& s) {
    std::size_t drawn = 0;
    for (const ParameterEntry& entry : parameter_table()) {
        const auto belief = s.beliefs.find(std::string(entry.row.key));
        const bool known = belief != s.beliefs.end() && belief->second.low == belief->second.high;
        if (entry.row.spread != Spread::fixed && !known) ++drawn;
    }
    out << "\nModel\n";
    line(out, "parameters",
         std::to_string(parameter_table().size()) + ", of which " + std::to_string(drawn) + " are unknown and drawn");
    for (const ParameterEntry& entry : parameter_table()) {
        const std::string key(entry.row.key);
        const auto given = s.given.find(key);
        if (given == s.given.end()) continue;
        const auto belief = s.beliefs.find(key);
        std::string value = shortest(entry.get(s.parameters)) + " " + std::string(entry.row.unit);
        if (belief != s.beliefs.end() && belief->second.low < belief->second.high) {
            value += " (" + shortest(belief->second.low) + " to " + shortest(belief->second.high) + ")";
        }
        line(out, key, value, "from " + given->second + ", default " + shortest(entry.row.value));
    }
}

void warn_of_values(const Scenario& s, std::vector<std::string>& warnings) {
    for (const ParameterEntry& entry : parameter_table()) {
        const ParameterRow& row = entry.row;
        const double value = entry.get(s.parameters);
        if (s.given.count(std::string(row.key)) == 0 || (value >= row.low && value <= row.high)) continue;
        warnings.push_back(std::string(row.key) + " is " + shortest(value) + " " + std::string(row.unit) +
                           ", outside the plausible " + shortest(row.low) + " to " + shortest(row.high));
    }
    const Keeper& keeper = s.keeper;
    if (keeper.late_swarm_value > keeper.swarm_value)
        warnings.emplace_back("keeper: a late swarm is worth more than an early one");
    if (keeper.swarm_value == 0) warnings.emplace_back("keeper: swarm_value is 0, so no trap can pay");
    // Of a simulated year that begins with January in the north and July in the south.
    constexpr int earliest_late_day = 120;
    constexpr int latest_late_day = 320;
    const Date first = s.first_day();
    const auto day_of = [&](int year) {
        return (make_date(year, keeper.late_month, std::min(keeper.late_day, 28)) - first).count();
    };
    const auto late = day_of(year_of(first)) >= 0 ? day_of(year_of(first)) : day_of(year_of(first) + 1);
    if (late < earliest_late_day || late > latest_late_day) {
        warnings.push_back("keeper: swarms count as late from late_from on, which is day " + std::to_string(late + 1) +
                           " of a season that begins on " + iso(first) + "; usual here is " +
                           usual_late_from(s.land.centre));
    }
    constexpr double fewest_litres = 15;
    constexpr double most_litres = 100;
    for (const TrapKind& kind : s.kinds) {
        if (kind.volume_l >= fewest_litres && kind.volume_l <= most_litres) continue;
        warnings.push_back("trap kind " + kind.id + " holds " + shortest(kind.volume_l) +
                           " l; swarms seldom take cavities below 15 or above 100 l");
    }
}

void warn_of_places(const Scenario& s, std::vector<std::string>& warnings) {
    if (s.apiaries.empty())
        warnings.emplace_back("no apiary is given: all hives are drawn from the habitats' densities");
    if (s.land.patches.empty()) warnings.emplace_back("no habitat is drawn: the whole land is taken as one");
    constexpr double ladder_m = 4;
    const auto high =
        std::count_if(s.spots.begin(), s.spots.end(), [](const Spot& spot) { return spot.min_height_m > ladder_m; });
    if (high > 0)
        warnings.push_back(std::to_string(high) + (high == 1 ? " spot is" : " spots are") +
                           " above 4 m only: mind the ladder and a box full of bees");
    for (const std::string& warning : s.weather_quality.warnings) warnings.push_back("weather: " + warning);
    constexpr std::size_t days_in_three_years = 3 * 365;
    if (!s.record.days.empty() && s.record.days.size() < days_in_three_years) {
        warnings.emplace_back(
            "weather: the record is shorter than three years, so the spread of seasons is little known");
    }
}

}  // namespace

std::string describe(const Scenario& scenario) {
    std::ostringstream out;
    out << scenario.name << "\n";
    if (!scenario.description.empty()) out << scenario.description << "\n";
    out << "\n";
    tell_place(out, scenario);
    tell_spots(out, scenario);
    tell_keeper(out, scenario);
    tell_weather(out, scenario);
    tell_parameters(out, scenario);
    std::vector<std::string> warnings;
    warn_of_values(scenario, warnings);
    warn_of_places(scenario, warnings);
    out << "\n" << (warnings.empty() ? "Nothing looks implausible." : "Worth a second look") << "\n";
    for (const std::string& warning : warnings) out << "  - " << warning << "\n";
    return out.str();
}

}  // namespace maybough::scenario
