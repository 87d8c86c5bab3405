// What the stages of a hindcast share: the years of a record, and the dates simulated in them. Private to outlook/.
#pragma once

#include <vector>

#include "outlook/outlook.hpp"

namespace maybough::outlook {

/// One year of the record: its weather, and the climate known without it.
struct PastYear {
    int year = 0;
    WeatherYear weather;
    Climate climate;
};

/// The latest complete years of `record`, at most `most`, in rising order. Short gaps are filled, long ones make a year
/// incomplete. `left_out` tells whether climates were fitted without their own year; where the record is too short
/// for that they are the scenario's.
std::vector<PastYear> past_years(const Scenario& scenario, const WeatherRecord& record, int most, bool& left_out);

/// Dates of all members in one year: in normal weather, and as forecast at each issue.
struct YearOfMembers {
    std::vector<SeasonDates> normal;               ///< by member
    std::vector<std::vector<SeasonDates>> issued;  ///< by fortnight, then member
    std::vector<SeasonDates> truths;
};

/// First day of the fortnightly issues, 0-based within the simulated year that starts at `first`.
Day first_issue_day(Date first, double latitude_deg);

/// Scores of all fortnights for the dates in `what`; one cluster a year.
std::vector<HindcastScore> score_truths(const std::vector<YearOfMembers>& years, std::span<const Milestone> what,
                                        int issues);

/// Scores against a club's first swarms; `first_days` and `names` are by year, as `years`.
std::vector<ObservedScore> score_observed(const std::vector<YearOfMembers>& years, const std::vector<PastYear>& past,
                                          const ObservedFirsts& observed, int issues);

}  // namespace maybough::outlook
