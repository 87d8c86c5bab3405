// What the keeper does on which day.
#include "report/work_days.hpp"

#include "report/words.hpp"

namespace maybough::report {

std::map<Day, WorkOfDay> work_days(const Scenario& scenario, const Placement& placement) {
    std::map<Day, WorkOfDay> days;
    for (std::size_t i = 0; i < placement.size(); ++i) {
        const TrapSetting& set = placement[i];
        days[set.hang].hang.push_back(i + 1);
        const Rounds rounds = visits_of(set, scenario.keeper);
        for (const Day day : rounds.visits) days[day].visit.push_back(i + 1);
        for (const Day day : rounds.lures) {
            if (day != set.hang) days[day].relure.push_back(i + 1);
        }
        days[set.take_down].take_down.push_back(i + 1);
    }
    return days;
}

std::string work_summary(const WorkOfDay& work) {
    std::vector<std::string> parts;
    const auto part = [&](const char* verb, const std::vector<std::size_t>& traps) {
        if (!traps.empty()) parts.push_back(verb + counted(static_cast<double>(traps.size()), "trap"));
    };
    part("hang ", work.hang);
    part("visit ", work.visit);
    part("new lure in ", work.relure);
    part("take down ", work.take_down);
    return listed(parts);
}

std::string work_numbers(const WorkOfDay& work) {
    std::string text;
    const auto part = [&](const char* verb, const std::vector<std::size_t>& traps) {
        if (traps.empty()) return;
        std::vector<std::string> numbers;
        for (const std::size_t nr : traps) numbers.push_back(std::to_string(nr));
        text.append(text.empty() ? "" : " ").append(verb).append(listed(numbers)).append(".");
    };
    part("Hang ", work.hang);
    part("Visit ", work.visit);
    part("New lure in ", work.relure);
    part("Take down ", work.take_down);
    return text;
}

}  // namespace maybough::report
