// The daily series of Seattle, 2012 to 2015 (NOAA, public domain), read from the distribution's package at test time.
#pragma once

#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

#include "weather/weather.hpp"

namespace maybough::test {

inline constexpr const char* series_folder = "/usr/lib/python3/dist-packages/vega_datasets/_data/";

/// Rows of a CSV file as numbers where they are numbers, after its header; the first column as text.
struct CsvRow {
    std::string first;
    std::vector<double> rest;
};
inline std::vector<CsvRow> csv_rows(const std::string& name) {
    std::ifstream file(series_folder + name);
    if (!file) FAIL("cannot read " << series_folder << name << ": install the Debian package python3-vega-datasets");
    std::string line;
    std::getline(file, line);
    std::vector<CsvRow> rows;
    while (std::getline(file, line)) {
        std::stringstream cells(line);
        CsvRow row;
        std::getline(cells, row.first, ',');
        for (std::string cell; std::getline(cells, cell, ',');) row.rest.push_back(std::atof(cell.c_str()));
        rows.push_back(row);
    }
    return rows;
}

/// date,precipitation,temp_max,temp_min,wind,weather in mm, degrees C and m/s.
inline WeatherRecord seattle_record() {
    WeatherRecord record{"seattle-weather.csv", {}, {}};
    for (CsvRow& row : csv_rows("seattle-weather.csv")) {
        for (char& letter : row.first) letter = letter == '/' ? '-' : letter;
        const Date date = parse_date(row.first, record.source);
        if (record.days.empty()) record.first = date;
        REQUIRE(date == record.first + std::chrono::days{static_cast<int>(record.days.size())});
        REQUIRE(row.rest.size() >= 4);
        record.days.push_back({row.rest[1], row.rest[2], row.rest[0], row.rest[3]});
    }
    REQUIRE(record.days.size() == 1461);
    return record;
}

/// One calendar year of a record.
inline WeatherYear year_of_record(const WeatherRecord& record, int year) {
    const Date first = make_date(year, 1, 1);
    const auto from = record.days.begin() + (first - record.first).count();
    return {first, {from, from + days_in_year_from(first)}};
}

}  // namespace maybough::test
