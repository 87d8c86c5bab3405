// What a replay says in words: names of colonies and sites, the season in short, how each hunt went.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "report/replay.hpp"
#include "report/words.hpp"

namespace maybough::report {

namespace {

using Kind = SeasonEvent::Kind;

std::string upper_first(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

/// A, B, .. Z, AA, AB, ..
std::string letters(std::size_t number) {
    std::string text;
    for (std::size_t left = number + 1; left > 0; left = (left - 1) / 26) {
        text.insert(text.begin(), static_cast<char>('A' + (left - 1) % 26));
    }
    return text;
}

std::string hours_words(double hours) {
    return hours < 36 ? number(hours, 1) + " hours" : number(hours / 24, 1) + " days";
}

}  // namespace

std::string fate_word(Kind fate) {
    switch (fate) {
        case Kind::caught:
            return "caught";
        case Kind::settled:
            return "settled";
        case Kind::hived:
            return "hived";
        default:
            return "lost";
    }
}

bool shown_on_page(const Scenario& scenario, const LoggedSwarm& swarm) {
    const double radius_m = scenario.land.radius_m;
    return distance_m(swarm.swarm.at, {}) <= radius_m || distance_m(swarm.ended_at, {}) <= radius_m;
}

std::map<ColonyId, std::string> colony_names(const Scenario& scenario, const std::vector<ColonyDiary>& diaries) {
    std::map<ColonyId, std::string> names;
    std::map<std::string, int> counted_so_far;
    for (const ColonyDiary& diary : diaries) {
        std::string group = diary.origin == ColonyOrigin::managed ? "Unlisted hive" : "Wild colony";
        if (is_founder(diary.id)) group = "New colony";
        const bool known = diary.apiary >= 0 && static_cast<std::size_t>(diary.apiary) < scenario.apiaries.size();
        const std::string of =
            known ? " of apiary " + plain_text(scenario.apiaries[static_cast<std::size_t>(diary.apiary)].id) : "";
        if (known) group = "Hive";
        names[diary.id] = group + " " + std::to_string(++counted_so_far[group + of]) + of;
    }
    return names;
}

std::string moment_words(const Scenario& scenario, double hour) {
    const Date date = date_of(scenario, Day{static_cast<int>(hour / 24)});
    const auto minutes = static_cast<int>(std::fmod(hour, 24) * 60);
    char text[16];
    std::snprintf(text, sizeof text, ", %d:%02d", minutes / 60, minutes % 60);
    return short_date(date) + text;
}

std::string season_answer(const Scenario& scenario, const SeasonReplay& replay) {
    const SeasonRecord& record = replay.record;
    std::string text = "One season as it may go, number " + std::to_string(replay.season) +
                       " of those that Maybough "
                       "simulates here: " +
                       counted(static_cast<double>(record.in_area), "swarm") + " hung in the area";
    if (!replay.placement.empty()) {
        const auto caught = static_cast<double>(record.catches.size());
        text += ", and " + counted(static_cast<double>(replay.placement.size()), "trap") + " caught " +
                (caught > 0 ? counted(caught, "swarm") : "none");
    }
    const auto first = std::find_if(replay.log.swarms.begin(), replay.log.swarms.end(),
                                    [&](const LoggedSwarm& swarm) { return shown_on_page(scenario, swarm); });
    if (first != replay.log.swarms.end()) text += ". The first came on " + moment_words(scenario, first->hung_h);
    return text + ". Another season goes otherwise: this is one throw of the dice, for looking at, not an average.";
}

std::string season_replay_table(const Scenario& scenario, const SeasonReplay& replay, std::size_t rows) {
    const std::map<ColonyId, std::string> names = colony_names(scenario, replay.diaries);
    TextTable table;
    table.column("swarm").column("hung", TextTable::Align::left).column("from", TextTable::Align::left, 44);
    table.column("bees").column("became", TextTable::Align::left, 40);
    std::size_t told = 0;
    std::size_t untold = 0;
    for (std::size_t i = 0; i < replay.log.swarms.size(); ++i) {
        const LoggedSwarm& logged = replay.log.swarms[i];
        if (!shown_on_page(scenario, logged)) continue;
        if (told >= rows && logged.fate != Kind::caught) {
            ++untold;
            continue;
        }
        ++told;
        std::string became = fate_word(logged.fate);
        for (const Catch& caught : replay.record.catches) {
            if (caught.swarm != logged.swarm.id) continue;
            became += " in trap " + std::to_string(caught.trap + 1) + " (" +
                      spot_name(scenario, replay.placement[caught.trap].spot) + ")";
        }
        table.row({std::to_string(i + 1), moment_words(scenario, logged.hung_h), names.at(logged.swarm.parent),
                   std::to_string(logged.swarm.bees), became});
    }
    if (told == 0) return wrapped(season_answer(scenario, replay));
    std::string text = wrapped(season_answer(scenario, replay)) + "\n" + table.text();
    if (untold > 0) text += "  and " + counted(static_cast<double>(untold), "further swarm") + " that no trap caught\n";
    return text;
}

std::vector<std::string> replay_reproduction(const Scenario& scenario, std::uint32_t season, const Provenance& origin) {
    std::vector<std::string> lines;
    if (!origin.command_line.empty()) lines.push_back(plain_text(origin.command_line));
    std::string run = "Seed " + std::to_string(origin.seed) + ", season " + std::to_string(season) + "; scenario \"" +
                      plain_text(scenario.name) + "\"";
    if (!origin.version.empty()) run += "; maybough " + plain_text(origin.version);
    lines.push_back(run + ". It is season " + std::to_string(season) +
                    " of those that 'maybough season' simulates with that seed.");
    return lines;
}

std::vector<std::string> site_names(const Scenario& scenario, const HuntReplay& replay, const HuntRun& run) {
    // Cavities are lettered in the order of their ids over all runs, so that a letter means one cavity in both.
    std::vector<std::string> names;
    std::size_t cavities = 0;
    for (const SceneSite& site : run.scene.sites) {
        if (!is_trap(site.offer.id)) {
            names.push_back("Cavity " + letters(cavities++));
        } else if (site.trap < 0) {
            names.push_back("Rival trap");
        } else {
            const auto trap = static_cast<std::size_t>(site.trap);
            names.push_back("Trap " + std::to_string(trap + 1) + " (" +
                            spot_name(scenario, replay.placement[trap].spot) + ")");
        }
    }
    return names;
}

std::vector<std::string> hunt_words(const Scenario& scenario, const HuntReplay& replay) {
    std::vector<std::string> lines;
    for (const HuntRun& run : replay.runs) {
        const std::vector<std::string> names = site_names(scenario, replay, run);
        const HuntResult& result = run.result;
        std::string text = upper_first(run.title) + ": " + std::to_string(result.scouts) + " scouts found " +
                           counted(result.sites_found, "site") + " and danced for " +
                           std::to_string(result.sites_danced_for) + "; ";
        if (result.outcome == HuntOutcome::moved) {
            std::size_t chosen = 0;
            while (run.scene.sites[chosen].offer.id != result.site) ++chosen;
            text += "a quorum was met after " + hours_words(result.decision_h) + " and the swarm moved into " +
                    names[chosen] + " after " + hours_words(result.arrival_h) + ".";
        } else if (result.outcome == HuntOutcome::hived) {
            text += "somebody hived the cluster after " + hours_words(result.arrival_h) + ", before it had moved.";
        } else {
            text += std::string("the scouts never agreed, and the swarm ") +
                    (result.outcome == HuntOutcome::built_in_open ? "built in the open." : "was lost.");
        }
        lines.push_back(text);
    }
    return lines;
}

}  // namespace maybough::report
