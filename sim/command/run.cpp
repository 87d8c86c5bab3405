// Finds the command on the command line, parses its options, runs it; help at both levels.
#include <array>
#include <boost/program_options/errors.hpp>
#include <boost/program_options/parsers.hpp>
#include <boost/program_options/positional_options.hpp>
#include <iostream>

#include "command/command.hpp"
#include "command/command_line.hpp"

#ifndef MAYBOUGH_VERSION
#define MAYBOUGH_VERSION "unknown"
#endif

namespace maybough::command {

namespace {

const std::array commands{&new_command,    &land_command,    &check_command,    &season_command,
                          &plan_command,   &compare_command, &forecast_command, &learn_command,
                          &replay_command, &report_command,  &verify_command,   &parameters_command};

void print_overview(std::ostream& out) {
    out << "maybough: plans swarm traps from simulated seasons of bee colonies.\n\n"
           "  maybough COMMAND SCENARIO [options]\n\n";
    for (const Command* command : commands) {
        out << "  " << command->name << std::string(13 - std::string(command->name).size(), ' ') << command->summary
            << "\n";
    }
    out << "\n'maybough COMMAND --help' tells all of a command; 'maybough --version' the version.\n";
}

po::options_description options_of(const Command& command) {
    po::options_description options("Options", 100, 50);
    command.add_options(options);
    options.add_options()("help", "this page");
    return options;
}

void print_help(std::ostream& out, const Command& command) {
    out << "maybough " << command.name << " " << command.usage << "\n\n"
        << command.details << "\n"
        << options_of(command);
}

std::vector<std::string> option_names(const po::options_description& options) {
    std::vector<std::string> names;
    for (const auto& option : options.options()) names.push_back("--" + option->long_name());
    return names;
}

std::string offer(const std::vector<std::string>& nearest, const std::string& otherwise) {
    if (nearest.empty()) return otherwise;
    std::string text = "did you mean ";
    for (std::size_t i = 0; i < nearest.size(); ++i) text += (i == 0 ? "" : " or ") + nearest[i];
    return text + "?";
}

/// Options strictly by their whole names: no guessing, no short forms.
po::variables_map parse(const Command& command, const std::vector<std::string>& words) {
    const po::options_description options = options_of(command);
    po::positional_options_description positional;
    if (*command.first != '\0') positional.add(command.first, 1);
    if (*command.others != '\0') positional.add(command.others, -1);
    po::variables_map values;
    try {
        const int style = po::command_line_style::allow_long | po::command_line_style::long_allow_adjacent |
                          po::command_line_style::long_allow_next;
        po::store(po::command_line_parser(words).options(options).positional(positional).style(style).run(), values);
        po::notify(values);
    } catch (const po::unknown_option& e) {
        throw InputError("command line", "there is no option " + e.get_option_name(),
                         offer(nearest_keys(e.get_option_name(), option_names(options)),
                               std::string("see 'maybough ") + command.name + " --help'"));
    } catch (const po::error& e) {
        throw InputError("command line", e.what(), std::string("see 'maybough ") + command.name + " --help'");
    }
    return values;
}

std::string joined(int argc, char** argv) {
    std::string line = "maybough";
    for (int i = 1; i < argc; ++i) line += " " + std::string(argv[i]);
    return line;
}

}  // namespace

int run(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (words.empty()) {
        print_overview(std::cerr);
        return 2;
    }
    if (words[0] == "--help" || words[0] == "help") {
        print_overview(std::cout);
        return 0;
    }
    if (words[0] == "--version") {
        std::cout << "maybough " << MAYBOUGH_VERSION << "\n";
        return 0;
    }
    std::vector<std::string> names;
    for (const Command* command : commands) {
        names.emplace_back(command->name);
        if (words[0] != command->name) continue;
        const std::vector<std::string> rest(words.begin() + 1, words.end());
        Request request{command->name, joined(argc, argv), parse(*command, rest)};
        if (request.has("help")) {
            print_help(std::cout, *command);
            return 0;
        }
        return command->run(request);
    }
    throw InputError("command line", "there is no command '" + words[0] + "'",
                     offer(nearest_keys(words[0], names), "see 'maybough --help'"));
}

}  // namespace maybough::command
