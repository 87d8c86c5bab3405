// Text for a terminal: cleaned of control characters, wrapped, set in tables.
#include <algorithm>
#include <numeric>
#include <sstream>

#include "report/words.hpp"

namespace maybough::report {
namespace {

bool continues(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

/// Length of the well-formed UTF-8 sequence at `at` (Unicode 15, table 3-7), 0 where there is none.
std::size_t sequence_length(std::string_view text, std::size_t at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned>(static_cast<unsigned char>(text[i])); };
    const unsigned lead = byte(at);
    if (lead < 0x80U) return 1;
    const std::size_t length = lead >= 0xF0U ? 4 : lead >= 0xE0U ? 3 : 2;
    if (lead < 0xC2U || lead > 0xF4U || at + length > text.size()) return 0;
    for (std::size_t i = 1; i < length; ++i) {
        if (!continues(text[at + i])) return 0;
    }
    const unsigned second = byte(at + 1);
    const bool overlong = (lead == 0xE0U && second < 0xA0U) || (lead == 0xF0U && second < 0x90U);
    const bool beyond = (lead == 0xEDU && second > 0x9FU) || (lead == 0xF4U && second > 0x8FU);
    return overlong || beyond ? 0 : length;
}

/// Whether the word after the blank at `blank` belongs to the number before it: a sign of percent, or hours.
bool sign_follows(std::string_view text, std::size_t blank) {
    const std::string_view next = text.substr(std::min(blank + 1, text.size()));
    return next.substr(0, 1) == "%" || next.substr(0, 2) == "h ";
}

}  // namespace

std::string plain_text(std::string_view text, bool keep_lines) {
    std::string clean;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = sequence_length(text, at);
        const std::string_view piece = text.substr(at, std::max<std::size_t>(length, 1));
        const auto lead = static_cast<unsigned char>(piece.front());
        const bool line_end = piece == "\n" || piece == "\t";
        const bool control = lead < 0x20U || lead == 0x7FU ||                                      // C0 and delete
                             (lead == 0xC2U && static_cast<unsigned char>(piece.back()) < 0xA0U);  // C1
        const bool no_character = piece == "\xEF\xBF\xBE" || piece == "\xEF\xBF\xBF";              // U+FFFE, U+FFFF
        if (length == 0 || no_character) {
            clean += "\xEF\xBF\xBD";
        } else if (control && !(keep_lines && line_end)) {
            clean += ' ';
        } else {
            clean += piece;
        }
        at += piece.size();
    }
    return clean;
}

std::size_t text_width(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) { return !continues(c); }));
}

std::string shortened(std::string_view text, std::size_t width) {
    if (text_width(text) <= width) return std::string(text);
    std::string cut;
    std::size_t taken = 0;
    for (const char c : text) {
        if (!continues(c) && ++taken > width - 2) break;
        cut += c;
    }
    return cut + "..";
}

std::string wrapped(std::string_view text, std::size_t indent, std::size_t width) {
    std::string out;
    std::string line;
    const auto flush = [&] {
        if (!line.empty()) out.append(indent, ' ').append(line).append("\n");
        line.clear();
    };
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = std::min(text.find(' ', at), text.size());
        while (sign_follows(text, end)) end = std::min(text.find(' ', end + 1), text.size());
        const std::string_view word = text.substr(at, end - at);
        if (!line.empty() && indent + text_width(line) + 1 + text_width(word) > width) flush();
        if (!word.empty()) line.append(line.empty() ? "" : " ").append(word);
        at = end + 1;
    }
    flush();
    return out;
}

std::string heading(std::string_view text) {
    std::string lines = "\n";
    return lines.append(text).append("\n").append(text_width(text), '-').append("\n");
}

TextTable& TextTable::column(std::string title, Align align, std::size_t at_most) {
    columns_.push_back({std::move(title), align, at_most});
    return *this;
}

namespace {
/// A cell over as many lines as its column's width asks for, three at most.
std::vector<std::string> cell_lines(const std::string& cell, std::size_t at_most) {
    constexpr std::size_t most_lines = 3;
    if (text_width(cell) <= at_most) return {cell};
    std::vector<std::string> lines;
    std::istringstream text(wrapped(cell, 0, at_most));
    for (std::string line; std::getline(text, line) && lines.size() < most_lines;) {
        lines.push_back(shortened(line, at_most));
    }
    return lines;
}
}  // namespace

void TextTable::row(std::vector<std::string> cells) {
    if (cells.size() != columns_.size()) throw ModelFault("a table row has " + std::to_string(cells.size()) + " cells");
    std::vector<std::vector<std::string>> lines(1, std::vector<std::string>(cells.size()));
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const std::vector<std::string> parts = cell_lines(cells[i], columns_[i].at_most);
        while (lines.size() < parts.size()) lines.emplace_back(cells.size());
        for (std::size_t part = 0; part < parts.size(); ++part) lines[part][i] = parts[part];
    }
    for (auto& line : lines) rows_.push_back(std::move(line));
}

std::string TextTable::text() const {
    std::vector<std::string> titles;
    for (const Column& column : columns_) titles.push_back(column.title);
    std::vector<std::vector<std::string>> lines{titles};
    lines.insert(lines.end(), rows_.begin(), rows_.end());
    std::vector<std::size_t> widths(columns_.size());
    for (const auto& cells : lines) {
        for (std::size_t i = 0; i < cells.size(); ++i) widths[i] = std::max(widths[i], text_width(cells[i]));
    }
    std::string out;
    for (const auto& cells : lines) {
        std::string line;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const std::string blanks(widths[i] - text_width(cells[i]), ' ');
            line.append(i > 0 ? "  " : "")
                .append(columns_[i].align == Align::right ? blanks + cells[i] : cells[i] + blanks);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out += line + "\n";
    }
    return out;
}

}  // namespace maybough::report
