// Reads single values under their records and writes the records as JSON Schema.
#include "scenario/fields.hpp"

#include <algorithm>

#include "base/base.hpp"
#include "scenario/text_file.hpp"

namespace maybough::scenario {

namespace {
constexpr std::string_view id_pattern = R"(^[^\s,;:"'`|/\\<>]{1,40}$)";
constexpr std::string_view month_day_pattern = "^(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$";

std::size_t characters(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

void check_limits(const JsonAt& at, const Field& field, double value) {
    const bool low = field.rule == Rule::above_min ? value > field.min : value >= field.min;
    if (low && value <= field.max) return;
    throw InputError(at.place(), "found " + at.value.dump() + ", expected " + limits_of(field),
                     std::string(field.meaning));
}

void check_month_day(const std::string& text, const std::string& place) {
    const auto month = whole_number(std::string_view(text).substr(0, 2));
    const auto day = text.size() == 5 && text[2] == '-' ? whole_number(std::string_view(text).substr(3)) : std::nullopt;
    const std::chrono::month_day date{std::chrono::month{static_cast<unsigned>(month.value_or(0))},
                                      std::chrono::day{static_cast<unsigned>(day.value_or(0))}};
    if (!month || !day || *month < 1 || *day < 1 || !date.ok()) {
        throw InputError(place, "found \"" + text + "\", expected a month and day such as 07-01");
    }
}
}  // namespace

std::string limits_of(const Field& field) {
    if (field.rule == Rule::above_min) return "above " + shortest(field.min) + ", at most " + shortest(field.max);
    return shortest(field.min) + " to " + shortest(field.max);
}

void check_id(const std::string& text, const std::string& place) {
    const bool clean = text.find_first_of(" \t\r\n\v\f,;:\"'`|/\\<>") == std::string::npos;
    const std::size_t length = characters(text);
    if (!text.empty() && std::string_view("=+-@").find(text.front()) != std::string_view::npos) {
        throw InputError(place, "found the id \"" + text + "\", which a spreadsheet would take for a formula",
                         "begin it with a letter or digit");
    }
    if (clean && length >= 1 && length <= 40) return;
    throw InputError(place,
                     "found \"" + text + "\", expected an id of 1 to 40 characters without blanks and , ; : / \" '",
                     "use letters, digits, - and _");
}

void read_value(const JsonAt& at, const Field& field, std::string& into) {
    into = expect_text(at);
    if (into.find_first_of("\n\r\t") != std::string::npos && field.rule != Rule::plain) {
        throw InputError(at.place(), "found " + said(at.value) + ", expected one line of plain text");
    }
    if (field.rule == Rule::id) check_id(into, at.place());
    if (field.rule == Rule::month_day) check_month_day(into, at.place());
    if (field.rule == Rule::choice &&
        std::find(field.choices.begin(), field.choices.end(), into) == field.choices.end()) {
        throw InputError(at.place(), "found " + said(at.value) + ", expected one of " + first_listed(field.choices, 20),
                         did_you_mean(into, field.choices, ""));
    }
    if (field.rule == Rule::plain || field.rule == Rule::file) {
        const auto length = static_cast<double>(characters(into));
        if (length < field.min || length > field.max) {
            throw InputError(at.place(),
                             "found a text of " + shortest(length) + " characters, expected " + limits_of(field),
                             std::string(field.meaning));
        }
    }
}

void read_value(const JsonAt& at, const Field& field, double& into) {
    into = expect_number(at);
    check_limits(at, field, into);
}

void read_value(const JsonAt& at, const Field& field, int& into) {
    into = expect_integer(at);
    check_limits(at, field, into);
}

void read_value(const JsonAt& at, const Field& /*field*/, bool& into) {
    into = expect_yes_no(at);
}

void read_value(const JsonAt& at, const Field& field, std::array<double, 12>& into) {
    expect_array(at);
    if (at.value.size() != into.size()) {
        throw InputError(at.place(), "found " + std::to_string(at.value.size()) + " values, expected 12",
                         "give one for each month, January first");
    }
    for (std::size_t month = 0; month < into.size(); ++month) read_value(at.at(month), field, into.at(month));
}

void missing_key(const JsonAt& object, std::string_view key, std::string_view meaning) {
    throw InputError(object.place(), "the key \"" + std::string(key) + "\" is missing",
                     "it is " + std::string(meaning));
}

namespace {
Json described(const Field& field, std::string_view type) {
    return {{"type", type}, {"description", field.meaning}};
}

void put_limits(Json& schema, const Field& field) {
    schema[field.rule == Rule::above_min ? "exclusiveMinimum" : "minimum"] = field.min;
    schema["maximum"] = field.max;
}
}  // namespace

Json schema_of(const Field& field, const std::string& fallback) {
    Json schema = described(field, "string");
    switch (field.rule) {
        case Rule::id:
            schema["pattern"] = id_pattern;
            break;
        case Rule::month_day:
            schema["pattern"] = month_day_pattern;
            break;
        case Rule::choice:
            schema["enum"] = field.choices;
            break;
        default:
            schema["minLength"] = static_cast<int>(field.min);
            schema["maxLength"] = static_cast<int>(field.max);
    }
    if (field.need == Need::optional && !fallback.empty()) schema["default"] = fallback;
    return schema;
}

Json schema_of(const Field& field, double fallback) {
    Json schema = described(field, "number");
    put_limits(schema, field);
    const bool within = field.rule == Rule::above_min ? fallback > field.min : fallback >= field.min;
    if (field.need == Need::optional && within) schema["default"] = fallback;
    return schema;
}

Json schema_of(const Field& field, int fallback) {
    Json schema = described(field, "integer");
    put_limits(schema, field);
    if (field.need == Need::optional) schema["default"] = fallback;
    return schema;
}

Json schema_of(const Field& field, bool fallback) {
    Json schema = described(field, "boolean");
    if (field.need == Need::optional) schema["default"] = fallback;
    return schema;
}

Json schema_of(const Field& field, const std::array<double, 12>& /*fallback*/) {
    Json item = {{"type", "number"}};
    put_limits(item, field);
    return {{"type", "array"}, {"description", field.meaning}, {"items", item}, {"minItems", 12}, {"maxItems", 12}};
}

}  // namespace maybough::scenario
