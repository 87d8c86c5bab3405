// Records: what is rejected, what is counted, what is suspected, and how gaps are filled.
#include <doctest/doctest.h>

#include <cmath>
#include <limits>

#include "climates.hpp"

using namespace maybough;

namespace {
const WeatherParameters defaults;
constexpr double missing = std::numeric_limits<double>::quiet_NaN();

bool warns_of(const QualityReport& report, const std::string& word) {
    for (const std::string& warning : report.warnings) {
        if (warning.find(word) != std::string::npos) return true;
    }
    return false;
}

WeatherRecord good_record() {
    return test::made_record(test::cool_climate(), 2020, 3, 5);
}
}  // namespace

TEST_CASE("a good record passes without a word") {
    WeatherRecord record = good_record();
    const QualityReport report = check_record(record, 42, defaults);
    CHECK(report.days == 1096);
    CHECK(report.missing_days == 0);
    CHECK(report.gaps == 0);
    CHECK(report.spike_days == 0);
    CHECK(report.swapped_days == 0);
    CHECK(report.stuck_runs == 0);
    CHECK(report.has_rain);
    CHECK(report.has_wind);
    CHECK(report.warnings.empty());
}

TEST_CASE("impossible values are set missing and counted") {
    WeatherRecord record = good_record();
    record.days[100].tmax_c = 99.9;
    record.days[200].tmin_c = -999.9;
    record.days[300].rain_mm = -1;
    record.days[310].wind_ms = 58.6;
    record.days[400].tmax_c = record.days[400].tmin_c - 3;
    record.days[500].tmax_c += 30;  // leaps from both neighbours
    const QualityReport report = check_record(record, 42, defaults);
    CHECK(report.spike_days == 5);
    CHECK(report.swapped_days == 1);
    CHECK(std::isnan(record.days[100].tmax_c));
    CHECK(std::isnan(record.days[200].tmin_c));
    CHECK(std::isnan(record.days[300].rain_mm));
    CHECK(std::isnan(record.days[310].wind_ms));
    CHECK(std::isnan(record.days[400].tmax_c));
    CHECK(std::isnan(record.days[400].tmin_c));
    CHECK(std::isnan(record.days[500].tmax_c));
    CHECK(report.missing_days == 4);
    CHECK(report.gaps == 4);
    CHECK(report.longest_gap_days == 1);
    CHECK(report.rain_missing_days == 1);
    CHECK(warns_of(report, "minimum above the maximum"));
}

TEST_CASE("a lasting warm spell is no spike, and a stuck instrument is counted but kept") {
    WeatherRecord record = good_record();
    for (std::size_t i = 600; i < 610; ++i) record.days[i].tmax_c = 41;
    const QualityReport report = check_record(record, 42, defaults);
    CHECK(report.spike_days == 0);
    CHECK(report.stuck_runs == 1);
    CHECK(record.days[605].tmax_c == 41);
    CHECK(warns_of(report, "stuck"));
}

TEST_CASE("wrong hemisphere and wrong units are suspected, right ones are not") {
    WeatherRecord record = good_record();
    CHECK(warns_of(check_record(record, -42, defaults), "hemisphere"));
    CHECK_FALSE(warns_of(check_record(record, 5, defaults), "hemisphere"));

    WeatherRecord fahrenheit = good_record();
    for (DayOfWeather& day : fahrenheit.days) {
        day.tmax_c = day.tmax_c * 1.8 + 32;
        day.tmin_c = day.tmin_c * 1.8 + 32;
    }
    CHECK(warns_of(check_record(fahrenheit, 42, defaults), "Fahrenheit"));

    WeatherRecord tenths = good_record();
    for (DayOfWeather& day : tenths.days) day.tmax_c *= 10;
    CHECK(warns_of(check_record(tenths, 42, defaults), "tenths"));

    WeatherRecord kelvin = good_record();
    for (DayOfWeather& day : kelvin.days) day.tmax_c += 273.15;
    CHECK(warns_of(check_record(kelvin, 42, defaults), "kelvin"));

    WeatherRecord kmh = good_record();
    for (DayOfWeather& day : kmh.days) day.wind_ms *= 3.6;
    CHECK(warns_of(check_record(kmh, 42, defaults), "km/h"));

    // Summers as hot as they come are believed.
    MonthlyNormals desert = test::cool_normals();
    for (std::size_t month = 0; month < 12; ++month) desert.tmax_c[month] += 17;
    for (std::size_t month = 0; month < 12; ++month) desert.tmin_c[month] += 17;
    WeatherRecord hot = test::made_record(climate_from_normals(desert, defaults), 2020, 3, 5);
    CHECK_FALSE(warns_of(check_record(hot, 42, defaults), "Fahrenheit"));
}

TEST_CASE("records without rain, wind or any day at all") {
    WeatherRecord record = good_record();
    for (DayOfWeather& day : record.days) {
        day.rain_mm = missing;
        day.wind_ms = missing;
    }
    const QualityReport report = check_record(record, 42, defaults);
    CHECK_FALSE(report.has_rain);
    CHECK_FALSE(report.has_wind);
    CHECK(report.rain_missing_days == 0);
    CHECK(warns_of(report, "no rain"));
    WeatherRecord empty{"empty", make_date(2020, 1, 1), {}};
    CHECK(check_record(empty, 42, defaults).days == 0);
}

TEST_CASE("short gaps are filled by a straight line, long ones left, and both counted") {
    WeatherRecord record{"gaps", make_date(2020, 3, 1), {}};
    for (int i = 0; i < 20; ++i) record.days.push_back({10.0 + i, 2.0 + i, i == 4 ? 6.0 : 0.0, 3});
    const auto lose = [&](std::size_t from, std::size_t count) {
        for (std::size_t i = from; i < from + count; ++i) record.days[i] = {missing, missing, missing, missing};
    };
    lose(0, 1);   // at the start: no day before
    lose(5, 3);   // fillable
    lose(10, 4);  // one too long
    QualityReport report = check_record(record, 42, defaults);
    CHECK(report.gaps == 3);
    CHECK(report.longest_gap_days == 4);
    CHECK(report.missing_days == 8);
    fill_gaps(record, report, defaults);
    CHECK(report.filled_days == 3);
    CHECK(report.unfilled_days == 5);
    CHECK(report.fill_method.find("straight line") != std::string::npos);
    CHECK(record.days[5].tmax_c == doctest::Approx(15));
    CHECK(record.days[7].tmin_c == doctest::Approx(9));
    CHECK(record.days[5].rain_mm == 6);  // nearer to the wet day before
    CHECK(record.days[7].rain_mm == 0);
    CHECK(std::isnan(record.days[0].tmax_c));
    CHECK(std::isnan(record.days[11].tmax_c));
    CHECK(std::isnan(record.days[11].rain_mm));
}

TEST_CASE("the generator bridges what filling leaves, keeps every observed day, and counts") {
    const Climate climate = test::cool_climate();
    WeatherRecord record = good_record();
    for (std::size_t i = 500; i < 528; ++i) record.days[i] = {missing, missing, missing, missing};
    record.days[700].rain_mm = missing;
    QualityReport report = check_record(record, 42, defaults);
    fill_gaps(record, report, defaults);
    CHECK(report.unfilled_days == 28);
    const WeatherRecord whole = bridge_gaps(record, climate, Chance{1, 0}, report);
    CHECK(report.bridged_days == 28);
    for (std::size_t i = 0; i < record.days.size(); ++i) {
        REQUIRE(std::isfinite(whole.days[i].tmax_c));
        REQUIRE(std::isfinite(whole.days[i].rain_mm));
        REQUIRE(whole.days[i].tmin_c <= whole.days[i].tmax_c);
        if (i < 500 || i >= 528) REQUIRE(whole.days[i].tmax_c == record.days[i].tmax_c);
    }
    QualityReport again_report;
    const WeatherRecord again = bridge_gaps(record, climate, Chance{1, 0}, again_report);
    CHECK(again.days[510].tmax_c == whole.days[510].tmax_c);
    CHECK(bridge_gaps(record, climate, Chance{2, 0}, again_report).days[510].tmax_c != whole.days[510].tmax_c);
}
