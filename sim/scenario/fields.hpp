// One record a field: key, limits, meaning and where it goes; reader, unknown-key check and schema follow from records.
#pragma once

#include <array>
#include <map>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "scenario/json_text.hpp"

namespace maybough::scenario {

enum class Need { required, optional };

/// What a value has to be, beside its type and limits.
enum class Rule {
    plain,
    above_min,  ///< a number greater than `min`, not equal to it
    id,         ///< up to 40 characters without blanks, quotes and separators
    file,       ///< a file beside scenario.json
    month_day,  ///< "MM-DD"
    choice,     ///< one of Field::choices
};

/// One field of scenario.json as declared. Limits of numbers are of the value, of texts of their length.
struct Field {
    std::string_view key;
    Need need = Need::optional;
    double min = 0;
    double max = 0;
    std::string_view meaning;
    Rule rule = Rule::plain;
    std::vector<std::string> choices = {};
};

/// The member of T a field is read into; its C++ type is the field's JSON type.
template <class T>
using MemberOf = std::variant<std::string T::*, double T::*, int T::*, bool T::*, std::array<double, 12> T::*>;

template <class T>
struct FieldOf {
    Field field;
    MemberOf<T> member;
};

template <class T>
using FieldsOf = std::vector<FieldOf<T>>;

/// Where each value was set: JSON path or parameter key -> place, for print.
using Given = std::map<std::string, std::string>;

// Each reads one value under its field's type, limits and rule; throws InputError naming the place.
void read_value(const JsonAt& at, const Field& field, std::string& into);
void read_value(const JsonAt& at, const Field& field, double& into);
void read_value(const JsonAt& at, const Field& field, int& into);
void read_value(const JsonAt& at, const Field& field, bool& into);
void read_value(const JsonAt& at, const Field& field, std::array<double, 12>& into);

/// Throws unless `text` may be an id: see Rule::id.
void check_id(const std::string& text, const std::string& place);

/// "0.1 to 300", "above 0, at most 5000": for messages and the schema's readers.
std::string limits_of(const Field& field);

// Each gives the JSON Schema of one value of this field; `fallback` is the default, told where the field is optional.
Json schema_of(const Field& field, const std::string& fallback);
Json schema_of(const Field& field, double fallback);
Json schema_of(const Field& field, int fallback);
Json schema_of(const Field& field, bool fallback);
Json schema_of(const Field& field, const std::array<double, 12>& fallback);

/// Keys of the records, and of `others` that stand in the same object.
template <class T>
std::vector<std::string> keys_of(const FieldsOf<T>& fields, std::vector<std::string> others = {}) {
    for (const auto& f : fields) others.emplace_back(f.field.key);
    return others;
}

/// Throws InputError that `key` is missing in `object`.
[[noreturn]] void missing_key(const JsonAt& object, std::string_view key, std::string_view meaning);

/// Reads the declared fields of `object` into `into`; keys besides them and `others` are errors.
template <class T>
void read_fields(const JsonAt& object, const FieldsOf<T>& fields, T& into, Given& given,
                 const std::vector<std::string>& others = {}) {
    expect_keys(object, keys_of(fields, others));
    for (const FieldOf<T>& f : fields) {
        const std::string key(f.field.key);
        if (object.has(key)) {
            const JsonAt at = object.at(key);
            std::visit([&](auto member) { read_value(at, f.field, into.*member); }, f.member);
            given[at.path] = at.file;
        } else if (f.field.need == Need::required) {
            missing_key(object, f.field.key, f.field.meaning);
        }
    }
}

/// The JSON Schema of an object of these fields, closed to other keys; T's own defaults are the defaults.
template <class T>
Json object_schema(const FieldsOf<T>& fields, std::string_view meaning) {
    Json schema = {{"type", "object"}, {"description", meaning}, {"additionalProperties", false}};
    schema["properties"] = Json::object();
    const T defaults{};
    std::vector<std::string> required;
    for (const FieldOf<T>& f : fields) {
        schema["properties"][std::string(f.field.key)] =
            std::visit([&](auto member) { return schema_of(f.field, defaults.*member); }, f.member);
        if (f.field.need == Need::required) required.emplace_back(f.field.key);
    }
    if (!required.empty()) schema["required"] = required;
    return schema;
}

}  // namespace maybough::scenario
