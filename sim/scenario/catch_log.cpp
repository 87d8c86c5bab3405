// A keeper's catch log: a CSV of year, spot and swarms, with how the trap hung as far as it was noted.
#include <algorithm>
#include <map>
#include <set>

#include "base/base.hpp"
#include "scenario/placement.hpp"

namespace maybough::scenario {

namespace {

const std::vector<std::string>& log_columns() {
    static const std::vector<std::string> names{"year",   "spot",       "kind",   "height_m",   "height_ft",
                                                "facing", "facing_deg", "hung",   "taken_down", "visited_every_days",
                                                "visits", "lured",      "swarms", "caught",     "notes"};
    return names;
}

int whole_in(const SheetRow& row, const std::string& column, int low, int high) {
    const auto number = whole_number(row.text(column));
    if (!number || *number < low || *number > high) {
        throw InputError(row.place, column + ": found \"" + std::string(row.text(column)) +
                                        "\", expected a whole number " + std::to_string(low) + " to " +
                                        std::to_string(high));
    }
    return *number;
}

/// The kind the log names; where it names none, the kind that the scenario hangs there, else its first.
std::size_t kind_of(const SheetRow& row, std::size_t spot, const Scenario& scenario) {
    if (!row.text("kind").empty()) return kind_index(scenario, std::string(row.text("kind")), row.place);
    const auto hangs = std::find_if(scenario.placement.begin(), scenario.placement.end(),
                                    [spot](const TrapSetting& set) { return set.spot == spot; });
    if (hangs != scenario.placement.end()) return hangs->kind;
    return 0;
}

/// Days between visits from the log's own interval, or from how often the trap was visited while it hung.
void read_log_visits(const SheetRow& row, TrapSetting& trap) {
    trap.visit_every_days = days_between_visits(row, "visited_every_days", trap.visit_every_days);
    if (row.text("visits").empty()) return;
    if (!row.text("visited_every_days").empty()) {
        throw InputError(row.place, "found both visited_every_days and visits", "keep one of the two");
    }
    constexpr int most_visits = 366;
    const int hung_days = trap.take_down.value - trap.hang.value;
    trap.visit_every_days = std::max(1, hung_days / (whole_in(row, "visits", 0, most_visits) + 1));
}

/// Dates under `caught`, parted by blanks or plus signs; each while the trap hung, and no more than swarms.
std::vector<Day> days_caught(const SheetRow& row, Date first, const TrapSetting& trap, int swarms) {
    std::vector<Day> days;
    std::string words(row.text("caught"));
    std::replace_if(
        words.begin(), words.end(), [](char c) { return c == '+' || c == ';'; }, ' ');
    for (std::size_t from = words.find_first_not_of(' '); from != std::string::npos;) {
        const std::size_t until = std::min(words.find(' ', from), words.size());
        const Date date = year_first_date(words.substr(from, until - from), row.place + ": caught");
        const Day day{static_cast<int>((date - first).count())};
        if (day < trap.hang || trap.take_down < day) {
            throw InputError(row.place + ": caught", "found " + iso(date) + ", but the trap hung from " +
                                                         iso(first + std::chrono::days{trap.hang.value}) + " to " +
                                                         iso(first + std::chrono::days{trap.take_down.value}));
        }
        days.push_back(day);
        from = words.find_first_not_of(' ', until);
    }
    if (static_cast<int>(days.size()) > swarms) {
        throw InputError(row.place,
                         "found " + std::to_string(days.size()) + " dates under caught and " + std::to_string(swarms) +
                             " under swarms",
                         "give one date a swarm, or none");
    }
    std::sort(days.begin(), days.end());
    return days;
}

}  // namespace

CatchLog read_catch_log(const std::string& path, const Scenario& scenario) {
    const Sheet sheet = sheet_of_csv(read_text(path), path);
    expect_trap_columns(sheet, log_columns(), {"year", "spot", "swarms"});
    std::map<int, LoggedSeason> seasons;
    std::map<std::pair<int, std::size_t>, std::string> taken;
    constexpr int first_year = 1900;
    constexpr int last_year = 2200;
    constexpr int most_swarms = 30;
    Scenario of_year;  // for its first day alone
    of_year.land.centre = scenario.land.centre;
    for (const SheetRow& row : sheet.rows) {
        const int year = whole_in(row, "year", first_year, last_year);
        TrapSetting trap;
        trap.spot = spot_index(scenario, std::string(row.text("spot")), row.place);
        trap.kind = kind_of(row, trap.spot, scenario);
        const auto [other, fresh] = taken.emplace(std::pair(year, trap.spot), row.place);
        if (!fresh) {
            throw InputError(row.place,
                             "the spot \"" + scenario.spots[trap.spot].id + "\" stands in " + std::to_string(year) +
                                 " already at " + other->second,
                             "give one row a trap and year, with all its swarms");
        }
        of_year.year = year;
        const Date first = of_year.first_day();
        read_trap(sheet, row, scenario, first, {"hung", "taken_down"}, trap);
        read_log_visits(row, trap);
        const int swarms = whole_in(row, "swarms", 0, most_swarms);
        LoggedSeason& season = seasons[year];
        season.year = year;
        season.placement.push_back(trap);
        season.swarms.push_back(swarms);
        season.caught.push_back(days_caught(row, first, trap, swarms));
    }
    CatchLog log{path, {}};
    for (auto& [year, season] : seasons) log.seasons.push_back(std::move(season));
    return log;
}

}  // namespace maybough::scenario
