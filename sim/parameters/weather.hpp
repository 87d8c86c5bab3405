// The constants of weather/.
#pragma once

#include "parameters/row.hpp"

// clang-format off
#define MAYBOUGH_WEATHER_ROWS(ROW) \
    ROW(coldest_c, "degrees C", -60, -95, -20, fixed, -70, -50, practice, "common practice", "a reading below is rejected as impossible") \
    ROW(hottest_c, "degrees C", 57, 40, 65, fixed, 50, 60, practice, "common practice", "a reading above is rejected as impossible") \
    ROW(jump_c, "degrees C", 22, 8, 60, fixed, 18, 28, practice, "common practice", "a day that leaps so far from both neighbours, the same way, is rejected as a spike") \
    ROW(wettest_mm, "mm/d", 600, 100, 2000, fixed, 400, 1000, practice, "common practice", "more rain in one day is rejected") \
    ROW(windiest_ms, "m/s", 40, 15, 80, fixed, 30, 50, practice, "common practice", "a windier daily mean is rejected") \
    ROW(stuck_days, "d", 5, 3, 60, fixed, 4, 10, practice, "common practice", "so many equal temperatures in a row are counted as a stuck instrument") \
    ROW(fill_days, "d", 3, 0, 14, fixed, 2, 5, practice, "common practice", "longest gap filled by interpolation; longer ones are left to the generator") \
    ROW(wet_day_mm, "mm", 1, 0.1, 5, fixed, 0.3, 1, practice, "World Meteorological Organization: days with at least 1 mm", "a day with at least so much rain is wet") \
    ROW(rounding_mm, "mm", 0.25, 0.01, 2, fixed, 0.1, 0.3, derived, "0.01 inch is 0.254 mm", "coarseness of rain readings, for the fit of amounts") \
    ROW(least_range_c, "degrees C", 0.5, 0, 5, fixed, 0.1, 1, assumed, "", "least range from minimum to maximum of a generated day") \
    ROW(dry_persistence, "1", 0.25, 0, 0.9, fixed, 0.15, 0.4, from_memory, "Geng, Penning de Vries and Supit 1986", "P(wet after wet) minus P(wet after dry), where only normals are known") \
    ROW(amount_shape, "1", 0.75, 0.2, 5, fixed, 0.6, 1, from_memory, "Richardson and Wright 1984", "gamma shape of wet-day amounts above the threshold, where only normals are known") \
    ROW(wet_tmax_drop_c, "degrees C", 2, 0, 10, fixed, 1, 4, assumed, "", "how much cooler the maximum of a wet day is, where only normals are known") \
    ROW(tmax_sd_base_c, "degrees C", 2.1, 0.3, 8, fixed, 1.5, 3, derived, "two daily series of 2012-2015 (Seattle, New York)", "spread of daily maxima about the season, part that every climate has") \
    ROW(tmax_sd_per_amplitude, "1", 0.16, 0, 1, fixed, 0.1, 0.25, derived, "two daily series of 2012-2015 (Seattle, New York)", "spread of daily maxima per degree of yearly amplitude") \
    ROW(tmin_sd_share, "1", 0.87, 0.3, 2, fixed, 0.75, 1, derived, "two daily series of 2012-2015 (Seattle, New York)", "spread of daily minima as a share of that of maxima") \
    ROW(lag0_max_min, "1", 0.633, -0.9, 0.95, fixed, 0.4, 0.75, published, "Richardson and Wright 1984", "correlation of the same day's maximum and minimum, where only normals are known") \
    ROW(lag1_max_max, "1", 0.621, -0.9, 0.95, fixed, 0.5, 0.75, published, "Richardson and Wright 1984", "correlation of maximum with the maximum of the day before") \
    ROW(lag1_max_min, "1", 0.445, -0.9, 0.95, fixed, 0.3, 0.6, published, "Richardson and Wright 1984", "correlation of maximum with the minimum of the day before") \
    ROW(lag1_min_max, "1", 0.563, -0.9, 0.95, fixed, 0.4, 0.7, published, "Richardson and Wright 1984", "correlation of minimum with the maximum of the day before") \
    ROW(lag1_min_min, "1", 0.674, -0.9, 0.95, fixed, 0.5, 0.75, published, "Richardson and Wright 1984", "correlation of minimum with the minimum of the day before") \
    ROW(year_sd_c, "degrees C", 0.6, 0, 5, fixed, 0.4, 1, assumed, "", "spread of a whole year's temperature offset, where fewer than eight years are on record") \
    ROW(wind_ms, "m/s", 3, 0, 15, fixed, 2, 5, assumed, "", "daily mean wind at 10 m where none is on record") \
    ROW(wind_shape, "1", 5, 1, 50, fixed, 3, 8, derived, "two daily series of 2012-2015 (Seattle, New York)", "gamma shape of daily mean wind where none is on record") \
    ROW(wind_lag1, "1", 0.35, 0, 0.95, fixed, 0.2, 0.5, derived, "two daily series of 2012-2015 (Seattle, New York)", "day-to-day correlation of wind where none is on record") \
    ROW(radiation_coefficient, "degrees C^-0.5", 0.17, 0.1, 0.25, fixed, 0.16, 0.19, published, "Allen et al. 1998, FAO-56 eq. 50: 0.16 inland, 0.19 coast", "light from the range of temperature") \
    ROW(clear_sky_share, "1", 0.75, 0.5, 0.9, fixed, 0.7, 0.8, published, "Allen et al. 1998, FAO-56 eq. 37 at sea level", "share of light at the top of the air that a clear day lets through") \
    ROW(curve_lag_h, "h", 1.86, 0, 5, fixed, 1.5, 2.5, from_memory, "Parton and Logan 1981, air at 1.5 m, a", "hours from noon to the highest temperature") \
    ROW(curve_decay, "1", 2.2, 0.2, 10, fixed, 1.8, 4, from_memory, "Parton and Logan 1981, air at 1.5 m, b", "night-time decay of temperature") \
    ROW(curve_minimum_h, "h", -0.17, -2, 2, fixed, -0.3, 0.2, from_memory, "Parton and Logan 1981, air at 1.5 m, c", "hours from sunrise to the lowest temperature") \
    ROW(wind_2m_share, "1", 0.748, 0.4, 1, fixed, 0.7, 0.8, published, "Allen et al. 1998, FAO-56 eq. 47", "wind at 2 m, where bees fly, as a share of that at 10 m") \
    ROW(wind_day_swing, "1", 0.3, 0, 1, fixed, 0.2, 0.5, assumed, "", "how much the afternoon's wind exceeds the day's mean") \
    ROW(rain_hours_at_1mm, "h", 1.6, 0.2, 24, fixed, 1, 3, assumed, "", "hours of rain in a day with 1 mm") \
    ROW(rain_hours_power, "1", 0.6, 0, 1.5, fixed, 0.4, 0.8, assumed, "", "power by which hours of rain grow with the amount") \
    ROW(rain_harmless_mm_h, "mm/h", 0.2, 0, 2, fixed, 0.1, 0.4, practice, "common practice", "drizzle up to which foraging goes on") \
    ROW(rain_stops_mm_h, "mm/h", 1, 0.1, 5, fixed, 0.5, 2, practice, "Lundie 1925 for the prompt effect; the limit is common practice", "rain that stops foraging") \
    ROW(forage_from_c, "degrees C", 12, 5, 20, fixed, 10, 13, published, "Burrill and Dietz 1981", "foraging begins above") \
    ROW(forage_full_c, "degrees C", 20, 10, 30, fixed, 18, 22, published, "Burrill and Dietz 1981", "foraging is full from") \
    ROW(forage_hot_c, "degrees C", 36, 28, 45, fixed, 34, 38, practice, "common practice", "foraging falls above") \
    ROW(forage_too_hot_c, "degrees C", 44, 32, 55, fixed, 42, 46, assumed, "", "foraging for food ends at") \
    ROW(forage_dim_w_m2, "W/m2", 50, 0, 300, fixed, 20, 100, from_memory, "Vicens and Bosch 2000", "foraging begins with light above") \
    ROW(forage_light_w_m2, "W/m2", 200, 50, 800, fixed, 100, 300, from_memory, "Vicens and Bosch 2000; Burrill and Dietz 1981", "light is enough for full foraging from") \
    ROW(forage_calm_ms, "m/s", 4.4, 1, 12, fixed, 4, 5, from_memory, "Lundie 1925: no clear effect below 16 km/h", "wind up to which foraging is not hindered") \
    ROW(forage_storm_ms, "m/s", 8.9, 3, 20, fixed, 7, 9.5, from_memory, "Lundie 1925: near nil above 30 to 34 km/h", "wind that ends foraging") \
    ROW(scout_from_c, "degrees C", 13, 5, 20, fixed, 12, 15, from_memory, "Lindauer 1955; Seeley 2010", "scouts fly above") \
    ROW(scout_full_c, "degrees C", 16, 8, 25, fixed, 15, 18, assumed, "", "all scouts fly from") \
    ROW(scout_calm_ms, "m/s", 6, 1, 12, fixed, 5, 7, from_memory, "Lindauer 1955; Seeley 2010", "wind up to which scouts fly freely") \
    ROW(scout_storm_ms, "m/s", 8, 2, 20, fixed, 7, 9, from_memory, "Lindauer 1955; Seeley 2010", "wind that grounds scouts") \
    ROW(depart_from_c, "degrees C", 15, 8, 25, fixed, 14, 17, practice, "extension texts: 60 degrees F", "no swarm leaves below") \
    ROW(depart_full_c, "degrees C", 19, 10, 30, fixed, 18, 20, practice, "extension texts: most above 18 to 20", "warm enough for any swarm from") \
    ROW(depart_hour, "h", 12, 9, 16, fixed, 11.5, 13.5, from_memory, "Burgett and Morse 1974", "solar hour at which most swarms leave") \
    ROW(depart_sd_h, "h", 1.5, 0.2, 5, fixed, 1, 2, from_memory, "Burgett and Morse 1974", "spread of the hour of leaving") \
    ROW(depart_first_h, "h", 10, 6, 12, fixed, 9, 10.5, from_memory, "Burgett and Morse 1974", "no swarm leaves before this solar hour") \
    ROW(depart_last_h, "h", 16, 13, 20, fixed, 15, 17, from_memory, "Burgett and Morse 1974", "no swarm leaves after this solar hour") \
    ROW(depart_dull_share, "1", 0.4, 0, 1, fixed, 0.3, 0.5, assumed, "", "light, as a share of a clear day's, below which no swarm leaves") \
    ROW(depart_sunny_share, "1", 0.65, 0.1, 1, fixed, 0.55, 0.75, assumed, "", "light, as a share of a clear day's, that is sun enough for leaving") \
    ROW(degree_day_base_c, "degrees C", 10, 0, 15, fixed, 10, 10, practice, "common practice: 50 degrees F", "base of degree-days; flowering is known against this one") \
    ROW(early_opens_dd, "degree-days C", 10, 0, 200, fixed, 5, 20, from_memory, "Ohio phenology list: willow, alder, hazel 20 to 50 F", "degree-days at which early pollen plants open") \
    ROW(early_full_dd, "degree-days C", 25, 1, 300, fixed, 15, 35, published, "Ohio phenology list: silver maple 42, red maple 44 F", "degree-days of full early pollen") \
    ROW(early_fades_dd, "degree-days C", 80, 5, 500, fixed, 60, 110, assumed, "", "degree-days at which early pollen fades") \
    ROW(early_over_dd, "degree-days C", 150, 10, 800, fixed, 120, 200, assumed, "", "degree-days at which early pollen is over") \
    ROW(fruit_opens_dd, "degree-days C", 90, 1, 500, fixed, 75, 110, published, "Ohio phenology list: Callery pear 142 F", "degree-days at which fruit bloom opens") \
    ROW(fruit_full_dd, "degree-days C", 140, 2, 600, fixed, 125, 165, from_memory, "Ohio phenology list: apple 230 to 300 F", "degree-days of full fruit bloom") \
    ROW(fruit_fades_dd, "degree-days C", 200, 5, 800, fixed, 180, 230, assumed, "", "degree-days at which fruit bloom fades") \
    ROW(fruit_over_dd, "degree-days C", 260, 10, 1000, fixed, 230, 300, assumed, "", "degree-days at which fruit bloom is over") \
    ROW(spring_opens_dd, "degree-days C", 230, 5, 800, fixed, 200, 260, from_memory, "Ohio phenology list: black locust first bloom 470 F", "degree-days at which the spring nectar trees open") \
    ROW(spring_full_dd, "degree-days C", 300, 10, 900, fixed, 280, 320, from_memory, "Ohio phenology list: black locust full 550 F", "degree-days of the spring nectar trees' full bloom") \
    ROW(spring_fades_dd, "degree-days C", 380, 20, 1200, fixed, 350, 420, assumed, "", "degree-days at which the spring nectar trees fade") \
    ROW(spring_over_dd, "degree-days C", 470, 30, 1500, fixed, 430, 520, assumed, "", "degree-days at which the spring nectar trees are over") \
    ROW(summer_opens_dd, "degree-days C", 380, 10, 1500, fixed, 300, 450, assumed, "", "degree-days at which the summer flow opens (clover)") \
    ROW(summer_full_dd, "degree-days C", 650, 20, 2000, fixed, 610, 690, from_memory, "Ohio phenology list: linden 1100 to 1250 F", "degree-days of the full summer flow (lime, clover)") \
    ROW(summer_fades_dd, "degree-days C", 900, 50, 3000, fixed, 800, 1000, assumed, "", "degree-days at which the summer flow fades") \
    ROW(summer_over_dd, "degree-days C", 1300, 100, 4000, fixed, 1100, 1500, assumed, "", "degree-days at which the summer flow is over") \
    ROW(early_latest_day, "d", 120, 30, 220, fixed, 105, 140, assumed, "", "day of the simulated year by which early pollen is full without any heat") \
    ROW(fruit_latest_day, "d", 165, 40, 250, fixed, 150, 180, assumed, "", "day by which fruit bloom is full without any heat") \
    ROW(spring_latest_day, "d", 190, 50, 270, fixed, 175, 205, assumed, "", "day by which the spring trees' bloom is full without any heat") \
    ROW(summer_latest_day, "d", 215, 60, 300, fixed, 200, 230, assumed, "", "day by which the summer flow is full without any heat") \
    ROW(calendar_share, "1", 0.6, 0.05, 1, fixed, 0.4, 0.8, assumed, "", "share of the lag of heat behind the calendar that plants of cool places and years make up") \
    ROW(summer_ends_day, "d", 243, 150, 330, fixed, 230, 255, assumed, "", "day at which the summer flow ends whatever the heat; it fades over the month before") \
    ROW(late_opens_day, "d", 220, 120, 320, fixed, 210, 235, practice, "common practice: heather, goldenrod and ivy flower by date", "day at which late flowers open") \
    ROW(late_full_day, "d", 240, 130, 330, fixed, 230, 255, practice, "common practice", "day of full late bloom") \
    ROW(late_fades_day, "d", 265, 140, 350, fixed, 255, 280, practice, "common practice", "day at which late bloom fades") \
    ROW(late_over_day, "d", 295, 150, 365, fixed, 280, 310, practice, "common practice", "day at which late bloom is over") \
    ROW(frost_stops_bloom_c, "degrees C", -6, -20, 0, fixed, -8, -4, assumed, "", "a night colder than this shuts all flowers for the day")
// clang-format on

namespace maybough::parameters {
struct WeatherParameters {
    MAYBOUGH_WEATHER_ROWS(MAYBOUGH_MEMBER)
};
}  // namespace maybough::parameters
