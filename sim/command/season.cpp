// maybough season: an ensemble of seasons for the traps as set.
#include <boost/program_options/value_semantic.hpp>
#include <iostream>

#include "command/outputs.hpp"

namespace maybough::command {

namespace {

void add_options(po::options_description& options) {
    add_scenario_options(options);
    options.add_options()("placement", po::value<std::string>()->value_name("FILE"),
                          "traps as set (CSV); default the scenario's own");
    options.add_options()("seasons", po::value<std::int64_t>()->default_value(200)->value_name("N"),
                          "seasons to simulate");
    add_run_options(options);
    add_output_options(options);
}

int run_seasons(const Request& request) {
    Effort effort = effort_of(request);
    effort.confirm_seasons = static_cast<std::uint32_t>(whole(request, "seasons", 1, 1000000));
    const Scenario scenario = scenario_of(request);
    const Placement placement =
        request.has("placement") ? read_placement(request.get<std::string>("placement"), scenario) : scenario.placement;
    const OutputFolder folder(request, scenario, names_of(season_outputs()));
    const SeasonSummary summary = simulate_seasons(scenario, placement, effort, progress_line(request, "season"));
    const Provenance origin = provenance_of(request);
    write_season_results(folder.path("results.h5"), scenario, summary, placement, origin);
    std::cout << write_season_outputs(folder, {scenario, summary, placement, origin});
    tell_written(folder, season_outputs());
    return 0;
}

}  // namespace

const Command season_command{
    "season",
    "simulates an ensemble of seasons for the traps as set",
    "SCENARIO [options]",
    "Simulates many seasons of the area with the traps as they are set, and tells what they catch.\n",
    "scenario",
    "",
    add_options,
    run_seasons};

}  // namespace maybough::command
