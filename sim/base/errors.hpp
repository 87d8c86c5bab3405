// The three ways a run can fail, told apart by who can mend it.
#pragma once

#include <stdexcept>
#include <string>

namespace maybough::base {

/// What the user can mend: a file, a value, an option. Exit code 2. One line: place: problem; suggestion.
class InputError : public std::runtime_error {
  public:
    /// `place` is a file with line or JSON path, e.g. "spots.csv:7" or "scenario.json: /place/latitude_deg";
    /// `problem` says what was found and what was expected; `suggestion` what to try (may be empty).
    InputError(const std::string& place, const std::string& problem, const std::string& suggestion = "")
        : std::runtime_error(place + ": " + problem + (suggestion.empty() ? "" : "; " + suggestion)) {}
    /// A line that names its place already.
    explicit InputError(const std::string& line) : std::runtime_error(line) {}
};

/// What the machine refused: disk, memory, an interrupted run. Exit code 1.
class RunError : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// Our own bug: a condition of the model that did not hold. Exit code 1. The text carries the values.
class ModelFault : public std::logic_error {
    using std::logic_error::logic_error;
};

}  // namespace maybough::base
