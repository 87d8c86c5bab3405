// maybough verify: the published experiments done again with the model, published beside simulated.
#include <algorithm>
#include <boost/program_options/value_semantic.hpp>
#include <iostream>

#include "command/outputs.hpp"

namespace maybough::command {

namespace {

void add_options(po::options_description& options) {
    add_scenario_options(options);
    options.add_options()("theme", po::value<std::string>()->value_name("NAME"),
                          "only the experiments of one theme, such as colony or scouts");
    options.add_options()("list", "print the names of the experiments and do nothing");
    add_run_options(options);
    add_output_options(options);
}

std::vector<Experiment> wanted(const Request& request, std::vector<Experiment> all) {
    if (!request.has("theme")) return all;
    const auto theme = request.get<std::string>("theme");
    std::vector<std::string> known;
    for (const Experiment& experiment : all) {
        if (std::find(known.begin(), known.end(), experiment.theme) == known.end())
            known.emplace_back(experiment.theme);
    }
    if (std::find(known.begin(), known.end(), theme) == known.end()) {
        std::string names;
        for (const std::string& name : known) names += (names.empty() ? "" : ", ") + name;
        throw InputError("command line: --theme", "there is no theme '" + theme + "'", "name one of " + names);
    }
    std::erase_if(all, [&](const Experiment& experiment) { return experiment.theme != theme; });
    return all;
}

int run_verify(const Request& request) {
    const Scenario scenario = request.has("scenario") ? scenario_of(request) : Scenario{};
    std::vector<Experiment> experiments = all_experiments();
    if (!scenario.record.days.empty()) {
        experiments.push_back(record_experiment(scenario.record, scenario.land.centre.latitude_deg,
                                                "weather record of " + scenario.name));
    }
    experiments = wanted(request, std::move(experiments));
    if (request.has("list")) {
        for (const Experiment& experiment : experiments) {
            std::cout << experiment.theme << "  " << experiment.name << "  " << experiment.title << "\n";
        }
        return 0;
    }
    const Effort effort = effort_of(request);
    const std::vector<OutputFile> files{{"verify.html", "published beside simulated as a page; opens offline"},
                                        {"verify.txt", "the table above"},
                                        {"verify.csv", "all figures"}};
    const OutputFolder folder(request, scenario, names_of(files));
    const std::vector<Verified> verified = verify(experiments, scenario.parameters, effort.seed, effort.threads,
                                                  progress_line(request, "verify", "experiments"));
    const std::string table = verify_table(verified);
    write_text(folder.path("verify.html"), verify_page(verified, effort.seed, provenance_of(request)));
    write_text(folder.path("verify.txt"), table);
    write_text(folder.path("verify.csv"), verify_csv(verified));
    std::cout << table;
    tell_written(folder, files);
    return 0;
}

}  // namespace

const Command verify_command{
    "verify",
    "the published experiments done again: published beside simulated",
    "[SCENARIO] [options]",
    "Does experiments and counts of published papers again with the model and prints what was published,\n"
    "what is simulated, the interval in which it is taken to agree, and the source. With a scenario its\n"
    "parameters are used, and its weather record is compared with generated weather.\n",
    "scenario",
    "",
    add_options,
    run_verify};

}  // namespace maybough::command
