// Skill of past forecasts: scores against their climatology, by year, with years left out in turn for the error.
#include <algorithm>
#include <cmath>

#include "outlook/hindcast.hpp"

namespace maybough::outlook {

namespace {
std::vector<double> dates_of_kind(const std::vector<SeasonDates>& members, Milestone what) {
    std::vector<double> dates;
    for (const SeasonDates& member : members) {
        const double date = member[static_cast<std::size_t>(what)];
        if (!std::isnan(date)) dates.push_back(date);
    }
    std::sort(dates.begin(), dates.end());
    return dates;
}

double quantile(const std::vector<double>& sorted, double p) {
    const double place = p * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (place - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

/// Sums of a forecast's and its reference's score in one year.
struct YearSums {
    double score = 0;
    double reference = 0;
};

struct Skill {
    double value = 0;
    double se = 0;
};

double skill_without(const std::vector<YearSums>& years, std::size_t without) {
    double score = 0;
    double reference = 0;
    for (std::size_t i = 0; i < years.size(); ++i) {
        if (i == without) continue;
        score += years[i].score;
        reference += years[i].reference;
    }
    return reference > 0 ? 1 - score / reference : 0;
}

/// 1 - score / reference over all years; standard error by leaving out each in turn (Efron and Tibshirani 1993).
Skill skill_of(const std::vector<YearSums>& years) {
    Skill skill{skill_without(years, years.size()), 0};
    const auto n = static_cast<double>(years.size());
    if (years.size() < 2) return skill;
    double mean = 0;
    for (std::size_t i = 0; i < years.size(); ++i) mean += skill_without(years, i) / n;
    double squares = 0;
    for (std::size_t i = 0; i < years.size(); ++i) squares += std::pow(skill_without(years, i) - mean, 2);
    skill.se = std::sqrt((n - 1) / n * squares);
    return skill;
}

HindcastScore score_one(const std::vector<YearOfMembers>& years, Milestone what, std::size_t issue) {
    HindcastScore score;
    score.what = what;
    score.fortnight = static_cast<int>(issue);
    std::vector<YearSums> sums;
    for (const YearOfMembers& year : years) {
        const std::vector<double> members = dates_of_kind(year.issued[issue], what);
        const std::vector<double> normal = dates_of_kind(year.normal, what);
        if (members.empty() || normal.empty()) continue;
        YearSums sum;
        for (const double truth : dates_of_kind(year.truths, what)) {
            sum.score += crps_ensemble(members, truth);
            sum.reference += crps_ensemble(normal, truth);
            score.bias_days += quantile(members, 0.5) - truth;
            score.width_days += quantile(members, 0.9) - quantile(members, 0.1);
            const RankHistogram shares = rank_shares(members, truth);
            for (std::size_t c = 0; c < shares.size(); ++c) score.ranks[c] += shares[c];
            ++score.truths;
        }
        score.crps_days += sum.score;
        score.crps_normal_days += sum.reference;
        sums.push_back(sum);
    }
    const double n = std::max(1, score.truths);
    for (double* mean : {&score.bias_days, &score.width_days, &score.crps_days, &score.crps_normal_days}) *mean /= n;
    for (double& share : score.ranks) share /= n;
    // The middle eight classes are the 80 % interval.
    for (std::size_t c = 1; c + 1 < score.ranks.size(); ++c) score.coverage_80 += score.ranks[c];
    const Skill skill = skill_of(sums);
    score.skill = skill.value;
    score.skill_se = skill.se;
    return score;
}

/// One year in which a club saw its first swarm.
struct SeenYear {
    double seen = 0;
    std::vector<double> members;
    std::vector<double> normal;
};

std::vector<double> shifted(std::vector<double> dates, double by) {
    for (double& date : dates) date += by;
    return dates;
}

/// Mean of seen less median over all years but `without`: what a club sees lags the area's first swarm.
double mean_lag(const std::vector<SeenYear>& years, std::size_t without, std::vector<double> SeenYear::*dates) {
    double sum = 0;
    double n = 0;
    for (std::size_t i = 0; i < years.size(); ++i) {
        if (i == without) continue;
        sum += years[i].seen - quantile(years[i].*dates, 0.5);
        n += 1;
    }
    return n > 0 ? sum / n : 0;
}

ObservedScore score_seen(const std::vector<SeenYear>& years, int issue) {
    ObservedScore score;
    score.fortnight = issue;
    score.years = static_cast<int>(years.size());
    score.bias_days = -mean_lag(years, years.size(), &SeenYear::members);
    std::vector<YearSums> against_model;
    std::vector<YearSums> against_record;
    for (std::size_t i = 0; i < years.size(); ++i) {
        const SeenYear& year = years[i];
        std::vector<double> others;
        for (std::size_t j = 0; j < years.size(); ++j) {
            if (j != i) others.push_back(years[j].seen);
        }
        const double forecast = crps_ensemble(shifted(year.members, mean_lag(years, i, &SeenYear::members)), year.seen);
        const double normal = crps_ensemble(shifted(year.normal, mean_lag(years, i, &SeenYear::normal)), year.seen);
        const double record = others.empty() ? forecast : crps_ensemble(others, year.seen);
        const double n = score.years;
        score.crps_days += forecast / n;
        score.crps_normal_days += normal / n;
        score.crps_record_days += record / n;
        against_model.push_back({forecast, normal});
        against_record.push_back({forecast, record});
    }
    const Skill skill = skill_of(against_model);
    score.skill = skill.value;
    score.skill_se = skill.se;
    score.skill_record = skill_of(against_record).value;
    return score;
}
}  // namespace

std::vector<HindcastScore> score_truths(const std::vector<YearOfMembers>& years, std::span<const Milestone> what,
                                        int issues) {
    std::vector<HindcastScore> scores;
    for (const Milestone milestone : what) {
        for (int issue = 0; issue < issues; ++issue) {
            scores.push_back(score_one(years, milestone, static_cast<std::size_t>(issue)));
        }
    }
    return scores;
}

std::vector<ObservedScore> score_observed(const std::vector<YearOfMembers>& years, const std::vector<PastYear>& past,
                                          const ObservedFirsts& observed, int issues) {
    std::vector<ObservedScore> scores;
    for (int issue = 0; issue < issues; ++issue) {
        std::vector<SeenYear> seen;
        for (std::size_t i = 0; i < years.size(); ++i) {
            const auto found = observed.find(past[i].year);
            if (found == observed.end()) continue;
            SeenYear year;
            year.seen = static_cast<double>((found->second - past[i].weather.first).count());
            year.members = dates_of_kind(years[i].issued[static_cast<std::size_t>(issue)], Milestone::first);
            year.normal = dates_of_kind(years[i].normal, Milestone::first);
            if (!year.members.empty() && !year.normal.empty()) seen.push_back(std::move(year));
        }
        scores.push_back(score_seen(seen, issue));
    }
    return scores;
}

}  // namespace maybough::outlook
