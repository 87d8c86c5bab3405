// maybough parameters: every constant of the model with unit, default, range and source; the scenario schema.
#include <boost/program_options/value_semantic.hpp>
#include <iomanip>
#include <iostream>

#include "command/command_line.hpp"

namespace maybough::command {

namespace {

void add_options(po::options_description& options) {
    options.add_options()("markdown", "as the Markdown table of the model description");
    options.add_options()("schema", "the JSON Schema of scenario.json instead");
}

void print_text() {
    for (const ParameterEntry& entry : parameter_table()) {
        const ParameterRow& row = entry.row;
        std::cout << row.key << " = " << row.value << " " << row.unit << "\n    " << row.meaning << "\n    plausible "
                  << row.low << " to " << row.high
                  << (row.spread == Spread::fixed ? "" : ", drawn anew for each belief") << "; accepted " << row.min
                  << " to " << row.max << "\n    " << word(row.standing) << (row.source.empty() ? "" : ": ")
                  << row.source << "\n";
    }
}

int run_parameters(const Request& request) {
    if (request.has("schema")) {
        std::cout << scenario_schema();
    } else if (request.has("markdown")) {
        std::cout << parameter_table_markdown();
    } else {
        print_text();
    }
    return 0;
}

}  // namespace

const Command parameters_command{
    "parameters",
    "every constant of the model: unit, default, range, source",
    "[options]",
    "Lists every constant of the model, as declared in the program. Each may be set under\n"
    "\"parameters\" in scenario.json by its key.\n",
    "",
    "",
    add_options,
    run_parameters};

}  // namespace maybough::command
