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
    options.add_options()("radius", po::value<double>()->value_name("M"),
                          "of the area in which traps may hang, in metres; else 3000, or what holds the spots");
    options.add_options()("country", po::value<std::string>()->default_value("farmland")->value_name("HABITAT"),
                          "what lies everywhere: woodland, parkland, orchard, farmland, grassland, suburb or town");
    options.add_options()("spots", po::value<std::string>()->value_name("FILE"),
                          "candidate spots: CSV, GPX, KML, KMZ or GeoJSON");
    options.add_options()("hives", po::value<std::string>()->value_name("FILE"),
                          "hives you know of, in the same forms");
    options.add_options()("hives-each", po::value<std::int64_t>()->value_name("N"),
                          "how many hives stand at each place where the file does not say");
    options.add_options()("land", po::value<std::string>()->value_name("FOLDER"),
                          "what maybough land has written: habitats and the map");
    options.add_options()("weather", po::value<std::string>()->value_name("FILE"),
                          "daily weather: GHCN-Daily, EPW, or CSV with units in its header");
}

/// The centre and radius as given, else from spots or hives.
void set_place(const Request& request, Starter& starter) {
    const bool given = request.has("latitude");
    if (!given && starter.spots_file.empty() && starter.hives_file.empty()) {
        throw InputError("command line", "nothing says where the place is",
                         "give --latitude and --longitude, or --spots or --hives with positions");
    }
    if (given) {
        starter.centre = {number_option(request, "latitude", -66, 66), number_option(request, "longitude", -180, 180)};
        if (request.has("radius")) starter.radius_m = number_option(request, "radius", 100, 30000);
        return;
    }
    const Surroundings found = surroundings_of(starter.spots_file, starter.hives_file);
    starter.centre = found.centre;
    starter.radius_m = request.has("radius") ? number_option(request, "radius", 100, 30000) : found.radius_m;
    std::cout << "Centre " << found.centre.latitude_deg << ", " << found.centre.longitude_deg << " and radius "
              << starter.radius_m << " m, from the places given.\n";
}

int run_new(const Request& request) {
    const auto example = "for example: maybough new home --latitude 47.1 --longitude 8.3";
    if (!request.has("folder")) throw InputError("command line", "FOLDER is missing", example);
    if (request.has("latitude") != request.has("longitude")) {
        throw InputError("command line", "found one of --latitude and --longitude, expected both or none", example);
    }
    Starter starter;
    starter.name = request.get<std::string>("name");
    starter.country = request.get<std::string>("country");
    if (request.has("spots")) starter.spots_file = request.get<std::string>("spots");
    if (request.has("hives")) starter.hives_file = request.get<std::string>("hives");
    if (request.has("weather")) starter.weather_file = request.get<std::string>("weather");
    if (request.has("land")) starter.habitats_file = request.get<std::string>("land") + "/habitats.geojson";
    if (request.has("land")) starter.map_file = request.get<std::string>("land") + "/land.geojson";
    if (request.has("hives-each")) starter.hives_each = static_cast<int>(whole(request, "hives-each", 1, 500));
    set_place(request, starter);
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
    "FOLDER [--latitude DEG --longitude DEG] [options]",
    "Makes a folder with scenario.json and the files it names, ready to be filled in. Spots, hives and\n"
    "weather are taken from the files given. Where no latitude is given, spots or hives tell the place.\n",
    "folder",
    "",
    add_options,
    run_new};

}  // namespace maybough::command
