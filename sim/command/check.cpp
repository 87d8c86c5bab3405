// maybough check: what a scenario will be taken to mean.
#include <iostream>

#include "command/command_line.hpp"

namespace maybough::command {

namespace {

int run_check(const Request& request) {
    std::cout << describe(scenario_of(request));
    return 0;
}

}  // namespace

const Command check_command{
    "check",
    "validates a scenario, prints what will be assumed and what is implausible",
    "SCENARIO [options]",
    "Reads a scenario and all its files, tells the first thing that is wrong, or else what will be\n"
    "assumed, where each value came from, and what looks implausible.\n",
    "scenario",
    "",
    add_scenario_options,
    run_check};

}  // namespace maybough::command
