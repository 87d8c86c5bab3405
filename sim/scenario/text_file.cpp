// Reads text files and the plain words in them.
#include "scenario/text_file.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "parameters/parameters.hpp"
#include "scenario/scenario.hpp"

namespace maybough::scenario {

namespace {
namespace fs = std::filesystem;

std::string missing_file_help(const fs::path& path) {
    std::error_code ignored;
    std::vector<std::string> names;
    const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
    for (fs::directory_iterator it(folder, ignored), end; !ignored && it != end; it.increment(ignored)) {
        if (names.size() >= 1000) break;
        names.push_back(it->path().filename().string());
    }
    return did_you_mean(path.filename().string(), names, "check the name and the folder");
}
/// Bytes that follow a lead byte of UTF-8, -1 for what is no lead byte.
int followers(unsigned char lead) {
    if (lead < 0x80U) return 0;
    if (lead >= 0xC2U && lead < 0xE0U) return 1;
    if (lead >= 0xE0U && lead < 0xF0U) return 2;
    if (lead >= 0xF0U && lead < 0xF5U) return 3;
    return -1;
}

bool is_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const int more = followers(static_cast<unsigned char>(text[at++]));
        if (more < 0) return false;
        for (int i = 0; i < more; ++i, ++at) {
            if (at >= text.size() || (static_cast<unsigned char>(text[at]) & 0xC0U) != 0x80U) return false;
        }
    }
    return true;
}

/// What an XML declaration calls the encoding of its file, in lower case; empty where there is none.
std::string declared_encoding(std::string_view text) {
    constexpr std::string_view key = "encoding=";
    const std::string_view head = text.substr(0, text.find("?>"));
    const std::size_t at = head.find(key);
    if (text.rfind("<?xml", 0) != 0 || at == std::string_view::npos) return {};
    const std::string_view rest = head.substr(at + key.size());
    if (rest.size() < 2) return {};
    std::string name(rest.substr(1, rest.find(rest.front(), 1) - 1));
    std::transform(name.begin(), name.end(), name.begin(), [](unsigned char c) { return char(std::tolower(c)); });
    return name;
}

/// Throws for text that is no UTF-8 and can be no Windows-1252 either.
void refuse_other_encodings(std::string_view text, const std::string& file) {
    const std::string help = "save or export it again in UTF-8, so that no letter of a name is lost";
    const std::string declared = declared_encoding(text);
    const std::array<std::string_view, 4> western{"", "windows-1252", "iso-8859-1", "us-ascii"};
    if (declared != "utf-8" && std::find(western.begin(), western.end(), declared) == western.end()) {
        throw InputError(file, "found text in the encoding " + one_line(declared), help);
    }
    constexpr std::string_view nothing = "\x81\x8D\x8F\x90\x9D";
    // Opening quotes, daggers and the like: no word of Windows-1252 holds them, but words of DOS and of old Macs do.
    constexpr std::string_view never_in_words = "\x80\x82\x83\x84\x86\x87\x88\x89\x8B\x93\x94\x95\x98\x99\x9B\x9F";
    const auto letter = [&](std::size_t i) {
        return i < text.size() && std::isalpha(static_cast<unsigned char>(text[i])) != 0;
    };
    for (std::size_t at = 0; at < text.size(); ++at) {
        const bool within = at > 0 && letter(at - 1) && letter(at + 1);
        if (nothing.find(text[at]) == std::string_view::npos &&
            (!within || never_in_words.find(text[at]) == std::string_view::npos)) {
            continue;
        }
        const auto line = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n');
        throw InputError(file + ":" + std::to_string(line),
                         "found text neither in UTF-8 nor in Windows-1252 (an old encoding of DOS or of a Mac?)", help);
    }
}

/// The old encoding of western spreadsheets: Latin-1 with letters and signs where Latin-1 has control characters.
std::string utf8_of_windows_1252(std::string_view text) {
    static constexpr std::array<std::uint16_t, 32> upper{
        0x20AC, 0x81,   0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
        0x2039, 0x0152, 0x8D,   0x017D, 0x8F,   0x90,   0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
        0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x9D,   0x017E, 0x0178};
    std::string out;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        const unsigned code = byte >= 0x80U && byte < 0xA0U ? upper.at(byte - 0x80U) : byte;
        if (code < 0x80U) {
            out += c;
        } else if (code < 0x800U) {
            out += static_cast<char>(0xC0U | (code >> 6U));
            out += static_cast<char>(0x80U | (code & 0x3FU));
        } else {
            out += static_cast<char>(0xE0U | (code >> 12U));
            out += static_cast<char>(0x80U | ((code >> 6U) & 0x3FU));
            out += static_cast<char>(0x80U | (code & 0x3FU));
        }
    }
    return out;
}
}  // namespace

void check_regular_file(const std::string& path, std::uintmax_t most_bytes) {
    std::error_code ignored;
    if (fs::is_directory(path, ignored)) throw InputError(path, "found a folder, expected a file");
    if (!fs::exists(path, ignored)) throw InputError(path, "there is no such file", missing_file_help(path));
    if (!fs::is_regular_file(path, ignored)) {
        throw InputError(path, "found a pipe or device, expected a regular file", "save it as a file first");
    }
    const std::uintmax_t size = fs::file_size(path, ignored);
    if (!ignored && size > most_bytes) {
        constexpr double megabyte = 1 << 20;
        throw InputError(path,
                         "found " + shortest(std::ceil(static_cast<double>(size) / megabyte)) +
                             " MB, expected at most " + shortest(static_cast<double>(most_bytes) / megabyte) + " MB",
                         "is this the file you mean?");
    }
}

std::string short_line(const std::string& text, std::size_t longest) {
    std::string line = one_line(text);
    if (line.size() <= longest) return line;
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(line[end]) & 0xC0U) == 0x80U) --end;
    return line.substr(0, end);
}

std::string read_bytes(const std::string& path, std::uintmax_t most_bytes) {
    check_regular_file(path, most_bytes);
    std::ifstream in(path, std::ios::binary);
    std::ostringstream whole;
    if (!in || !(whole << in.rdbuf() || in.peek() == std::ifstream::traits_type::eof())) {
        throw InputError(path, "the file cannot be read", "check that you may read it");
    }
    return whole.str();
}

std::string as_utf8(std::string text, const std::string& file) {
    if (is_utf8(text)) return text;
    refuse_other_encodings(text, file);
    return utf8_of_windows_1252(text);
}

std::string read_text(const std::string& path, std::uintmax_t most_bytes) {
    std::string text = read_bytes(path, most_bytes);
    if (text.rfind("\xEF\xBB\xBF", 0) == 0) text.erase(0, 3);
    if (text.find('\0') != std::string::npos) {
        throw InputError(path, "found zero bytes, expected plain text in UTF-8", "save it as text (CSV, UTF-8)");
    }
    return text;
}

std::vector<std::string_view> lines_of(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        std::string_view line = text.substr(0, end);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
        lines.push_back(line);
    }
    return lines;
}

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blanks = " \t\r\n";
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::string one_line(std::string text) {
    std::replace_if(
        text.begin(), text.end(), [](unsigned char c) { return std::iscntrl(c) != 0; }, ' ');
    // C1 controls are C2 80..9F; marks of direction are E2 80 8E/8F/AA..AE and E2 81 A6..A9 (Unicode, UTF-8).
    const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
    for (std::size_t i = 0; i + 1 < text.size(); ++i) {
        const unsigned last = byte(i + 2);
        const bool control = byte(i) == 0xC2 && byte(i + 1) >= 0x80 && byte(i + 1) <= 0x9F;
        const bool turn = byte(i) == 0xE2 &&
                          ((byte(i + 1) == 0x80 && (last == 0x8E || last == 0x8F || (last >= 0xAA && last <= 0xAE))) ||
                           (byte(i + 1) == 0x81 && last >= 0xA6 && last <= 0xA9));
        if (control || turn) text.replace(i, control ? 2 : 3, " ");
    }
    return text;
}

std::optional<double> decimal_number(std::string_view text, DecimalSign sign) {
    std::string plain(trimmed(text));
    if (!plain.empty() && plain.front() == '+') plain.erase(0, 1);
    if (sign == DecimalSign::point_or_comma && plain.find('.') == std::string::npos) {
        const std::size_t comma = plain.find(',');
        if (comma != std::string::npos) plain[comma] = '.';
    }
    if (plain.empty() || plain.find_first_not_of("0123456789.eE+-") != std::string::npos) return {};
    double value = 0;
    const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    if (error != std::errc{} || end != plain.data() + plain.size() || !std::isfinite(value)) return {};
    return value;
}

std::optional<int> whole_number(std::string_view text) {
    const std::string_view plain = trimmed(text);
    int value = 0;
    const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    if (plain.empty() || error != std::errc{} || end != plain.data() + plain.size()) return {};
    return value;
}

Date year_first_date(std::string_view text, const std::string& place) {
    const std::string_view plain = trimmed(text);
    const auto fail = [&] {
        return InputError(place, "found \"" + std::string(plain) + "\", expected a date such as 2026-04-05",
                          "write year, month and day as YYYY-MM-DD");
    };
    const std::size_t first = plain.find_first_of("-/");
    const std::size_t second = first == std::string_view::npos ? first : plain.find(plain[first], first + 1);
    if (first != 4 || second == std::string_view::npos) throw fail();
    const auto year = whole_number(plain.substr(0, first));
    const auto month = whole_number(plain.substr(first + 1, second - first - 1));
    const auto day = whole_number(plain.substr(second + 1));
    if (!year || !month || !day || *year < 1600 || *month < 1 || *day < 1) throw fail();
    const std::chrono::year_month_day civil{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)},
                                            std::chrono::day{static_cast<unsigned>(*day)}};
    if (!civil.ok()) throw fail();
    return Date{civil};
}

std::string shortest(double value) {
    std::array<char, 32> text{};
    const auto [end, error] = std::to_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc{} ? std::string(text.data(), end) : "?";
}

std::string did_you_mean(std::string_view found, const std::vector<std::string>& known, const std::string& otherwise) {
    const std::vector<std::string> near = nearest_keys(found, known);
    if (near.empty()) return otherwise;
    std::string text = "did you mean ";
    for (std::size_t i = 0; i < near.size(); ++i) text += (i == 0 ? "" : " or ") + near[i];
    return text + "?";
}

std::string first_listed(const std::vector<std::string>& words, std::size_t most) {
    std::string text;
    for (std::size_t i = 0; i < words.size() && i < most; ++i) text += (i == 0 ? "" : ", ") + words[i];
    if (words.size() > most) text += " and " + std::to_string(words.size() - most) + " more";
    return text;
}

std::string beside(const std::string& folder, const std::string& file) {
    return folder.empty() ? file : (fs::path(folder) / file).string();
}

}  // namespace maybough::scenario
