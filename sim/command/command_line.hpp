// What the commands share: option groups, a parsed request, output folder, progress.
#pragma once

#include <boost/program_options/options_description.hpp>
#include <boost/program_options/variables_map.hpp>
#include <cstdint>
#include <string>
#include <vector>

#include "report/report.hpp"

namespace maybough::command {

namespace po = boost::program_options;

/// One parsed command line. Nothing has been opened yet.
struct Request {
    std::string command;
    std::string command_line;
    po::variables_map values;

    bool has(const std::string& option) const { return values.count(option) != 0; }
    template <class T>
    T get(const std::string& option) const {
        return values[option].as<T>();
    }
};

/// One command: how it is called, what it takes, what it does. `add_options` opens no file; `run` parses nothing.
struct Command {
    const char* name;
    const char* summary;  ///< one line for the list of commands
    const char* usage;    ///< what follows the name
    const char* details;  ///< a paragraph for `maybough NAME --help`
    const char* first;    ///< name of the first positional option, "" for none
    const char* others;   ///< name of the option that takes all further words, "" for none
    void (*add_options)(po::options_description&);
    int (*run)(const Request&);
};

extern const Command plan_command;
extern const Command season_command;
extern const Command compare_command;
extern const Command forecast_command;
extern const Command replay_command;
extern const Command learn_command;
extern const Command check_command;
extern const Command new_command;
extern const Command land_command;
extern const Command parameters_command;
extern const Command verify_command;
extern const Command report_command;

/// scenario, overlay: what is read.
void add_scenario_options(po::options_description& options);
/// seed, threads, progress: how it is run.
void add_run_options(po::options_description& options);
/// out, overwrite: what is written.
void add_output_options(po::options_description& options);

Scenario scenario_of(const Request& request);
Effort effort_of(const Request& request);
Provenance provenance_of(const Request& request);

/// A whole number option between low and high; throws InputError on the command line otherwise.
std::int64_t whole(const Request& request, const std::string& option, std::int64_t low, std::int64_t high);
/// A number option between low and high, not NaN.
double number_option(const Request& request, const std::string& option, double low, double high);

/// The folder results go to. Made before the long work starts, so that a wrong name is told at once.
class OutputFolder {
  public:
    /// Throws InputError if the folder cannot be made or written, or if one of `names` is there without --overwrite.
    OutputFolder(const Request& request, const Scenario& scenario, const std::vector<std::string>& names);
    std::string path(const std::string& name) const;

  private:
    std::string folder_;
};

/// A line on standard error that says how far and how long to go; silent where standard error is no terminal, unless
/// --progress asks for it. `counted` is what is told off, in the plural.
Progress progress_line(const Request& request, const std::string& what, const std::string& counted = "seasons");

}  // namespace maybough::command
