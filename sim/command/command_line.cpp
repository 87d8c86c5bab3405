// Shared option groups and what they give.
#include "command/command_line.hpp"

#include <boost/program_options/value_semantic.hpp>
#include <chrono>
#include <cmath>
#include <ctime>
#include <iostream>
#include <sstream>
#include <string>
#include <vector>

#ifndef MAYBOUGH_VERSION
#define MAYBOUGH_VERSION "unknown"
#endif
#ifndef MAYBOUGH_FLAGS
#define MAYBOUGH_FLAGS "unknown"
#endif

namespace maybough::command {

void add_scenario_options(po::options_description& options) {
    options.add_options()("scenario", po::value<std::string>()->value_name("SCENARIO"),
                          "scenario folder, or its scenario.json");
    options.add_options()("overlay", po::value<std::vector<std::string>>()->value_name("FILE")->composing(),
                          "scenario file with parameters and beliefs put over it; may be given again");
}

void add_run_options(po::options_description& options) {
    options.add_options()("seed", po::value<std::int64_t>()->default_value(1)->value_name("N"),
                          "luck of the whole run: same seed, same results, whatever the threads");
    options.add_options()("threads", po::value<std::int64_t>()->default_value(0)->value_name("N"),
                          "processor threads; 0 = all of this machine");
    options.add_options()("progress", "show progress even where standard error is no terminal");
    options.add_options()("no-progress", "never show progress");
}

void add_output_options(po::options_description& options) {
    options.add_options()("out", po::value<std::string>()->value_name("FOLDER"),
                          "folder for the results; default COMMAND-SCENARIO in the folder you are in");
    options.add_options()("overwrite", "replace results that are already there");
}

Scenario scenario_of(const Request& request) {
    if (!request.has("scenario")) {
        throw InputError("command line", "no scenario is named",
                         "try 'maybough " + request.command + " FOLDER', or make one with 'maybough new FOLDER'");
    }
    const auto overlays =
        request.has("overlay") ? request.get<std::vector<std::string>>("overlay") : std::vector<std::string>{};
    Scenario scenario = read_scenario(request.get<std::string>("scenario"), overlays);
    if (has_example_spots(scenario)) {
        std::cerr
            << "NOTE: some spots of this scenario are the EXAMPLES of a starter, which exist nowhere: put your own "
               "in before you build or hang anything.\n";
    }
    return scenario;
}

std::int64_t whole(const Request& request, const std::string& option, std::int64_t low, std::int64_t high) {
    const auto value = request.get<std::int64_t>(option);
    if (value < low || value > high) {
        throw InputError("command line", "--" + option + " is " + std::to_string(value) +
                                             ", expected a whole number from " + std::to_string(low) + " to " +
                                             std::to_string(high));
    }
    return value;
}

double number_option(const Request& request, const std::string& option, double low, double high) {
    const auto value = request.get<double>(option);
    if (!(value >= low && value <= high)) {
        std::ostringstream problem;
        problem << "--" << option << " is " << value << ", expected a number from " << low << " to " << high;
        throw InputError("command line", problem.str());
    }
    return value;
}

Effort effort_of(const Request& request) {
    Effort effort;
    effort.seed = static_cast<std::uint32_t>(whole(request, "seed", 0, 4294967295LL));
    const auto threads = whole(request, "threads", 0, 1024);
    effort.threads = threads == 0 ? machine_threads() : static_cast<unsigned>(threads);
    return effort;
}

namespace {
/// The command line with the last part of every path alone: results are passed on, and nobody's folders are told.
std::string without_folders(const std::string& command_line) {
    std::istringstream words(command_line);
    std::string text;
    for (std::string word; words >> word;) {
        const std::size_t value = word.find('=') == std::string::npos ? 0 : word.find('=') + 1;
        while (word.size() > value + 1 && word.back() == '/') word.pop_back();
        const std::size_t slash = word.rfind('/');
        if (slash != std::string::npos && slash + 1 < word.size() && slash >= value)
            word.erase(value, slash + 1 - value);
        text += (text.empty() ? "" : " ") + word;
    }
    return text;
}
}  // namespace

Provenance provenance_of(const Request& request) {
    Provenance origin;
    origin.command = request.command;
    origin.command_line = without_folders(request.command_line);
    origin.version = MAYBOUGH_VERSION;
    origin.flags = MAYBOUGH_FLAGS;
    origin.seed = static_cast<std::uint32_t>(request.get<std::int64_t>("seed"));
    const std::time_t now = std::chrono::system_clock::to_time_t(std::chrono::system_clock::now());
    std::tm utc{};
    gmtime_r(&now, &utc);
    char text[32];
    std::strftime(text, sizeof text, "%Y-%m-%dT%H:%M:%SZ", &utc);
    origin.written_at = text;
    return origin;
}

}  // namespace maybough::command
