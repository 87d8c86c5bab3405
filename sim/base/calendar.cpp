// Dates and days, from std::chrono's calendar.
#include "base/calendar.hpp"

#include <array>
#include <cctype>
#include <cstdio>

#include "base/errors.hpp"

namespace maybough::base {

namespace {
std::chrono::year_month_day civil(Date date) {
    return std::chrono::year_month_day{date};
}
}  // namespace

Date make_date(int year, int month, int day) {
    const std::chrono::year_month_day ymd{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                          std::chrono::day{static_cast<unsigned>(day)}};
    if (month < 1 || day < 1 || !ymd.ok()) {
        throw InputError(
            "date", "there is no day " + std::to_string(year) + "-" + std::to_string(month) + "-" + std::to_string(day),
            "write dates as YYYY-MM-DD");
    }
    return Date{ymd};
}

Date parse_date(std::string_view text, const std::string& place) {
    const auto fail = [&]() -> InputError {
        return {place, "found \"" + std::string(text) + "\", expected a date such as 2026-04-05",
                "write year, month and day as YYYY-MM-DD"};
    };
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') throw fail();
    const auto number = [&](std::size_t from, std::size_t count) {
        int value = 0;
        for (std::size_t i = from; i < from + count; ++i) {
            if (std::isdigit(static_cast<unsigned char>(text[i])) == 0) throw fail();
            value = 10 * value + (text[i] - '0');
        }
        return value;
    };
    const int year = number(0, 4);
    const int month = number(5, 2);
    const int day = number(8, 2);
    const std::chrono::year_month_day ymd{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                          std::chrono::day{static_cast<unsigned>(day)}};
    if (!ymd.ok()) throw fail();
    return Date{ymd};
}

std::string iso(Date date) {
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02d-%02d", year_of(date), month_of(date), day_of_month(date));
    return text.data();
}

std::string short_date(Date date) {
    static constexpr std::array<const char*, 12> names{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                       "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    return std::to_string(day_of_month(date)) + " " + names.at(static_cast<std::size_t>(month_of(date) - 1));
}

int year_of(Date date) {
    return static_cast<int>(civil(date).year());
}
int month_of(Date date) {
    return static_cast<int>(static_cast<unsigned>(civil(date).month()));
}
int day_of_month(Date date) {
    return static_cast<int>(static_cast<unsigned>(civil(date).day()));
}
int day_of_year(Date date) {
    return static_cast<int>((date - make_date(year_of(date), 1, 1)).count()) + 1;
}

Date simulated_year_start(Date date, double latitude_deg) {
    const int year = year_of(date);
    if (latitude_deg >= 0) return make_date(year, 1, 1);
    return make_date(month_of(date) >= 7 ? year : year - 1, 7, 1);
}

int days_in_year_from(Date start) {
    return static_cast<int>((make_date(year_of(start) + 1, month_of(start), day_of_month(start)) - start).count());
}

}  // namespace maybough::base
