// What each kind of result leaves in its folder: written by the command that makes it, and again by `report`.
#pragma once

#include <string>
#include <vector>

#include "command/command_line.hpp"

namespace maybough::command {

struct OutputFile {
    std::string name;
    std::string what;  ///< a few words for the list of what was written
};
std::vector<std::string> names_of(const std::vector<OutputFile>& files);

/// Files of each kind of result, results.h5 among them.
const std::vector<OutputFile>& plan_outputs();
const std::vector<OutputFile>& season_outputs();
const std::vector<OutputFile>& compare_outputs();

/// Writes all of them but results.h5; returns the table for the terminal.
std::string write_plan_outputs(const OutputFolder& folder, const PlanResults& results);
std::string write_season_outputs(const OutputFolder& folder, const SeasonResults& results);
std::string write_compare_outputs(const OutputFolder& folder, const CompareResults& results);

/// Tells the terminal what now lies in the folder.
void tell_written(const OutputFolder& folder, const std::vector<OutputFile>& files);

}  // namespace maybough::command
