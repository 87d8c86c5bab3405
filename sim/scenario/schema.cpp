// The JSON Schema (2020-12) of scenario.json, made from the records the reader itself uses.
#include "scenario/records.hpp"

namespace maybough::scenario {

namespace {

Json file_or_list(std::string_view meaning) {
    Json file = {{"type", "string"}, {"minLength", 1}};
    Json list = {{"type", "array"}, {"items", object_schema(apiary_fields(), "one apiary")}};
    return {{"description", meaning}, {"oneOf", Json::array({file, list})}};
}

Json weather_schema(std::string_view meaning) {
    Json schema = object_schema(weather_fields(), meaning);
    Json columns = {{"type", "object"},
                    {"additionalProperties", false},
                    {"description", "our column names (with unit) for the names a CSV file has"}};
    for (const std::string& name : weather_column_names()) columns["properties"][name] = {{"type", "string"}};
    schema["properties"]["columns"] = columns;
    schema["properties"]["monthly_normals"] = object_schema(normals_fields(), "twelve monthly means, January first");
    schema.erase("required");
    Json with_file = {{"required", {"file"}}, {"not", {{"required", {"monthly_normals"}}}}};
    Json with_normals = {{"required", {"monthly_normals"}},
                         {"properties", {{"file", false}, {"station", false}, {"columns", false}}}};
    schema["oneOf"] = Json::array({with_file, with_normals});
    return schema;
}

Json kinds_schema(std::string_view meaning) {
    return {{"type", "array"},
            {"minItems", 1},
            {"description", meaning},
            {"items", object_schema(kind_fields(), "one kind of trap")}};
}

Json parameters_schema(std::string_view meaning) {
    Json schema = {
        {"type", "object"}, {"additionalProperties", false}, {"description", meaning}, {"properties", Json::object()}};
    for (const ParameterEntry& entry : parameter_table()) {
        const ParameterRow& row = entry.row;
        schema["properties"][std::string(row.key)] = {
            {"type", "number"},
            {"minimum", row.min},
            {"maximum", row.max},
            {"default", row.value},
            {"description", std::string(row.meaning) + " [" + std::string(row.unit) + "]; plausible " +
                                Json(row.low).dump() + " to " + Json(row.high).dump() + "; " +
                                std::string(word(row.standing))},
        };
    }
    return schema;
}

Json beliefs_schema(std::string_view meaning) {
    Json schema = {
        {"type", "object"}, {"additionalProperties", false}, {"description", meaning}, {"properties", Json::object()}};
    for (const ParameterEntry& entry : parameter_table()) {
        const ParameterRow& row = entry.row;
        if (row.spread == Spread::fixed) continue;
        Json belief = object_schema(belief_fields(), row.meaning);
        for (auto& [key, limits] : belief["properties"].items()) {
            limits["minimum"] = row.min;
            limits["maximum"] = row.max;
        }
        schema["properties"][std::string(row.key)] = belief;
    }
    return schema;
}

Json section_schema(const Section& section) {
    if (section.key == "place") return object_schema(place_fields(), section.meaning);
    if (section.key == "apiaries") return file_or_list(section.meaning);
    if (section.key == "apiary_management") return object_schema(management_fields(), section.meaning);
    if (section.key == "trap_kinds") return kinds_schema(section.meaning);
    if (section.key == "keeper") return object_schema(keeper_fields(), section.meaning);
    if (section.key == "weather") return weather_schema(section.meaning);
    if (section.key == "parameters") return parameters_schema(section.meaning);
    if (section.key == "beliefs") return beliefs_schema(section.meaning);
    throw ModelFault("the section " + std::string(section.key) + " has no schema");
}

}  // namespace

std::string scenario_schema() {
    Json schema =
        object_schema(top_fields(), "A place, its spots for traps, the keeper and the weather. Comments are allowed.");
    schema["$schema"] = "https://json-schema.org/draft/2020-12/schema";
    schema["title"] = "Maybough scenario";
    for (const Section& section : sections()) {
        schema["properties"][std::string(section.key)] = section_schema(section);
        if (section.need == Need::required) schema["required"].push_back(section.key);
    }
    constexpr int indent = 2;
    return schema.dump(indent) + "\n";
}

}  // namespace maybough::scenario
