// Choice between boxes by the score: calibrated so that one unit of score is one unit of log-odds of choice.
#include <doctest/doctest.h>

#include <cmath>

#include "scouts/hunts.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {
constexpr double within_sight = 10;
}

TEST_CASE("choice follows the score: log-odds of choice rise by about one for one of difference") {
    // Ordinary least squares of the log-odds of choice on the difference of the scores, for poor, fair and good pairs.
    ScoutParameters p;
    const auto sky = fine_sky(15);
    double sxx = 0;
    double sxy = 0;
    for (const double base : {-1.0, 0.0, 1.0}) {
        for (const double difference : {0.75, 1.5}) {
            int better = 0;
            for (int n = 0; n < 400; ++n) {
                const double sign = n % 2 == 0 ? 0.5 : -0.5;
                const std::vector<SiteOffer> sites{offer({1}, 200, base + sign * difference, within_sight, p),
                                                   offer({2}, 200, base - sign * difference, within_sight, p)};
                const HuntResult result = hunt(swarm_number(static_cast<unsigned>(n)), sites, sky, p, Chance{3, 0});
                better += (result.site == SiteId{1}) == (sign > 0) ? 1 : 0;
            }
            const double log_odds = std::log(better / (400.0 - better));
            MESSAGE("base " << base << ", difference " << difference << ": log-odds of choice " << log_odds);
            sxx += difference * difference;
            sxy += difference * log_odds;
        }
    }
    const double slope = sxy / sxx;
    MESSAGE("slope " << slope);
    // s.e. of one log-odds near 0.13, of the slope 0.13 / sqrt(sxx) = 0.045; z = 4 about the one that is aimed at.
    CHECK(std::abs(slope - 1) < 0.18);
}

TEST_CASE("boxes alike in all are taken alike") {
    Cavity box;
    box.height_m = 3;
    const PairCount count = pair_trial(box, box, 400, within_sight, {});
    CHECK(std::abs(count.share() - 0.5) < 4 * 0.5 / std::sqrt(400.0));  // z = 4
}

TEST_CASE("a liking for far places takes swarms farther, and none by default") {
    ScoutParameters far;
    far.distance_log_odds_per_km = 4;
    const auto sky = fine_sky(10);
    const auto farther = [&](const ScoutParameters& p) {
        int count = 0;
        for (unsigned n = 0; n < 150; ++n) {
            // Found alike, so that only the judgement differs.
            const std::vector<SiteOffer> sites{{{1}, 200, 4, -2}, {{2}, 700, 4, -2}};
            count += hunt(swarm_number(n), sites, sky, p, Chance{6, n}).site == SiteId{2} ? 1 : 0;
        }
        return count;
    };
    // Recruits miss the far place a little more often. The difference of two counts about half of 150 has a standard
    // deviation of at most 8.7; z = 4.
    const int indifferent = farther({});
    CHECK(indifferent < 75 + 25);
    CHECK(farther(far) - indifferent > 35);
}
