// Strict JSON: comments allowed; duplicate keys, NaN and numbers too large refused; every error names file and path.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace maybough::scenario {

using Json = nlohmann::json;

/// A JSON value and where it stands: the file and the path of keys and indices to it ("/place/radius_m").
struct JsonAt {
    const Json& value;
    std::string file;
    std::string path;

    std::string place() const { return path.empty() ? file : file + ": " + path; }
    /// The member `key` of this object, which has it.
    JsonAt at(const std::string& key) const { return {value.at(key), file, path + "/" + key}; }
    /// The item `index` of this array.
    JsonAt at(std::size_t index) const { return {value.at(index), file, path + "/" + std::to_string(index)}; }
    bool has(const std::string& key) const { return value.is_object() && value.contains(key); }
};

/// Parses strictly. Throws InputError with file:line:column on bad syntax, with the path on a duplicate key, and for
/// nesting of more than 64 levels, counted while parsing.
Json parse_json(const std::string& text, const std::string& file);

/// What a value is, for "found ...": `the text "abc"`, `the number 2.5`, `a list`, `nothing (null)`.
std::string said(const Json& value);

// Each returns the value or throws InputError: found what, expected what.
const Json& expect_object(const JsonAt& at);
const Json& expect_array(const JsonAt& at);
std::string expect_text(const JsonAt& at);
double expect_number(const JsonAt& at);
int expect_integer(const JsonAt& at);
bool expect_yes_no(const JsonAt& at);

/// Throws InputError at the first key of the object that is not among `known`, offering the nearest.
void expect_keys(const JsonAt& object, const std::vector<std::string>& known);

}  // namespace maybough::scenario
