// Seasons and comparisons in a results file: written, and read back for making their outputs again.
#include <map>

#include "report/result_columns.hpp"
#include "report/whole_file.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

struct Replicate {
    std::size_t replicate = 0;
    std::int64_t catches = 0;
    SeasonRecord season;
    double net = 0;
};
const Columns<Replicate>& replicate_columns() {
    static const Columns<Replicate> columns = [] {
        Columns<Replicate> list;
        list.add("replicate", "1", MAYBOUGH_PLACE(replicate));
        list.add("catches", "swarm", MAYBOUGH_PLACE(catches));
        list.add("swarms", "swarm", MAYBOUGH_PLACE(season.swarms));
        list.add("prime_swarms", "swarm", MAYBOUGH_PLACE(season.prime_swarms));
        list.add("in_area", "swarm", MAYBOUGH_PLACE(season.in_area));
        list.add("settled_in_cavities", "swarm", MAYBOUGH_PLACE(season.settled_in_cavities));
        list.add("hived_by_others", "swarm", MAYBOUGH_PLACE(season.hived_by_others));
        list.add("lost", "swarm", MAYBOUGH_PLACE(season.lost));
        list.add("scouting_h", "h", MAYBOUGH_PLACE(season.scouting_h));
        list.add("cost", "currency", MAYBOUGH_PLACE(season.cost));
        list.add("value", "currency", MAYBOUGH_PLACE(season.value));
        list.add("net", "currency", MAYBOUGH_PLACE(net));
        return list;
    }();
    return columns;
}

struct CatchRow {
    std::size_t replicate = 0;
    std::string date, taken, origin;
    Catch caught;
};
const Columns<CatchRow>& catch_columns() {
    static const Columns<CatchRow> columns = [] {
        Columns<CatchRow> list;
        list.add("replicate", "1", MAYBOUGH_PLACE(replicate));
        list.add("swarm", "id", MAYBOUGH_PLACE(caught.swarm.value));
        list.add("trap", "row of season/traps", MAYBOUGH_PLACE(caught.trap));
        list.add("day", "day of the simulated year", MAYBOUGH_PLACE(caught.caught));
        list.add("date", "text", MAYBOUGH_PLACE(date));
        list.add("taken", "text", MAYBOUGH_PLACE(taken));
        list.add("waited_days", "day", MAYBOUGH_PLACE(caught.taking.waited_days));
        list.add("bees", "1", MAYBOUGH_PLACE(caught.bees));
        list.add("prime", "1 = yes", MAYBOUGH_PLACE(caught.prime));
        list.add("origin", "text", MAYBOUGH_PLACE(origin));
        list.add("distance_m", "m", MAYBOUGH_PLACE(caught.distance_m));
        list.add("value", "currency", MAYBOUGH_PLACE(caught.taking.value));
        return list;
    }();
    return columns;
}

struct Measure {
    std::string measure, unit;
    Estimate estimate;
};
const Columns<Measure>& measure_columns() {
    static const Columns<Measure> columns = [] {
        Columns<Measure> list;
        list.add("measure", "text", MAYBOUGH_PLACE(measure));
        list.add("unit", "text", MAYBOUGH_PLACE(unit));
        list.estimate("estimate", "see unit", MAYBOUGH_PLACE(estimate));
        return list;
    }();
    return columns;
}

const Columns<ComparedPlacement>& compared_columns() {
    static const Columns<ComparedPlacement> columns = [] {
        Columns<ComparedPlacement> list;
        list.add("name", "text", MAYBOUGH_PLACE(name));
        list.estimate("catches", "swarm/season", MAYBOUGH_PLACE(catches));
        list.estimate("cost", "currency/season", MAYBOUGH_PLACE(cost));
        list.estimate("net", "currency/season", MAYBOUGH_PLACE(net));
        list.estimate("catches_less_first", "swarm/season", MAYBOUGH_PLACE(catches_less_first));
        list.estimate("net_less_first", "currency/season", MAYBOUGH_PLACE(net_less_first));
        list.add("odds_better_than_first", "1", MAYBOUGH_PLACE(odds_better_than_first));
        return list;
    }();
    return columns;
}

std::vector<Measure> measures(const SeasonSummary& summary) {
    const std::string swarms = "swarm/season";
    const std::string money_a_season = "currency/season";
    std::vector<Measure> rows{{"catches", swarms, summary.catches},
                              {"swarms", swarms, summary.swarms},
                              {"swarms_in_area", swarms, summary.swarms_in_area},
                              {"prime_share", "1", summary.prime_share},
                              {"settled_in_cavities", swarms, summary.settled_in_cavities},
                              {"hived_by_others", swarms, summary.hived_by_others},
                              {"lost", swarms, summary.lost},
                              {"cost", money_a_season, summary.cost},
                              {"value", money_a_season, summary.value},
                              {"net", money_a_season, summary.net}};
    for (std::size_t i = 0; i < summary.by_trap.size(); ++i) {
        rows.push_back({"catches of trap " + std::to_string(i + 1), swarms, summary.by_trap[i]});
    }
    return rows;
}

void write_replicates(Hdf5Writer& file, const Scenario& scenario, const SeasonSummary& summary) {
    std::vector<Replicate> replicates;
    std::vector<CatchRow> catches;
    for (std::size_t i = 0; i < summary.seasons.size(); ++i) {
        const SeasonRecord& season = summary.seasons[i];
        for (const Catch& caught : season.catches) {
            catches.push_back({i, iso(date_of(scenario, caught.caught)), iso(date_of(scenario, caught.taking.taken)),
                               caught.origin == ColonyOrigin::managed ? "managed" : "wild", caught});
        }
        replicates.push_back({i, static_cast<std::int64_t>(season.catches.size()), season, season.net()});
        replicates.back().season.catches.clear();
    }
    replicate_columns().write(file, "/replicates", replicates);
    catch_columns().write(file, "/events/catches", catches);
}

/// Estimates back to where their names say.
void read_measures(const Hdf5Reader& file, SeasonSummary& summary) {
    const std::map<std::string, Estimate SeasonSummary::*> places{
        {"catches", &SeasonSummary::catches},
        {"swarms", &SeasonSummary::swarms},
        {"swarms_in_area", &SeasonSummary::swarms_in_area},
        {"prime_share", &SeasonSummary::prime_share},
        {"settled_in_cavities", &SeasonSummary::settled_in_cavities},
        {"hived_by_others", &SeasonSummary::hived_by_others},
        {"lost", &SeasonSummary::lost},
        {"cost", &SeasonSummary::cost},
        {"value", &SeasonSummary::value},
        {"net", &SeasonSummary::net}};
    for (const Measure& row : measure_columns().read(file, "/season/estimates")) {
        const auto place = places.find(row.measure);
        if (place == places.end()) {
            summary.by_trap.push_back(row.estimate);
        } else {
            summary.*place->second = row.estimate;
        }
    }
}

SeasonSummary read_summary(const Hdf5Reader& file) {
    SeasonSummary summary;
    read_measures(file, summary);
    for (const Replicate& row : replicate_columns().read(file, "/replicates")) summary.seasons.push_back(row.season);
    for (const CatchRow& row : catch_columns().read(file, "/events/catches")) {
        Catch caught = row.caught;
        caught.origin = row.origin == "managed" ? ColonyOrigin::managed : ColonyOrigin::wild;
        summary.seasons.at(row.replicate).catches.push_back(caught);
    }
    for (const OddsRow& row : odds_columns().read(file, "/season/odds")) summary.odds_at_least.push_back(row.share);
    for (const DayRow& row : day_columns().read(file, "/season/days")) {
        summary.swarm_days.push_back(row.swarms);
        summary.catch_days.push_back(row.catches);
    }
    if (file.has_column("/season/swarm_squares", "swarms")) {
        summary.swarm_squares = swarm_square_columns().read(file, "/season/swarm_squares");
    }
    return summary;
}

}  // namespace

void write_season_results(const std::string& path, const Scenario& scenario, const SeasonSummary& summary,
                          const Placement& placement, const Provenance& origin) {
    WholeFile whole(path);
    {
        Hdf5Writer file(whole.temporary());
        begin_results(file, "season", scenario, origin);
        write_scenario(file, scenario);
        write_replicates(file, scenario, summary);
        measure_columns().write(file, "/season/estimates", measures(summary));
        std::vector<PlacedTrap> placed;
        add_placed(placed, 0, placement);
        placed_trap_columns().write(file, "/season/traps", placed);
        std::vector<OddsRow> odds;
        add_odds(odds, 0, summary.odds_at_least);
        odds_columns().write(file, "/season/odds", odds);
        day_columns().write(file, "/season/days", day_rows(scenario, summary.swarm_days, summary.catch_days));
        swarm_square_columns().write(file, "/season/swarm_squares", summary.swarm_squares);
        end_results(file);
    }
    whole.keep();
}

void write_compare_results(const std::string& path, const Scenario& scenario,
                           const std::vector<ComparedPlacement>& sides, const Provenance& origin) {
    WholeFile whole(path);
    {
        Hdf5Writer file(whole.temporary());
        begin_results(file, "compare", scenario, origin);
        write_scenario(file, scenario);
        compared_columns().write(file, "/compare/sides", sides);
        std::vector<PlacedTrap> placed;
        for (std::size_t i = 0; i < sides.size(); ++i) add_placed(placed, i, sides[i].placement);
        placed_trap_columns().write(file, "/compare/traps", placed);
        end_results(file);
    }
    whole.keep();
}

SeasonResults read_season_results(const std::string& path) {
    const Hdf5Reader file(path);
    SeasonResults results;
    results.origin = check_results(file, "season");
    try {
        results.scenario = read_scenario_tables(file);
        results.summary = read_summary(file);
    } catch (const std::out_of_range&) {
        throw InputError(path, "points at rows it does not have", "the results file is damaged");
    }
    for (const PlacedTrap& row : placed_trap_columns().read(file, "/season/traps")) {
        results.placement.push_back(row.setting);
    }
    return results;
}

CompareResults read_compare_results(const std::string& path) {
    const Hdf5Reader file(path);
    CompareResults results;
    results.origin = check_results(file, "compare");
    try {
        results.scenario = read_scenario_tables(file);
        results.sides = compared_columns().read(file, "/compare/sides");
        for (const PlacedTrap& row : placed_trap_columns().read(file, "/compare/traps")) {
            results.sides.at(row.placement).placement.push_back(row.setting);
        }
    } catch (const std::out_of_range&) {
        throw InputError(path, "points at rows it does not have", "the results file is damaged");
    }
    return results;
}

}  // namespace maybough::report
