// Builds the curve from trials and reads the recommendation off it.
#include "planner/curve.hpp"

#include <algorithm>
#include <cmath>
#include <sstream>

namespace maybough::planner {

std::vector<CurvePoint> curve_of(const Trials& trials, const std::vector<Placement>& placements,
                                 const std::vector<double>& outlays) {
    std::vector<CurvePoint> curve;
    const std::size_t longest = trials.longest();
    const auto mean_of = [&](std::size_t k, double (*of)(const Outcome&)) {
        return lengthened(trials.long_column(k, of), trials.long_column(longest, of));
    };
    const auto step_to = [&](std::size_t k, double (*of)(const Outcome&)) {
        return lengthened(trials.difference(k, k - 1, of), trials.long_column(longest, of));
    };
    for (std::size_t k = 0; k < placements.size(); ++k) {
        CurvePoint point;
        point.traps = static_cast<int>(k);
        point.placement = placements[k];
        const std::vector<double> catches = trials.long_column(k, catches_in);
        point.catches = mean_of(k, catches_in);
        if (k > 0) {
            set_count_limits(point.catches,
                             static_cast<double>(trials.long_column(k, catches_in).size()) / seasons_per_block - 1);
        }
        point.cost = mean_of(k, cost_in);
        point.value = mean_of(k, value_in);
        point.net = mean_of(k, net_in);
        if (k > 0) {
            point.marginal_catches = step_to(k, catches_in);
            point.marginal_net = step_to(k, net_in);
        }
        point.outlay = outlays[k];
        point.hours = estimate(trials.column(k, hours_in)).mean;
        point.odds_at_least = odds_at_least(catches);
        point.worst_tenth_catches = worst_tenth(catches);
        curve.push_back(std::move(point));
    }
    return curve;
}

int best_number(const Trials& trials) {
    int best = 0;
    double best_net = -1e300;
    for (std::size_t k = 0; k < trials.outcomes.size(); ++k) {
        const double net = estimate(trials.column(k, net_in)).mean;
        if (net > best_net) {
            best_net = net;
            best = static_cast<int>(k);
        }
    }
    return best;
}

int number_for_odds(const Trials& trials, int swarms, double odds) {
    for (std::size_t k = 0; k < trials.outcomes.size(); ++k) {
        const std::vector<SeasonShare> chances = odds_at_least(trials.column(k, catches_in), swarms);
        const auto wanted = static_cast<std::size_t>(swarms - 1);
        if (chances.size() > wanted && chances[wanted].share >= odds) return static_cast<int>(k);
    }
    return -1;
}

std::pair<int, int> numbers_like(const Trials& trials, int chosen) {
    const auto n = static_cast<int>(trials.outcomes.size());
    const std::vector<double> longer = trials.long_column(trials.longest(), net_in);
    const auto alike = [&](int k) {
        const Estimate d = lengthened(
            trials.difference(static_cast<std::size_t>(k), static_cast<std::size_t>(chosen), net_in), longer);
        return std::abs(d.mean) <= d.half_width_95;
    };
    int low = chosen;
    int high = chosen;
    for (int k = 0; k < chosen && low == chosen; ++k) {
        if (alike(k)) low = k;
    }
    for (int k = n - 1; k > chosen && high == chosen; --k) {
        if (alike(k)) high = k;
    }
    return {low, high};
}

std::vector<ChangedTerms> with_swarm_value(const std::vector<CurvePoint>& curve) {
    std::vector<ChangedTerms> result;
    for (const double factor : {0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0}) {
        ChangedTerms terms{factor, 0, -1e300};
        for (const CurvePoint& point : curve) {
            const double net = point.net.mean + (factor - 1) * point.value.mean;
            if (net > terms.net) terms = {factor, point.traps, net};
        }
        result.push_back(terms);
    }
    return result;
}

std::vector<ChangedTerms> with_budget(const std::vector<CurvePoint>& curve) {
    std::vector<ChangedTerms> result;
    for (const CurvePoint& limit : curve) {
        ChangedTerms terms{limit.outlay, 0, -1e300};
        for (const CurvePoint& point : curve) {
            if (point.outlay <= limit.outlay && point.net.mean > terms.net) {
                terms = {limit.outlay, point.traps, point.net.mean};
            }
        }
        result.push_back(terms);
    }
    return result;
}

namespace {
/// Why no trap at all: the first one's worth and cost in money, or the limit that keeps it out.
std::string why_none(const std::vector<CurvePoint>& curve, const Question& question, LastPoint last,
                     const std::string& currency) {
    std::ostringstream text;
    text.setf(std::ios::fixed);
    text.precision(2);
    if (curve.size() > 1) {
        const CurvePoint& first = curve[1];
        text << "the first trap would bring " << first.catches.mean << " swarms a year, worth "
             << first.value.mean - curve[0].value.mean << " " << currency << ", and cost "
             << first.cost.mean - curve[0].cost.mean << " " << currency;
        return text.str();
    }
    text.precision(0);
    if (last == LastPoint::hours) {
        text << "one trap takes more of your work than the " << question.hours << " h given";
    } else if (last == LastPoint::money) {
        text << "one trap takes more money before the season than the " << question.budget << " " << currency
             << " given";
    } else {
        text << "there is no spot where a trap may hang";
    }
    return text.str();
}
}  // namespace

std::string why_it_stops(const std::vector<CurvePoint>& curve, int recommended, const Question& question,
                         LastPoint last, const std::string& currency) {
    std::ostringstream text;
    text.setf(std::ios::fixed);
    text.precision(2);
    const auto size = static_cast<int>(curve.size());
    if (recommended == 0) return why_none(curve, question, last, currency);
    if (question.exactly > 0 && recommended == question.exactly) {
        text << "just " << question.exactly << " traps were asked for";
        return text.str();
    }
    if (recommended + 1 < size) {
        const CurvePoint& next = curve[static_cast<std::size_t>(recommended) + 1];
        const CurvePoint& here = curve[static_cast<std::size_t>(recommended)];
        text << "one more trap would add " << next.marginal_catches.mean << " swarms a year, worth "
             << next.value.mean - here.value.mean << " " << currency << ", and cost " << next.cost.mean - here.cost.mean
             << " " << currency;
        if (next.value.mean - here.value.mean > next.cost.mean - here.cost.mean) {
            text << ", a gain that the seasons cannot tell from none";
        }
        if (question.at_least_swarms > 0) text << "; the odds asked for are reached without it";
        return text.str();
    }
    switch (last) {
        case LastPoint::most_traps:
            text << "no more than " << recommended << " traps were allowed";
            break;
        case LastPoint::money:
            text << "the budget does not reach a further trap";
            break;
        case LastPoint::hours:
            text << "the hours do not reach a further trap";
            break;
        case LastPoint::places:
            text << "every spot that may be used has its trap";
            break;
    }
    if (recommended > 0) {
        text << "; the last one adds " << curve.back().marginal_catches.mean << " swarms a year and "
             << curve.back().marginal_net.mean << " " << currency << " after its cost";
    }
    return text.str();
}

std::vector<double> falling_fit(const std::vector<double>& values, const std::vector<double>& weights) {
    struct Pool {
        double sum;
        double weight;
        std::size_t length;
        double mean() const { return sum / weight; }
    };
    std::vector<Pool> blocks;
    for (std::size_t i = 0; i < values.size(); ++i) {
        blocks.push_back({values[i] * weights[i], weights[i], 1});
        while (blocks.size() > 1 && blocks[blocks.size() - 2].mean() < blocks.back().mean()) {
            const Pool last = blocks.back();
            blocks.pop_back();
            blocks.back() = {blocks.back().sum + last.sum, blocks.back().weight + last.weight,
                             blocks.back().length + last.length};
        }
    }
    std::vector<double> fitted;
    for (const Pool& block : blocks) fitted.insert(fitted.end(), block.length, block.mean());
    return fitted;
}

}  // namespace maybough::planner
