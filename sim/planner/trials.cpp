// Lives through seasons under several placements with common random numbers.
#include "planner/trials.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>

namespace maybough::planner {

namespace {
/// Slope of `y` on `x`; 0 where x does not vary.
double regression(const std::vector<double>& y, const std::vector<double>& x) {
    const double mean_x = estimate(x).mean;
    double covariance = 0;
    double variance = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        covariance += (x[i] - mean_x) * y[i];
        variance += (x[i] - mean_x) * (x[i] - mean_x);
    }
    return variance > 0 ? covariance / variance : 0;
}

struct OneSeason {
    std::vector<Outcome> outcomes;
    std::vector<FollowedCatch> followed;
    std::vector<int> swarm_days;
    std::vector<Point> swarm_places;
    std::vector<SwarmCase> situations;
    std::int64_t asked = 0;
    std::int64_t run = 0;
};

Outcome outcome_of(const SeasonRecord& record) {
    Outcome outcome{static_cast<double>(record.catches.size()), record.value, record.cost, record.bill.hours};
    for (const Catch& caught : record.catches) outcome.hours += caught.taking.hours;
    return outcome;
}

Replicate& replicate_in(std::unique_ptr<Replicate>& place, const Scenario& scenario, const Chance& chance) {
    if (!place) {
        Parameters parameters = draw_beliefs(scenario, chance.seed, chance.replicate);
        Backdrop backdrop = raise_backdrop(scenario, parameters, chance);
        place = std::make_unique<Replicate>(Replicate{std::move(parameters), std::move(backdrop), {}});
    }
    return *place;
}

OneSeason try_all(const Scenario& scenario, const std::vector<Placement>& placements, std::size_t follow,
                  const Chance& chance, const ChoiceWeights* weights, KeptReplicates* kept) {
    OneSeason one;
    std::unique_ptr<Replicate> own;
    std::unique_ptr<Replicate>* const place = kept != nullptr ? kept->place(chance.replicate) : nullptr;
    Replicate& replicate = replicate_in(place != nullptr ? *place : own, scenario, chance);
    const Parameters& parameters = replicate.parameters;
    const Backdrop& backdrop = replicate.backdrop;
    HuntMemo& memo = replicate.memo;
    const std::int64_t asked_before = memo.asked;
    const std::int64_t run_before = memo.run;
    for (std::size_t p = 0; p < placements.size(); ++p) {
        std::vector<SwarmStory> stories;
        const bool wanted = p == follow && weights != nullptr;
        const SeasonRecord record =
            run_season(scenario, parameters, backdrop, placements[p], chance, &memo, wanted ? &stories : nullptr);
        if (wanted) one.situations = situations_of(scenario, backdrop, parameters, std::move(stories), *weights);
        one.outcomes.push_back(outcome_of(record));
        if (p != follow) continue;
        for (const Catch& caught : record.catches) one.followed.push_back({caught.trap, caught.caught.value});
    }
    for (const Swarm& swarm : backdrop.swarms) {
        if (distance_m(swarm.at, {}) > scenario.land.radius_m) continue;
        one.swarm_days.push_back(swarm.day.value);
        one.swarm_places.push_back(swarm.at);
    }
    one.asked = memo.asked - asked_before;
    one.run = memo.run - run_before;
    return one;
}
}  // namespace

std::size_t Trials::seasons() const {
    if (outcomes.empty()) return 0;
    return std::min_element(outcomes.begin(), outcomes.end(),
                            [](const auto& a, const auto& b) { return a.size() < b.size(); })
        ->size();
}

std::size_t Trials::longest() const {
    const auto most = std::max_element(outcomes.begin(), outcomes.end(),
                                       [](const auto& a, const auto& b) { return a.size() < b.size(); });
    return static_cast<std::size_t>(most - outcomes.begin());
}

Estimate lengthened(const std::vector<double>& own, const std::vector<double>& longer) {
    Estimate result = estimate(own);
    if (own.size() >= longer.size() || own.empty()) return result;
    // A regression says how much of the first seasons' luck is shared.
    const auto split = static_cast<std::ptrdiff_t>(own.size());
    const double beta = regression(own, {longer.begin(), longer.begin() + split});
    const auto n = static_cast<double>(longer.size());
    const auto common = static_cast<double>(own.size());
    std::vector<double> parts;  // each season adds its part to the mean; parts of different blocks are independent
    for (std::size_t s = 0; s < longer.size(); ++s) {
        parts.push_back(beta * longer[s] / n + (s < own.size() ? (own[s] - beta * longer[s]) / common : 0));
    }
    const Estimate paired = estimate(std::vector<double>(parts.begin(), parts.begin() + split));
    const Estimate alone = estimate(std::vector<double>(parts.begin() + split, parts.end()));
    result.mean = common * paired.mean + (n - common) * alone.mean;
    result.se = std::hypot(common * paired.se, (n - common) * alone.se);
    result.half_width_95 = t_quantile_95(common / seasons_per_block - 2) * result.se;  // mean and slope are fitted
    return result;
}

double catches_in(const Outcome& outcome) {
    return outcome.catches;
}
double value_in(const Outcome& outcome) {
    return outcome.value;
}
double cost_in(const Outcome& outcome) {
    return outcome.cost;
}
double net_in(const Outcome& outcome) {
    return outcome.net();
}
double hours_in(const Outcome& outcome) {
    return outcome.hours;
}

std::vector<double> Trials::long_column(std::size_t placement, double (*of)(const Outcome&)) const {
    std::vector<double> values;
    for (const Outcome& outcome : outcomes[placement]) values.push_back(of(outcome));
    return values;
}

std::vector<double> Trials::column(std::size_t placement, double (*of)(const Outcome&)) const {
    std::vector<double> values = long_column(placement, of);
    values.resize(seasons());
    return values;
}

std::vector<double> Trials::difference(std::size_t placement, std::size_t other, double (*of)(const Outcome&)) const {
    std::vector<double> values;
    for (std::size_t s = 0; s < seasons(); ++s) values.push_back(of(outcomes[placement][s]) - of(outcomes[other][s]));
    return values;
}

Trials run_trials(const Scenario& scenario, const std::vector<Placement>& placements, std::size_t follow,
                  std::uint32_t first, std::uint32_t count, const Effort& effort, const Progress& progress,
                  const ChoiceWeights* weights, KeptReplicates* kept) {
    Trials trials;
    refuse_overlap(first, count);
    trials.first_season = first;
    trials.outcomes.resize(placements.size());
    run_in_order<OneSeason>(
        first, first + count, effort.threads,
        [&](std::uint32_t season) {
            const Chance chance{effort.seed, season};
            return try_all(scenario, placements, follow, chance, weights, kept);
        },
        [&](std::uint32_t season, OneSeason&& one) {
            for (std::size_t p = 0; p < placements.size(); ++p) trials.outcomes[p].push_back(one.outcomes[p]);
            trials.followed.push_back(std::move(one.followed));
            trials.swarm_days.push_back(std::move(one.swarm_days));
            trials.swarm_places.push_back(std::move(one.swarm_places));
            for (SwarmCase& situation : one.situations) {
                situation.season = season - first;
                trials.situations.push_back(situation);
            }
            trials.asked += one.asked;
            trials.run += one.run;
        },
        progress, season_of(effort.seed));
    return trials;
}

std::uint32_t whole_blocks(double seasons) {
    const double blocks = std::max(2.0, std::ceil(seasons / seasons_per_block));
    return static_cast<std::uint32_t>(blocks) * seasons_per_block;
}

double worst_tenth(std::vector<double> values) {
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    const std::size_t worst = std::max<std::size_t>(1, values.size() / 10);
    return std::accumulate(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(worst), 0.0) /
           static_cast<double>(worst);
}

std::vector<SeasonShare> odds_at_least(const std::vector<double>& counts, int most) {
    std::vector<SeasonShare> odds;
    for (int k = 1; k <= most; ++k) {
        std::vector<double> reached;
        for (const double count : counts) reached.push_back(count >= k ? 1 : 0);
        const SeasonShare share = share_of(reached);
        if (!(share.share > 0)) break;
        odds.push_back(share);
    }
    return odds;
}

Progress Stages::stage(std::uint32_t steps) {
    const std::uint32_t before = before_;
    before_ += steps;
    if (!outside_) return {};
    return [this, before](std::uint32_t done, std::uint32_t) { outside_(before + done, total_); };
}

}  // namespace maybough::planner
