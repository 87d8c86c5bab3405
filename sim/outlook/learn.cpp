// What a catch log teaches: prior draws weighed by it, each unknown before and after, and next year's catch.
#include "outlook/learn.hpp"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <cmath>
#include <map>
#include <numbers>
#include <numeric>

namespace maybough::outlook {

namespace {
/// The log's counts in the order of the table's cells; next year's cells get none.
std::vector<int> counts_of(const CatchLog& log, const std::vector<CatchCell>& cells) {
    std::vector<int> counts;
    for (const CatchCell& cell : cells) {
        counts.push_back(cell.season < log.seasons.size() ? log.seasons[cell.season].swarms[cell.trap] : 0);
    }
    return counts;
}

struct ScoreSpread {
    double mean = 0;
    double sd = 0;
};
ScoreSpread spread_of(const std::vector<double>& scores, const std::vector<double>& weights) {
    ScoreSpread spread;
    for (std::size_t i = 0; i < scores.size(); ++i) spread.mean += weights[i] * scores[i];
    double squares = 0;
    for (std::size_t i = 0; i < scores.size(); ++i) squares += weights[i] * std::pow(scores[i] - spread.mean, 2);
    spread.sd = std::sqrt(squares);
    return spread;
}

double normal_probability(double score) {
    return 0.5 * std::erfc(-score / std::numbers::sqrt2);
}

double value_at(const Unknown& unknown, double score) {
    return belief_quantile(unknown.entry->row, unknown.prior, normal_probability(score));
}

std::vector<LearnedUnknown> what_was_taught(const std::vector<Unknown>& unknowns, const CatchLaw& law,
                                            const std::vector<std::vector<double>>& draws,
                                            const std::vector<double>& weights, double least_lesson) {
    const std::vector<double> even(draws.size(), 1.0 / static_cast<double>(draws.size()));
    std::vector<LearnedUnknown> learned;
    for (std::size_t k = 0; k < unknowns.size(); ++k) {
        const ParameterRow& row = unknowns[k].entry->row;
        std::vector<double> scores;
        for (const auto& draw : draws) scores.push_back(draw[k]);
        const ScoreSpread before = spread_of(scores, even);
        const ScoreSpread after = spread_of(scores, weights);
        LearnedUnknown one;
        one.key = row.key;
        one.meaning = row.meaning;
        one.unit = row.unit;
        one.prior = one.posterior = unknowns[k].prior;
        one.effect_ln = law.effect[k];
        one.effect_se = law.effect_se[k];
        one.shift_spreads = (after.mean - before.mean) / before.sd;
        one.narrowed = 1 - after.sd / before.sd;
        // An effect within twice its error may be an accident of the seasons simulated: no lesson is drawn from it.
        const bool told = std::abs(one.effect_ln) >= 2 * one.effect_se;
        if (told && std::max(std::abs(one.shift_spreads), std::abs(one.narrowed)) >= least_lesson) {
            one.taught = true;
            one.posterior = {value_at(unknowns[k], weighted_quantile(scores, weights, 0.5)),
                             value_at(unknowns[k], weighted_quantile(scores, weights, 0.05)),
                             value_at(unknowns[k], weighted_quantile(scores, weights, 0.95))};
        }
        learned.push_back(std::move(one));
    }
    return learned;
}

/// The draws as beliefs written out give them: each unknown by itself.
std::vector<std::vector<double>> overlay_draws(const std::vector<Unknown>& unknowns,
                                               const std::vector<LearnedUnknown>& learned,
                                               std::vector<std::vector<double>> draws) {
    for (auto& draw : draws) {
        for (std::size_t k = 0; k < unknowns.size(); ++k) {
            if (!learned[k].taught) continue;
            const ParameterRow& row = unknowns[k].entry->row;
            draw[k] = score_of(row, unknowns[k].prior,
                               belief_quantile(row, learned[k].posterior, normal_probability(draw[k])));
        }
    }
    return draws;
}

/// Shares of simulated logs, under the prior, with so few and so many swarms.
class Tally {
  public:
    explicit Tally(int seen) : seen_(seen) {}
    void count(int simulated) {
        n_ += 1;
        few_ += simulated <= seen_ ? 1 : 0;
        many_ += simulated >= seen_ ? 1 : 0;
    }
    double so_few() const { return few_ / n_; }
    double so_many() const { return many_ / n_; }

  private:
    int seen_;
    double n_ = 0;
    double few_ = 0;
    double many_ = 0;
};

/// A variance of luck below this is none.
constexpr double no_luck = 1e-9;

double luck(Stream& stream, double variance) {
    return variance > no_luck ? gamma(stream, 1 / variance, 1.0) : 1;
}

/// The log's years as told by their rows.
std::vector<LearnedYear> years_of(const Scenario& scenario, const CatchLog& log) {
    std::vector<LearnedYear> years;
    for (const LoggedSeason& season : log.seasons) {
        LearnedYear year;
        year.year = season.year;
        year.traps = static_cast<int>(season.placement.size());
        year.swarms = std::accumulate(season.swarms.begin(), season.swarms.end(), 0);
        Scenario moved;
        moved.land.centre = scenario.land.centre;
        moved.year = season.year;
        year.weather_known = record_knows(scenario.record, moved.first_day());
        years.push_back(year);
    }
    return years;
}

/// By place: the log's rows there, summed. Places that only next year uses have no years.
std::vector<LearnedTrap> traps_of(const Scenario& scenario, const CatchLog& log, const CatchLaw& law) {
    std::vector<LearnedTrap> traps(law.places);
    for (const CatchCell& cell : law.cells) {
        if (cell.season >= log.seasons.size()) continue;
        const LoggedSeason& season = log.seasons[cell.season];
        LearnedTrap& trap = traps[cell.place];
        trap.spot = scenario.spots[season.placement[cell.trap].spot].id;
        ++trap.years;
        trap.swarms += season.swarms[cell.trap];
    }
    return traps;
}

/// Swarms expected in the log's rows under one draw, by place and by year.
struct ExpectedLog {
    std::vector<double> of_place;
    std::vector<double> of_year;
};
ExpectedLog expected_log(const CatchLaw& law, const std::vector<double>& draw, std::size_t years) {
    ExpectedLog expected{std::vector<double>(law.places, 0), std::vector<double>(years, 0)};
    const std::vector<double> mean = law.expected(draw);
    for (std::size_t c = 0; c < mean.size(); ++c) {
        const CatchCell& cell = law.cells[c];
        if (cell.season >= years) continue;
        expected.of_place[cell.place] += mean[c];
        expected.of_year[cell.season] += mean[c];
    }
    return expected;
}

/// What the model expected of the log before it knew it, and of each place once it knows it.
void put_places_and_years(Learned& learned, const CatchLaw& law, std::vector<LearnedTrap> traps,
                          const std::vector<std::vector<double>>& draws, const std::vector<double>& weights) {
    for (const LearnedTrap& trap : traps) {
        learned.swarms += trap.swarms;
        learned.trap_years += trap.years;
    }
    std::vector<Tally> by_place;
    for (const LearnedTrap& trap : traps) by_place.emplace_back(trap.swarms);
    Tally all(learned.swarms);
    const auto n = static_cast<double>(draws.size());
    // The gamma law of a place's luck, its count known: Gelman et al. 2013, section 2.6.
    const double size = law.place_variance > no_luck ? 1 / law.place_variance : 1 / no_luck;
    for (std::size_t draw = 0; draw < draws.size(); ++draw) {
        Stream stream =
            Chance{learned.seed, static_cast<std::uint32_t>(draw)}.stream(Purpose::learn_predict, 0U, Day{-1});
        const ExpectedLog expected = expected_log(law, draws[draw], learned.years.size());
        for (std::size_t year = 0; year < learned.years.size(); ++year) {
            learned.years[year].before += expected.of_year[year] / n;
            learned.years[year].after += weights[draw] * expected.of_year[year];
        }
        const double area = luck(stream, law.area_variance);
        int total = 0;
        for (std::size_t place = 0; place < law.places; ++place) {
            LearnedTrap& trap = traps[place];
            if (trap.years == 0) continue;
            const double mean = expected.of_place[place];
            trap.before += mean / n;
            trap.after += weights[draw] * mean * (size + trap.swarms) / (size + mean);
            const double own = luck(stream, law.place_variance);
            const int simulated = static_cast<int>(poisson(stream, area * own * mean));
            by_place[place].count(simulated);
            total += simulated;
        }
        all.count(total);
    }
    for (std::size_t place = 0; place < law.places; ++place) {
        if (traps[place].years == 0) continue;
        traps[place].odds_so_few = by_place[place].so_few();
        traps[place].odds_so_many = by_place[place].so_many();
        learned.before += traps[place].before;
        learned.traps.push_back(traps[place]);
    }
    learned.odds_so_few = all.so_few();
    learned.odds_so_many = all.so_many();
}

/// Exact 95 % limits of a Poisson mean (Garwood 1936), a year.
void put_log_rate(Learned& learned) {
    const double n = learned.swarms;
    const double years = std::max<double>(1, static_cast<double>(learned.years.size()));
    using Law = boost::math::chi_squared;
    learned.log_rate_low = n > 0 ? boost::math::quantile(Law(2 * n), 0.025) / 2 / years : 0;
    learned.log_rate_high = boost::math::quantile(Law(2 * n + 2), 0.975) / 2 / years;
}

void tell(Learned& learned, const CatchLog& log) {
    int made_up = 0;
    for (const LearnedYear& year : learned.years) made_up += year.weather_known ? 0 : 1;
    if (made_up > 0) {
        learned.notes.push_back(std::to_string(made_up) + " of " + std::to_string(learned.years.size()) +
                                " years are not in the weather record: simulated under generated years");
    }
    bool dated = false;
    for (const LoggedSeason& season : log.seasons) {
        for (const auto& days : season.caught) dated = dated || !days.empty();
    }
    if (dated) learned.notes.emplace_back("the days of the catches are checked, but only their number is weighed");
    if (learned.outcome == LearnOutcome::weakened) {
        learned.notes.emplace_back(
            "few draws of the unknowns fit this log: its word was weakened so that enough of "
            "them carry the answer, and beliefs are wider than the log itself would have them");
    }
    if (learned.outcome == LearnOutcome::refused) {
        learned.notes.emplace_back(
            "hardly any draw of the unknowns fits this log: nothing was learnt. Look for a slip in the log or the "
            "scenario (traps not there, hives not listed, another place)");
    }
}
}  // namespace

std::string_view learn_word(LearnOutcome outcome) {
    static constexpr std::array<std::string_view, 4> words{"nothing to learn from", "learnt", "learnt with less weight",
                                                           "refused"};
    return words.at(static_cast<std::size_t>(outcome));
}

Learned learn(const Scenario& scenario, const CatchLog& log, const Effort& effort, const LearnOptions& options,
              const Progress& progress) {
    Learned learned;
    learned.log = log.file;
    learned.options = options;
    learned.seed = effort.seed;
    learned.next_is_log_placement = scenario.placement.empty() && !log.seasons.empty();
    const Placement& next = learned.next_is_log_placement ? log.seasons.back().placement : scenario.placement;
    const std::vector<Unknown> unknowns = unknowns_of(scenario);
    const OutlookParameters& parameters = scenario.parameters.outlook;

    if (next.empty()) {
        throw InputError(log.file.empty() ? "catch log" : log.file,
                         "holds no rows, and the scenario has no traps for next year either",
                         "give a log with rows of year,spot,swarms");
    }
    const CatchTable table = simulate_catches(scenario, log, next, effort, options, progress);
    const CatchLaw law = fit_catches(table, parameters);
    const auto draws = prior_draws(unknowns, effort.seed, options.draws);
    const std::vector<double> even(draws.size(), 1.0 / static_cast<double>(draws.size()));

    // An empty log weighs all draws alike: beliefs stay what they are.
    Weights weights{even, static_cast<double>(draws.size()), 1, LearnOutcome::nothing};
    if (!log.seasons.empty()) {
        const std::vector<int> counts = counts_of(log, table.cells);
        std::vector<double> log_likelihoods;
        for (const auto& draw : draws) {
            log_likelihoods.push_back(log_likelihood(law, draw, counts, log.seasons.size()));
        }
        weights = weigh(log_likelihoods, parameters);
    }
    learned.outcome = weights.outcome;
    learned.power = weights.power;
    learned.effective_draws = weights.effective;
    learned.unknowns = what_was_taught(unknowns, law, draws, weights.of_draw, parameters.least_lesson);
    learned.years = years_of(scenario, log);
    put_places_and_years(learned, law, traps_of(scenario, log, law), draws, weights.of_draw);
    put_log_rate(learned);
    const std::size_t next_year = log.seasons.size();
    learned.next_before = catch_odds(law, draws, even, next_year);
    learned.next_after = catch_odds(law, draws, weights.of_draw, next_year);
    learned.next_overlay = catch_odds(law, overlay_draws(unknowns, learned.unknowns, draws), even, next_year);
    std::stable_sort(learned.unknowns.begin(), learned.unknowns.end(), [](const auto& a, const auto& b) {
        return std::max(std::abs(a.shift_spreads), std::abs(a.narrowed)) >
               std::max(std::abs(b.shift_spreads), std::abs(b.narrowed));
    });
    tell(learned, log);
    return learned;
}

}  // namespace maybough::outlook
