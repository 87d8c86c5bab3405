// Published beside simulated: for the terminal, at most 100 columns wide, and as CSV.
#include <cmath>

#include "report/report.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

using Align = TextTable::Align;

std::string figure(double value) {
    return std::isinf(value) ? "" : three_digits(value);
}

std::string accepted(const Finding& finding) {
    if (std::isinf(finding.low)) return "at most " + figure(finding.high);
    if (std::isinf(finding.high)) return "at least " + figure(finding.low);
    return figure(finding.low) + " to " + figure(finding.high);
}

std::string simulated(const Finding& finding) {
    return three_digits(finding.simulated) +
           (finding.simulated_se > 0 ? " +- " + three_digits(finding.simulated_se) : "");
}

std::string footing_words(Footing footing) {
    return footing == Footing::calibrated ? "A constant was chosen so that it comes out." : "";
}

/// One finding: the figures on one line, then where the published one is from and how it is judged.
std::string finding_lines(const Finding& finding, std::size_t widest) {
    const std::string what = plain_text(finding.what + (finding.unit.empty() ? "" : ", " + finding.unit));
    std::string lines = wrapped(what, 2, table_width);
    std::string row = "    " + shortened(finding.published, 24);
    row.resize(std::max<std::size_t>(row.size(), 28), ' ');
    row += "  " + simulated(finding);
    row.resize(std::max<std::size_t>(row.size(), 50), ' ');
    row += "  " + accepted(finding);
    row.resize(std::max<std::size_t>(row.size(), widest), ' ');
    lines += row + "  " + verdict_of(finding) + "\n";
    const std::string footing = footing_words(finding.footing);
    lines +=
        wrapped(finding.source + ". Accepted: " + finding.why_interval + "." + (footing.empty() ? "" : " " + footing),
                6, table_width);
    if (!finding.known_departure.empty()) lines += wrapped("Known to depart: " + finding.known_departure, 6);
    return lines;
}

}  // namespace

VerifyCount count_verdicts(const std::vector<Verified>& verified) {
    VerifyCount count;
    for (const Verified& experiment : verified) {
        for (const Finding& finding : experiment.findings) {
            ++count.findings;
            count.agree += agrees(finding) ? 1 : 0;
            count.known += !agrees(finding) && !finding.known_departure.empty() ? 1 : 0;
            count.calibrated += finding.footing == Footing::calibrated ? 1 : 0;
        }
    }
    return count;
}

std::string verdict_of(const Finding& finding) {
    if (agrees(finding)) return finding.known_departure.empty() ? "agrees" : "agrees now";
    return finding.known_departure.empty() ? "DEPARTS" : "departs, known";
}

std::string verdicts_in_words(const VerifyCount& count) {
    const int unforeseen = count.findings - count.agree - count.known;
    return counted(count.agree, "finding") + " of " + std::to_string(count.findings) +
           " agree with what was published; " + std::to_string(count.known) + " are known to depart, and " +
           std::to_string(unforeseen) + " depart unforeseen. For " + std::to_string(count.calibrated) +
           " of them a constant of the model was chosen so that they come out: they show that the model can, not that "
           "it foretells.";
}

std::string verify_table(const std::vector<Verified>& verified) {
    std::string text = wrapped(verdicts_in_words(count_verdicts(verified)));
    text += "\n    published                 simulated             accepted" + std::string(17, ' ') + "verdict\n";
    for (const Verified& experiment : verified) {
        text += heading(experiment.theme + ", " + experiment.name + ": " + experiment.title);
        for (const Finding& finding : experiment.findings) text += finding_lines(finding, 75);
    }
    return text;
}

std::string verify_csv(const std::vector<Verified>& verified) {
    const auto cell = [](const std::string& text) {
        std::string quoted = "\"";
        for (const char c : plain_text(text)) quoted.append(c == '"' ? 2 : 1, c);
        return quoted + "\"";
    };
    std::string text =
        "theme,experiment,what,unit,published,simulated,simulated_se,accepted_low,accepted_high,verdict,footing,"
        "why_interval,source,known_departure\n";
    for (const Verified& experiment : verified) {
        for (const Finding& f : experiment.findings) {
            text += experiment.theme + "," + experiment.name + "," + cell(f.what) + "," + cell(f.unit) + "," +
                    cell(f.published) + "," + exact(f.simulated) + "," + exact(f.simulated_se) + "," + exact(f.low) +
                    "," + exact(f.high) + "," + cell(verdict_of(f)) + "," +
                    (f.footing == Footing::calibrated ? "calibrated" : "independent") + "," + cell(f.why_interval) +
                    "," + cell(f.source) + "," + cell(f.known_departure) + "\n";
        }
    }
    return text;
}

}  // namespace maybough::report
