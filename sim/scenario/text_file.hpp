// Text files as they lie on the disk: read whole, cut into lines, numbers and dates out of words.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/base.hpp"

namespace maybough::scenario {

/// The largest text file that is read whole, and the largest file of places.
inline constexpr std::uintmax_t most_text_bytes = std::uintmax_t{1} << 30;
inline constexpr std::uintmax_t most_places_bytes = std::uintmax_t{64} << 20;

/// The whole of a regular file of at most `most_bytes`. Throws InputError for folders, pipes and devices, for a larger
/// file, and for one that is not there, naming files of nearly the same name in its folder.
std::string read_bytes(const std::string& path, std::uintmax_t most_bytes = most_text_bytes);

/// The text as it is where it is UTF-8, else taken for Windows-1252, the old encoding of western spreadsheets. Throws
/// InputError naming `file` where it cannot be that: it says itself that it is another, holds bytes that stand for
/// nothing there, or signs within words where other encodings have letters.
std::string as_utf8(std::string text, const std::string& file);

/// The whole file without a byte-order mark. Throws InputError when it cannot be read, is a folder, or holds zero bytes
/// that no text has; names files of nearly the same name in its folder.
std::string read_text(const std::string& path, std::uintmax_t most_bytes = most_text_bytes);

/// Lines without their line ends (LF or CRLF). A last line without an end counts; nothing after the last end does not.
std::vector<std::string_view> lines_of(std::string_view text);

/// Without blanks at both ends.
std::string_view trimmed(std::string_view text);

/// With blanks for line breaks, other control characters and marks that turn the direction of writing: a cell is one
/// line of text, also where a message quotes it.
std::string one_line(std::string text);

/// Whether `,` may stand for the decimal point: so in semicolon and tab files of many countries.
enum class DecimalSign { point, point_or_comma };

/// A finite decimal number filling the whole of `text`; nothing for anything else ("nan", "1e", "0x10", "").
std::optional<double> decimal_number(std::string_view text, DecimalSign sign = DecimalSign::point);

/// A whole number filling the whole of `text`.
std::optional<int> whole_number(std::string_view text);

/// A date with the year first: 2016-01-31, 2016/1/31. Throws InputError at `place` on anything else.
Date year_first_date(std::string_view text, const std::string& place);

/// A number as people write it: shortest form that reads back the same.
std::string shortest(double value);

/// "; did you mean a or b?" as a suggestion, or `otherwise` where nothing known is near.
std::string did_you_mean(std::string_view found, const std::vector<std::string>& known, const std::string& otherwise);

/// "a, b, c" for messages; with more than `most`, the rest is counted.
std::string first_listed(const std::vector<std::string>& words, std::size_t most = 6);

/// The file a scenario names, seen from the scenario's folder.
std::string beside(const std::string& folder, const std::string& file);

}  // namespace maybough::scenario
