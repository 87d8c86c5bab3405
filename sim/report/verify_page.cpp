// Published beside simulated as a page: each finding with its place in the interval in which it is taken to agree.
#include <cmath>

#include "report/page.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

Json finding_json(const Finding& finding) {
    return {{"what", plain_text(finding.what)},
            {"unit", plain_text(finding.unit)},
            {"published", plain_text(finding.published)},
            {"simulated", json_number(finding.simulated)},
            {"simulated_se", json_number(finding.simulated_se)},
            {"simulated_text", three_digits(finding.simulated)},
            {"simulated_se_text", finding.simulated_se > 0 ? three_digits(finding.simulated_se) : ""},
            {"low", json_number(finding.low)},
            {"high", json_number(finding.high)},
            {"low_text", std::isfinite(finding.low) ? three_digits(finding.low) : ""},
            {"high_text", std::isfinite(finding.high) ? three_digits(finding.high) : ""},
            {"why_interval", plain_text(finding.why_interval)},
            {"source", plain_text(finding.source)},
            {"calibrated", finding.footing == Footing::calibrated},
            {"known_departure", plain_text(finding.known_departure)},
            {"verdict", verdict_of(finding)}};
}

}  // namespace

std::string verify_page(const std::vector<Verified>& verified, std::uint32_t seed, const Provenance& origin) {
    const VerifyCount count = count_verdicts(verified);
    Json experiments = Json::array();
    for (const Verified& experiment : verified) {
        Json findings = Json::array();
        for (const Finding& finding : experiment.findings) findings.push_back(finding_json(finding));
        experiments.push_back({{"name", plain_text(experiment.name)},
                               {"theme", plain_text(experiment.theme)},
                               {"title", plain_text(experiment.title)},
                               {"findings", std::move(findings)}});
    }
    Json json{{"file_kind", "maybough verify"}, {"format", 1}, {"origin", json_origin(origin)}};
    json["count"] = {{"findings", count.findings},
                     {"agree", count.agree},
                     {"known", count.known},
                     {"unforeseen", count.findings - count.agree - count.known},
                     {"calibrated", count.calibrated}};
    json["experiments"] = std::move(experiments);
    json["reproduction"] =
        run_again(origin, seed, counted(static_cast<double>(verified.size()), "published experiment"));
    return page_text({"verify", "Published beside simulated", verdicts_in_words(count), std::move(json)});
}

}  // namespace maybough::report
