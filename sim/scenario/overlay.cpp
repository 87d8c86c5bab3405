// Reads the sections `parameters` and `beliefs`.
#include "scenario/overlay.hpp"

#include "base/base.hpp"
#include "scenario/records.hpp"
#include "scenario/text_file.hpp"

namespace maybough::scenario {

namespace {

const ParameterEntry& entry_at(const std::string& key, const JsonAt& at) {
    const ParameterEntry* entry = find_parameter(key);
    if (entry != nullptr) return *entry;
    std::vector<std::string> known;
    for (const ParameterEntry& other : parameter_table()) known.emplace_back(other.row.key);
    throw InputError(one_line(at.place()), "no parameter has this name",
                     did_you_mean(key, known, "see the parameter table"));
}

void check_within(double value, const ParameterRow& row, const JsonAt& at) {
    if (value >= row.min && value <= row.max) return;
    throw InputError(at.place(),
                     "found " + shortest(value) + " " + std::string(row.unit) + ", expected " + shortest(row.min) +
                         " to " + shortest(row.max),
                     std::string(row.meaning));
}

void put_parameter(const JsonAt& at, const std::string& key, Scenario& scenario) {
    const ParameterEntry& entry = entry_at(key, at);
    const double value = expect_number(at);
    check_within(value, entry.row, at);
    entry.of(scenario.parameters) = value;
    scenario.given[key] = at.file;
    scenario.beliefs.erase(key);
    if (entry.row.spread != Spread::fixed) scenario.beliefs[key] = {value, value, value};
}

void put_belief(const JsonAt& at, const std::string& key, Scenario& scenario) {
    const ParameterEntry& entry = entry_at(key, at);
    if (entry.row.spread == Spread::fixed) {
        throw InputError(at.place(), "this parameter is taken as known and never drawn", "set its value in parameters");
    }
    Belief belief;
    Given ignored;
    read_fields(at, belief_fields(), belief, ignored);
    for (const double value : {belief.median, belief.low, belief.high}) check_within(value, entry.row, at);
    if (!(belief.low <= belief.median && belief.median <= belief.high)) {
        throw InputError(at.place(), "found low " + shortest(belief.low) + ", median " + shortest(belief.median) +
                                         ", high " + shortest(belief.high) + ", expected them to rise");
    }
    if (entry.row.spread == Spread::ratio && !(belief.low > 0)) {
        throw InputError(at.place() + "/low", "found 0, expected more than 0", "this unknown is drawn by ratio");
    }
    entry.of(scenario.parameters) = belief.median;
    scenario.beliefs[key] = belief;
    scenario.given[key] = at.file;
}

}  // namespace

void put_parameters_over(const JsonAt& file, Scenario& scenario) {
    if (file.has("parameters")) {
        const JsonAt parameters = file.at("parameters");
        for (const auto& [key, value] : expect_object(parameters).items())
            put_parameter(parameters.at(key), key, scenario);
    }
    if (file.has("beliefs")) {
        const JsonAt beliefs = file.at("beliefs");
        for (const auto& [key, value] : expect_object(beliefs).items()) {
            const JsonAt at = beliefs.at(key);
            if (file.has("parameters") && file.value.at("parameters").contains(key)) {
                throw InputError(at.place(), "the same key stands in parameters",
                                 "a value is either known or unknown; keep one");
            }
            put_belief(at, key, scenario);
        }
    }
    check_across(scenario.parameters, file.file);
}

}  // namespace maybough::scenario
