// Managed hives: swarming by queen's age and by control, and what a strong hive lays and rears in a year.
// Shares: Forster 1969, Simpson and extension practice, from memory; laying: Nolan 1925, Winston 1987, from memory.
#include <doctest/doctest.h>

#include "colony/years.hpp"

using namespace maybough;
using namespace maybough_test;

namespace {

struct Hives {
    double swarmed = 0;
    double most_eggs = 0;
    double workers = 0;
    std::int64_t greatest_laying = 0;
};

Hives keep(const HiveManagement& management, double queen_age_days) {
    Hives out;
    int n = 0;
    for (std::uint32_t year = 0; year < 6; ++year) {
        const Chance chance{51, year};
        const SkyYear sky = ithaca_sky(chance);
        for (std::uint32_t number = 1; number <= 40; ++number) {
            Colony colony = overwintered_colony(hive(number), management, {}, chance);
            colony.queen.age_days = queen_age_days;
            const YearOfColony year_of = live(colony, sky, chance);
            out.swarmed += year_of.swarms.empty() ? 0 : 1;
            out.most_eggs += static_cast<double>(year_of.most_eggs);
            out.workers += static_cast<double>(year_of.workers_emerged);
            out.greatest_laying = std::max(out.greatest_laying, year_of.most_eggs);
            ++n;
        }
    }
    out.swarmed /= n;
    out.most_eggs /= n;
    out.workers /= n;
    return out;
}

HiveManagement supers_only() {
    HiveManagement m;
    m.managed = true;
    m.inspect_every_days = 14;
    m.cell_finding = 0;
    m.max_volume_l = 120;
    return m;
}

}  // namespace

TEST_CASE("with usual control few hives swarm, 0.05 to 0.30 (common practice, no published source)") {
    HiveManagement m = supers_only();
    m.inspect_every_days = 9;
    m.cell_finding = 0.7;
    const Hives hives = keep(m, 200);
    CHECK(hives.swarmed >= 0.02);
    CHECK(hives.swarmed <= 0.30);
}

TEST_CASE("without control older queens' hives swarm more") {
    const double same_year = keep(supers_only(), 20).swarmed;
    const double one = keep(supers_only(), 200).swarmed;
    const double two = keep(supers_only(), 565).swarmed;
    CHECK(same_year < one);
    CHECK(one < two);
    CHECK(one >= 0.10);
    CHECK(one <= 0.50);
}

TEST_CASE("a strong hive lays 1200 to 2000 eggs a day at its peak and rears 100 000 to 220 000 workers (check 24)") {
    HiveManagement m = supers_only();
    m.inspect_every_days = 9;
    m.cell_finding = 0.9;
    m.control = CellControl::cut_cells;
    const Hives hives = keep(m, 200);
    CHECK(hives.most_eggs >= 1200);
    CHECK(hives.most_eggs <= 2000);
    CHECK(hives.workers >= 100000);
    CHECK(hives.workers <= 220000);
}
