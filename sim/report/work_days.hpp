// What the keeper does on which day of a season with these traps: private to report/.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "report/report.hpp"

namespace maybough::report {

/// Traps to see to on one day, by their number in the placement, counted from 1.
struct WorkOfDay {
    std::vector<std::size_t> hang;
    std::vector<std::size_t> visit;
    std::vector<std::size_t> relure;
    std::vector<std::size_t> take_down;
};

/// Days of work in order. A lure is renewed at the first visit after its days are over.
std::map<Day, WorkOfDay> work_days(const Scenario& scenario, const Placement& placement);

/// "hang 2 traps and visit 1 trap".
std::string work_summary(const WorkOfDay& work);
/// "Hang 1 and 3. Visit 2."
std::string work_numbers(const WorkOfDay& work);

}  // namespace maybough::report
