// maybough plan: how many traps, of which kind, where, from when, visited how often.
#include <boost/program_options/value_semantic.hpp>
#include <iostream>

#include "command/outputs.hpp"

namespace maybough::command {

namespace {

void add_options(po::options_description& options) {
    add_scenario_options(options);
    options.add_options()("seasons", po::value<std::int64_t>()->default_value(400)->value_name("N"),
                          "fresh seasons that the printed numbers come from");
    options.add_options()("record-seasons", po::value<std::int64_t>()->default_value(120)->value_name("N"),
                          "seasons the search learns from");
    options.add_options()("max-traps", po::value<std::int64_t>()->value_name("N"),
                          "longest curve to draw; default from the scenario's keeper");
    options.add_options()("traps", po::value<std::int64_t>()->default_value(0)->value_name("N"),
                          "plan exactly this many; 0 = stop where a trap no longer pays");
    options.add_options()("budget", po::value<double>()->value_name("MONEY"),
                          "money to spend before the season; default from the scenario's keeper");
    options.add_options()("hours", po::value<double>()->default_value(0)->value_name("H"),
                          "your own hours for the season, taking swarms included; 0 = no limit");
    options.add_options()("at-least", po::value<std::int64_t>()->default_value(0)->value_name("K"),
                          "fewest traps that catch at least K swarms with the odds below; 0 = not asked");
    options.add_options()("odds", po::value<double>()->default_value(0.8, "0.8")->value_name("P"),
                          "odds for --at-least");
    add_run_options(options);
    add_output_options(options);
}

Question question_of(const Request& request, const Scenario& scenario) {
    Question question;
    question.max_traps =
        request.has("max-traps") ? static_cast<int>(whole(request, "max-traps", 1, 500)) : scenario.keeper.max_traps;
    question.budget = request.has("budget") ? number_option(request, "budget", 0, 1e9) : scenario.keeper.budget;
    if (request.has("budget") && question.budget == 0) {
        throw InputError("command line", "--budget is 0, which buys no trap",
                         "give the money you can spend, or leave it out");
    }
    question.hours = number_option(request, "hours", 0, 10000);
    question.exactly = static_cast<int>(whole(request, "traps", 0, 500));
    question.at_least_swarms = static_cast<int>(whole(request, "at-least", 0, 500));
    question.at_least_odds = number_option(request, "odds", 0.01, 0.999);
    if (question.exactly > question.max_traps) question.max_traps = question.exactly;
    return question;
}

int run_plan(const Request& request) {
    Effort effort = effort_of(request);
    effort.confirm_seasons = static_cast<std::uint32_t>(whole(request, "seasons", 8, 100000));
    effort.record_seasons = static_cast<std::uint32_t>(whole(request, "record-seasons", 8, record_range.most));
    const Scenario scenario = scenario_of(request);
    const Question question = question_of(request, scenario);
    const OutputFolder folder(request, scenario, names_of(plan_outputs()));
    const Plan plan = make_plan(scenario, question, effort, progress_line(request, "plan"));

    const Provenance origin = provenance_of(request);
    write_plan_results(folder.path("results.h5"), scenario, plan, origin);
    std::cout << write_plan_outputs(folder, {scenario, plan, origin});
    tell_written(folder, plan_outputs());
    return 0;
}

}  // namespace

const Command plan_command{
    "plan",
    "how many traps, which kinds, where, from when, visited how often",
    "SCENARIO [options]",
    "Simulates seasons of the area, searches for the placement that pays best, and confirms it on\n"
    "fresh seasons. Writes a table, results.h5, plan.json, and the traps as GPX waypoints, GeoJSON\n"
    "and CSV.\n",
    "scenario",
    "",
    add_options,
    run_plan};

}  // namespace maybough::command
