// Managed hives: swarming by the queen's age and by control, and what a strong hive lays and rears in a year.
#include "experiments/colony_hives.hpp"

#include "experiments/colony_themes.hpp"

namespace maybough::experiments {

HiveManagement supers_only() {
    HiveManagement m;
    m.managed = true;
    m.inspect_every_days = 14;
    m.cell_finding = 0;
    m.max_volume_l = 120;
    return m;
}

HiveManagement usual_control(CellControl control, double finding) {
    HiveManagement m = supers_only();
    m.inspect_every_days = 9;
    m.cell_finding = finding;
    m.control = control;
    return m;
}

Hives keep(const Place& place, const Parameters& parameters, const HiveManagement& management, double queen_age_days,
           std::uint32_t seed, std::uint32_t years, std::uint32_t hives) {
    Hives out;
    for (std::uint32_t year = 0; year < years; ++year) {
        const Chance chance{seed, year};
        const SkyYear sky = year_at(place, parameters.weather, chance);
        for (std::uint32_t number = 1; number <= hives; ++number) {
            Colony colony = overwintered_colony(hive(number), management, parameters.colony, chance);
            LifeOfColony life = live(colony, sky, chance, 0, may_1, parameters.colony, parameters.swarm);
            if (!colony.alive || !life.swarms.empty()) continue;
            colony.queen.age_days = queen_age_days;
            const LifeOfColony summer = live(colony, sky, chance, may_1, 365, parameters.colony, parameters.swarm);
            life.workers_emerged += summer.workers_emerged;
            life.most_eggs = std::max(life.most_eggs, summer.most_eggs);
            out.swarmed.add(!summer.swarms.empty());
            out.most_eggs.add(static_cast<double>(life.most_eggs));
            out.workers.add(static_cast<double>(life.workers_emerged));
        }
    }
    return out;
}

namespace {

constexpr std::uint32_t years = 10;
constexpr std::uint32_t hives_a_year = 30;
constexpr const char* shares_source =
    "Forster 1969; Simpson; extension texts: common practice, given from memory, sources differ by 0.1";

std::vector<Finding> run_hives(const Parameters& parameters, std::uint32_t seed) {
    const auto hives = [&](const HiveManagement& management, double queen_age_days) {
        return keep(ithaca(), parameters, management, queen_age_days, seed, years, hives_a_year);
    };
    const Share young = hives(supers_only(), 20).swarmed;
    const Share one = hives(supers_only(), 330).swarmed;
    const Share two = hives(supers_only(), 695).swarmed;
    const Share controlled = hives(usual_control(CellControl::split, 0.7), 330).swarmed;
    const Hives strong = hives(usual_control(CellControl::cut_cells, 0.9), 330);
    const std::string wide = "as published, +-0.1";
    const char* rates = "Nolan 1925, The brood-rearing cycle of the honeybee; Winston 1987; from memory";
    return {
        {"hives that swarm without control, queen of this year, share", "", "0.02 to 0.10", young.value(), young.se(),
         0, 0.20, wide, shares_source, Footing::calibrated, ""},
        {"hives that swarm without control, queen of last year, share", "", "0.20 to 0.40", one.value(), one.se(), 0.10,
         0.50, wide, shares_source, Footing::calibrated, ""},
        {"hives that swarm without control, queen two years old, share", "", "0.40 to 0.60", two.value(), two.se(),
         0.30, 0.70, wide, shares_source, Footing::calibrated, ""},
        {"hives that swarm with a visit every nine days, share", "", "0.05 to 0.30", controlled.value(),
         controlled.se(), 0.05, 0.30, "as published", "common practice, no published source", Footing::independent, ""},
        {"most eggs laid in a day by a strong hive", "1/d", "1200 to 2000", strong.most_eggs.mean(),
         strong.most_eggs.se(), 1200, 2000, "as published", rates, Footing::calibrated, ""},
        {"workers a strong hive rears in a year", "", "100 000 to 220 000", strong.workers.mean(), strong.workers.se(),
         100000, 220000, "as published", "Seeley 1985, Honeybee ecology; Winston 1987; from memory",
         Footing::independent, ""},
    };
}

}  // namespace

std::vector<Experiment> hive_experiments() {
    return {{"managed-hives", "colony",
             "hives at Ithaca given supers only, by the queen's age, and with control of cells", run_hives}};
}

}  // namespace maybough::experiments
