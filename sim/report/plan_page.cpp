// The plan as one page that opens offline: its figures, its map, and the prose that several outputs share.
#include "report/page.hpp"
#include "report/sections.hpp"

namespace maybough::report {

std::string plan_page(const Scenario& scenario, const Plan& plan, const Provenance& origin) {
    Json json = plan_as_json(scenario, plan, origin);
    std::vector<std::string> again = reproduction(scenario, plan.effort, origin);
    again.push_back(citation(origin));
    json["map"] = map_json(scenario, recommended_point(plan).placement, plan.swarm_squares);
    json["beliefs"] = beliefs_json(scenario);
    json["prose"] = {{"chance", with_sign(chance_and_ignorance(recommended_point(plan).catches))},
                     {"why", with_sign(stop_words(plan))},
                     {"unknowns", with_signs(unknowns(scenario, plan))},
                     {"others", other_terms(scenario, plan)},
                     {"search", search_quality(scenario, plan)},
                     {"reproduction", again}};
    return page_text({"plan", "Traps for " + scenario.name + ", " + std::to_string(scenario.year),
                      plan_answer(scenario, plan), std::move(json)});
}

}  // namespace maybough::report
