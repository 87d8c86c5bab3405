// Latitudes and longitudes as people write them.
#include <cmath>
#include <string>
#include <vector>

#include "scenario/scenario.hpp"
#include "scenario/sheet.hpp"

namespace maybough::scenario {

namespace {

/// A coordinate cut into its numbers and the letter of its hemisphere.
struct Cut {
    std::vector<double> parts;
    char hemisphere = 0;
    bool negative = false;
    bool good = true;
};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

Cut cut_up(std::string_view text) {
    Cut cut;
    for (std::size_t i = 0; i < text.size() && cut.good;) {
        const char c = text[i];
        const char letter = static_cast<char>(c >= 'a' && c <= 'z' ? c - 'a' + 'A' : c);
        if (is_digit(c)) {
            std::size_t end = i;
            while (end < text.size() && (is_digit(text[end]) || text[end] == '.' || text[end] == ',')) ++end;
            const auto value = decimal_number(text.substr(i, end - i), DecimalSign::point_or_comma);
            cut.good = value.has_value();
            if (value) cut.parts.push_back(*value);
            i = end;
        } else if (c == '-' && cut.parts.empty() && !cut.negative) {
            cut.negative = true;
            ++i;
        } else if (std::string_view("NSEWO").find(letter) != std::string_view::npos && cut.hemisphere == 0) {
            cut.hemisphere = letter;
            cut.good = letter != 'O';  // German Ost and French ouest point opposite ways: nobody can tell
            ++i;
        } else if (std::string_view(" \t'\"*+").find(c) != std::string_view::npos ||
                   static_cast<unsigned char>(c) >= 0x80) {
            ++i;  // degree and minute signs, plain or typographic; blanks
        } else {
            cut.good = false;
        }
    }
    return cut;
}

}  // namespace

std::optional<double> degrees_in(std::string_view text, char axis) {
    if (const auto plain = decimal_number(text, DecimalSign::point_or_comma)) return plain;
    const Cut cut = cut_up(trimmed(text));
    const bool latitude = axis == 'N';
    const bool fits = cut.hemisphere == 0 || (latitude ? cut.hemisphere == 'N' || cut.hemisphere == 'S'
                                                       : cut.hemisphere == 'E' || cut.hemisphere == 'W');
    if (!cut.good || !fits || cut.parts.empty() || cut.parts.size() > 3) return {};
    if (cut.negative && cut.hemisphere != 0) return {};  // "-51 S" says it twice
    constexpr double sixtieth = 60;
    double degrees = 0;
    double scale = 1;
    for (std::size_t i = 0; i < cut.parts.size(); ++i, scale *= sixtieth) {
        const bool last = i + 1 == cut.parts.size();
        if (i > 0 && cut.parts[i] >= sixtieth) return {};
        if (!last && cut.parts[i] != std::floor(cut.parts[i])) return {};
        degrees += cut.parts[i] / scale;
    }
    const bool south_or_west = cut.negative || cut.hemisphere == 'S' || cut.hemisphere == 'W';
    return south_or_west ? -degrees : degrees;
}

LatLon place_in_words(const std::string& text, const std::string& place) {
    const std::size_t parted = text.find(';');
    const std::size_t at = parted == std::string::npos ? text.find(',') : parted;
    const std::string second = at == std::string::npos ? "" : text.substr(at + 1);
    const auto latitude_deg = degrees_in(text.substr(0, at), 'N');
    const auto longitude_deg = degrees_in(second, 'E');
    constexpr double most_latitude_deg = 66;
    constexpr double most_longitude_deg = 180;
    if (!latitude_deg || !longitude_deg || !(std::abs(*latitude_deg) <= most_latitude_deg) ||
        !(std::abs(*longitude_deg) <= most_longitude_deg)) {
        throw InputError(place, "found \"" + short_line(text, 60) + "\", expected latitude,longitude in degrees",
                         "for example 46.8,-6.0");
    }
    return {*latitude_deg, *longitude_deg};
}

double metres_in_words(const std::string& text, const std::string& place, double min, double max) {
    struct Length {
        std::string_view unit;
        double metres;
    };
    for (const Length& length :
         {Length{"km", 1000}, Length{"mi", 1609.344}, Length{"ft", 0.3048}, Length{"m", 1}, Length{"", 1}}) {
        const std::string_view plain = trimmed(text);
        if (!plain.ends_with(length.unit)) continue;
        const auto value = decimal_number(plain.substr(0, plain.size() - length.unit.size()));
        if (!value || !(*value * length.metres >= min && *value * length.metres <= max)) break;
        return *value * length.metres;
    }
    throw InputError(
        place,
        "found \"" + short_line(text, 60) + "\", expected a length of " + shortest(min) + " to " + shortest(max) + " m",
        "for example 3km");
}

}  // namespace maybough::scenario
