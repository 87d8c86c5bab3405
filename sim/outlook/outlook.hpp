// Outlook: this year's forecast with odds, its skill by hindcast, and the scores both rest on.
#pragma once

#include <array>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "planner/planner.hpp"

namespace maybough::outlook {

// --- Dates of a season -------------------------------------------------------------------------------------------

/// What is dated in the course of a season's swarms. All are of swarms hung within the area's disc, cast by colonies
/// that were alive at the start of the year; the margin's swarms count only where they hang inside.
enum class Milestone { first, first_tenth, half, peak, nine_tenths, last };
inline constexpr std::size_t milestone_kinds = 6;
inline constexpr std::array<Milestone, milestone_kinds> all_milestones{Milestone::first,       Milestone::first_tenth,
                                                                       Milestone::half,        Milestone::peak,
                                                                       Milestone::nine_tenths, Milestone::last};
std::string_view milestone_word(Milestone milestone);

/// Day of the simulated year of each milestone in one season; NaN in a season without swarms.
using SeasonDates = std::array<double, milestone_kinds>;

/// Dates of a season from its swarms per day of the simulated year. First tenth, half and nine tenths are the days on
/// which that share of the season's swarms is reached; the peak is the middle of the seven days with most swarms, and
/// of several such the middle one.
SeasonDates dates_of(std::span<const int> swarms_on);

/// Odds of one milestone's date over the members of a forecast.
struct DateOdds {
    Day day_10{0};  ///< earliest day by which it has come with odds of at least 10 %
    Day day_50{0};  ///< and so on
    Day day_90{0};
    std::vector<double> by_day;  ///< odds that it has come by the end of each day of the simulated year
    double odds_past = 0;        ///< odds that it came today or before
    Day normal_day_50{0};        ///< of normal years: the same land and luck under the climate's own weather
    Estimate days_late;          ///< this year less normal, member by member; negative is early
    double odds_later = 0;       ///< share of members later than their own normal year, ties half
};
/// Odds over members; those without a swarm are left out. by_day has `days` entries. `today` in [0, days).
DateOdds date_odds(std::span<const double> dates, std::span<const double> normal_dates, Day today, int days);

// --- This year's weather -----------------------------------------------------------------------------------------

/// This year's weather as far as it is known, from the first day of the simulated year; NaN where missing.
struct ThisYear {
    Date today;
    WeatherRecord known;  ///< ends with the last day known, today or before, or with the last typed day
    Date known_until;     ///< last day that the record knows
    int recorded_days = 0;
    int missing_days = 0;  ///< up to today, made by the generator for each member anew
    int typed_days = 0;    ///< of the next days, given as an outlook
    QualityReport quality;
    std::vector<std::string> notes;  ///< what was left out or made up, for print
};

/// Takes the days of `record` that belong to today's simulated year, checks them, fills short gaps and appends the
/// typed outlook. Days after today are not used, nor is a last day that has not both extremes yet. Outlook days up to
/// today are not used either, nor those more than longest_outlook_days ahead. Throws InputError where the record knows
/// nothing of this year.
ThisYear this_year(const WeatherRecord& record, Date today, double latitude_deg, const WeatherParameters& parameters,
                   const WeatherRecord* outlook = nullptr);
inline constexpr int longest_outlook_days = 16;

/// How the days that nobody knows yet are made.
enum class Continuation {
    generated,  ///< by the generator, going on from the last days known
    analogue,   ///< by years of the scenario's record, likelier the more they were like this one
};

/// One member's whole year: what is known, and one continuation of it. Each day's luck is keyed by that day, so an
/// update a day later keeps the luck of all days still to come.
WeatherYear member_weather(const Scenario& scenario, const ThisYear& year, Continuation continuation,
                           const Chance& chance);

/// The scenario moved to the simulated year that holds `today`.
Scenario scenario_of_year(const Scenario& scenario, Date today);

// --- Forecast ----------------------------------------------------------------------------------------------------

struct ForecastOptions {
    std::uint32_t members = 200;
    Continuation continuation = Continuation::generated;
};

/// One week from a Monday.
struct WeekOdds {
    Date monday;
    Estimate swarms;   ///< hung within the area
    Estimate normal;   ///< the same in normal years
    Estimate catches;  ///< under the scenario's own placement, zero without one
};

/// One of the next days.
struct DayOdds {
    Date date;
    double odds_swarm = 0;   ///< at least one swarm hangs in the area
    double odds_normal = 0;  ///< the same in normal years
    double odds_fit = 0;     ///< the weather lets a swarm leave at some hour
    double swarms = 0;       ///< mean
    double tmax_c = 0;       ///< mean over members; typed where there is an outlook
    double rain_mm = 0;
    bool typed = false;
};
inline constexpr int next_days = 10;

enum class Task { hang, visit_from, relure, visit_until, take_down };
/// One line of what to do when.
struct AgendaItem {
    Task task = Task::hang;
    Date date;
    bool overdue = false;  ///< its date was before today
};

struct Forecast {
    ThisYear weather;
    Date first_day;
    int days = 365;
    Continuation continuation = Continuation::generated;
    std::uint32_t members = 0;
    std::uint32_t seed = 1;
    bool with_catches = false;
    std::array<DateOdds, milestone_kinds> dates;
    std::uint32_t members_without_swarms = 0;
    Estimate swarms;   ///< of the whole year, hung within the area
    Estimate normal;   ///< of normal years
    Estimate to_come;  ///< after today
    Estimate catches;  ///< of the whole year
    Estimate catches_to_come;
    double odds_begun = 0;  ///< at least one swarm up to today
    double odds_over = 0;   ///< no swarm after today
    std::vector<WeekOdds> weeks;
    std::vector<DayOdds> next;
    std::vector<AgendaItem> agenda;

    Date date(Day day) const { return first_day + std::chrono::days{day.value}; }
};

/// The swarm calendar of this year from its weather to date. `scenario` may be of another year; it is moved to
/// today's. Catches are simulated where the scenario has a placement, else colonies and swarms only.
Forecast make_forecast(const Scenario& scenario, const ThisYear& weather, const Effort& effort,
                       const ForecastOptions& options, const Progress& progress = {});

/// What one member came to: swarms and catches per day of the simulated year, and whether a swarm could leave.
struct MemberSeason {
    std::vector<int> swarms_on;
    std::vector<int> catches_on;  ///< empty where no traps hang
    std::vector<char> fit;
    WeatherYear weather;
};
/// One member's season under `weather`. Without traps only colonies that can cast into the area are simulated: the
/// same swarms in the area, bit by bit.
MemberSeason member_season(const Scenario& scenario, const Parameters& parameters, const WeatherYear& weather,
                           const Placement& placement, const Chance& chance);

/// When to do what, by the keeper's one calendar (hang_day, take_down_days, visits_of) from `swarm_days`, the day of
/// every swarm of every member; visited as often as the scenario's traps.
std::vector<AgendaItem> agenda_of(const Forecast& forecast, const std::vector<int>& swarm_days,
                                  const Scenario& scenario);

// --- Hindcast ----------------------------------------------------------------------------------------------------

struct HindcastOptions {
    std::uint32_t members = 40;
    std::uint32_t truths = 8;  ///< simulated seasons taken as truth in each year's weather, each on land of its own
    int years = 12;            ///< at most so many of the record's complete years, the latest
    int issues = 8;            ///< forecasts a year, one a fortnight from 1 March (1 September in the south)
    Continuation continuation = Continuation::generated;
};

/// Ten equal classes of the truth's rank among members; all 0.1 for a forecast whose odds hold.
using RankHistogram = std::array<double, 10>;

/// How well one date was forecast on one day of the year, over all years.
struct HindcastScore {
    Milestone what = Milestone::first;
    int fortnight = 0;  ///< 0 = issued 1 March
    int truths = 0;
    double crps_days = 0;
    double crps_normal_days = 0;  ///< of the climatology of the same model
    double skill = 0;             ///< 1 - crps / crps of the climatology
    double skill_se = 0;          ///< years left out in turn (jackknife)
    double bias_days = 0;         ///< forecast median less truth
    double width_days = 0;        ///< of the 80 % interval, mean
    double coverage_80 = 0;       ///< share of truths within the 80 % interval, ties shared out
    RankHistogram ranks{};
};

/// A club's own first swarms against the forecast.
struct ObservedScore {
    int fortnight = 0;
    int years = 0;
    double bias_days = 0;         ///< forecast median less observed: a club sees fewer swarms than there are
    double crps_days = 0;         ///< forecasts shifted by the mean bias of the other years
    double crps_normal_days = 0;  ///< the model's climatology, shifted alike
    double crps_record_days = 0;  ///< the club's own dates of the other years as forecast
    double skill = 0;             ///< against the model's climatology
    double skill_se = 0;
    double skill_record = 0;  ///< against the club's own dates
};

struct Hindcast {
    std::vector<int> years;
    std::string source;
    HindcastOptions options;
    std::uint32_t seed = 1;
    Date first_issue;       ///< in the latest year
    bool left_out = false;  ///< each year's climate was fitted without that year
    std::vector<HindcastScore> scores;
    std::vector<ObservedScore> observed;
    std::vector<std::string> notes;
    int truths_without_swarms = 0;
};

/// First swarms as a club saw them: year of the season to date.
using ObservedFirsts = std::map<int, Date>;
/// Reads CSV text with the columns year,first_swarm ("2024,2024-04-28"; empty where none was seen). The year is that in
/// which the simulated year begins: the calendar year in the north, the year of spring in the south. Throws InputError
/// at `name` and line.
ObservedFirsts observed_firsts(const std::string& text, const std::string& name, double latitude_deg);

/// Skill of the forecast on the complete years of `record`, simulated seasons as truth, and against `observed`.
/// Throws InputError where the record has no complete year.
Hindcast make_hindcast(const Scenario& scenario, const WeatherRecord& record, const ObservedFirsts& observed,
                       const Effort& effort, const HindcastOptions& options, const Progress& progress = {});

// --- Learning from a catch log -----------------------------------------------------------------------------------

struct LearnOptions {
    std::uint32_t seasons = 200;  ///< simulated for each year of the log, and for next year
    std::uint32_t draws = 20000;  ///< of all unknowns together, weighed by the log
};

/// A season's catch of some traps before or after the log is known.
struct CatchOdds {
    double mean = 0;       ///< swarms a season expected
    double mean_low = 0;   ///< 10 % quantile of that expectation over beliefs: ignorance alone
    double mean_high = 0;  ///< 90 %
    double odds_none = 0;  ///< of a season without any, chance and ignorance together
    double odds_at_least_2 = 0;
};

/// One unknown before and after the log.
struct LearnedUnknown {
    std::string key;
    std::string meaning;
    std::string unit;
    Belief prior;
    bool taught = false;       ///< the lesson is large enough to be told and written; else posterior is the prior
    Belief posterior;          ///< median, 5 % and 95 % points
    double effect_ln = 0;      ///< by how much the logarithm of the catch rises with one of its spreads
    double effect_se = 0;      ///< of that, from so many simulated seasons
    double shift_spreads = 0;  ///< how far the log moved it, in its own spreads
    double narrowed = 0;       ///< share of its spread that the log took away: 0 nothing, 1 all; below 0 it grew
};

/// One trap place over all years of the log.
struct LearnedTrap {
    std::string spot;  ///< id
    int years = 0;
    int swarms = 0;
    double before = 0;        ///< swarms the model expected there in those years
    double after = 0;         ///< and expects when it knows the whole log
    double odds_so_few = 0;   ///< of so few or fewer, before the log
    double odds_so_many = 0;  ///< of so many or more, before the log
};

/// One year of the log.
struct LearnedYear {
    int year = 0;
    int traps = 0;
    int swarms = 0;
    double before = 0;
    double after = 0;
    bool weather_known = false;  ///< simulated under that year's own weather; else under generated years
};

/// How the weighing ended.
enum class LearnOutcome {
    nothing,   ///< the log is empty: beliefs are what they were
    learnt,    ///< the log was weighed in full
    weakened,  ///< too few draws carried the log: its likelihood was taken to a power below 1
    refused,   ///< the model hardly allows such a log: beliefs are what they were
};
std::string_view learn_word(LearnOutcome outcome);

struct Learned {
    std::string log;
    LearnOutcome outcome = LearnOutcome::nothing;
    std::vector<LearnedUnknown> unknowns;  ///< most taught first
    std::vector<LearnedTrap> traps;
    std::vector<LearnedYear> years;
    int swarms = 0;           ///< in the whole log
    int trap_years = 0;       ///< traps times years
    double before = 0;        ///< swarms the model expected in the whole log
    double odds_so_few = 0;   ///< of so few or fewer in the whole log, before it
    double odds_so_many = 0;  ///< of so many or more
    double log_rate_low = 0;  ///< swarms a year by the log's count alone, exact 95 % interval
    double log_rate_high = 0;
    double effective_draws = 0;
    double power = 1;        ///< of the likelihood; below 1 where weakened
    CatchOdds next_before;   ///< next year's catch under the scenario's traps, or the log's last where it has none
    CatchOdds next_after;    ///< all unknowns weighed together
    CatchOdds next_overlay;  ///< as `plan` will see it: each unknown by itself
    bool next_is_log_placement = false;
    std::vector<std::string> notes;
    LearnOptions options;
    std::uint32_t seed = 1;
};

/// Beliefs as the log leaves them. Seasons are simulated for every year of the log, with the traps as they hung and
/// that year's weather where the record has it; catches are smoothed over the unknowns by a Poisson regression, spread
/// beyond it taken for the places' and the area's own luck; and draws of the unknowns are weighed by the likelihood of
/// the counts per trap. The same for any number of threads.
Learned learn(const Scenario& scenario, const CatchLog& log, const Effort& effort, const LearnOptions& options,
              const Progress& progress = {});

// --- Scores ------------------------------------------------------------------------------------------------------

/// Continuous ranked probability score of an ensemble, in its unit, unbiased for the law the members come from (the
/// fair form: Ferro 2014; Gneiting and Raftery 2007, eq. 21): mean |x - y| less half the mean |x - x'| over different
/// members. One member gives |x - y|. O(m log m). Throws ModelFault without members.
double crps_ensemble(std::vector<double> members, double observed);

/// Closed forms. Normal: Gneiting et al. 2005, eq. 5. Counts: summed over the distribution function to where the rest
/// is below 1e-14.
double crps_normal(double mean, double sd, double observed);
double crps_poisson(double mean, std::int64_t observed);
/// `size` is r: variance = mean + mean^2 / r.
double crps_negative_binomial(double size, double mean, std::int64_t observed);

/// Minus the natural logarithm of the chance given to what came.
double log_score_poisson(double mean, std::int64_t observed);
double log_score_negative_binomial(double size, double mean, std::int64_t observed);

/// Where the truth stands among the members: its rank's class shares, ties with members shared out evenly, so that a
/// forecast of whole days that holds gives equal shares. Sums to 1.
RankHistogram rank_shares(std::span<const double> members, double observed);

}  // namespace maybough::outlook

namespace maybough {
using namespace outlook;  // so that rooms to the right need no prefix
}
