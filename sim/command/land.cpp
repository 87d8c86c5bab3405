// maybough land: habitats, a map and proposals for spots from an OpenStreetMap extract.
#include <algorithm>
#include <boost/program_options/value_semantic.hpp>
#include <iostream>

#include "command/command_line.hpp"
#include "extract/extract.hpp"

namespace maybough::command {

namespace {

void add_options(po::options_description& options) {
    options.add_options()("extract", po::value<std::string>()->value_name("FILE"), "the extract: .osm, .osm.pbf");
    options.add_options()("place", po::value<std::string>()->value_name("LAT,LON"), "the centre of the area");
    options.add_options()("radius", po::value<std::string>()->default_value("3km")->value_name("LENGTH"),
                          "of the area: 3km, 2500m, 2mi");
    options.add_options()("margin", po::value<std::string>()->default_value("3km")->value_name("LENGTH"),
                          "habitats are kept this far beyond");
    options.add_options()("tolerance", po::value<std::string>()->default_value("3m")->value_name("LENGTH"),
                          "by which outlines may move when simplified");
    options.add_options()("tags", po::value<std::string>()->value_name("FILE"),
                          "which tags become what: the CSV that --write-tags writes, changed by you");
    options.add_options()("write-tags", "write the usual table to tags.csv in the output folder too");
    add_output_options(options);
}

int run_land(const Request& request) {
    const char* example = "for example: maybough land extract.osm.pbf --place 46.8,-6.0 --radius 3km";
    if (!request.has("extract")) throw InputError("command line", "the extract is missing", example);
    if (!request.has("place")) throw InputError("command line", "--place is missing", example);
    LandRequest asked;
    asked.file = request.get<std::string>("extract");
    asked.centre = place_in_words(request.get<std::string>("place"), "--place");
    asked.radius_m = metres_in_words(request.get<std::string>("radius"), "--radius", 100, 30000);
    asked.margin_m = metres_in_words(request.get<std::string>("margin"), "--margin", 0, 10000);
    asked.tolerance_m = metres_in_words(request.get<std::string>("tolerance"), "--tolerance", 0, 100);
    asked.rules = request.has("tags") ? read_tag_rules(request.get<std::string>("tags")) : usual_tag_rules();
    const OutputFolder folder(
        request, {},
        {"habitats.geojson", "land.geojson", "spots-proposed.csv", "land.txt", "land-cavities.json", "tags.csv"});
    Drawn drawn = read_drawn(asked);
    cut_to_reach(drawn, asked);
    const bool any = std::any_of(drawn.areas.begin(), drawn.areas.end(), [](const Area& a) { return a.kept_m2 > 0; });
    if (!any) {
        throw InputError(asked.file, "found nothing within the radius of --place",
                         "are latitude and longitude swapped, or is it an extract of another place?");
    }
    write_text(folder.path("habitats.geojson"), habitats_geojson(drawn, asked));
    write_text(folder.path("land.geojson"), map_geojson(drawn, asked));
    write_text(folder.path("spots-proposed.csv"), proposals_csv(drawn, asked));
    write_text(folder.path("land.txt"), account(drawn, asked));
    if (const std::string beliefs = cavity_beliefs(drawn); !beliefs.empty()) {
        write_text(folder.path("land-cavities.json"), beliefs);
    }
    if (request.has("write-tags")) write_text(folder.path("tags.csv"), tag_rules_csv(asked.rules));
    std::cout << account(drawn, asked);
    return 0;
}

}  // namespace

const Command land_command{
    "land",
    "habitats, a map and proposals for spots from an OpenStreetMap extract",
    "EXTRACT --place LAT,LON [options]",
    "Reads an extract (XML or PBF) and writes habitats.geojson, land.geojson (streets, water, buildings and\n"
    "names for the map), spots-proposed.csv (single trees, churches, barns), land.txt (what was read, mended\n"
    "and left out) and, where the map shows enough, land-cavities.json about cavities. Then:\n"
    "maybough new home --land FOLDER --spots FILE.\n",
    "extract",
    "",
    add_options,
    run_land};

}  // namespace maybough::command
