// Words and numbers for people: private to report/. Rounding, money, compass, dates, wrapped text, text tables.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "outlook/outlook.hpp"

namespace maybough::report {
/// Told apart from other rooms' functions of the same name, since these stay within report/.
/// Columns of a terminal table.
inline constexpr std::size_t table_width = 100;

/// Valid UTF-8 without control characters: what stands for them is a blank, what is no UTF-8 becomes U+FFFD. Tabs and
/// line ends are kept only where `keep_lines`.
std::string plain_text(std::string_view text, bool keep_lines = false);

/// Plain text as it stands inside an element or attribute of XML or HTML.
std::string markup_text(std::string_view text);

/// Code points of UTF-8 text: its width on a terminal, near enough.
std::size_t text_width(std::string_view text);

/// At most `width` code points; what is longer ends in "..".
std::string shortened(std::string_view text, std::size_t width);

/// `value` with `decimals` digits after the point, "n/a" where it is no number, never "-0.0".
std::string number(double value, int decimals = 1);
/// Three digits that say something: 0.123, 1.23, 12.3, 123, 12300 as it is; no zeros at the end.
std::string three_digits(double value);
/// The shortest text that reads back as the same double.
std::string exact(double value);
/// "3.42 +- 0.08".
std::string with_error(const Estimate& estimate, int decimals);
/// 0.734 as "73 %"; "<1 %" and ">99 %" at the ends.
std::string percent(double share);
/// "1 trap", "2 traps".
std::string counted(double count, std::string_view noun);
/// "EUR 120" or "EUR 0.40": whole money from 10 on.
std::string money(double amount, const std::string& currency);
/// "EUR 98 +- 4", both with the decimals of the mean.
std::string money_with_error(const Estimate& estimate, const std::string& currency);
/// "3.5 m (11 ft)".
std::string height_words(double height_m);
/// One of 16 compass points: "SSE".
std::string compass(double degrees);
/// "a, b and c".
std::string listed(const std::vector<std::string>& items);

/// The civil date of `day` of the scenario's simulated year.
Date date_of(const Scenario& scenario, Day day);
/// Name of a spot: its own, else its id; cleaned for print.
std::string spot_name(const Scenario& scenario, std::size_t spot);
std::string kind_name(const Scenario& scenario, std::size_t kind);

/// Chances of at least 1, 2, ... swarms, as long as they are not next to nothing.
std::string odds_words(const std::vector<SeasonShare>& odds_at_least);
/// A share of seasons that claims no certainty: "83 % (76 to 89)", or a bound where all seasons came out alike.
std::string share_words(const SeasonShare& share);

/// Paragraph broken at blanks so that no line is wider than `width`; every line starts with `indent` blanks. A sign of
/// percent or hours stays with its number.
std::string wrapped(std::string_view text, std::size_t indent = 0, std::size_t width = table_width);

/// A heading with a rule under it.
std::string heading(std::string_view text);

/// A table of text: columns as wide as their widest cell, two blanks between.
class TextTable {
  public:
    enum class Align { left, right };
    TextTable& column(std::string title, Align align = Align::right, std::size_t at_most = 40);
    void row(std::vector<std::string> cells);
    std::string text() const;

  private:
    struct Column {
        std::string title;
        Align align;
        std::size_t at_most;
    };
    std::vector<Column> columns_;
    std::vector<std::vector<std::string>> rows_;
};

}  // namespace maybough::report
