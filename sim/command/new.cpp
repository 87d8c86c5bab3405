// maybough new: a starter scenario for a place.
#include <boost/program_options/value_semantic.hpp>
#include <iostream>

#include "command/command_line.hpp"

namespace maybough::command {

namespace {

void add_options(po::options_description& options) {
    options.add_options()("folder", po::value<std::string>()->value_name("FOLDER"), "folder to make");
    options.add_options()("name", po::value<std::string>()->default_value("New place")->value_name("TEXT"),
                          "name of the place");
    options.add_options()("latitude", po::value<double>()->value_name("DEG"), "of the centre, south negative");
    options.add_options()("longitude", po::value<double>()->value_name("DEG"), "of the centre, west negative");
    options.add_options()("radius", po::value<double>()->default_value(3000)->value_name("M"),
                          "of the area in which traps may hang, in metres");
    options.add_options()("country", po::value<std::string>()->default_value("farmland")->value_name("HABITAT"),
                          "what lies everywhere: woodland, parkland, orchard, farmland, grassland, suburb or town");
    options.add_options()("spots", po::value<std::string>()->value_name("FILE"),
                          "candidate spots: CSV, GPX or GeoJSON");
    options.add_options()("hives", po::value<std::string>()->value_name("FILE"),
                          "hives you know of: CSV, GPX or GeoJSON");
    options.add_options()("weather", po::value<std::string>()->value_name("FILE"),
                          "daily weather: GHCN-Daily, EPW, or CSV with units in its header");
}

int run_new(const Request& request) {
    for (const char* needed : {"folder", "latitude", "longitude"}) {
        if (!request.has(needed)) {
            throw InputError("command line", std::string("--") + needed + " is missing",
                             "for example: maybough new home --latitude 47.1 --longitude 8.3");
        }
    }
    Starter starter;
    starter.name = request.get<std::string>("name");
    starter.centre = {number(request, "latitude", -66, 66), number(request, "longitude", -180, 180)};
    starter.radius_m = number(request, "radius", 100, 30000);
    starter.country = request.get<std::string>("country");
    if (request.has("spots")) starter.spots_file = request.get<std::string>("spots");
    if (request.has("hives")) starter.hives_file = request.get<std::string>("hives");
    if (request.has("weather")) starter.weather_file = request.get<std::string>("weather");
    const auto folder = request.get<std::string>("folder");
    write_starter(folder, starter);
    std::cout << "Written: " << folder << "\nNext: put your own spots, hives and prices in, then 'maybough check "
              << folder << "'.\n";
    return 0;
}

}  // namespace

const Command new_command{
    "new",
    "writes a starter scenario for a place",
    "FOLDER --latitude DEG --longitude DEG [options]",
    "Makes a folder with scenario.json and the files it names, ready to be filled in. Spots, hives and\n"
    "weather are taken from the files given.\n",
    "folder",
    "",
    add_options,
    run_new};

}  // namespace maybough::command
