// The records of scenario.json: every field once, and the plain values they are read into.
#pragma once

#include <string>
#include <vector>

#include "scenario/fields.hpp"
#include "scenario/scenario.hpp"

namespace maybough::scenario {

/// The newest format of scenario.json that this program reads.
inline constexpr int scenario_format = 1;

/// The place and what lies everywhere without a patch of its own.
struct WrittenPlace {
    double latitude_deg = 0;
    double longitude_deg = 0;
    double radius_m = 3000;
    std::string elsewhere = "farmland";
};

/// Hives listed in scenario.json itself.
struct WrittenApiary {
    std::string id;
    double latitude_deg = 0;
    double longitude_deg = 0;
    int hives = 1;
};

/// The keeper, with the date in one text.
struct WrittenKeeper : Keeper {
    WrittenKeeper() = default;
    std::string late_from = "07-01";
};

/// A weather file.
struct WrittenWeather {
    std::string file;
    std::string station;
};

/// The plain texts and numbers at the top of scenario.json.
struct WrittenTop {
    std::string schema;
    int format = scenario_format;
    std::string name;
    std::string description;
    int year = 0;
    std::string habitats;
    std::string map;
    std::string spots;
    std::string traps;
};

const FieldsOf<WrittenTop>& top_fields();
const FieldsOf<WrittenPlace>& place_fields();
const FieldsOf<WrittenApiary>& apiary_fields();
const FieldsOf<HiveManagement>& management_fields();
const FieldsOf<TrapKind>& kind_fields();
const FieldsOf<WrittenKeeper>& keeper_fields();
const FieldsOf<WrittenWeather>& weather_fields();
const FieldsOf<MonthlyNormals>& normals_fields();
const FieldsOf<Belief>& belief_fields();

/// Keys at the top that hold more than a plain value, with their meaning.
struct Section {
    std::string_view key;
    Need need;
    std::string_view meaning;
};
const std::vector<Section>& sections();

/// Keys an overlay may have.
const std::vector<std::string>& overlay_keys();

/// Our column names of weather tables, units included, which `weather.columns` may map to a file's own.
const std::vector<std::string>& weather_column_names();

}  // namespace maybough::scenario
