// Parses RFC 4180 tables with the delimiter told by the first line.
#include "scenario/csv.hpp"

#include <algorithm>
#include <set>
#include <string_view>

#include "base/base.hpp"

namespace maybough::scenario {

namespace {

/// The most frequent delimiter of the first line, outside quotes.
char delimiter_of(std::string_view text) {
    std::size_t commas = 0;
    std::size_t semicolons = 0;
    std::size_t tabs = 0;
    bool quoted = false;
    for (const char c : text) {
        if (c == '"') quoted = !quoted;
        if (quoted) continue;
        if (c == '\n' && commas + semicolons + tabs > 0) break;
        commas += c == ',' ? 1U : 0U;
        semicolons += c == ';' ? 1U : 0U;
        tabs += c == '\t' ? 1U : 0U;
    }
    if (tabs > commas && tabs > semicolons) return '\t';
    return semicolons > commas ? ';' : ',';
}

/// Cuts one record after another out of the text.
class Cutter {
  public:
    Cutter(std::string_view text, const std::string& file, char delimiter)
        : text_(text), file_(file), delimiter_(delimiter) {}

    bool done() const { return next_ >= text_.size(); }

    CsvRow record() {
        CsvRow row{line_, {}};
        bool more = true;
        while (more) row.cells.push_back(cell(more));
        return row;
    }

  private:
    std::string cell(bool& more) {
        while (!done() && text_[next_] == ' ') ++next_;
        if (!done() && text_[next_] == '"') return quoted_cell(more);
        const std::size_t start = next_;
        while (!done() && text_[next_] != delimiter_ && text_[next_] != '\n') {
            if (text_[next_] == '"') {
                throw InputError(place(), "found a quote inside a cell that does not start with one",
                                 "put the whole cell in quotes and double the quotes inside it");
            }
            ++next_;
        }
        const std::string_view found = trimmed(text_.substr(start, next_ - start));
        more = end_of_cell();
        return std::string(found);
    }

    std::string quoted_cell(bool& more) {
        const std::string opened = place();
        std::string content;
        ++next_;
        while (true) {
            if (done()) throw InputError(opened, "a quote is opened here and never closed", "is the file cut off?");
            const char c = text_[next_++];
            if (c == '\n') ++line_;
            if (c != '"') {
                content += c;
            } else if (!done() && text_[next_] == '"') {
                content += '"';
                ++next_;
            } else {
                break;
            }
        }
        while (!done() && (text_[next_] == ' ' || text_[next_] == '\r')) ++next_;
        if (!done() && text_[next_] != delimiter_ && text_[next_] != '\n') {
            throw InputError(place(), "found text after a closing quote", "double the quotes inside a quoted cell");
        }
        more = end_of_cell();
        return std::string(trimmed(content));
    }

    /// Steps over the delimiter (true: another cell follows) or the line's end.
    bool end_of_cell() {
        if (done()) return false;
        const bool more = text_[next_] == delimiter_;
        if (!more) ++line_;
        ++next_;
        return more;
    }

    std::string place() const { return file_ + ":" + std::to_string(line_); }

    std::string_view text_;
    const std::string& file_;
    char delimiter_;
    std::size_t next_ = 0;
    int line_ = 1;
};

bool blank(const CsvRow& row) {
    return std::all_of(row.cells.begin(), row.cells.end(), [](const std::string& cell) { return cell.empty(); });
}

void check_header(const CsvTable& table, int line) {
    const std::string place = table.file + ":" + std::to_string(line);
    if (table.header.size() == 1) {
        throw InputError(place, "found one column only (\"" + table.header.front().substr(0, 60) + "\")",
                         "part the columns by comma, semicolon or tab");
    }
    std::set<std::string> seen;
    for (const std::string& name : table.header) {
        if (name.empty()) throw InputError(place, "a column has no name", "name every column in the first line");
        if (!seen.insert(name).second) throw InputError(place, "the column \"" + name + "\" stands twice");
    }
}

}  // namespace

CsvTable parse_csv(const std::string& text, const std::string& file, Header header) {
    CsvTable table{file, delimiter_of(text), {}, {}};
    Cutter cutter(text, file, table.delimiter);
    std::size_t width = 0;
    while (!cutter.done()) {
        CsvRow row = cutter.record();
        if (blank(row)) continue;
        const std::size_t least = width == 0 ? 1 : width;  // a spreadsheet's empty columns at the right
        while (row.cells.size() > least && row.cells.back().empty() && (width > 0 || header == Header::first_line)) {
            row.cells.pop_back();
        }
        if (width == 0) {
            width = row.cells.size();
            if (header == Header::first_line) {
                table.header = std::move(row.cells);
                check_header(table, row.line);
                continue;
            }
        }
        if (row.cells.size() != width) {
            throw InputError(table.place(row),
                             "found " + std::to_string(row.cells.size()) + " cells, expected " + std::to_string(width) +
                                 " as in the first line",
                             "is the row cut off, or a delimiter inside a cell without quotes?");
        }
        table.rows.push_back(std::move(row));
    }
    if (width == 0) throw InputError(file, "the file is empty, expected a table");
    if (table.rows.empty()) throw InputError(file, "found a header without any row");
    return table;
}

}  // namespace maybough::scenario
