// A club's own first swarms, from CSV text.
#include <sstream>

#include "outlook/outlook.hpp"

namespace maybough::outlook {

namespace {
std::string trimmed(std::string_view text) {
    const auto from = text.find_first_not_of(" \t\r\"");
    if (from == std::string_view::npos) return "";
    return std::string(text.substr(from, text.find_last_not_of(" \t\r\"") - from + 1));
}

struct Row {
    std::string year;
    std::string date;
};

/// Two fields at a comma or semicolon.
Row split(const std::string& line, const std::string& place) {
    const auto mark = line.find_first_of(",;");
    if (mark == std::string::npos || line.find_first_of(",;", mark + 1) != std::string::npos) {
        throw InputError(place, "found \"" + line + "\", expected two fields: year,first_swarm");
    }
    return {trimmed(std::string_view(line).substr(0, mark)), trimmed(std::string_view(line).substr(mark + 1))};
}

int year_number(const std::string& text, const std::string& place) {
    const bool four = text.size() == 4 && text.find_first_not_of("0123456789") == std::string::npos;
    if (!four) throw InputError(place, "found year \"" + text + "\", expected four digits");
    return std::stoi(text);
}
}  // namespace

ObservedFirsts observed_firsts(const std::string& text, const std::string& name, double latitude_deg) {
    ObservedFirsts firsts;
    std::istringstream lines(text.starts_with("\xEF\xBB\xBF") ? text.substr(3) : text);
    std::string line;
    bool header = false;
    for (int number = 1; std::getline(lines, line); ++number) {
        const std::string place = name + ":" + std::to_string(number);
        if (trimmed(line).empty()) continue;
        const Row row = split(trimmed(line), place);
        if (!header) {
            if (row.year != "year" || row.date != "first_swarm") {
                throw InputError(
                    place, "found columns \"" + row.year + "\" and \"" + row.date + "\", expected year,first_swarm");
            }
            header = true;
            continue;
        }
        const int year = year_number(row.year, place);
        if (row.date.empty()) continue;
        const Date date = parse_date(row.date, place);
        const int season = year_of(simulated_year_start(date, latitude_deg));
        if (season != year) {
            throw InputError(place, "found " + row.date + " in year " + row.year + ", expected a date of the season " +
                                        (latitude_deg < 0 ? "from July of that year to June" : "of that year"));
        }
        if (!firsts.emplace(year, date).second) throw InputError(place, "the year " + row.year + " stands twice");
    }
    if (!header) throw InputError(name, "found no rows, expected CSV with the columns year,first_swarm");
    return firsts;
}

}  // namespace maybough::outlook
