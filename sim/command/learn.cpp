// maybough learn: updates beliefs from a keeper's catch log and writes them as a scenario overlay.
#include <boost/program_options/value_semantic.hpp>
#include <iostream>

#include "command/outputs.hpp"

namespace maybough::command {

namespace {

void add_options(po::options_description& options) {
    add_scenario_options(options);
    options.add_options()("log", po::value<std::string>()->value_name("FILE"),
                          "catch log: CSV with year,spot,swarms and, where you know them, kind,height_m,facing,hung,"
                          "taken_down,visited_every_days or visits,lured,caught,notes; without kind: as set at that "
                          "spot in the scenario, else its first kind");
    options.add_options()("seasons", po::value<std::int64_t>()->default_value(200)->value_name("N"),
                          "seasons to simulate for each year of the log, and for next year");
    add_run_options(options);
    add_output_options(options);
}

int run_learn(const Request& request) {
    const Effort effort = effort_of(request);
    LearnOptions options;
    options.seasons = static_cast<std::uint32_t>(whole(request, "seasons", 20, 100000));
    const Scenario scenario = scenario_of(request);
    if (!request.has("log")) {
        throw InputError("command line", "no catch log is named", "give --log FILE: CSV with year,spot,swarms");
    }
    const CatchLog log = read_catch_log(request.get<std::string>("log"), scenario);
    const std::vector<OutputFile> files{{"learn.html", "what the log taught as a page; opens offline"},
                                        {"learn.txt", "the table above"},
                                        {"beliefs.json", "the beliefs, for 'maybough plan --overlay'"},
                                        {"unknowns.csv", "each unknown before and after"}};
    const OutputFolder folder(request, scenario, names_of(files));
    const Learned learned = learn(scenario, log, effort, options, progress_line(request, "learn"));
    const std::string table = learn_table(scenario, learned);
    write_text(folder.path("learn.txt"), table);
    write_text(folder.path("beliefs.json"), learned_overlay(learned));
    write_text(folder.path("unknowns.csv"), learned_csv(learned));
    write_text(folder.path("learn.html"), learn_page(scenario, learned, provenance_of(request)));
    std::cout << table;
    tell_written(folder, files);
    std::cout << "\nPlan on what was learnt: maybough plan "
              << (request.has("scenario") ? request.get<std::string>("scenario") : "SCENARIO") << " --overlay "
              << folder.path("beliefs.json") << "\n";
    return 0;
}

}  // namespace

const Command learn_command{
    "learn",
    "updates beliefs from a catch log; writes them as an overlay",
    "SCENARIO --log FILE [options]",
    "Simulates every year of the log many times, with the traps as they hung, and weighs all that is not\n"
    "known by how well it explains the swarms you caught. Tells what the log taught and how little that\n"
    "is, and writes the beliefs as a file that 'maybough plan --overlay' takes.\n",
    "scenario",
    "",
    add_options,
    run_learn};

}  // namespace maybough::command
