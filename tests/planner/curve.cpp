// Reading the recommendation off tables of outcomes.
#include "planner/curve.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace maybough;

namespace {
/// Trials with the given catches a placement and season, each worth 10 and each trap costing `price`.
Trials table(const std::vector<std::vector<double>>& catches, double price) {
    Trials trials;
    for (std::size_t k = 0; k < catches.size(); ++k) {
        trials.outcomes.emplace_back();
        for (const double c : catches[k]) {
            trials.outcomes.back().push_back({c, 10 * c, price * static_cast<double>(k), 1});
        }
    }
    return trials;
}

const std::vector<std::vector<double>> falling{
    {0, 0, 0, 0, 0, 0, 0, 0}, {1, 1, 1, 1, 1, 1, 1, 1}, {2, 1, 2, 1, 2, 1, 1, 2}, {2, 1, 2, 1, 2, 1, 2, 2}};
}  // namespace

TEST_CASE("the curve's margins are paired differences") {
    const Trials trials = table(falling, 4);
    const std::vector<CurvePoint> curve = curve_of(trials, std::vector<Placement>(4), std::vector<double>(4));
    CHECK(curve[2].catches.mean == doctest::Approx(1.5));
    CHECK(curve[2].marginal_catches.mean == doctest::Approx(0.5));
    CHECK(curve[2].marginal_net.mean == doctest::Approx(1));
    CHECK(curve[3].marginal_net.mean == doctest::Approx(10 * 0.125 - 4));
    REQUIRE(curve[2].odds_at_least.size() == 2);
    CHECK(curve[2].odds_at_least[0].share == 1);
    CHECK(curve[2].odds_at_least[0].low_95 < 0.9);  // eight seasons prove no certainty
    CHECK(curve[2].odds_at_least[1].share == 0.5);
    CHECK(curve[1].worst_tenth_catches == 1);
}

TEST_CASE("where one placement lived on, steps are still the differences of the means beside them") {
    std::vector<std::vector<double>> catches(3);
    Stream luck = Chance{61, 0}.stream(Purpose::planner_bootstrap, 0U);
    for (int s = 0; s < 96; ++s) {
        const double swarms = 4 + standard_normal(luck);
        if (s < 48) catches[0].push_back(0);
        if (s < 48) catches[1].push_back(0.4 * swarms + 0.1 * standard_normal(luck));
        catches[2].push_back(0.7 * swarms + 0.1 * standard_normal(luck));
    }
    const Trials trials = table(catches, 3);
    CHECK(trials.longest() == 2);
    const std::vector<CurvePoint> curve = curve_of(trials, std::vector<Placement>(3), std::vector<double>(3));
    for (std::size_t k = 1; k < 3; ++k) {
        CHECK(curve[k].marginal_catches.mean == doctest::Approx(curve[k].catches.mean - curve[k - 1].catches.mean));
        CHECK(curve[k].marginal_net.mean == doctest::Approx(curve[k].net.mean - curve[k - 1].net.mean));
    }
    CHECK(curve[2].catches.mean == doctest::Approx(estimate(catches[2]).mean));
}

TEST_CASE("differences are of shared seasons, whichever placement lived on") {
    // No trap is recommended, so that placement 0 lived through twice the seasons of the others.
    const Trials trials =
        table({std::vector<double>(32, 0), std::vector<double>(16, 1), std::vector<double>(16, 1)}, 30);
    CHECK(trials.seasons() == 16);
    CHECK(trials.difference(1, 0, net_in) == std::vector<double>(16, -20));
    CHECK(trials.difference(0, 1, net_in) == std::vector<double>(16, 20));
    CHECK(trials.column(0, net_in).size() == 16);
    CHECK(numbers_like(trials, 0) == std::pair(0, 0));
    const std::vector<CurvePoint> curve = curve_of(trials, std::vector<Placement>(3), std::vector<double>(3));
    CHECK(curve[1].marginal_catches.mean == doctest::Approx(1));
    CHECK(curve[2].marginal_net.mean == doctest::Approx(-30));
    Question question;
    question.hours = 5;
    const std::string pays = why_it_stops(curve, 0, question, LastPoint::hours, "EUR");
    CHECK(pays.find("worth 10.00 EUR, and cost 30.00 EUR") != std::string::npos);
    const std::vector<CurvePoint> none(curve.begin(), curve.begin() + 1);
    CHECK(why_it_stops(none, 0, question, LastPoint::hours, "EUR").find("the 5 h given") != std::string::npos);
    question.budget = 12;
    CHECK(why_it_stops(none, 0, question, LastPoint::money, "EUR").find("12 EUR") != std::string::npos);
    CHECK(why_it_stops(none, 0, question, LastPoint::places, "EUR").find("no spot") != std::string::npos);
}

TEST_CASE("ranges of seasons do not reach into one another") {
    CHECK_NOTHROW(refuse_overlap(first_record_season, 50000));
    CHECK_THROWS_AS(refuse_overlap(first_record_season, 50001), ModelFault);
    CHECK_THROWS_AS(refuse_overlap(first_report_season + 1, 200000), ModelFault);
    CHECK_THROWS_AS(refuse_overlap(1000000, 1), ModelFault);
}

TEST_CASE("what follows the longer run but for a constant is known as well as the longer run") {
    std::vector<double> longer;
    Stream luck = Chance{62, 0}.stream(Purpose::planner_bootstrap, 0U);
    for (int s = 0; s < 96; ++s) longer.push_back(standard_normal(luck));
    std::vector<double> own(longer.begin(), longer.begin() + 40);
    for (double& v : own) v += 7;
    const Estimate whole = estimate(longer);
    const Estimate known = lengthened(own, longer);
    CHECK(known.mean == doctest::Approx(7 + whole.mean));
    CHECK(known.se < estimate(own).se);
    // What has nothing to do with it keeps its own mean but for the slope's noise: r is within 0.32 at 40 seasons (95
    // %).
    for (double& v : own) v = standard_normal(luck);
    CHECK(std::abs(lengthened(own, longer).mean - estimate(own).mean) < 0.32 * std::abs(whole.mean) + 0.2);
    CHECK(lengthened({}, longer).n == 0);
    CHECK(lengthened(longer, longer).mean == doctest::Approx(whole.mean));
}

TEST_CASE("the best number has the most net worth, ties go to fewer") {
    CHECK(best_number(table(falling, 4)) == 2);
    CHECK(best_number(table(falling, 5)) == 1);  // the second adds just its cost
    CHECK(best_number(table(falling, 11)) == 0);
}

TEST_CASE("numbers that paired seasons cannot tell apart stand together") {
    // Two and three traps differ in one of eight seasons; none and two differ in all.
    const auto [low, high] = numbers_like(table(falling, 1), 2);
    CHECK(low == 2);
    CHECK(high == 3);
}

TEST_CASE("where no trap is best and has lived on alone, all differences are of seasons that both lived") {
    std::vector<std::vector<double>> catches(3);
    catches[0].assign(96, 0);
    catches[1].assign(48, 1);
    catches[2].assign(48, 2);
    const Trials trials = table(catches, 20);
    CHECK(trials.longest() == 0);
    CHECK(trials.seasons() == 48);
    CHECK(best_number(trials) == 0);
    const std::vector<CurvePoint> curve = curve_of(trials, std::vector<Placement>(3), std::vector<double>(3));
    CHECK(curve[1].marginal_catches.mean == doctest::Approx(1));
    CHECK(curve[2].marginal_net.mean == doctest::Approx(-10));
    CHECK(numbers_like(trials, 0) == std::pair(0, 0));
}

TEST_CASE("odds of at least so many swarms") {
    const Trials trials = table(falling, 1);
    CHECK(number_for_odds(trials, 1, 0.9) == 1);
    CHECK(number_for_odds(trials, 2, 0.5) == 2);
    CHECK(number_for_odds(trials, 2, 0.6) == 3);
    CHECK(number_for_odds(trials, 3, 0.1) == -1);
    CHECK(odds_at_least({}).empty());
    CHECK(odds_at_least({0, 0}).empty());
    CHECK(worst_tenth({5, 1, 2, 3, 4, 6, 7, 8, 9, 10, 0, 11, 12, 13, 14, 15, 16, 17, 18, 19}) == doctest::Approx(0.5));
}

TEST_CASE("the reason for stopping is told in numbers or by the limit that binds") {
    const std::vector<CurvePoint> curve =
        curve_of(table(falling, 4), std::vector<Placement>(4), std::vector<double>(4));
    Question question;
    const std::string next = why_it_stops(curve, 2, question, LastPoint::places, "EUR");
    CHECK(next.find("0.12 swarms") != std::string::npos);
    CHECK(next.find("worth 1.25 EUR") != std::string::npos);
    CHECK(next.find("cost 4.00 EUR") != std::string::npos);
    CHECK(why_it_stops(curve, 3, question, LastPoint::money, "EUR").find("budget") != std::string::npos);
    CHECK(why_it_stops(curve, 3, question, LastPoint::places, "EUR").find("every spot") != std::string::npos);
    question.exactly = 3;
    CHECK(why_it_stops(curve, 3, question, LastPoint::places, "EUR").find("just 3") != std::string::npos);
}

TEST_CASE("a falling fit pools what rises") {
    CHECK(falling_fit({5, 3, 4, 1}, {1, 1, 1, 1}) == std::vector<double>{5, 3.5, 3.5, 1});
    CHECK(falling_fit({1, 2, 3}, {1, 1, 2}) == std::vector<double>{2.25, 2.25, 2.25});
    CHECK(falling_fit({}, {}).empty());
}

TEST_CASE("stages count on from one another") {
    std::vector<std::uint32_t> told;
    const Progress outside = [&](std::uint32_t done, std::uint32_t total) {
        CHECK(total == 12);
        told.push_back(done);
    };
    Stages stages(outside, 12);
    const Progress first = stages.stage(4);
    const Progress second = stages.stage(8);
    first(4, 4);
    second(1, 8);
    second(8, 8);
    CHECK(told == std::vector<std::uint32_t>{4, 5, 12});
}
