// Development from the egg, and the timetable of swarming in made weather: cells, prime swarm, virgin, afterswarms.
#include "experiments/colony_themes.hpp"
#include "experiments/lives.hpp"

namespace maybough::experiments {

namespace {

/// Days from the egg at which one cohort was first seen capped and emerged.
struct Growth {
    int worker_capped = -1;
    int worker_emerged = -1;
    int drone_capped = -1;
    int drone_emerged = -1;
    int queen_capped = -1;
    int queen_emerged = -1;
};

void note(int& first, bool seen, int day) {
    if (seen && first < 0) first = day;
}

Growth grow(const ColonyParameters& p, const Chance& chance) {
    Colony colony = overwintered_colony(wild_nest(1), {}, p, chance);
    colony.queen.state = QueenState::none;
    colony.workers.ages[0] = colony.workers.eggs = 1000;
    colony.drone_brood.ages[0] = colony.drone_brood.eggs = 1000;
    colony.queen_cells[0] = 10;
    colony.episode = SwarmEpisode::cast;
    Growth growth;
    for (int day = 1; day <= 25; ++day) {
        const DayOfColony today = live_one_day(colony, fair_day(), {day}, p, chance);
        note(growth.worker_capped, colony.workers.sealed > 0, day);
        note(growth.worker_emerged, today.workers_emerged > 0, day);
        note(growth.drone_capped, colony.drone_brood.sealed > 0, day);
        note(growth.drone_emerged, today.drones_emerged > 0, day);
        note(growth.queen_capped, today.cells_capped > 0, day);
        note(growth.queen_emerged, today.queens_emerged > 0, day);
    }
    return growth;
}

std::vector<Finding> run_development(const Parameters& parameters, std::uint32_t seed) {
    const Growth growth = grow(parameters.colony, {seed, 0});
    const auto finding = [](const char* what, const char* published, int day, double expected) {
        return Finding{what,
                       "d",
                       published,
                       static_cast<double>(day),
                       0,
                       expected,
                       expected,
                       "exact to the day",
                       "Winston 1987, The Biology of the Honey Bee; from memory",
                       Footing::calibrated,
                       ""};
    };
    return {finding("worker cell capped, days from the egg", "9", growth.worker_capped, 9),
            finding("worker emerges, days from the egg", "21", growth.worker_emerged, 21),
            finding("queen cell capped, days from the egg", "8", growth.queen_capped, 8),
            finding("queen emerges, days from the egg", "16", growth.queen_emerged, 16),
            finding("drone cell capped, days from the egg", "10", growth.drone_capped, 10),
            finding("drone emerges, days from the egg", "24", growth.drone_emerged, 24)};
}

/// What a colony about to swarm does in 45 days of which some are foul. Days count from the first egg in a cup.
struct Story {
    std::int64_t cells = 0;
    int prime = -1;
    int virgin = -1;
    std::vector<int> after;
    double share = 0;
};

Story tell(const Parameters& parameters, const Chance& chance, int foul_from, int foul_days) {
    ColonyParameters p = parameters.colony;
    p.give_up_per_day = p.give_up_bad_per_day = p.give_up_dearth_per_day = 0;  // the timetable alone is looked at
    Colony colony = crowded_colony(1, p, chance);
    Story story;
    for (Day day{0}; day.value < 45; day = day + 1) {
        const bool foul = day.value >= foul_from && day.value < foul_from + foul_days;
        const DayOfSky sky = foul ? foul_day() : fair_day();
        const DayOfColony today = live_one_day(colony, sky, day, p, chance);
        if (story.prime < 0) story.cells += today.cells_begun;
        const std::int64_t before = adults(colony);
        const auto swarm = issue_swarm(colony, sky, day, parameters.swarm, chance);
        if (swarm && swarm->prime && story.prime < 0) {
            story.prime = day.value;
            story.share = static_cast<double>(swarm->bees) / static_cast<double>(before);
        }
        if (swarm && !swarm->prime) story.after.push_back(day.value);
        if (story.prime >= 0 && story.virgin < 0 && colony.queen.state == QueenState::virgin) story.virgin = day.value;
    }
    return story;
}

double median(std::vector<int> days) {
    if (days.empty()) return std::nan("");
    std::sort(days.begin(), days.end());
    return days[days.size() / 2];
}

struct Stories {
    Sample cells;
    Sample prime;
    Sample delay_per_foul_day;
    Share by_day_10;
    Sample share;
    Share share_in_range;
    std::vector<int> virgin;
    std::vector<int> first_after;
    Sample gap;
};

Stories tell_many(const Parameters& parameters, std::uint32_t seed) {
    constexpr std::uint32_t colonies = 300;
    constexpr int foul_days = 3;
    Stories all;
    for (std::uint32_t number = 0; number < colonies; ++number) {
        const Story fair = tell(parameters, {seed, number}, 0, 0);
        const Story held = tell(parameters, {seed, number}, static_cast<int>(queen_capped_day), foul_days);
        all.cells.add(static_cast<double>(fair.cells));
        if (fair.prime < 0) continue;
        all.prime.add(fair.prime);
        all.by_day_10.add(fair.prime <= 10);
        if (held.prime >= 0) all.delay_per_foul_day.add(static_cast<double>(held.prime - fair.prime) / foul_days);
        all.share.add(fair.share);
        all.share_in_range.add(fair.share >= 0.55 && fair.share <= 0.95);
        if (fair.virgin >= 0) all.virgin.push_back(fair.virgin - fair.prime);
        if (!fair.after.empty()) all.first_after.push_back(fair.after[0] - fair.prime);
        for (std::size_t i = 1; i < fair.after.size(); ++i) all.gap.add(fair.after[i] - fair.after[i - 1]);
    }
    return all;
}

std::vector<Finding> run_timetable(const Parameters& parameters, std::uint32_t seed) {
    const Stories all = tell_many(parameters, seed);
    const char* winston = "Winston 1987, The Biology of the Honey Bee; from memory";
    const char* rangel = "Rangel and Seeley 2012, Colony fissioning in honey bees";
    return {
        {"prime swarm, days from the first egg in a queen cup, fine weather", "d", "8 to 10", all.prime.mean(),
         all.prime.se(), 8, 10, "as published", winston, Footing::calibrated, ""},
        {"prime swarms gone by day 10 of fine weather, share", "", "nearly all", all.by_day_10.value(),
         all.by_day_10.se(), 0.90, 1, "within 0 to 2 days after the first capping", winston, Footing::calibrated, ""},
        {"delay of the prime swarm for each day without flight", "d", "1", all.delay_per_foul_day.mean(),
         all.delay_per_foul_day.se(), 0.67, 1.33, "three foul days, +-1 d", winston, Footing::independent, ""},
        {"queen cells of a swarming colony", "", "10 to 25, mean about 15", all.cells.mean(), all.cells.se(), 10, 25,
         "as published", "Winston 1980, Swarming, afterswarming, and reproductive rate; from memory",
         Footing::calibrated, ""},
        {"workers that leave with the prime swarm, share", "", "0.75", all.share.mean(), all.share.se(), 0.72, 0.78,
         "mean +-0.03", rangel, Footing::calibrated, ""},
        {"prime swarms that take 0.55 to 0.95 of the workers, share", "", "all", all.share_in_range.value(),
         all.share_in_range.se(), 0.99, 1, "range of the handbooks and the paper", rangel, Footing::calibrated, ""},
        {"first virgin emerges, days after the prime swarm, median", "d", "7 to 8", median(all.virgin), 0, 5, 10,
         "+-2 d", winston, Footing::independent, ""},
        {"first afterswarm, days after the prime swarm, median", "d", "8 to 10", median(all.first_after), 0, 6, 12,
         "+-2 d", winston, Footing::independent, ""},
        {"days from one afterswarm to the next", "d", "1 to 4", all.gap.mean(), all.gap.se(), 1, 4, "as published",
         "Gilley and Tarpy 2005, Three mechanisms of queen elimination in swarming honey bee colonies; from memory",
         Footing::calibrated, ""},
    };
}

}  // namespace

std::vector<Experiment> development_experiments() {
    return {{"development", "colony", "one cohort of each caste followed from the egg", run_development}};
}

std::vector<Experiment> timetable_experiments() {
    return {{"swarm-timetable", "colony", "crowded colonies in fine weather, and in three foul days", run_timetable}};
}

}  // namespace maybough::experiments
