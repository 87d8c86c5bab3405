// maybough report: a results file made again into page, table, waypoints, map data and calendar, without simulating.
#include <boost/program_options/value_semantic.hpp>
#include <filesystem>
#include <iostream>

#include "command/outputs.hpp"

namespace maybough::command {

namespace {

void add_options(po::options_description& options) {
    options.add_options()("results", po::value<std::string>()->value_name("FILE"),
                          "results.h5 of plan, season or compare, or the folder it lies in");
    add_output_options(options);
}

std::string file_of(const Request& request) {
    if (!request.has("results")) {
        throw InputError("command line", "no results file is named", "give the results.h5 of an earlier run");
    }
    const std::filesystem::path given = request.get<std::string>("results");
    const std::filesystem::path file = std::filesystem::is_directory(given) ? given / "results.h5" : given;
    if (file.extension() == ".json") {
        throw InputError(file.string(), "does not hold all that a page shows", "give the results.h5 beside it");
    }
    if (!std::filesystem::exists(file)) throw InputError(file.string(), "is not there");
    return file.string();
}

/// The outputs of `files` made again; the folder is named after that of the results.
template <class Results>
void make_again(const Request& request, const std::string& file, Results results, std::vector<OutputFile> files,
                std::string (*write)(const OutputFolder&, const Results&)) {
    std::erase_if(files, [](const OutputFile& output) { return output.name == "results.h5"; });
    results.scenario.folder = std::filesystem::absolute(file).parent_path().string();
    const OutputFolder folder(request, results.scenario, names_of(files));
    std::cout << write(folder, results);
    tell_written(folder, files);
}

int run_report(const Request& request) {
    const std::string file = file_of(request);
    const std::string kind = results_kind(file);
    if (kind == "plan") {
        make_again(request, file, read_plan_results(file), plan_outputs(), write_plan_outputs);
    } else if (kind == "season") {
        make_again(request, file, read_season_results(file), season_outputs(), write_season_outputs);
    } else {
        make_again(request, file, read_compare_results(file), compare_outputs(), write_compare_outputs);
    }
    return 0;
}

}  // namespace

const Command report_command{
    "report",
    "a results file made again into page, waypoints, map data, calendar",
    "RESULTS.h5 [options]",
    "Reads the results.h5 that plan, season or compare wrote, and makes their page, tables, waypoints (GPX),\n"
    "map data (GeoJSON), calendar (iCalendar) and CSV again, without simulating. The figures are the same.\n",
    "results",
    "",
    add_options,
    run_report};

}  // namespace maybough::command
