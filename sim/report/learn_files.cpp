// What a catch log taught, as files: beliefs as a scenario overlay, and the unknowns as CSV.
#include <cstdio>
#include <cstdlib>

#include "report/json.hpp"
#include "report/report.hpp"
#include "report/words.hpp"

namespace maybough::report {

namespace {
/// To four digits: more would promise too much.
double rounded(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.4g", value);
    return std::strtod(text, nullptr);
}
}  // namespace

std::string learned_overlay(const Learned& learned) {
    Json beliefs = Json::object();
    for (const LearnedUnknown& unknown : learned.unknowns) {
        if (!unknown.taught) continue;
        beliefs[unknown.key] = {{"median", rounded(unknown.posterior.median)},
                                {"low", rounded(unknown.posterior.low)},
                                {"high", rounded(unknown.posterior.high)}};
    }
    const Json overlay{{"format", 1}, {"beliefs", std::move(beliefs)}};
    return "// Beliefs as a catch log left them: 'maybough plan SCENARIO --overlay THIS-FILE'. " +
           counted(learned.swarms, "swarm") + " in " + counted(static_cast<double>(learned.years.size()), "year") +
           ".\n" + overlay.dump(2) + "\n";
}

std::string learned_csv(const Learned& learned) {
    std::string text =
        "parameter,unit,before_median,before_low_5,before_high_95,after_median,after_low_5,after_high_95,"
        "moved_sd,narrowed,effect_ln,effect_se,taught\n";
    const auto three = [](const Belief& belief) {
        return exact(belief.median) + "," + exact(belief.low) + "," + exact(belief.high);
    };
    for (const LearnedUnknown& unknown : learned.unknowns) {
        text += unknown.key + "," + unknown.unit + "," + three(unknown.prior) + "," + three(unknown.posterior) + "," +
                exact(unknown.shift_spreads) + "," + exact(unknown.narrowed) + "," + exact(unknown.effect_ln) + "," +
                exact(unknown.effect_se) + "," + (unknown.taught ? "yes" : "no") + "\n";
    }
    return text;
}

}  // namespace maybough::report
