// Every finding of a theme is judged: it agrees, or it departs and says why; a departure that is gone must be unsaid.
#pragma once

#include <doctest/doctest.h>

#include <set>

#include "experiments/experiments.hpp"

namespace maybough_test {

inline void judge(const std::vector<maybough::Experiment>& experiments) {
    std::set<std::string_view> names;
    for (const maybough::Experiment& experiment : experiments) {
        CAPTURE(experiment.name);
        CHECK(names.insert(experiment.name).second);
        const auto findings = experiment.run(maybough::Parameters{}, 1);
        CHECK_FALSE(findings.empty());
        for (const maybough::Finding& finding : findings) {
            INFO(finding.what << ": published " << finding.published << ", simulated " << finding.simulated << " +- "
                              << finding.simulated_se << ", accepted " << finding.low << " to " << finding.high);
            CHECK(maybough::agrees(finding) == finding.known_departure.empty());
            CHECK_FALSE(finding.source.empty());
            CHECK_FALSE(finding.why_interval.empty());
        }
    }
}

}  // namespace maybough_test
