// Colony: one colony lives one day. Brood, adults, stores, comb, queen, keeper's management, swarm preparation.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

#include "base/base.hpp"
#include "chance/chance.hpp"
#include "landscape/landscape.hpp"
#include "parameters/colony.hpp"
#include "weather/weather.hpp"

namespace maybough::colony {

// Days from the egg at 34-35 C. Source: Winston 1987, The Biology of the Honey Bee; Jay 1963 (from memory).
inline constexpr std::size_t egg_days = 3;
inline constexpr std::size_t worker_days = 21;  ///< egg to emergence
inline constexpr std::size_t worker_capped_day = 9;
inline constexpr std::size_t drone_days = 24;
inline constexpr std::size_t drone_capped_day = 10;
inline constexpr std::size_t queen_days = 16;
inline constexpr std::size_t queen_capped_day = 8;
inline constexpr std::size_t nest_ages = 20;   ///< nest bees are counted by age up to this day, then together
inline constexpr std::size_t young_ages = 12;  ///< a young bee is under this age, days

/// Counts by day of age, turned by a day in constant time.
template <std::size_t n>
struct Ages {
    std::array<std::int64_t, n> slots{};
    std::uint32_t first = 0;  ///< slot of age 0

    std::int64_t& operator[](std::size_t age) { return slots[wrapped(first + age)]; }
    std::int64_t operator[](std::size_t age) const { return slots[wrapped(first + age)]; }
    /// Everyone is a day older: those of the last age come out, age 0 is empty.
    std::int64_t turn() {
        first = first == 0 ? static_cast<std::uint32_t>(n - 1) : first - 1;
        const std::int64_t out = slots[first];
        slots[first] = 0;
        return out;
    }
    std::int64_t sum() const {
        std::int64_t total = 0;
        for (const std::int64_t count : slots) total += count;
        return total;
    }

  private:
    static std::size_t wrapped(std::size_t i) { return i < n ? i : i - n; }
};

/// What a keeper does on finding queen cells.
enum class CellControl { leave, cut_cells, split };

/// How a keeper runs the colony; nobody does for a wild one.
struct HiveManagement {
    bool managed = false;
    int inspect_every_days = 0;  ///< 0 = never opened
    double cell_finding = 0.8;   ///< chance that one inspection finds the queen cells there are
    double max_volume_l = 40;    ///< with supers on
    CellControl control = CellControl::split;
    bool clipped_queen = false;  ///< she cannot fly: the swarm turns back without her
};

/// Brood of one caste: counts by age with running sums. Sealed from `capped`, emerging after `days`.
template <std::size_t days, std::size_t capped>
struct Brood {
    Ages<days> ages;
    std::int64_t eggs = 0;
    std::int64_t larvae = 0;
    std::int64_t sealed = 0;
    std::int64_t all() const { return eggs + larvae + sealed; }
};

enum class QueenState { laying, virgin, mated, none };  ///< mated: not laying yet

struct Queen {
    QueenState state = QueenState::laying;
    double age_days = 300;
    double vigour = 1;  ///< this queen's laying, 1 = ordinary
    int days_in_state = 0;
};

/// Where a colony stands between two swarms.
enum class SwarmEpisode {
    none,
    preparing,   ///< cells begun under the old queen
    cast,        ///< the prime swarm is gone, young queens are coming
    superseding  ///< a few cells are raised to replace a failing queen; nobody leaves
};

/// The daily hazard of beginning queen cells, taken apart. Each part is between 0 and 1, save the last two.
struct Preparation {
    double crowding = 0;    ///< nest full of brood and stores, and crowded with bees
    double young_bees = 0;  ///< surplus of young bees
    double thin_scent = 0;  ///< too many bees for one queen's scent
    double forage = 0;      ///< nectar on offer
    double day_length = 0;
    double queen_age = 1;  ///< 1 for a one-year queen
    double readiness = 1;  ///< this colony's own
    double per_day = 0;    ///< hazard, the product of all and the parameter
};

/// A colony: plain data, owned by this room. Bees and cells are whole numbers; stores are grams.
struct Colony {
    ColonyId id;
    Point at;
    ColonyOrigin origin = ColonyOrigin::wild;
    HiveManagement management;
    ForageMix forage{};
    double volume_l = 40;

    Brood<worker_days, worker_capped_day> workers;
    Brood<drone_days, drone_capped_day> drone_brood;
    Ages<nest_ages> nest;          ///< nest bees by age
    std::int64_t older_nest = 0;   ///< nest bees beyond nest_ages
    std::int64_t winter_bees = 0;  ///< long-lived nest bees of autumn
    std::int64_t foragers = 0;
    std::int64_t drones = 0;
    double honey_g = 0;
    double pollen_g = 0;
    std::int64_t comb_cells = 0;        ///< of both sizes
    std::int64_t drone_comb_cells = 0;  ///< of them, large enough for drones

    Queen queen;
    Ages<queen_days> queen_cells;   ///< by age from the egg
    std::int64_t ripe_queens = 0;   ///< ready to emerge and held in their cells while a virgin is loose
    std::int64_t cells_wanted = 0;  ///< cells still to be begun in this preparation

    double readiness = 1;      ///< this colony's readiness to swarm, 1 = ordinary
    double forage_luck = 1;    ///< what this colony brings home, 1 = ordinary
    double summed_hazard = 0;  ///< of beginning cells, since the last time
    double hazard_limit = 1;   ///< cells are begun when the sum passes this exponential draw
    double warmth_c = 0;       ///< smoothed daily maximum
    double daylight_h = 12;    ///< yesterday's
    Preparation preparation;   ///< today's, to be read off

    bool alive = true;
    bool casting = false;        ///< an afterswarm has been decided on
    bool knows_weather = false;  ///< warmth_c and daylight_h hold yesterday's values
    SwarmEpisode episode = SwarmEpisode::none;
    int episode_days = 0;       ///< days since cells were begun, or since the last swarm left
    int swarms_cast = 0;        ///< within this year
    int no_cells_for_days = 0;  ///< after an episode no cells are begun for a while
    int days_to_inspection = 0;
};

/// Workers: nest bees, winter bees and foragers. Drones are apart.
std::int64_t adults(const Colony& colony);
std::int64_t nest_bees(const Colony& colony);
std::int64_t young_bees(const Colony& colony);
std::int64_t sealed_brood(const Colony& colony);
std::int64_t all_brood(const Colony& colony);
/// Queen cells of every age, ripe ones included.
std::int64_t queens_in_cells(const Colony& colony);
/// Cells a full cavity holds.
double cells_of_cavity(const Colony& colony, const ColonyParameters& parameters);
/// Cells taken by brood and stores.
double cells_in_use(const Colony& colony, const ColonyParameters& parameters);

/// The colony as it stands on the first day of the simulated year, after (or in) winter.
Colony overwintered_colony(const DrawnColony& drawn, const HiveManagement& management,
                           const ColonyParameters& parameters, const Chance& chance);

/// A swarm that has moved in somewhere.
struct Settlers {
    std::int64_t bees = 0;
    bool mated_queen = true;  ///< prime swarm with the old queen; false: a virgin
    double honey_g = 0;       ///< carried in crops
    double queen_age_days = 365;
};
Colony founded_colony(ColonyId id, Point at, const Settlers& settlers, double volume_l, const ForageMix& forage,
                      Day day, const ColonyParameters& parameters, const Chance& chance);

/// A colony carried over into a new simulated year: the year's counts begin anew.
void begin_year(Colony& colony);

/// Gains and losses of one day, for the ledger. live_one_day throws ModelFault if they do not add up.
struct DayOfColony {
    std::int64_t eggs_laid = 0;
    std::int64_t workers_emerged = 0;
    std::int64_t adults_died = 0;
    std::int64_t drone_eggs_laid = 0;
    std::int64_t drones_emerged = 0;
    std::int64_t drones_died = 0;
    std::int64_t brood_died = 0;      ///< of both castes
    std::int64_t adults_taken = 0;    ///< by the keeper
    std::int64_t brood_taken = 0;     ///< by the keeper
    std::int64_t foraging_began = 0;  ///< nest bees that took up foraging; negative: foragers went back
    std::int64_t foragers_died = 0;
    std::int64_t cells_begun = 0;      ///< queen cells
    std::int64_t cells_capped = 0;     ///< queen cells
    std::int64_t cells_torn_down = 0;  ///< queen cells, by bees or keeper
    std::int64_t queens_emerged = 0;
    double honey_in_g = 0;
    double honey_eaten_g = 0;
    double honey_to_wax_g = 0;
    double honey_fed_g = 0;    ///< by the keeper
    double honey_taken_g = 0;  ///< by the keeper, and what is left behind by a dead colony
    double pollen_in_g = 0;
    double pollen_eaten_g = 0;
    double pollen_left_g = 0;           ///< left behind by a dead colony
    std::int64_t comb_built = 0;        ///< cells of both sizes
    std::int64_t drone_comb_built = 0;  ///< of them, large enough for drones
    std::int64_t comb_given = 0;        ///< by the keeper
};

/// One day: weather, forage, laying, ageing, deaths, stores, comb, crowding, queen cells, the keeper's visit.
DayOfColony live_one_day(Colony& colony, const DayOfSky& sky, Day day, const ColonyParameters& parameters,
                         const Chance& chance);

/// What leaves with a swarm.
struct Departing {
    std::int64_t bees = 0;
    double honey_g = 0;
    Queen queen;
};
/// Takes `share` of the workers of every age and the queen out of the colony, with `honey_g_per_bee` where there is
/// that much. `u` in (0, 1) settles the rounding. Afterwards young queens are awaited (the episode is `cast`).
Departing let_swarm_go(Colony& colony, double share, double honey_g_per_bee, double u);
/// The prime swarm of a clipped queen turns back: she is lost, the bees stay and wait for young queens.
void lose_clipped_queen(Colony& colony);
/// True where a swarm can leave today: a capped queen cell under the old queen, or a loose virgin with ripe rivals.
bool prime_is_due(const Colony& colony);
bool afterswarm_is_due(const Colony& colony);
/// The loose virgin's rivals are killed; no further swarm leaves.
void end_episode(Colony& colony);

// Single processes with published limits of their own.

/// Rate (1/d) at which nest bees take up foraging; negative when foragers go back to the nest.
/// Khoury, Barron and Myerscough 2013, PLoS ONE 8:e59084: a_min + a_max b^2 / (b^2 + f^2) - s F / (F + H).
double foraging_onset(double nest, double foragers, double honey_g, const ColonyParameters& parameters);
/// Share of a laying that `bees` can rear: bees / (bees + half). Khoury, Myerscough and Barron 2011, PLoS ONE 6:e18491.
double share_reared(double bees, double half);
/// Share of a laying that stores allow: f^2 / (f^2 + b^2). Khoury, Barron and Myerscough 2013.
double share_fed(double food_g, double half_g);
/// Day length and how it changes from day to day.
struct DayLength {
    double hours = 12;
    double change_h = 0;
    bool falls() const { return change_h < 0; }
};
/// The hazard of beginning queen cells and its parts, for the colony as it stands.
Preparation preparation_of(const Colony& colony, double nectar_on_offer, DayLength days,
                           const ColonyParameters& parameters);

}  // namespace maybough::colony

namespace maybough {
using namespace colony;  // so that rooms to the right need no prefix
}
