// Words and numbers for people: rounding, compass, cleaning of text, tables.
#include "report/words.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "sample.hpp"

using namespace maybough;

TEST_CASE("halves go away from zero, as on the pages") {
    CHECK(number(404.5, 0) == "405");
    CHECK(number(405.5, 0) == "406");
    CHECK(number(-2.5, 0) == "-3");
    CHECK(number(0.125, 2) == "0.13");
    CHECK(number(404.49, 0) == "404");
    CHECK(number(1.005, 2) == "1.00");  // the number stored lies below the half
}

TEST_CASE("numbers are rounded, never minus zero, never NaN in print") {
    CHECK(number(2.345, 2) == "2.35");
    CHECK(number(-0.04, 1) == "0.0");
    CHECK(number(-0.06, 1) == "-0.1");
    CHECK(number(std::nan(""), 1) == "n/a");
    CHECK(three_digits(100) == "100");
    CHECK(three_digits(0.5) == "0.5");
    CHECK(three_digits(0.01234) == "0.0123");
    CHECK(three_digits(12345) == "12345");
    CHECK(three_digits(0) == "0");
    CHECK(exact(0.1) == "0.1");
    CHECK(std::stod(exact(1.0 / 3)) == 1.0 / 3);
    CHECK(percent(0.004) == "<1 %");
    CHECK(percent(0.996) == ">99 %");
    CHECK(percent(1) == "100 %");
    CHECK(percent(0.5) == "50 %");
    CHECK(counted(1, "trap") == "1 trap");
    CHECK(counted(2.5, "swarm") == "2.5 swarms");
    CHECK(money(0.4, "EUR") == "EUR 0.40");
    CHECK(money(119.6, "EUR") == "EUR 120");
    CHECK(height_words(3.048) == "3.0 m (10 ft)");
}

TEST_CASE("compass points, also beyond a full turn") {
    CHECK(compass(0) == "N");
    CHECK(compass(157.5) == "SSE");
    CHECK(compass(359) == "N");
    CHECK(compass(-90) == "W");
    CHECK(compass(450) == "E");
}

TEST_CASE("plain_text lets no control character and no broken UTF-8 through") {
    CHECK(plain_text("a\x1B[31mb\x07\x7F") == "a [31mb  ");
    CHECK(plain_text("a\nb\tc") == "a b c");
    CHECK(plain_text("a\nb", true) == "a\nb");
    CHECK(plain_text("\xC3\xBC\xE2\x80\x93\xF0\x9F\x90\x9D") == "\xC3\xBC\xE2\x80\x93\xF0\x9F\x90\x9D");
    CHECK(plain_text("\xC3") == "\xEF\xBF\xBD");
    CHECK(plain_text("\xC0\xAF") == "\xEF\xBF\xBD\xEF\xBF\xBD");                  // overlong
    CHECK(plain_text("\xED\xA0\x80") == "\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD");  // surrogate
    CHECK(plain_text("\xC2\x9B") == " ");                                         // C1 control
    CHECK(plain_text("\xEF\xBF\xBF") == "\xEF\xBF\xBD");                          // no character
}

TEST_CASE("text is broken at blanks and cut at characters") {
    CHECK(wrapped("aa bb cc", 0, 5) == "aa bb\ncc\n");
    CHECK(wrapped("aa bb", 2, 5) == "  aa\n  bb\n");
    CHECK(wrapped("aa 30 %, bb", 0, 5) == "aa\n30 %,\nbb\n");  // a sign stays with its number
    CHECK(wrapped("") == "");
    CHECK(shortened("abcdef", 6) == "abcdef");
    CHECK(shortened("abcdefg", 6) == "abcd..");
    CHECK(shortened("\xC3\xBC\xC3\xBC\xC3\xBC\xC3\xBC", 3) == "\xC3\xBC..");
    TextTable table;
    table.column("n").column("word", TextTable::Align::left);
    table.row({"10", "ten"});
    CHECK(table.text() == " n  word\n10  ten\n");
    CHECK_THROWS_AS(table.row({"1"}), ModelFault);
}
