// maybough forecast: the swarm calendar of this year from its weather to date, and the skill of such forecasts.
#include <boost/program_options/value_semantic.hpp>
#include <fstream>
#include <iostream>
#include <sstream>

#include "command/outputs.hpp"

namespace maybough::command {

namespace {

void add_options(po::options_description& options) {
    add_scenario_options(options);
    const auto text = [] { return po::value<std::string>()->value_name("FILE"); };
    const auto whole_number = [](std::int64_t value) {
        return po::value<std::int64_t>()->default_value(value)->value_name("N");
    };
    options.add_options()("weather", text(),
                          "this year's weather to date, in any form we read; default the scenario's");
    options.add_options()("station", po::value<std::string>()->value_name("NAME"), "station, where a file has several");
    options.add_options()("today", po::value<std::string>()->value_name("DATE"),
                          "day of the forecast, such as 2026-04-20; default the last day of the weather file");
    options.add_options()("outlook-file", text(), "weather of the next days as you expect it (CSV as for --weather)");
    options.add_options()("seasons", whole_number(200), "members: seasons to simulate");
    options.add_options()("analogue-years", "continue with the record's own years rather than generated weather");
    options.add_options()("hindcast", "tell the skill of such forecasts over past years instead");
    options.add_options()("hindcast-years", whole_number(12),
                          "at most so many complete years of the record, the latest");
    options.add_options()("hindcast-seasons", whole_number(40), "members of each forecast in the hindcast");
    options.add_options()("observed", text(), "first swarms you saw: CSV year,first_swarm (with --hindcast)");
    add_run_options(options);
    add_output_options(options);
}

WeatherRecord record_of(const Request& request, const Scenario& scenario) {
    const std::string station = request.has("station") ? request.get<std::string>("station") : "";
    if (request.has("weather")) return read_weather(request.get<std::string>("weather"), station);
    if (scenario.record.days.empty()) {
        throw InputError("command line", "the scenario has no daily weather record", "name one with --weather FILE");
    }
    return scenario.record;
}

Date today_of(const Request& request, const WeatherRecord& record) {
    if (request.has("today")) return parse_date(request.get<std::string>("today"), "command line: --today");
    if (record.days.empty()) throw InputError("command line", "the weather has no days", "give --today DATE");
    return record.first + std::chrono::days{static_cast<int>(record.days.size()) - 1};
}

std::string text_of(const std::string& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream text;
    if (!in || !(text << in.rdbuf())) throw InputError(file, "cannot be read");
    return text.str();
}

int run_hindcast(const Request& request, const Scenario& scenario) {
    const Effort effort = effort_of(request);
    HindcastOptions options;
    options.years = static_cast<int>(whole(request, "hindcast-years", 1, 1000));
    options.members = static_cast<std::uint32_t>(whole(request, "hindcast-seasons", 4, 100000));
    if (request.has("analogue-years")) options.continuation = Continuation::analogue;
    const WeatherRecord record = record_of(request, scenario);
    ObservedFirsts observed;
    if (request.has("observed")) {
        const auto file = request.get<std::string>("observed");
        observed = observed_firsts(text_of(file), file, scenario.land.centre.latitude_deg);
    }
    const std::vector<OutputFile> files{{"hindcast.html", "the skill as a page; opens offline"},
                                        {"hindcast.txt", "the table above"},
                                        {"hindcast.csv", "all scores"}};
    const OutputFolder folder(request, scenario, names_of(files));
    const Hindcast hindcast =
        make_hindcast(scenario, record, observed, effort, options, progress_line(request, "hindcast"));
    const std::string table = hindcast_table(scenario, hindcast);
    write_text(folder.path("hindcast.html"), hindcast_page(scenario, hindcast, provenance_of(request)));
    write_text(folder.path("hindcast.txt"), table);
    write_text(folder.path("hindcast.csv"), hindcast_csv(hindcast));
    std::cout << table;
    tell_written(folder, files);
    return 0;
}

int run_forecast(const Request& request) {
    const Scenario scenario = scenario_of(request);
    if (request.has("hindcast")) return run_hindcast(request, scenario);
    if (request.has("observed")) {
        throw InputError("command line", "--observed is only used by the hindcast", "add --hindcast");
    }
    const Effort effort = effort_of(request);
    ForecastOptions options;
    options.members = static_cast<std::uint32_t>(whole(request, "seasons", 1, 1000000));
    if (request.has("analogue-years")) options.continuation = Continuation::analogue;
    const WeatherRecord record = record_of(request, scenario);
    WeatherRecord outlook;
    if (request.has("outlook-file")) outlook = read_weather(request.get<std::string>("outlook-file"));
    const ThisYear weather = this_year(record, today_of(request, record), scenario.land.centre.latitude_deg,
                                       scenario.parameters.weather, request.has("outlook-file") ? &outlook : nullptr);
    const std::vector<OutputFile> files{{"forecast.html", "the calendar as a page; opens offline"},
                                        {"forecast.txt", "the table above"},
                                        {"weeks.csv", "week by week"},
                                        {"days.csv", "the next days"},
                                        {"agenda.ics", "what to do when, for the calendar"}};
    const OutputFolder folder(request, scenario, names_of(files));
    const Forecast forecast = make_forecast(scenario, weather, effort, options, progress_line(request, "forecast"));
    const std::string table = forecast_table(scenario, forecast);
    const Provenance origin = provenance_of(request);
    write_text(folder.path("forecast.html"), forecast_page(scenario, forecast, origin));
    write_text(folder.path("forecast.txt"), table);
    write_text(folder.path("weeks.csv"), forecast_weeks_csv(forecast));
    write_text(folder.path("days.csv"), forecast_days_csv(forecast));
    write_text(folder.path("agenda.ics"), forecast_ics(scenario, forecast, origin));
    std::cout << table;
    tell_written(folder, files);
    return 0;
}

}  // namespace

const Command forecast_command{
    "forecast",
    "the swarm calendar of this year from its weather to date",
    "SCENARIO --weather FILE --today DATE [options]",
    "Simulates this year's season many times: the weather to date as it was, the rest of the year as it\n"
    "may come. Tells dates with odds for the first, the peak and the last of the area's swarms, how early\n"
    "or late the year is, the next days, and what to do when. With --hindcast it tells instead how good\n"
    "such forecasts would have been in past years.\n",
    "scenario",
    "",
    add_options,
    run_forecast};

}  // namespace maybough::command
