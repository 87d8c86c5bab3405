// What each kind of result leaves in its folder.
#include "command/outputs.hpp"

#include <algorithm>
#include <iostream>

namespace maybough::command {

std::vector<std::string> names_of(const std::vector<OutputFile>& files) {
    std::vector<std::string> names;
    for (const OutputFile& file : files) names.push_back(file.name);
    return names;
}

const std::vector<OutputFile>& plan_outputs() {
    static const std::vector<OutputFile> files{
        {"plan.html", "the plan as a page; opens offline, prints on two sheets"},
        {"plan.txt", "the table above"},
        {"traps.gpx", "waypoints for the phone"},
        {"traps.geojson", "for a map program"},
        {"traps.csv", "traps as set; 'maybough season --placement' reads it"},
        {"calendar.ics", "hanging, visits, re-luring, taking down"},
        {"plan.json", "all figures of the plan"},
        {"results.h5", "everything, self-describing (HDF5)"},
    };
    return files;
}

const std::vector<OutputFile>& season_outputs() {
    static const std::vector<OutputFile> files{{"season.html", "the seasons as a page; opens offline"},
                                               {"season.txt", "the table above"},
                                               {"results.h5", "everything, self-describing (HDF5)"}};
    return files;
}

const std::vector<OutputFile>& compare_outputs() {
    static const std::vector<OutputFile> files{{"compare.html", "the comparison as a page; opens offline"},
                                               {"compare.txt", "the table above"},
                                               {"results.h5", "everything, self-describing (HDF5)"}};
    return files;
}

std::string write_plan_outputs(const OutputFolder& folder, const PlanResults& results) {
    const auto& [scenario, plan, origin] = results;
    const Placement& chosen = plan.curve.at(static_cast<std::size_t>(plan.recommended)).placement;
    const std::string table = plan_table(scenario, plan, origin);
    write_text(folder.path("plan.json"), plan_json(scenario, plan, origin));
    write_text(folder.path("traps.gpx"), traps_gpx(scenario, chosen, origin));
    write_text(folder.path("traps.geojson"), traps_geojson(scenario, chosen, origin));
    write_text(folder.path("traps.csv"), traps_csv(scenario, chosen));
    write_text(folder.path("calendar.ics"), calendar_ics(scenario, chosen, origin));
    write_text(folder.path("plan.html"), plan_page(scenario, plan, origin));
    write_text(folder.path("plan.txt"), table);
    return table;
}

std::string write_season_outputs(const OutputFolder& folder, const SeasonResults& results) {
    const auto& [scenario, summary, placement, origin] = results;
    const std::string table = season_table(scenario, summary, placement);
    write_text(folder.path("season.html"), season_page(scenario, summary, placement, origin));
    write_text(folder.path("season.txt"), table);
    return table;
}

std::string write_compare_outputs(const OutputFolder& folder, const CompareResults& results) {
    const auto& [scenario, sides, origin] = results;
    const std::string table = compare_table(scenario, sides);
    write_text(folder.path("compare.html"), compare_page(scenario, sides, origin));
    write_text(folder.path("compare.txt"), table);
    return table;
}

void tell_written(const OutputFolder& folder, const std::vector<OutputFile>& files) {
    std::size_t widest = 0;
    for (const OutputFile& file : files) widest = std::max(widest, file.name.size());
    std::cout << "\nWritten in " << folder.path("") << "\n";
    for (const OutputFile& file : files) {
        std::cout << "  " << file.name << std::string(widest + 2 - file.name.size(), ' ') << file.what << "\n";
    }
}

}  // namespace maybough::command
