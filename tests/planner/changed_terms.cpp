// How the best number moves with a swarm's worth and with the budget, worked out by hand.
#include <doctest/doctest.h>

#include "planner/curve.hpp"

using namespace maybough;

namespace {
/// Worths 0, 100, 160, 190 and costs 0, 60, 100, 150, so nets 0, 40, 60, 40; outlay 0, 50, 80, 120.
std::vector<CurvePoint> by_hand() {
    const double value[] = {0, 100, 160, 190};
    const double cost[] = {0, 60, 100, 150};
    const double outlay[] = {0, 50, 80, 120};
    std::vector<CurvePoint> curve(4);
    for (std::size_t k = 0; k < 4; ++k) {
        curve[k].traps = static_cast<int>(k);
        curve[k].value.mean = value[k];
        curve[k].net.mean = value[k] - cost[k];
        curve[k].outlay = outlay[k];
    }
    return curve;
}

const ChangedTerms& at(const std::vector<ChangedTerms>& all, double amount) {
    for (const ChangedTerms& terms : all) {
        if (terms.amount == amount) return terms;
    }
    FAIL("no such terms");
    return all.front();
}
}  // namespace

TEST_CASE("the dearer a swarm, the more traps") {
    const std::vector<ChangedTerms> terms = with_swarm_value(by_hand());
    // Half: nets -10, -20 and -55, so none. Three quarters: 15, 20, -7.5.
    CHECK(at(terms, 0.5).best_traps == 0);
    CHECK(at(terms, 0.5).net == 0);
    CHECK(at(terms, 0.75).best_traps == 2);
    CHECK(at(terms, 0.75).net == doctest::Approx(20));
    CHECK(at(terms, 1).best_traps == 2);
    // Double: 140, 220, 230; three times: 240, 380, 420.
    CHECK(at(terms, 2).best_traps == 3);
    CHECK(at(terms, 2).net == doctest::Approx(230));
    CHECK(at(terms, 3).net == doctest::Approx(420));
}

TEST_CASE("a budget buys as many traps as pay within it, and not those that do not") {
    const std::vector<ChangedTerms> terms = with_budget(by_hand());
    CHECK(at(terms, 0).best_traps == 0);
    CHECK(at(terms, 50).best_traps == 1);
    CHECK(at(terms, 50).net == doctest::Approx(40));
    CHECK(at(terms, 80).best_traps == 2);
    CHECK(at(terms, 120).best_traps == 2);
    CHECK(at(terms, 120).net == doctest::Approx(60));
}
