// Words that the replay pages and tables share: private to report/.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "report/report.hpp"

namespace maybough::report {

/// "caught", "settled", "hived", "lost".
std::string fate_word(SeasonEvent::Kind fate);
/// True where the swarm hung in the area, or came into it.
bool shown_on_page(const Scenario& scenario, const LoggedSwarm& swarm);
/// "Hive 3 of apiary mill", "Unlisted hive 5", "Wild colony 7", "New colony 2 (from swarm 14)".
std::map<ColonyId, std::string> colony_names(const Scenario& scenario, const std::vector<ColonyDiary>& diaries);
/// The season in a few sentences.
std::string season_answer(const Scenario& scenario, const SeasonReplay& replay);
/// How to get the page again.
std::vector<std::string> replay_reproduction(const Scenario& scenario, std::uint32_t season, const Provenance& origin);
/// "5 June, 14:10" of an hour of the simulated year.
std::string moment_words(const Scenario& scenario, double hour);

}  // namespace maybough::report
