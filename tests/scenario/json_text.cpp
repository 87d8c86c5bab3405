// Strict JSON: what the reader refuses, and where it says the fault is.
#include "scenario/json_text.hpp"

#include <doctest/doctest.h>

#include "scenario/folder.hpp"

using namespace maybough;

namespace {
std::string syntax(const std::string& text) {
    return refusal([&] { parse_json(text, "f.json"); });
}
}  // namespace

TEST_CASE("comments are allowed, trailing commas and NaN are not") {
    CHECK(parse_json("{ /* one */ \"a\": 1 // two\n}", "f.json")["a"] == 1);
    CHECK(says(syntax("{\"a\": 1,}"), "f.json:1:"));
    CHECK(says(syntax("{\n\"a\": NaN}"), "f.json:2:"));
    CHECK(says(syntax("{\"a\": Infinity}"), "f.json:1:"));
    CHECK(says(syntax("{\"a\": 1e999}"), "too large"));
    CHECK(says(syntax("{\"a\": 1} x"), "f.json:1:"));
    CHECK(says(syntax("   \n"), "empty"));
    CHECK(says(syntax("{\"a\": \"\xff\"}"), "f.json:1:"));
}

TEST_CASE("a key that stands twice is refused with its path") {
    CHECK(says(syntax("{\"a\": 1, \"a\": 2}"), "f.json: /a: "));
    CHECK(says(syntax("{\"list\": [1, {\"b\": {\"c\": 1, \"d\": 2, \"c\": 3}}]}"), "f.json: /list/1/b/c: "));
    CHECK(syntax("{\"a\": {\"x\": 1}, \"b\": {\"x\": 2}, \"c\": [{\"x\": 1}, {\"x\": 2}]}").empty());
}

TEST_CASE("whole numbers are whole in writing and in size") {
    const auto read = [](const std::string& number) {
        const Json value = parse_json("[" + number + "]", "f.json");
        return expect_integer(JsonAt{value, "f.json", ""}.at(std::size_t{0}));
    };
    CHECK(read("-3") == -3);
    CHECK_THROWS_AS(read("2.7"), InputError);
    CHECK_THROWS_AS(read("2.0"), InputError);
    CHECK_THROWS_AS(read("\"2\""), InputError);
    CHECK_THROWS_AS(read("true"), InputError);
    CHECK_THROWS_AS(read("3000000000"), InputError);
    CHECK_THROWS_AS(read("-3000000000"), InputError);
    CHECK_THROWS_AS(read("18446744073709551615"), InputError);
}

TEST_CASE("an unknown key is told with the nearest known") {
    const Json value = parse_json(R"({"radius": 3})", "f.json");
    const std::string message = refusal([&] { expect_keys({value, "f.json", "/place"}, {"radius_m", "elsewhere"}); });
    CHECK(says(message, "f.json: /place/radius: "));
    CHECK(says(message, "did you mean radius_m?"));
}
