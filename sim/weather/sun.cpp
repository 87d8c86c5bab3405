// Sun: declination, sunrise and sunset with refraction and the upper limb, light at the top of the atmosphere.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "weather/weather.hpp"

namespace maybough::weather {

namespace {
using std::numbers::pi;

constexpr double radians(double degrees) {
    return degrees * pi / 180;
}

/// Apparent declination and distance of the sun, Meeus 1998, Astronomical Algorithms, ch. 25 (low accuracy, 0.01 deg).
struct Sun {
    double declination_rad;
    double distance_au;
};
Sun sun_at(double days_since_j2000) {
    const double t = days_since_j2000 / 36525;
    const double mean_longitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
    const double anomaly = radians(357.52911 + t * (35999.05029 - t * 0.0001537));
    const double eccentricity = 0.016708634 - t * (0.000042037 + t * 0.0000001267);
    const double centre = (1.914602 - t * (0.004817 + t * 0.000014)) * std::sin(anomaly) +
                          (0.019993 - t * 0.000101) * std::sin(2 * anomaly) + 0.000289 * std::sin(3 * anomaly);
    const double node = radians(125.04 - 1934.136 * t);
    const double longitude = radians(mean_longitude + centre - 0.00569 - 0.00478 * std::sin(node));
    const double obliquity = radians(23.43929111 - t * 0.0130041667 + 0.00256 * std::cos(node));
    const double true_anomaly = anomaly + radians(centre);
    return {std::asin(std::sin(obliquity) * std::sin(longitude)),
            1.000001018 * (1 - eccentricity * eccentricity) / (1 + eccentricity * std::cos(true_anomaly))};
}

/// Daily radiation at the top of the atmosphere, Allen et al. 1998, FAO-56 eq. 21 to 25 (any latitude; polar day and
/// night by the limits of the sunset angle).
void set_extraterrestrial(SunDay& day, double latitude_rad, int day_of_year) {
    constexpr double solar_constant_mj_m2_min = 0.0820;
    const double year_angle = 2 * pi * day_of_year / 365;
    const double inverse_distance = 1 + 0.033 * std::cos(year_angle);
    const double declination = 0.409 * std::sin(year_angle - 1.39);
    const double angle = std::acos(std::clamp(-std::tan(latitude_rad) * std::tan(declination), -1.0, 1.0));
    day.sunset_angle_rad = angle;
    day.extraterrestrial_mj_m2 = std::max(0.0, 24 * 60 / pi * solar_constant_mj_m2_min * inverse_distance *
                                                   (angle * std::sin(latitude_rad) * std::sin(declination) +
                                                    std::cos(latitude_rad) * std::cos(declination) * std::sin(angle)));
}
}  // namespace

SunDay sun_day(double latitude_deg, Date date) {
    constexpr double refraction_deg = 34.0 / 60;
    constexpr double semidiameter_deg = 0.26656;  // at one astronomical unit
    // A pole itself has no hour angle; a hair's breadth off, all formulas hold.
    const double latitude = radians(std::clamp(latitude_deg, -89.99, 89.99));
    static const Date j2000 = make_date(2000, 1, 1);  // 12 h on this day
    const Sun sun = sun_at(static_cast<double>((date - j2000).count()));

    SunDay day;
    day.declination_rad = sun.declination_rad;
    const double altitude = -radians(refraction_deg + semidiameter_deg / sun.distance_au);
    const double cos_angle = (std::sin(altitude) - std::sin(latitude) * std::sin(sun.declination_rad)) /
                             (std::cos(latitude) * std::cos(sun.declination_rad));
    const double half_day_h = std::acos(std::clamp(cos_angle, -1.0, 1.0)) * 12 / pi;
    day.sunrise_h = 12 - half_day_h;
    day.sunset_h = 12 + half_day_h;
    set_extraterrestrial(day, latitude, day_of_year(date));
    return day;
}

SunDay sun_day(double latitude_deg, int day_of_year) {
    // 2026 stands midway between leap years.
    static const Date new_year = make_date(2026, 1, 1);
    return sun_day(latitude_deg, new_year + std::chrono::days{day_of_year - 1});
}

}  // namespace maybough::weather
