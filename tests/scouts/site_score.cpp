// The cavity score term by term, and how easily a cavity is found.
#include <doctest/doctest.h>

#include <cmath>

#include "scouts/scouts.hpp"

using namespace maybough;

namespace {
/// The cavity of score 0: 40 l, best entrance, 5 m, facing the midday sun, half shade, bare.
Cavity best_bare() {
    Cavity cavity;
    cavity.height_m = 5;
    return cavity;
}
}  // namespace

TEST_CASE("a bare 40 l cavity at 5 m facing the midday sun scores zero") {
    CHECK(site_log_odds(best_bare(), {}) == doctest::Approx(0));
}

TEST_CASE("each property moves the score by its own coefficient") {
    const ScoutParameters p;
    const auto change = [&](auto set) {
        Cavity cavity = best_bare();
        set(cavity);
        return site_log_odds(cavity, p);
    };
    const double ratio_ln = std::log(80.0 / 40.0);
    CHECK(change([](Cavity& c) { c.volume_l = 80; }) == doctest::Approx(-p.volume_coefficient * ratio_ln * ratio_ln));
    CHECK(change([](Cavity& c) { c.volume_l = 20; }) == doctest::Approx(-p.volume_coefficient * ratio_ln * ratio_ln));
    CHECK(change([](Cavity& c) { c.entrance_area_cm2 = 75; }) ==
          doctest::Approx(-p.entrance_coefficient * std::log(6.0)));
    CHECK(change([](Cavity& c) { c.height_m = 1; }) == doctest::Approx(-p.height_log_odds));
    CHECK(change([](Cavity& c) { c.height_m = 12; }) == doctest::Approx(0));
    CHECK(change([](Cavity& c) { c.facing_deg = 0; }) == doctest::Approx(-p.facing_log_odds));
    CHECK(change([](Cavity& c) { c.facing_deg = 90; }) == doctest::Approx(-p.facing_log_odds / 2));
    CHECK(change([](Cavity& c) { c.comb = 1; }) == doctest::Approx(p.comb_log_odds));
    CHECK(change([](Cavity& c) { c.shade = 1; }) == doctest::Approx(p.shade_log_odds / 2));
    CHECK(change([](Cavity& c) { c.dryness = 0; }) == doctest::Approx(-p.dryness_log_odds));
}

TEST_CASE("south of the equator the midday sun stands north") {
    Cavity north = best_bare();
    north.facing_deg = 0;
    CHECK(site_log_odds(north, {}, true) == doctest::Approx(0));
    CHECK(site_log_odds(best_bare(), {}, true) == doctest::Approx(-ScoutParameters{}.facing_log_odds));
}

TEST_CASE("comb adds nothing to a lure (Schmidt 2001)") {
    Cavity lured = best_bare();
    lured.lure = 1;
    Cavity combed = lured;
    combed.comb = 1;
    CHECK(site_log_odds(lured, {}) == doctest::Approx(site_log_odds(combed, {})));
}

TEST_CASE("the lure's whole effect is split between finding and judging") {
    const ScoutParameters p;
    Cavity lured = best_bare();
    lured.lure = 1;
    const double judged = site_log_odds(lured, p) - site_log_odds(best_bare(), p);
    const double found = std::log(find_weight(lured, 300, p) / find_weight(best_bare(), 300, p));
    CHECK(judged + found == doctest::Approx(p.lure_log_odds));
    CHECK(found == doctest::Approx(p.lure_log_odds * p.lure_finding_share));
}

TEST_CASE("finding falls off over the near and the far search length and is exactly zero at the reach") {
    ScoutParameters p;
    const Cavity cavity = best_bare();
    CHECK(find_weight(cavity, search_reach_m(p), p) == 0);
    CHECK(find_weight(cavity, search_reach_m(p) + 1, p) == 0);
    CHECK(find_weight(cavity, search_reach_m(p) - 1, p) > 0);
    // Far out only far flights count, and the chance falls by the factor e over their length.
    CHECK(find_weight(cavity, 4000 + p.far_search_length_m, p) / find_weight(cavity, 4000, p) ==
          doctest::Approx(std::exp(-1.0)).epsilon(0.01));
    Cavity hidden = cavity;
    hidden.visibility = 0;
    Cavity plain = cavity;
    plain.visibility = 1;
    CHECK(find_weight(plain, 300, p) / find_weight(hidden, 300, p) == doctest::Approx(p.visibility_find_ratio));
    p.far_search_share = 0;
    CHECK(find_weight(cavity, 100 + p.search_length_m, p) / find_weight(cavity, 100, p) ==
          doctest::Approx(std::exp(-1.0)));
    // A longer search length spreads the same effort: the chance summed over the plane stays.
    ScoutParameters wide = p;
    wide.search_length_m *= 2;
    CHECK(find_weight(cavity, 0, wide) == doctest::Approx(find_weight(cavity, 0, p) / 4));
}

TEST_CASE("near and far flights share one effort: the chance summed over the plane does not depend on the share") {
    ScoutParameters p;
    p.farthest_find_m = 40000;
    const auto over_the_plane = [&](double share) {
        p.far_search_share = share;
        double sum = 0;
        for (double r = 5; r < 40000; r += 10) sum += 2 * M_PI * r * 10 * find_weight(best_bare(), r, p);
        return sum;
    };
    CHECK(over_the_plane(0.6) == doctest::Approx(over_the_plane(0)).epsilon(0.001));
}

TEST_CASE("traps alike in one square of 100 m share a swarm's taste; others have their own") {
    CHECK(shared_taste({110, 20}, 0.5) == shared_taste({190, 80}, 0.5));
    CHECK(shared_taste({110, 20}, 0.5) != shared_taste({210, 20}, 0.5));
    CHECK(shared_taste({110, 20}, 0.5) != shared_taste({110, 120}, 0.5));
    CHECK(shared_taste({110, 20}, 0.5) != shared_taste({110, 20}, -0.5));
}

TEST_CASE(
    "the quorum of a large swarm is quorum_outside, whatever it is; of a small one a share, not below the least") {
    ScoutParameters p;
    for (const double quorum : {10.0, 15.0, 30.0, 60.0}) {
        p.quorum_outside = quorum;
        CHECK(quorum_of(p.scouts_max, p) == static_cast<int>(quorum));
        CHECK(quorum_of(p.scouts_max / 2, p) == std::lround(std::max(p.quorum_least, quorum / 2)));
        CHECK(quorum_of(p.scouts_min, p) ==
              std::lround(std::max(p.quorum_least, quorum * p.scouts_min / p.scouts_max)));
    }
}
