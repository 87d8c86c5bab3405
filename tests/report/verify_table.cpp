// Published beside simulated: verdicts, counts, and what the CSV holds.
#include <doctest/doctest.h>

#include <limits>

#include "report/report.hpp"

using namespace maybough;

namespace {

Finding finding(double simulated, const std::string& departure) {
    Finding f;
    f.what = "days from the prime swarm to the first afterswarm, median";
    f.unit = "d";
    f.published = "8 to 10";
    f.simulated = simulated;
    f.simulated_se = 0.125;
    f.low = 6;
    f.high = 12;
    f.why_interval = "two days either side";
    f.source = "Winston 1987, \"The biology of the honey bee\"";
    f.known_departure = departure;
    return f;
}

std::vector<Verified> sample() {
    Finding open_ended = finding(3, "");
    open_ended.low = -std::numeric_limits<double>::infinity();
    open_ended.high = 4;
    open_ended.footing = Footing::calibrated;
    return {{"afterswarms",
             "colony",
             "afterswarms of wild nests",
             {finding(9, ""), finding(14, ""), finding(14, "the law of delays is simple"), open_ended}}};
}

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("findings are counted by their verdicts") {
    const VerifyCount count = count_verdicts(sample());
    CHECK(count.findings == 4);
    CHECK(count.agree == 2);
    CHECK(count.known == 1);
    CHECK(count.calibrated == 1);
}

TEST_CASE("the table tells figures, interval, source and verdict in 100 columns") {
    const std::string text = verify_table(sample());
    CHECK(holds(text, "2 findings of 4 agree"));
    CHECK(holds(text, "1 depart unforeseen"));
    CHECK(holds(text, "9 +- 0.125"));
    CHECK(holds(text, "6 to 12"));
    CHECK(holds(text, "at most 4"));
    CHECK(holds(text, "DEPARTS\n"));
    CHECK(holds(text, "departs, known\n"));
    CHECK(holds(text, "the law of delays is simple"));
    CHECK(holds(text, "Winston 1987"));
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = text.find('\n', at);
        CHECK(end - at <= 100);
        at = end + 1;
    }
}

TEST_CASE("the CSV quotes what needs it and leaves an open end empty") {
    const std::string text = verify_csv(sample());
    CHECK(holds(text, "\"Winston 1987, \"\"The biology of the honey bee\"\"\""));
    CHECK(holds(text, ",9,0.125,6,12,\"agrees\",independent,"));
    CHECK(holds(text, ",3,0.125,,4,\"agrees\",calibrated,"));
}
