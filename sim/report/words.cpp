// Words and numbers for people: rounding, money, compass, dates.
#include "report/words.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace maybough::report {
namespace {
/// A value that lies halfway between two roundings, put on the one away from zero, as the pages' script rounds.
double off_the_fence(double value, int decimals) {
    const double tens = std::pow(10.0, decimals);
    const double scaled = value * tens;
    const bool halfway = std::fma(value, tens, -scaled) == 0 && std::abs(scaled - std::trunc(scaled)) == 0.5;
    return halfway ? std::round(scaled) / tens : value;
}
}  // namespace

std::string number(double value, int decimals) {
    if (!std::isfinite(value)) return "n/a";
    value = off_the_fence(value, decimals);
    std::array<char, 400> buffer{};
    const auto end =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed, decimals);
    std::string text(buffer.data(), end.ptr);
    if (text.front() == '-' && text.find_first_not_of("-0.") == std::string::npos) text.erase(0, 1);
    return text;
}

std::string three_digits(double value) {
    if (!std::isfinite(value)) return "n/a";
    const double size = std::abs(value);
    const int before = size > 0 ? static_cast<int>(std::floor(std::log10(size))) + 1 : 1;
    std::string text = number(value, std::clamp(3 - before, 0, 6));
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

std::string exact(double value) {
    if (!std::isfinite(value)) return "";
    std::array<char, 64> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
    return {buffer.data(), end.ptr};
}

std::string with_error(const Estimate& estimate, int decimals) {
    return number(estimate.mean, decimals) + " +- " + number(estimate.se, decimals);
}

std::string percent(double share) {
    if (!std::isfinite(share)) return "n/a";
    if (share > 0 && share < 0.01) return "<1 %";
    if (share < 1 && share > 0.99) return ">99 %";
    return number(100 * share, 0) + " %";
}

std::string counted(double count, std::string_view noun) {
    const std::string figure = number(count, count == std::floor(count) ? 0 : 1);
    return figure + " " + std::string(noun) + (figure == "1" ? "" : "s");
}

std::string money(double amount, const std::string& currency) {
    return plain_text(currency) + " " + number(amount, std::abs(amount) < 10 && amount != 0 ? 2 : 0);
}

std::string money_with_error(const Estimate& estimate, const std::string& currency) {
    const int decimals = std::abs(estimate.mean) < 10 && estimate.mean != 0 ? 2 : 0;
    return money(estimate.mean, currency) + " +- " + number(estimate.se, decimals);
}

std::string share_words(const SeasonShare& share) {
    constexpr double nearly = 0.99;
    if (!(share.share < nearly)) return "more than " + number(std::floor(100 * share.low_95), 0) + " %";
    if (!(share.share > 0)) return "less than " + number(std::ceil(100 * share.high_95), 0) + " %";
    return percent(share.share) + " (" + number(std::max(1.0, 100 * share.low_95), 0) + " to " +
           number(std::min(99.0, 100 * share.high_95), 0) + ")";
}

std::string odds_words(const std::vector<SeasonShare>& odds_at_least) {
    constexpr double next_to_nothing = 0.005;
    std::string text;
    for (std::size_t k = 0; k < odds_at_least.size() && odds_at_least[k].share >= next_to_nothing; ++k) {
        text.append(k == 0 ? "At least " : "; ")
            .append(std::to_string(k + 1))
            .append(": ")
            .append(share_words(odds_at_least[k]));
    }
    return text.append(text.empty() ? "No swarm in any simulated season." : ".");
}

std::string height_words(double height_m) {
    constexpr double metres_per_foot = 0.3048;  // exact by definition
    return number(height_m, 1) + " m (" + number(height_m / metres_per_foot, 0) + " ft)";
}

std::string compass(double degrees) {
    static constexpr std::array<const char*, 16> points{"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                                                        "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};
    if (!std::isfinite(degrees)) return "any";
    const double turned = std::fmod(std::fmod(degrees, 360.0) + 360.0, 360.0);
    return points.at(static_cast<std::size_t>(std::lround(turned / 22.5)) % points.size());
}

std::string listed(const std::vector<std::string>& items) {
    std::string text;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i > 0) text += i + 1 == items.size() ? " and " : ", ";
        text += items[i];
    }
    return text;
}

Date date_of(const Scenario& scenario, Day day) {
    return scenario.first_day() + std::chrono::days{day.value};
}

std::string spot_name(const Scenario& scenario, std::size_t spot) {
    if (spot >= scenario.spots.size())
        throw ModelFault("a trap stands at spot " + std::to_string(spot) + " of " +
                         std::to_string(scenario.spots.size()));
    const Spot& found = scenario.spots[spot];
    return plain_text(found.name.empty() ? found.id : found.name);
}

std::string kind_name(const Scenario& scenario, std::size_t kind) {
    if (kind >= scenario.kinds.size())
        throw ModelFault("a trap is of kind " + std::to_string(kind) + " of " + std::to_string(scenario.kinds.size()));
    const TrapKind& found = scenario.kinds[kind];
    return plain_text(found.name.empty() ? found.id : found.name);
}

std::string markup_text(std::string_view text) {
    std::string out;
    for (const char c : plain_text(text)) {
        switch (c) {
            case '&':
                out += "&amp;";
                break;
            case '<':
                out += "&lt;";
                break;
            case '>':
                out += "&gt;";
                break;
            case '"':
                out += "&quot;";
                break;
            case '\'':
                out += "&#39;";
                break;
            default:
                out += c;
        }
    }
    return out;
}

}  // namespace maybough::report
