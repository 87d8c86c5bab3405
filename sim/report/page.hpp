// What all pages share: the frame from tools/page filled with a title, an answer and one block of data. Private to
// report/.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "report/json.hpp"

namespace maybough::report {

/// One page that opens offline.
struct Page {
    std::string_view frame;  ///< a page of tools/page/pages.mjs: its sections, styles and scripts
    std::string title;
    std::string answer;  ///< the first paragraph, readable without scripts
    Json data;           ///< what the script reads; needs "origin", may have "assumptions", "cautions", "reproduction"
};
/// The page as HTML; title and answer are text, never markup. Throws ModelFault for a frame that is not there.
std::string page_text(const Page& page);

/// The land for the map: habitats, hives, the spots that `used` does not use, and where swarms hang, if that is known.
Json map_json(const Scenario& scenario, const Placement& used, const std::vector<SwarmSquare>& swarms = {});
/// What is drawn from its odds for every belief: meaning, middle, 9 in 10 range, how well founded and by which source.
Json beliefs_json(const Scenario& scenario);
/// Name, year, centre, radius, currency.
Json json_scenario(const Scenario& scenario);
/// Mean swarms, or catches, a day of the simulated year.
Json calendar_json(const Scenario& scenario, const std::vector<double>& swarms, const std::vector<double>& catches);
/// [k-1] = chance of at least k swarms.
Json odds_json(const std::vector<SeasonShare>& odds);

/// How to get the same numbers again, and how to cite them: command, `run` ("400 simulated seasons"), seed, version.
std::vector<std::string> run_again(const Provenance& origin, std::uint32_t seed, const std::string& run);
/// How to cite a run, one sentence.
std::string citation(const Provenance& origin);

/// Terminals get "+-", pages the sign.
std::string with_sign(std::string text);
std::vector<std::string> with_signs(std::vector<std::string> lines);

}  // namespace maybough::report
