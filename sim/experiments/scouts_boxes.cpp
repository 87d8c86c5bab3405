// Boxes offered to swarms: paired trials of cavity properties, arrays of boxes, the best of five.
#include <array>

#include "experiments/scouts_setup.hpp"

namespace maybough::experiments {

namespace {

using namespace scout_trials;

constexpr int swarms = 400;
/// Boxes of a trial that hang within sight of each other are found soon: ten times as often as one box by itself.
constexpr double within_sight = 10;
constexpr double box_distance_m = 200;

Cavity box(double volume_l, double lure = 0) {
    Cavity cavity;
    cavity.volume_l = volume_l;
    cavity.height_m = 3;
    cavity.lure = lure;
    return cavity;
}

/// Share of hunts that end in the first of the boxes, their places turning from swarm to swarm; and hunts that ended in
/// any.
struct Taken {
    double first = 0;
    double moved = 0;
    double share() const { return first / moved; }
    double error() const { return share_error(share(), moved); }
};
Taken offer_boxes(const std::vector<Cavity>& boxes, const ScoutParameters& p, double finding, double distance_m,
                  std::uint32_t seed, int hunts = swarms) {
    const auto sky = fine_sky(15);
    Taken taken;
    for (int n = 0; n < hunts; ++n) {
        const std::size_t turn = static_cast<std::size_t>(n) % boxes.size();
        std::vector<SiteOffer> sites;
        for (std::size_t place = 0; place < boxes.size(); ++place) {
            const SiteId id{trap_bit | static_cast<std::uint32_t>(place)};
            sites.push_back(offer_of(id, boxes[(place + turn) % boxes.size()], distance_m, p));
            sites.back().find_weight *= finding;
        }
        const HuntResult result = hunt(swarm_number(static_cast<unsigned>(n)), sites, sky, p, Chance{seed, 0});
        if (result.outcome != HuntOutcome::moved) continue;
        taken.moved += 1;
        taken.first += ((result.site.value & ~trap_bit) + turn) % boxes.size() == 0 ? 1 : 0;
    }
    return taken;
}

Taken side_by_side(const Cavity& first, const Cavity& second, const ScoutParameters& p, std::uint32_t seed) {
    return offer_boxes({first, second}, p, within_sight, box_distance_m, seed);
}

Finding judged(std::string what, std::string published, const Taken& taken, double low, double high, std::string why,
               std::string source) {
    return {std::move(what),
            "",
            std::move(published),
            taken.share(),
            taken.error(),
            low,
            high,
            std::move(why),
            std::move(source),
            Footing::calibrated,
            ""};
}

std::vector<Finding> volumes(const Parameters& parameters, std::uint32_t seed) {
    const ScoutParameters& p = parameters.scouts;
    ScoutParameters cold = p;
    cold.volume_coefficient = 3;  // swarms before long winters: the steep end of the belief
    const std::string hurley =
        "Schmidt and Hurley 1995, Selection of nest cavities by Africanized and European honey bees";
    const std::string ithaca = "Seeley 1977, Measurement of nest cavity volume by the honey bee";
    const Taken own_places = offer_boxes({box(31, 1), box(13.5, 1)}, p, 1, 300, seed, 2 * swarms);
    const Taken beside = side_by_side(box(31, 1), box(13.5, 1), p, seed);
    const Taken large = side_by_side(box(40), box(100), p, seed);
    const Taken smallest = offer_boxes({box(10), box(40), box(70), box(100)}, p, within_sight, box_distance_m, seed);
    const Taken cold_mid = side_by_side(box(17.5), box(25), cold, seed);
    const Taken cold_small = side_by_side(box(10), box(25), cold, seed);
    return {
        against_count("31 l taken before 13.5 l, each at a place of its own, sizes in turn, share", 68, 90,
                      own_places.share(), own_places.moved, hurley),
        judged("31 l taken before 13.5 l, side by side, share", "0.84", beside, 0.74, 0.94,
               "ten points either side: the number of swarms was not read", hurley),
        against_count("40 l taken before 100 l, share", 7, 7, large.share(), large.moved, ithaca),
        against_count("10 l taken among 10, 40, 70 and 100 l, share", 0, 11, smallest.share(), smallest.moved, ithaca),
        judged("17.5 l taken before 25 l where winters are long, share", "almost never", cold_mid, 0, 0.25,
               "less than one in four", ithaca),
        judged("10 l taken before 25 l where winters are long, share", "never", cold_small, 0, 0.1,
               "less than one in ten", ithaca)};
}

std::vector<Finding> lures(const Parameters& parameters, std::uint32_t seed) {
    const ScoutParameters& p = parameters.scouts;
    Cavity combed = box(31);
    combed.comb = 1;
    Cavity combed_and_lured = box(31, 1);
    combed_and_lured.comb = 1;
    const Taken bare = side_by_side(box(31, 1), box(31), p, seed);
    const Taken comb = side_by_side(box(31, 1), combed, p, seed);
    const Taken used = side_by_side(combed_and_lured, combed, p, seed);
    const Taken both = side_by_side(combed_and_lured, box(31, 1), p, seed);
    const std::string schmidt_2001 =
        "Schmidt 2001, Attractant or pheromone: the case of Nasonov secretion and honeybee swarms";
    const std::string free_1981 =
        "Free, Pickett, Ferguson and Smith 1981, Synthetic pheromones to attract honeybee (Apis mellifera) swarms";
    Finding caged = against_count("used hive lured taken before one without lure, caged swarms, share", 19, 20,
                                  used.share(), used.moved, free_1981);
    caged.footing = Footing::independent;
    Finding new_hives = against_count("new hive lured taken before one without lure, share", 20, 20, bare.share(),
                                      bare.moved, free_1981 + "; caged swarms");
    new_hives.footing = Footing::independent;
    return {against_count("lured box taken before a bare one, share", 19, 23, bare.share(), bare.moved,
                          "Schmidt 1994, Attraction of reproductive honey bee swarms to artificial nests by Nasonov "
                          "pheromone"),
            against_count("lured box taken before one with old comb and no lure, share", 13, 16, comb.share(),
                          comb.moved, schmidt_2001),
            new_hives,
            caged,
            against_count("used hive lured taken before one without lure, free swarms, share", 12, 12, used.share(),
                          used.moved, free_1981),
            judged("lured box with comb taken before a lured one without, share", "no synergy", both, 0.4, 0.6,
                   "even to within ten points", schmidt_2001)};
}

std::vector<Finding> places(const Parameters& parameters, std::uint32_t seed) {
    const ScoutParameters& p = parameters.scouts;
    Cavity good = box(40);
    good.height_m = 5;
    Cavity low = good;
    low.height_m = 1;
    Cavity wide = good;
    wide.entrance_area_cm2 = 75;
    Cavity north = good;
    north.facing_deg = 0;
    Cavity sunny = good;
    sunny.shade = 0;
    Cavity shaded = good;
    shaded.shade = 1;
    Cavity wet = good;
    wet.dryness = 0;
    const std::string morse = "Seeley and Morse 1978, Nest site selection by the honey bee, Apis mellifera";
    const std::string odds = "log-odds 0.3 to 2.0, believed of a preference whose counts were not read";
    const std::string weak = "log-odds 0 to 1.5, believed of a preference whose counts were not read";
    return {
        judged("5 m taken before 1 m, share", "preferred", side_by_side(good, low, p, seed), 0.57, 0.88, odds, morse),
        judged("entrance of 12.5 taken before 75 cm2, share", "preferred", side_by_side(good, wide, p, seed), 0.57,
               0.88, odds, morse),
        judged("south taken before north, share", "preferred", side_by_side(good, north, p, seed), 0.5, 0.82, weak,
               morse),
        judged("full shade taken before full sun, share", "preferred", side_by_side(shaded, sunny, p, seed), 0.5, 0.82,
               weak, "Seeley, Morse and Nowogrodzki 1989, Bait hives for honey bees"),
        judged("dry taken before wet, share", "no preference shown", side_by_side(good, wet, p, seed), 0.4, 0.6,
               "even to within ten points", morse)};
}

/// Boxes within sight of each other are judged alike: they share the swarm's taste.
std::vector<Finding> like_boxes(const Parameters& parameters, std::uint32_t seed) {
    const ScoutParameters& p = parameters.scouts;
    const auto sky = fine_sky(15);
    std::vector<double> longer_h;
    for (unsigned n = 0; n < 500; ++n) {
        std::array<double, 2> hours{};
        for (const unsigned boxes : {1U, 5U}) {
            // As many finds in all, so that only the number of equals differs.
            std::vector<SiteOffer> sites;
            for (unsigned i = 0; i < boxes; ++i) {
                sites.push_back(offer({trap_bit | i}, box_distance_m, 0, within_sight / boxes, p));
                sites.back().taste_key = trap_bit;
            }
            hours[boxes == 5] = hunt(swarm_number(n), sites, sky, p, Chance{seed, 0}).scouting_h;
        }
        longer_h.push_back(hours[1] - hours[0]);
    }
    const double se = error_of_mean(longer_h);
    return {{"hours by which five like boxes in sight of each other delay a swarm, against one found as often, mean",
             "h", "longer", mean(longer_h), se, 3 * se, 1e3, "longer by at least three standard errors",
             "Reina et al. 2018, Psychophysical laws and the superorganism: time to decide rises with the number of "
             "options",
             Footing::independent, ""}};
}

std::vector<Finding> best_of_five(const Parameters& parameters, std::uint32_t seed) {
    // Cold winters; boxes in plain sight 250 m off, none within sight of another.
    ScoutParameters p = parameters.scouts;
    p.volume_coefficient = 3;
    Cavity good = box(40);
    good.visibility = 1;
    Cavity fair = good;
    fair.volume_l = 15;
    const Taken best = offer_boxes({good, fair, fair, fair, fair}, p, 1, 250, seed, 500);
    return {judged("best of one good and four fair boxes taken, share", "4 of 5", best, 0.60, 0.95,
                   "a band within the 95 % binomial of 4 of 5 (0.28 to 0.99); at random 0.2",
                   "Seeley and Buhrman 2001, Nest-site selection in honey bees: how well do swarms implement the "
                   "best-of-N decision rule?")};
}

}  // namespace

std::vector<Experiment> box_trials() {
    return {{"volumes", "scouts", "boxes of different volume offered to 400 to 800 swarms", volumes},
            {"lures-and-comb", "scouts", "lured, bare and combed boxes offered to 400 swarms", lures},
            {"height-and-facing", "scouts", "boxes that differ in one property offered to 400 swarms", places},
            {"like-boxes", "scouts", "five boxes alike in sight of each other or one, 500 swarms", like_boxes},
            {"best-of-five", "scouts", "one box of 40 l and four of 15 l on an island, 500 swarms", best_of_five}};
}

}  // namespace maybough::experiments
