// Learning from a catch log: the fit gives known effects back, beliefs hold what they promise (simulation-based
// calibration), more data narrows, no data changes nothing, and what cannot be is refused.
#include "outlook/learn.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace maybough;

namespace {
const OutlookParameters defaults;
constexpr std::size_t unknown_count = 4;

/// `years` years with four traps at the same places, and next year with the same.
CatchLaw made_law(std::size_t years, double area_variance, double place_variance) {
    CatchLaw law;
    law.places = 4;
    law.effect = {0.6, -0.3, 0.1, 0};
    law.effect_se.assign(unknown_count, 0);
    law.place_effect.assign(law.places, std::vector<double>(unknown_count, 0));
    law.area_variance = area_variance;
    law.place_variance = place_variance;
    for (std::size_t season = 0; season <= years; ++season) {
        for (std::size_t place = 0; place < law.places; ++place) {
            law.cells.push_back({season, place, place});
            law.level.push_back(std::log(0.2 + 0.2 * static_cast<double>(place)));
        }
    }
    return law;
}

std::vector<std::vector<double>> standard_draws(std::uint32_t seed, std::uint32_t count) {
    std::vector<std::vector<double>> draws(count);
    for (std::uint32_t i = 0; i < count; ++i) {
        Stream stream = Chance{seed, i}.stream(Purpose::learn_draw, 0U, Day{-1});
        for (std::size_t k = 0; k < unknown_count; ++k) draws[i].push_back(standard_normal(stream));
    }
    return draws;
}

double luck_of(Stream& stream, double variance) {
    return variance > 0 ? gamma(stream, 1 / variance, 1.0) : 1;
}

/// Counts of all cells under the law; a place's and the area's luck stay over the years.
std::vector<int> made_counts(const CatchLaw& law, const std::vector<double>& scores, Stream& stream) {
    const std::vector<double> mean = law.expected(scores);
    const double area = luck_of(stream, law.area_variance);
    std::vector<double> place;
    for (std::size_t p = 0; p < law.places; ++p) place.push_back(luck_of(stream, law.place_variance));
    std::vector<int> counts;
    for (std::size_t c = 0; c < mean.size(); ++c) {
        counts.push_back(static_cast<int>(poisson(stream, area * place[law.cells[c].place] * mean[c])));
    }
    return counts;
}

double expected_next(const CatchLaw& law, const std::vector<double>& scores, std::size_t years) {
    const std::vector<double> mean = law.expected(scores);
    double sum = 0;
    for (std::size_t c = 0; c < mean.size(); ++c) sum += law.cells[c].season == years ? mean[c] : 0;
    return sum;
}

Weights weights_of(const CatchLaw& law, const std::vector<std::vector<double>>& draws, const std::vector<int>& counts,
                   std::size_t years) {
    std::vector<double> log_likelihoods;
    for (const auto& draw : draws) log_likelihoods.push_back(log_likelihood(law, draw, counts, years));
    return weigh(log_likelihoods, defaults);
}

/// Chi-squared of the true expected catch's place among the weighted draws, ten equal classes, over `logs` logs made
/// under `truth` and weighed under `believed`.
double calibration(const CatchLaw& truth, const CatchLaw& believed, std::size_t years, std::uint32_t logs) {
    const auto draws = standard_draws(7, 1500);
    std::vector<double> next;
    for (const auto& draw : draws) next.push_back(expected_next(believed, draw, years));
    const auto hidden = standard_draws(8, logs);
    std::array<double, 10> classes{};
    for (std::uint32_t i = 0; i < logs; ++i) {
        Stream stream = Chance{9, i}.stream(Purpose::learn_predict, 0U, Day{-1});
        const std::vector<int> counts = made_counts(truth, hidden[i], stream);
        const Weights weights = weights_of(believed, draws, counts, years);
        const double true_next = expected_next(truth, hidden[i], years);
        double below = 0;
        for (std::size_t d = 0; d < draws.size(); ++d) below += next[d] < true_next ? weights.of_draw[d] : 0;
        classes[std::min<std::size_t>(9, static_cast<std::size_t>(10 * below))] += 1;
    }
    const double share = logs / 10.0;
    double chi_squared = 0;
    for (const double count : classes) chi_squared += (count - share) * (count - share) / share;
    return chi_squared;
}

const Scenario& area() {
    static const Scenario scenario = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    return scenario;
}
Learned learn_of(const CatchLog& log, unsigned threads) {
    Effort effort;
    effort.threads = threads;
    return learn(area(), log, effort, {40, 3000});
}
/// The scenario's traps as they hang, in 2025, each with `swarms`.
CatchLog log_of(int swarms) {
    LoggedSeason season{2025, area().placement, {}, {}};
    season.swarms.assign(season.placement.size(), swarms);
    season.caught.assign(season.placement.size(), {});
    return {"log.csv", {season}};
}
}  // namespace

TEST_CASE("a score is the inverse of a belief's quantile, on both sides and for both laws") {
    const ParameterRow ratio{"x.y", "1", 2, 0.01, 100, Spread::ratio, 0.5, 6, Standing::assumed, "", "m"};
    const ParameterRow additive{"x.z", "1", 1, -10, 10, Spread::additive, -1, 2, Standing::assumed, "", "m"};
    for (const ParameterRow& row : {ratio, additive}) {
        const Belief belief = belief_of(row);
        for (const double u : {0.01, 0.05, 0.3, 0.5, 0.8, 0.95, 0.99}) {
            CHECK(score_of(row, belief, belief_quantile(row, belief, u)) == doctest::Approx(normal_quantile(u)));
        }
    }
    CHECK(score_of(ratio, {2, 2, 2}, 3) == 0);
}

TEST_CASE("the regression gives back the effects and the luck that made its table") {
    // 3000 seasons of four traps, 0.5 swarms each: some 6000 swarms. Luck of variance 0.3 and 0.5 makes a season's
    // total vary 1 + 0.3 x 2 + 0.5 x 0.6, about twice as much as Poisson's: an effect's error is sqrt(2 / 6000), 0.018.
    // Seven checks at z = 4.5 (family-wise 1e-4); effects are drawn towards 0 by 2 / 0.09 / 6000 of themselves, nothing
    // here.
    const CatchLaw truth = made_law(0, 0.3, 0.5);
    CatchTable table{truth.cells, truth.places, standard_draws(3, 3000), {}};
    for (std::uint32_t row = 0; row < 3000; ++row) {
        Stream stream = Chance{4, row}.stream(Purpose::learn_predict, 0U, Day{-1});
        table.counts.push_back(made_counts(truth, table.scores[row], stream));
    }
    const CatchLaw fitted = fit_catches(table, defaults);
    for (std::size_t k = 0; k < unknown_count; ++k) {
        CAPTURE(k);
        CHECK(std::abs(fitted.effect[k] - truth.effect[k]) < 4.5 * 0.018);
        CHECK(fitted.effect_se[k] == doctest::Approx(0.018).epsilon(0.3));
    }
    // Moments of a product of gamma laws are unsteady: a third either way over twenty tries with other seeds.
    CHECK(fitted.area_variance == doctest::Approx(0.3).epsilon(0.4));
    CHECK(fitted.place_variance == doctest::Approx(0.5).epsilon(0.4));
}

// Source: Talts, Betancourt, Simpson, Vehtari and Gelman 2018, "Validating Bayesian inference algorithms with
// simulation-based calibration". Limits: 9 degrees of freedom, 33.7 is the 1e-4 point.
TEST_CASE("beliefs hold what they promise: the truth's rank is uniform, and not so when luck is left out") {
    const CatchLaw law = made_law(3, 0.2, 0.5);
    CHECK(calibration(law, law, 3, 400) < 33.7);
    CHECK(calibration(law, made_law(3, 0, 0), 3, 400) > 33.7);
    CatchLaw shifted = law;
    for (double& level : shifted.level) level += 0.5;
    CHECK(calibration(law, shifted, 3, 400) > 33.7);
}

TEST_CASE("more years narrow the expected catch, and one year hardly does") {
    const auto draws = standard_draws(7, 1500);
    const auto hidden = standard_draws(8, 60);
    const auto left = [&](std::size_t years) {
        const CatchLaw law = made_law(years, 0.05, 0.2);
        std::vector<double> next;
        for (const auto& draw : draws) next.push_back(std::log(expected_next(law, draw, years)));
        const auto spread = [&](const std::vector<double>& weights) {
            double mean = 0;
            double squares = 0;
            for (std::size_t d = 0; d < draws.size(); ++d) mean += weights[d] * next[d];
            for (std::size_t d = 0; d < draws.size(); ++d) squares += weights[d] * std::pow(next[d] - mean, 2);
            return std::sqrt(squares);
        };
        double sum = 0;
        for (std::uint32_t i = 0; i < 60; ++i) {
            Stream stream = Chance{9, i}.stream(Purpose::learn_predict, 0U, Day{-1});
            const auto counts = made_counts(law, hidden[i], stream);
            sum += spread(weights_of(law, draws, counts, years).of_draw) / 60;
        }
        return sum / spread(std::vector<double>(draws.size(), 1.0 / 1500));
    };
    const double after_one = left(1);
    const double after_three = left(3);
    const double after_ten = left(10);
    CHECK(after_one < 1);
    CHECK(after_three < after_one);
    CHECK(after_ten < after_three);
    CHECK(after_one > 0.6);
    CHECK(after_ten < 0.7);
}

TEST_CASE("weights that degenerate are weakened, and refused when next to nothing is left") {
    std::vector<double> plain;
    std::vector<double> sharp;
    std::vector<double> absurd;
    for (int i = 0; i < 4000; ++i) {
        const double z = -3 + 6.0 * i / 4000;
        plain.push_back(-z * z);
        sharp.push_back(-2000 * std::pow(z - 1, 2));
        absurd.push_back(-1e5 * std::pow(z - 1, 2));
    }
    CHECK(weigh(plain, defaults).outcome == LearnOutcome::learnt);
    CHECK(weigh(plain, defaults).power == 1);
    OutlookParameters lenient;
    lenient.least_power = 0.01;
    const Weights weakened = weigh(sharp, lenient);
    CHECK(weakened.outcome == LearnOutcome::weakened);
    CHECK(weakened.power < 1);
    double squares = 0;
    for (const double weight : weakened.of_draw) squares += weight * weight;
    CHECK(1 / squares == doctest::Approx(defaults.least_effective_draws).epsilon(0.01));
    const Weights refused = weigh(absurd, defaults);
    CHECK(refused.outcome == LearnOutcome::refused);
    CHECK(refused.of_draw.front() == doctest::Approx(1.0 / 4000));
}

TEST_CASE("odds of a catch: no luck is Poisson, luck of one place is negative binomial") {
    CatchLaw law = made_law(0, 0, 0);
    law.level = {std::log(0.5), -50, -50, -50};
    const std::vector<std::vector<double>> draws{{0, 0, 0, 0}};
    CatchOdds odds = catch_odds(law, draws, {1}, 0);
    CHECK(odds.mean == doctest::Approx(0.5));
    CHECK(odds.odds_none == doctest::Approx(std::exp(-0.5)));
    CHECK(odds.odds_at_least_2 == doctest::Approx(1 - 1.5 * std::exp(-0.5)));
    law.place_variance = 2;  // size 0.5: none 0.5^0.5, one 0.5 x 0.5 x 0.5^0.5
    odds = catch_odds(law, draws, {1}, 0);
    CHECK(odds.odds_none == doctest::Approx(std::sqrt(0.5)));
    CHECK(odds.odds_at_least_2 == doctest::Approx(1 - 1.25 * std::sqrt(0.5)));
    const std::vector<double> nodes = luck_nodes(0.5, 20);
    CHECK(std::accumulate(nodes.begin(), nodes.end(), 0.0) / 20 == doctest::Approx(1));
}

TEST_CASE("an empty log returns the prior") {
    const Learned learned = learn_of({"empty.csv", {}}, 2);
    CHECK(learned.outcome == LearnOutcome::nothing);
    CHECK(learned.next_after.mean == learned.next_before.mean);
    CHECK(learned.next_overlay.mean == doctest::Approx(learned.next_before.mean).epsilon(1e-9));
    CHECK_FALSE(learned.unknowns.empty());
    for (const LearnedUnknown& unknown : learned.unknowns) {
        CHECK_FALSE(unknown.taught);
        CHECK(unknown.posterior.median == unknown.prior.median);
    }
}

TEST_CASE("many swarms raise the expectation, none lower it, for any number of threads") {
    const Learned many = learn_of(log_of(1), 2);
    const Learned none = learn_of(log_of(0), 2);
    CHECK(many.swarms == 5);
    CHECK(many.trap_years == 5);
    CHECK(many.years.front().weather_known);
    CHECK(many.next_before.mean == none.next_before.mean);
    CHECK(many.next_after.mean > many.next_before.mean);
    CHECK(none.next_after.mean < none.next_before.mean);
    CHECK(none.next_overlay.mean < none.next_before.mean);
    CHECK(none.log_rate_low == 0);
    CHECK(none.log_rate_high == doctest::Approx(3.689).epsilon(0.001));  // -ln 0.025
    CHECK(none.odds_so_many == 1);
    for (const LearnedTrap& trap : none.traps) CHECK(trap.after < trap.before);
    const Learned again = learn_of(log_of(1), 1);
    CHECK(again.next_after.mean == many.next_after.mean);
    CHECK(again.unknowns.front().posterior.median == many.unknowns.front().posterior.median);
}
