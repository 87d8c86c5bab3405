// A scratch folder with a small good scenario whose files a test may change.
#pragma once

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>

#include "scenario/scenario.hpp"

namespace maybough {

inline const char* good_scenario = R"({
  "format": 1,
  "name": "Test meadow", // comments are allowed
  "year": 2026,
  "place": {"latitude_deg": 47.5, "longitude_deg": 8.5, "radius_m": 2000, "elsewhere": "farmland"},
  "spots": "spots.csv",
  "trap_kinds": [{"id": "box", "volume_l": 40}],
  "keeper": {"budget": 300, "late_from": "07-15", "max_traps": 4},
  "weather": {"monthly_normals": {
    "tmax_c": [3, 5, 10, 15, 19, 23, 25, 24, 20, 14, 8, 4],
    "tmin_c": [-3, -2, 1, 4, 8, 12, 14, 13, 10, 6, 1, -2],
    "rain_mm": [60, 55, 65, 80, 110, 120, 115, 115, 90, 75, 70, 70],
    "wet_days": [10, 9, 10, 11, 12, 12, 11, 11, 9, 9, 10, 10]}}
})";

inline const char* good_spots =
    "id,name,latitude_deg,longitude_deg,min_height_m,max_height_m,facings_deg,shade,visibility,minutes_to_reach,drive_"
    "km,use\n"
    "oak,Old oak,47.501,8.501,2,5,90 180,0.5,0.6,4,1.2,may\n"
    "barn,Barn,47.495,8.49,2,3,,0.2,0.9,2,0.4,must\n"
    "hedge,Hedge,47.51,8.51,1,2,SE,0.8,0.3,9,2,never\n";

/// Removed with everything in it at the end of a test.
class ScratchFolder {
  public:
    ScratchFolder() {
        std::string pattern = (std::filesystem::temp_directory_path() / "maybough-test-XXXXXX").string();
        path_ = mkdtemp(pattern.data());
    }
    ~ScratchFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;

    std::string path(const std::string& name = "") const { return name.empty() ? path_ : path_ + "/" + name; }
    std::string put(const std::string& name, const std::string& text) const {
        std::ofstream(path(name), std::ios::binary) << text;
        return path(name);
    }
    void put_good_scenario() const {
        put("scenario.json", good_scenario);
        put("spots.csv", good_spots);
    }

  private:
    std::string path_;
};

/// `text` with the first `from` replaced by `to`; a test that replaces nothing is wrong.
inline std::string changed(std::string text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    if (at == std::string::npos) throw ModelFault("the test changes nothing: " + from);
    return text.replace(at, from.size(), to);
}

/// The message of the InputError that `action` throws, or "" where it throws none.
template <class Action>
std::string refusal(Action action) {
    try {
        action();
    } catch (const InputError& e) {
        return e.what();
    }
    return "";
}

inline bool says(const std::string& message, const std::string& part) {
    return message.find(part) != std::string::npos;
}

}  // namespace maybough
