// The choice surrogate recovers known weights from synthetic hunts, and its error measure tells a wrong one.
#include "planner/choice.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numeric>

#include "chance/chance.hpp"

using namespace maybough;
using namespace maybough::planner;

namespace {
const ChoiceWeights truth{0.4, 0.5, 0.9, 0.7, 0.0, -0.05, 0.1, -0.3};

/// Hunts whose ends are drawn from the logit of `truth`.
HuntData synthetic_hunts(std::uint32_t count) {
    HuntData data;
    for (std::uint32_t h = 0; h < count; ++h) {
        Stream luck = Chance{5, h}.stream(Purpose::planner_bootstrap, 0U);
        RecordedHunt hunt;
        hunt.first = static_cast<std::uint32_t>(data.sites.size());
        hunt.first_trap = hunt.first + 6;
        hunt.last = hunt.first_trap + h % 4;
        hunt.prime = bernoulli(luck, 0.6);
        double total = 1;
        std::vector<double> pulls;
        for (std::uint32_t s = hunt.first; s < hunt.last; ++s) {
            const double g = -3 * luck.uniform();
            const double q = 2 * standard_normal(luck);
            data.sites.push_back({static_cast<float>(g), static_cast<float>(q)});
            pulls.push_back(
                pull(data.sites.back(), s < hunt.first_trap ? SiteSort::natural : SiteSort::trap, hunt.prime, truth));
            total += pulls.back();
        }
        double u = luck.uniform() * total - 1;
        for (std::size_t s = 0; s < pulls.size() && u >= 0 && hunt.chosen < 0; ++s) {
            u -= pulls[s];
            if (u < 0) hunt.chosen = static_cast<std::int32_t>(hunt.first + s);
        }
        data.hunts.push_back(hunt);
    }
    return data;
}

std::vector<std::uint32_t> all(const HuntData& data) {
    std::vector<std::uint32_t> use(data.hunts.size());
    std::iota(use.begin(), use.end(), 0U);
    return use;
}

/// Situations run again `times` each under the law of `truth`.
std::vector<RepeatedHunt> synthetic_checks(const HuntData& data, std::uint32_t times) {
    std::vector<RepeatedHunt> checks;
    for (std::uint32_t h = 0; h < data.hunts.size(); ++h) {
        const RecordedHunt& hunt = data.hunts[h];
        RepeatedHunt check;
        check.prime = hunt.prime;
        check.times = times;
        check.first_trap = hunt.first_trap - hunt.first;
        std::vector<double> pulls;
        double total = 1;
        for (std::uint32_t s = hunt.first; s < hunt.last; ++s) {
            check.sites.push_back(data.sites[s]);
            pulls.push_back(
                pull(data.sites[s], s < hunt.first_trap ? SiteSort::natural : SiteSort::trap, hunt.prime, truth));
            total += pulls.back();
        }
        check.moved.assign(pulls.size(), 0);
        Stream luck = Chance{6, h}.stream(Purpose::planner_bootstrap, 0U);
        for (std::uint32_t t = 0; t < times; ++t) {
            double u = luck.uniform() * total - 1;
            for (std::size_t s = 0; s < pulls.size() && u >= 0; ++s) {
                u -= pulls[s];
                if (u < 0) ++check.moved[s];
            }
        }
        checks.push_back(check);
    }
    return checks;
}
}  // namespace

TEST_CASE("maximum likelihood finds the weights the hunts were drawn from") {
    const HuntData data = synthetic_hunts(20000);
    const ChoiceFit fit = fit_choice(data, all(data));
    CHECK(fit.converged);
    CHECK(fit.steps < 20);
    // Errors of the weights here are 0.02 to 0.06 by the inverse information; four of the largest is 0.25.
    for (std::size_t i = 0; i < choice_terms; ++i) CHECK(std::abs(fit.weights[i] - truth[i]) < 0.25);
    // The slope terms are known best: standard errors near 0.02.
    CHECK(std::abs(fit.weights[3] - truth[3]) < 0.08);
}

TEST_CASE("the error of the true surrogate is nothing once binomial noise is out, and a wrong one shows") {
    const HuntData data = synthetic_hunts(600);
    const std::vector<RepeatedHunt> checks = synthetic_checks(data, 16);
    const ChoiceError right = choice_error(checks, truth);
    CHECK(right.hunts == 600 * 16);
    CHECK(right.rms < 0.01);
    CHECK(right.r_squared > 0.98);
    // Share in traps: 9600 hunts, sd of the mean at most 0.5 / sqrt(9600) = 0.0051; four of them.
    CHECK(std::abs(right.traps_foretold - right.traps_seen) < 0.0205);
    ChoiceWeights wrong = truth;
    wrong[1] += 1;  // traps thought far better than they are
    const ChoiceError off = choice_error(checks, wrong);
    CHECK(off.rms > 0.03);
    CHECK(off.traps_foretold - off.traps_seen > 0.05);
}

TEST_CASE("a term that no hunt informs stays at zero") {
    HuntData data = synthetic_hunts(300);
    for (RecordedHunt& hunt : data.hunts) hunt.prime = true;
    const ChoiceFit fit = fit_choice(data, all(data));
    CHECK(std::abs(fit.weights[7]) < 1e-9);
}

TEST_CASE("no hunts give no weights") {
    const ChoiceFit fit = fit_choice({}, {});
    CHECK(fit.converged);
    for (const double w : fit.weights) CHECK(w == 0);
}
