// Tables of text (RFC 4180): comma, semicolon or tab as the header tells; every row knows its line.
#pragma once

#include <string>
#include <vector>

#include "scenario/text_file.hpp"

namespace maybough::scenario {

struct CsvRow {
    int line = 0;
    std::vector<std::string> cells;  ///< blanks at both ends cut off, quotes taken away
};

struct CsvTable {
    std::string file;
    char delimiter = ',';
    std::vector<std::string> header;  ///< empty where the table has none
    std::vector<CsvRow> rows;         ///< as many cells as the header; empty lines left out

    /// A decimal comma is understood where the comma does not part the columns.
    DecimalSign decimal_sign() const { return delimiter == ',' ? DecimalSign::point : DecimalSign::point_or_comma; }
    std::string place(const CsvRow& row) const { return file + ":" + std::to_string(row.line); }
};

enum class Header { first_line, none };

/// Parses a whole file's text. Throws InputError with file:line for open quotes, rows of another width, columns named
/// twice and a table without rows.
CsvTable parse_csv(const std::string& text, const std::string& file, Header header = Header::first_line);

}  // namespace maybough::scenario
