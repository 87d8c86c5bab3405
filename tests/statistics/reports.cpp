// Coverage of what a report prints: 200 reports of one plan, on seasons of the full model.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include "planner/curve.hpp"
#include "planner/plan_detail.hpp"
#include "planner/small_scenario.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {
constexpr std::uint32_t runs = 200;
constexpr std::size_t recommended = 2;
constexpr std::uint32_t bank_blocks = 120;
constexpr std::uint32_t common_blocks = 8;  // that all placements of a report live through
constexpr std::uint32_t plan_blocks = 12;   // that the recommended plan lives through

/// A curve of none to three traps of which two are recommended, either may be left out or go to another spot.
struct PrintedPlan {
    std::vector<Placement> curve;
    PlanDetail detail;
};
PrintedPlan plan_printed(const Scenario& scenario) {
    PrintedPlan printed_plan;
    printed_plan.curve.emplace_back();
    for (std::size_t k = 0; k < 3; ++k) {
        printed_plan.curve.push_back(printed_plan.curve.back());
        printed_plan.curve.back().push_back(trap_at(scenario, k));
    }
    printed_plan.detail.plan = printed_plan.curve[recommended];
    for (std::size_t i = 0; i < recommended; ++i) {
        Placement without = printed_plan.detail.plan;
        without.erase(without.begin() + static_cast<std::ptrdiff_t>(i));
        Placement elsewhere = printed_plan.detail.plan;
        elsewhere[i] = trap_at(scenario, 4 + i);
        printed_plan.detail.without.push_back(without);
        printed_plan.detail.elsewhere.push_back(elsewhere);
        printed_plan.detail.next_spot.push_back(4 + i);
    }
    return printed_plan;
}

/// A report on blocks of seasons drawn from the bank: the curve's placements, then the changed ones, as
/// report_trials would hand them on.
Trials drawn_report(const Trials& bank, PrintedPlan& printed, std::uint32_t run) {
    Trials report;
    report.outcomes.resize(printed.curve.size());
    printed.detail.outcomes.assign(bank.outcomes.size() - printed.curve.size(), {});
    Stream luck = Chance{53, run}.stream(Purpose::planner_bootstrap, 0U);
    for (std::uint32_t drawn = 0; drawn < plan_blocks; ++drawn) {
        const auto block = static_cast<std::size_t>(luck.uniform() * bank_blocks);
        for (std::size_t s = block * seasons_per_block; s < (block + 1) * seasons_per_block; ++s) {
            report.followed.push_back(bank.followed[s]);
            for (std::size_t p = 0; p < bank.outcomes.size(); ++p) {
                if (drawn >= common_blocks && p != recommended) continue;
                const bool changed = p >= printed.curve.size();
                auto& to = changed ? printed.detail.outcomes[p - printed.curve.size()] : report.outcomes[p];
                to.push_back(bank.outcomes[p][s]);
            }
        }
    }
    return report;
}

/// What a report prints, by name.
using Numbers = std::map<std::string, Estimate>;

Numbers printed_numbers(const Scenario& scenario, const PrintedPlan& printed, const Trials& report) {
    Numbers numbers;
    const std::vector<CurvePoint> curve = curve_of(report, printed.curve, std::vector<double>(printed.curve.size()));
    for (std::size_t k = 1; k < curve.size(); ++k) {
        const std::string traps = std::to_string(k) + " traps: ";
        numbers[traps + "catch"] = curve[k].catches;
        numbers[traps + "cost"] = curve[k].cost;
        numbers[traps + "net"] = curve[k].net;
        numbers[traps + "catch of the last"] = curve[k].marginal_catches;
        numbers[traps + "net of the last"] = curve[k].marginal_net;
    }
    const std::vector<PlannedTrap> traps = planned_traps(scenario, printed.detail, report);
    for (std::size_t i = 0; i < traps.size(); ++i) {
        const std::string trap = "trap " + std::to_string(i + 1) + ": ";
        numbers[trap + "catch"] = traps[i].catches;
        numbers[trap + "lost without it"] = traps[i].lost_without;
        numbers[trap + "lost by moving it"] = traps[i].next_difference;
        numbers[trap + "net lost by moving it"] = traps[i].next_net_loss;
    }
    return numbers;
}
}  // namespace

// A report's seasons are whole blocks of beliefs, and blocks are independent; so reports are made of blocks drawn from
// a bank of fully simulated ones, whose means are the truth. Of 200 honest 95 % intervals 190 hold on average, standard
// deviation 3.1: 90 % is three of them below, 99 % 2.6 above.
TEST_CASE("every interval of a report covers the truth in 90 to 99 % of 200 reports") {
    const Scenario scenario = small_scenario();
    PrintedPlan printed = plan_printed(scenario);
    std::vector<Placement> all = printed.curve;
    all.insert(all.end(), printed.detail.without.begin(), printed.detail.without.end());
    all.insert(all.end(), printed.detail.elsewhere.begin(), printed.detail.elsewhere.end());
    Trials bank = run_trials(scenario, all, recommended, 700'000, bank_blocks * seasons_per_block, small_effort(1), {});

    std::map<std::string, int> covered;
    PrintedPlan whole = printed;
    whole.detail.outcomes.assign(bank.outcomes.begin() + static_cast<std::ptrdiff_t>(printed.curve.size()),
                                 bank.outcomes.end());
    Trials of_curve = bank;
    of_curve.outcomes.resize(printed.curve.size());
    const Numbers truth = printed_numbers(scenario, whole, of_curve);
    for (std::uint32_t run = 0; run < runs; ++run) {
        const Trials report = drawn_report(bank, printed, run);
        for (const auto& [name, told] : printed_numbers(scenario, printed, report)) {
            covered[name] += std::abs(told.mean - truth.at(name).mean) <= told.half_width_95 ? 1 : 0;
        }
    }
    CHECK(covered.size() == 23);
    int least = runs;
    int most = 0;
    double mean = 0;
    for (const auto& one : covered) {
        INFO(one.first << ", truth " << truth.at(one.first).mean);
        const int times = one.second;
        CHECK(times >= 180);
        CHECK(times <= 198);
        least = std::min(least, times);
        most = std::max(most, times);
        mean += times / static_cast<double>(covered.size());
    }
    MESSAGE("of 200 reports " << mean << " cover the truth on average, " << least << " to " << most);
}
