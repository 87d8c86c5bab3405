// Agreement without comparison: Britton, Franks, Pratt and Seeley 2002, "Deciding on a new home: how do honeybees
// agree?". The published equations for two sites, integrated by Boost's fourth-order Runge-Kutta.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "published/scouts/integrate.hpp"

namespace {

using State = std::array<double, 5>;  // X uncommitted, Y1 dancing, Z1 not dancing, Y2, Z2

struct Rates {
    double recruit_1, recruit_2, cease, reawaken, convert;
};

State end_of(const Rates& r, State state, double time = 2000) {
    const auto flow = [&](const State& s, State& change, double) {
        const auto [x, y1, z1, y2, z2] = s;
        change[0] = -r.recruit_1 * x * y1 - r.recruit_2 * x * y2;
        change[1] = r.recruit_1 * x * y1 - r.cease * y1 + r.reawaken * r.recruit_1 * y1 * z1 +
                    r.convert * r.recruit_1 * y1 * z2;
        change[2] = r.cease * y1 - r.reawaken * r.recruit_1 * y1 * z1 - r.convert * r.recruit_2 * y2 * z1;
        change[3] = r.recruit_2 * x * y2 - r.cease * y2 + r.reawaken * r.recruit_2 * y2 * z2 +
                    r.convert * r.recruit_2 * y2 * z1;
        change[4] = r.cease * y2 - r.reawaken * r.recruit_2 * y2 * z2 - r.convert * r.recruit_1 * y1 * z2;
    };
    return maybough::test::integrate(flow, state, time, 0.02);
}

constexpr State few_of_each{0.98, 0.01, 0, 0.01, 0};
constexpr State second_leads{0.9, 0.01, 0, 0.09, 0};
constexpr State first_leads{0.9, 0.09, 0, 0.01, 0};

}  // namespace

TEST_CASE("Britton 2002: without reawakening and conversion both sites burn out in disagreement") {
    const State end = end_of({3, 2, 1, 0, 0}, few_of_each);
    CHECK(std::abs(end[0] - 0.0679) < 1e-3);
    CHECK(std::abs(end[2] - 0.8047) < 1e-3);
    CHECK(std::abs(end[4] - 0.1274) < 1e-3);
}

TEST_CASE("Britton 2002: with both, all come to the better site, also when the worse one led nine to one") {
    const State end = end_of({3, 2, 1, 0.5, 0.5}, few_of_each);
    CHECK(std::abs(end[1] - 1.0 / 3) < 1e-3);
    CHECK(std::abs(end[2] - 2.0 / 3) < 1e-3);
    CHECK(end[3] + end[4] < 1e-3);
    const State led = end_of({3, 2.9, 1, 0.5, 0.5}, second_leads);
    CHECK(std::abs(led[1] - 1.0 / 3) < 1e-3);
    CHECK(led[3] + led[4] < 1e-3);
}

TEST_CASE("Britton 2002: the leader wins when reawakening outweighs conversion, both live in the opposite case") {
    const State second = end_of({3, 2.9, 1, 0.8, 0.5}, second_leads);
    CHECK(std::abs(second[3] - 0.5690) < 1e-3);
    CHECK(std::abs(second[4] - 0.4310) < 1e-3);
    const State first = end_of({3, 2.9, 1, 0.8, 0.5}, first_leads);
    CHECK(std::abs(first[1] - 0.5833) < 1e-3);
    CHECK(std::abs(first[2] - 0.4167) < 1e-3);
    const State both = end_of({3, 2.9, 1, 0.5, 0.8}, first_leads);
    CHECK(std::abs(both[1] - 0.2527) < 1e-3);
    CHECK(std::abs(both[3] - 0.2256) < 1e-3);
}

TEST_CASE("Britton 2002: a second site invades where conversion to it outweighs reawakening at the first") {
    struct Case {
        Rates rates;
        bool invades;
    };
    for (const Case& c : {Case{{3, 2, 1, 0.5, 0.5}, false}, Case{{3, 2.9, 1, 0.8, 0.5}, false},
                          Case{{3, 2.9, 1, 0.5, 0.8}, true}, Case{{2.9, 3, 1, 0.5, 0.5}, true}}) {
        CHECK((c.rates.convert * c.rates.recruit_2 > c.rates.reawaken * c.rates.recruit_1) == c.invades);
        const double settled = c.rates.cease / (c.rates.reawaken * c.rates.recruit_1);
        const State before{0, 1 - settled - 1e-6, settled, 1e-6, 0};
        CHECK((end_of(c.rates, before, 100)[3] > 1e-6) == c.invades);
    }
}

TEST_CASE("one site alone without reawakening: the final size z = 1 - exp(-R z)") {
    for (const auto& [ratio, size] : {std::pair{1.5, 0.5828}, {2.0, 0.7968}, {3.0, 0.9405}}) {
        const State end = end_of({ratio, ratio, 1, 0, 0}, {1 - 1e-5, 1e-5, 0, 0, 0}, 400);
        CHECK(std::abs(end[2] - size) < 1e-3);
    }
}
