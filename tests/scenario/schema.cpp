// The committed schema is the generated one; update it with: test_scenario --test-case="*write the schema*" --no-skip.
#include <doctest/doctest.h>

#include <fstream>

#include "scenario/json_text.hpp"
#include "scenario/records.hpp"
#include "scenario/scenario.hpp"
#include "scenario/text_file.hpp"

using namespace maybough;

namespace {
const std::string committed = MAYBOUGH_SOURCE_DIR "/scenarios/schema.json";
}

TEST_CASE("write the schema" * doctest::skip()) {
    std::ofstream(committed) << scenario_schema();
}

TEST_CASE("the committed schema is the one generated from the declarations") {
    CHECK(read_text(committed) == scenario_schema());
}

TEST_CASE("every record has a meaning, and every default lies within its own limits") {
    const Json schema = parse_json(scenario_schema(), "schema");
    int fields = 0;
    const auto walk = [&](const auto& self, const Json& node) -> void {
        if (!node.is_object()) return;
        if (node.contains("type") && node.contains("default") && node["default"].is_number()) {
            CHECK(node["default"] >= (node.contains("minimum") ? node["minimum"] : node["exclusiveMinimum"]));
            CHECK(node["default"] <= node["maximum"]);
        }
        if (node.contains("description") && node["description"].is_string()) {
            ++fields;
            CHECK_FALSE(node["description"].get<std::string>().empty());
        }
        for (const auto& [key, value] : node.items()) self(self, value);
    };
    walk(walk, schema);
    CHECK(fields > 50);
    for (const Section& section : sections()) CHECK(schema["properties"].contains(std::string(section.key)));
}
