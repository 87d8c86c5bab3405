// maybough compare: placements side by side on the same simulated seasons.
#include <boost/program_options/value_semantic.hpp>
#include <filesystem>
#include <iostream>

#include "command/outputs.hpp"

namespace maybough::command {

namespace {

void add_options(po::options_description& options) {
    add_scenario_options(options);
    options.add_options()("placement", po::value<std::vector<std::string>>()->value_name("FILE")->composing(),
                          "traps as set (CSV); the first is what the others are compared with");
    options.add_options()("rules", "also compare rules of thumb with as many traps of the same kind");
    options.add_options()("seasons", po::value<std::int64_t>()->default_value(400)->value_name("N"),
                          "seasons to simulate");
    add_run_options(options);
    add_output_options(options);
}

std::vector<NamedPlacement> sides_of(const Request& request, const Scenario& scenario, std::uint32_t seed) {
    std::vector<NamedPlacement> sides;
    const auto files =
        request.has("placement") ? request.get<std::vector<std::string>>("placement") : std::vector<std::string>{};
    for (const std::string& file : files) {
        sides.push_back({std::filesystem::path(file).stem().string(), read_placement(file, scenario)});
    }
    if (!scenario.placement.empty()) sides.push_back({"as set in the scenario", scenario.placement});
    if (sides.empty()) {
        throw InputError("command line", "there is no placement to compare",
                         "name placement files (CSV), such as the traps.csv that 'maybough plan' writes");
    }
    if (request.has("rules") || sides.size() == 1) {
        const Placement& first = sides.front().placement;
        const int traps = std::max(1, static_cast<int>(first.size()));
        const std::size_t kind = first.empty() ? 0 : first.front().kind;
        for (auto& rule : rules_of_thumb(scenario, traps, kind, seed)) sides.push_back(std::move(rule));
    }
    return sides;
}

int run_compare(const Request& request) {
    Effort effort = effort_of(request);
    effort.confirm_seasons = static_cast<std::uint32_t>(whole(request, "seasons", 2, compare_range.most));
    const Scenario scenario = scenario_of(request);
    const std::vector<NamedPlacement> sides = sides_of(request, scenario, effort.seed);
    const OutputFolder folder(request, scenario, names_of(compare_outputs()));
    const auto compared = compare_placements(scenario, sides, effort, progress_line(request, "compare"));
    const Provenance origin = provenance_of(request);
    write_compare_results(folder.path("results.h5"), scenario, compared, origin);
    std::cout << write_compare_outputs(folder, {scenario, compared, origin});
    tell_written(folder, compare_outputs());
    return 0;
}

}  // namespace

const Command compare_command{
    "compare",
    "placements side by side on the same simulated seasons",
    "SCENARIO [PLACEMENT.csv ...] [options]",
    "Runs every placement on the same seasons and tells the differences from the first, season by\n"
    "season. With one placement, or with --rules, common rules of thumb are set beside it.\n",
    "scenario",
    "placement",
    add_options,
    run_compare};

}  // namespace maybough::command
