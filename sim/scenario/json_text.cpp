// Parses JSON text strictly and tells what was found where something else was expected.
#include "scenario/json_text.hpp"

#include <algorithm>
#include <limits>
#include <set>

#include "base/base.hpp"
#include "scenario/text_file.hpp"

namespace maybough::scenario {

namespace {

/// Follows the parser and refuses a key that an object already has: the parser itself would keep the last.
class DuplicateWatch {
  public:
    explicit DuplicateWatch(std::string file) : file_(std::move(file)) {}

    bool operator()(int /*depth*/, Json::parse_event_t event, Json& parsed) {
        using Event = Json::parse_event_t;
        switch (event) {
            case Event::object_start:
                open(false);
                break;
            case Event::array_start:
                open(true);
                break;
            case Event::object_end:
            case Event::array_end:
                levels_.pop_back();
                break;
            case Event::key:
                key(parsed.get<std::string>());
                break;
            case Event::value:
                count();
                break;
        }
        return true;
    }

  private:
    struct Level {
        bool array = false;
        int items = 0;
        std::string key;
        std::set<std::string> keys;
    };
    void count() {
        if (!levels_.empty()) ++levels_.back().items;
    }
    void open(bool array) {
        constexpr std::size_t deepest = 64;
        if (levels_.size() >= deepest) {
            throw InputError(file_, "lists and objects nest more than 64 deep", "is this the file you mean?");
        }
        count();
        levels_.push_back({array, 0, {}, {}});
    }
    void key(const std::string& name) {
        Level& level = levels_.back();
        level.key = name;
        if (level.keys.insert(name).second) return;
        std::string path;
        for (const Level& l : levels_) path += "/" + (l.array ? std::to_string(std::max(l.items - 1, 0)) : l.key);
        throw InputError(file_ + ": " + one_line(path), "the key stands twice in the same object", "keep one of them");
    }

    std::string file_;
    std::vector<Level> levels_;
};

std::string line_and_column(const std::string& text, std::size_t byte) {
    const std::string_view before = std::string_view(text).substr(0, std::min(byte == 0 ? 0 : byte - 1, text.size()));
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const std::size_t last = before.rfind('\n');
    const std::size_t column = 1 + before.size() - (last == std::string_view::npos ? 0 : last + 1);
    return std::to_string(line) + ":" + std::to_string(column);
}

/// The library's own words after its bracketed number and place.
std::string syntax_problem(const std::string& what) {
    std::string words = what;
    for (const std::string_view mark : {"syntax error while parsing ", "parse error"}) {
        const std::size_t from = words.find(mark);
        if (from != std::string::npos) words = words.substr(from + (mark.front() == 's' ? 13 : 0));
    }
    std::string line;
    for (const char c : words) {
        const auto byte = static_cast<unsigned char>(c);
        constexpr unsigned char first_printed = 0x20;
        constexpr unsigned char last_printed = 0x7E;
        if (byte > last_printed) line += '?';  // the text may not be UTF-8 at all
        if (byte <= last_printed) line += byte < first_printed ? ' ' : c;
    }
    return line;
}

}  // namespace

Json parse_json(const std::string& text, const std::string& file) {
    if (trimmed(text).empty()) throw InputError(file, "the file is empty, expected a JSON object");
    try {
        return Json::parse(text, DuplicateWatch(file), true, true);
    } catch (const Json::parse_error& e) {
        throw InputError(file + ":" + line_and_column(text, e.byte), "not valid JSON: " + syntax_problem(e.what()));
    } catch (const Json::exception& e) {
        throw InputError(file, "a number is too large for any value: " + syntax_problem(e.what()));
    }
}

std::string said(const Json& value) {
    constexpr std::size_t longest = 60;
    switch (value.type()) {
        case Json::value_t::null:
            return "nothing (null)";
        case Json::value_t::object:
            return "an object {...}";
        case Json::value_t::array:
            return "a list of " + std::to_string(value.size());
        case Json::value_t::string: {
            std::string text = value.dump(-1, ' ', false, Json::error_handler_t::replace);
            return "the text " + (text.size() > longest ? text.substr(0, longest) + "...\"" : text);
        }
        case Json::value_t::boolean:
            return value.get<bool>() ? "true" : "false";
        default:
            return value.dump();
    }
}

namespace {
InputError unexpected(const JsonAt& at, const std::string& expected, const std::string& suggestion = "") {
    return {at.place(), "found " + said(at.value) + ", expected " + expected, suggestion};
}
}  // namespace

const Json& expect_object(const JsonAt& at) {
    if (!at.value.is_object()) throw unexpected(at, "an object {...}");
    return at.value;
}

const Json& expect_array(const JsonAt& at) {
    if (!at.value.is_array()) throw unexpected(at, "a list [...]");
    return at.value;
}

std::string expect_text(const JsonAt& at) {
    if (!at.value.is_string()) throw unexpected(at, "a text in quotes");
    return at.value.get<std::string>();
}

double expect_number(const JsonAt& at) {
    if (at.value.is_string()) throw unexpected(at, "a number", "write it without quotes and units");
    if (!at.value.is_number()) throw unexpected(at, "a number");
    return at.value.get<double>();
}

int expect_integer(const JsonAt& at) {
    const bool whole = at.value.is_number_integer() || at.value.is_number_unsigned();
    if (!whole) throw unexpected(at, "a whole number", at.value.is_number() ? "write it without a decimal point" : "");
    constexpr std::int64_t largest = std::numeric_limits<int>::max();
    const bool fits = at.value.is_number_unsigned()
                          ? at.value.get<std::uint64_t>() <= static_cast<std::uint64_t>(largest)
                          : at.value.get<std::int64_t>() >= -largest;
    if (!fits) throw unexpected(at, "a whole number of sensible size");
    return at.value.get<int>();
}

bool expect_yes_no(const JsonAt& at) {
    if (!at.value.is_boolean()) throw unexpected(at, "true or false");
    return at.value.get<bool>();
}

void expect_keys(const JsonAt& object, const std::vector<std::string>& known) {
    expect_object(object);
    for (const auto& [key, value] : object.value.items()) {
        if (std::find(known.begin(), known.end(), key) != known.end()) continue;
        throw InputError(object.file + ": " + object.path + "/" + one_line(key), "this key is not known here",
                         did_you_mean(key, known, "known here: " + first_listed(known, 30)));
    }
}

}  // namespace maybough::scenario
