// Tables: RFC 4180 quoting, delimiters, line ends, and the lines of faults.
#include "scenario/csv.hpp"

#include <doctest/doctest.h>

#include "scenario/folder.hpp"
#include "scenario/sheet.hpp"

using namespace maybough;

TEST_CASE("quoted cells hold delimiters, quotes and line ends, and lines are still counted") {
    const CsvTable table = parse_csv("a,b\r\n\"x, \"\"y\"\"\",1\r\n\"two\nlines\",2\r\n\r\nlast,3", "t.csv");
    REQUIRE(table.rows.size() == 3);
    CHECK(table.rows[0].cells[0] == "x, \"y\"");
    CHECK(table.rows[1].cells[0] == "two\nlines");
    CHECK(table.rows[2].cells[1] == "3");
    CHECK(table.rows[0].line == 2);
    CHECK(table.rows[1].line == 3);
    CHECK(table.rows[2].line == 6);
}

TEST_CASE("the delimiter is told by the header") {
    CHECK(parse_csv("a;b;c,d\n1;2;3\n", "t.csv").header == std::vector<std::string>{"a", "b", "c,d"});
    CHECK(parse_csv("a\tb\n1\t2\n", "t.csv").delimiter == '\t');
    CHECK(parse_csv("\"a;b;c\",d\n1,2\n", "t.csv").delimiter == ',');
    CHECK(says(refusal([] { parse_csv("a|b\n1|2\n", "t.csv"); }), "t.csv:1: found one column only"));
}

TEST_CASE("faults of a table name their line") {
    CHECK(says(refusal([] { parse_csv("a,b\n1,2\n3\n", "t.csv"); }), "t.csv:3: found 1 cells, expected 2"));
    CHECK(says(refusal([] { parse_csv("a,b\n1,\"open\n2,3\n", "t.csv"); }), "t.csv:2: a quote is opened"));
    CHECK(says(refusal([] { parse_csv("a,b\n1,x\"y\n", "t.csv"); }), "t.csv:2: found a quote inside"));
    CHECK(says(refusal([] { parse_csv("a,b\n1,\"x\"y\n", "t.csv"); }), "t.csv:2: found text after"));
    CHECK(says(refusal([] { parse_csv("a,a\n1,2\n", "t.csv"); }), "t.csv:1: the column \"a\" stands twice"));
    CHECK(says(refusal([] { parse_csv("a,b\n", "t.csv"); }), "without any row"));
    CHECK(says(refusal([] { parse_csv("\n\n", "t.csv"); }), "empty"));
}

TEST_CASE("numbers fill their cell; the decimal comma is understood where it parts nothing") {
    CHECK(decimal_number(" 2.50 ") == 2.5);
    CHECK(decimal_number("+3") == 3);
    CHECK_FALSE(decimal_number("nan"));
    CHECK_FALSE(decimal_number("inf"));
    CHECK_FALSE(decimal_number("0x10"));
    CHECK_FALSE(decimal_number("1e999"));
    CHECK_FALSE(decimal_number("3 m"));
    CHECK_FALSE(decimal_number("2,5"));
    CHECK(decimal_number("2,5", DecimalSign::point_or_comma) == 2.5);
    CHECK_FALSE(decimal_number("1.000,5", DecimalSign::point_or_comma));
}

TEST_CASE("compass words and degrees are directions") {
    CHECK(facing_in("SE", "p") == 135);
    CHECK(facing_in("nnw", "p") == 337.5);
    CHECK(facing_in("360", "p") == 0);
    CHECK_THROWS_AS(facing_in("-5", "p"), InputError);
    CHECK_THROWS_AS(facing_in("south", "p"), InputError);
}

TEST_CASE("units in column names become ours") {
    const auto ours = [](const std::vector<std::string>& columns, const Quantity& quantity, double value) {
        return find_unit_column(columns, quantity, "p").ours(value);
    };
    // Exact definitions: inch, foot, statute mile, knot (1852 m/h); 32 and 212 degrees F are 0 and 100 degrees C.
    CHECK(ours({"tmax_f"}, {"tmax", temperature_units()}, 212) == doctest::Approx(100));
    CHECK(ours({"rain_in"}, {"rain", rain_units()}, 2) == doctest::Approx(50.8));
    CHECK(ours({"wind_kn"}, {"wind", wind_units()}, 12.3637) == doctest::Approx(6.360).epsilon(1e-4));
    CHECK(ours({"wind_kmh"}, {"wind", wind_units()}, 36) == doctest::Approx(10));
    CHECK(ours({"wind_mph"}, {"wind", wind_units()}, 10) == doctest::Approx(4.4704));
    CHECK(ours({"h_ft"}, {"h", height_units()}, 10) == doctest::Approx(3.048));
    CHECK(says(refusal([&] { ours({"tmax"}, {"tmax", temperature_units()}, 1); }), "has no unit"));
    CHECK(says(refusal([&] { ours({"tmax_c", "tmax_f"}, {"tmax", temperature_units()}, 1); }), "both"));
}
