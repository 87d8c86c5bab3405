// Private to experiments/: managed hives of a place lived through years.
#pragma once

#include "experiments/lives.hpp"
#include "outlook/outlook.hpp"

namespace maybough::experiments {

/// What years of hives came to.
struct Hives {
    Share swarmed;     ///< from 1 May on, of hives alive then
    Sample most_eggs;  ///< in a day, of each year of a hive
    Sample workers;    ///< that emerged in a year
};

/// Hives under `management`, each with a queen of that age on 1 May.
Hives keep(const Place& place, const Parameters& parameters, const HiveManagement& management, double queen_age_days,
           std::uint32_t seed, std::uint32_t years, std::uint32_t hives);

/// Supers as needed and nothing else.
HiveManagement supers_only();
/// Opened every nine days in the season; cells found in `finding` of the visits.
HiveManagement usual_control(CellControl control, double finding);

}  // namespace maybough::experiments
