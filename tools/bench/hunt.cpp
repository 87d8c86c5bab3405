// Times one house-hunt against the toy best-of-N hunt: both event-driven on the same wheel with keyed Philox draws.
// Prints medians, costs per event and per flying minute, and the ratio; nothing is asserted.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <numbers>
#include <string_view>
#include <vector>

#include "scouts/laws.hpp"
#include "scouts/scouts.hpp"
#include "scouts/wheel.hpp"

namespace {

using namespace maybough;

double cpu_us() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e6 * static_cast<double>(now.tv_sec) + 1e-3 * static_cast<double>(now.tv_nsec);
}

/// The toy: scouts wait, visit, dance and rest with exponential times of 20, 20, 6 and 30 minutes; half of the waiting
/// ones follow a dance when half as many dance as there are scouts.
struct Toy {
    enum class Doing : std::uint8_t { waiting, visiting, dancing, resting };
    struct Bee {
        std::uint32_t event = 0;
        std::uint16_t site = 0;
        std::uint16_t place = 0;
        Doing doing = Doing::waiting;
    };
    std::uint32_t scouts = 300;
    std::uint32_t sites = 10;
    std::vector<Bee> bees = std::vector<Bee>(max_scouts);
    std::vector<std::uint16_t> floor = std::vector<std::uint16_t>(max_scouts);
    std::vector<std::uint32_t> visitors;
    std::uint32_t dancers = 0;
    std::int64_t events = 0;
    int winner = -1;
    Wheel wheel;

    double quality(std::uint32_t site) const { return 0.95 - 0.45 * site / (sites - 1.0); }

    void set(std::uint32_t bee, Doing doing, double minutes, std::uint32_t word, std::uint32_t now) {
        bees[bee].doing = doing;
        wheel.set(bee, now + exponential_ticks(law_tables(), static_cast<float>(minutes * ticks_per_minute), word));
    }
    void leave_floor(std::uint32_t bee) {
        const std::uint16_t last = floor[--dancers];
        floor[bees[bee].place] = last;
        bees[last].place = bees[bee].place;
    }
    void visit(std::uint32_t bee, std::uint32_t site, std::uint32_t word, std::uint32_t now) {
        bees[bee].site = static_cast<std::uint16_t>(site);
        if (++visitors[site] >= 30) winner = static_cast<int>(site);
        set(bee, Doing::visiting, 20, word, now);
    }
    void step(std::uint32_t bee, std::uint32_t now, std::uint32_t swarm) {
        Bee& b = bees[bee];
        ++events;
        const Block w = philox_block({b.event++, swarm, bee, 1U}, {1, 0});
        const double u = (w[0] + 0.5) * 0x1.0p-32;
        const double v = (w[1] + 0.5) * 0x1.0p-32;
        switch (b.doing) {
            case Doing::waiting:
                if (u * (dancers + 0.5 * scouts) < dancers) {
                    visit(bee, bees[floor[static_cast<std::size_t>(v * dancers)]].site, w[2], now);
                } else if (v < 0.003) {
                    visit(bee, static_cast<std::uint32_t>(v / 0.003 * sites), w[2], now);
                } else {
                    set(bee, Doing::waiting, 20, w[2], now);
                }
                return;
            case Doing::visiting:
                --visitors[b.site];
                if (u < quality(b.site)) {
                    b.place = static_cast<std::uint16_t>(dancers);
                    floor[dancers++] = static_cast<std::uint16_t>(bee);
                    set(bee, Doing::dancing, 6, w[2], now);
                } else {
                    set(bee, Doing::resting, 30, w[2], now);
                }
                return;
            case Doing::dancing:
                leave_floor(bee);
                stop_a_rival(bee, w, now);
                if (u < 0.85 * quality(b.site)) {
                    visit(bee, b.site, w[2], now);
                } else {
                    set(bee, Doing::resting, 30, w[2], now);
                }
                return;
            case Doing::resting:
                set(bee, Doing::waiting, 20, w[2], now);
                return;
        }
    }
    void stop_a_rival(std::uint32_t bee, const Block& w, std::uint32_t now) {
        if (dancers == 0 || (w[1] & 3U) != 0) return;
        const std::uint32_t rival = floor[static_cast<std::size_t>((w[3] + 0.5) * 0x1.0p-32 * dancers)];
        if (bees[rival].site == bees[bee].site) return;
        leave_floor(rival);
        wheel.unset(rival);
        set(rival, Doing::resting, 30, w[3], now);
    }
    /// Flying minutes until 30 bees visit one site, 1440 at most.
    double decide(std::uint32_t swarm) {
        visitors.assign(sites, 0);
        dancers = 0;
        winner = -1;
        wheel.clear(scouts);
        for (std::uint32_t bee = 0; bee < scouts; ++bee) {
            bees[bee] = {};
            const Block w = philox_block({bees[bee].event++, swarm, bee, 1U}, {1, 0});
            set(bee, Doing::waiting, 20, w[2], 0);
        }
        std::uint32_t now = 0;
        while (winner < 0 && now < 1440 * ticks_per_minute) {
            ++now;
            wheel.turn(now, [&](std::uint32_t bee) { step(bee, now, swarm); });
        }
        return static_cast<double>(now) / ticks_per_minute;
    }
};

std::vector<DayOfSky> fine_sky() {
    std::vector<DayOfSky> sky(15);
    for (DayOfSky& day : sky) std::fill(day.scouting.begin() + 8, day.scouting.begin() + 18, 1.0F);
    return sky;
}

/// `count` ordinary cavities spread evenly over the disc in reach.
std::vector<SiteOffer> ordinary_sites(std::uint32_t swarm, std::uint32_t count, const ScoutParameters& p) {
    Stream stream = Chance{3, 0}.stream(Purpose::landscape_cavities, swarm);
    std::vector<SiteOffer> sites;
    for (std::uint32_t i = 0; i < count; ++i) {
        Cavity cavity;
        cavity.volume_l = lognormal(stream, 35, 0.6);
        cavity.height_m = 0.5 + 9 * stream.uniform();
        const double distance_m = search_reach_m(p) * std::sqrt(stream.uniform());
        sites.push_back({SiteId{i}, distance_m, find_weight(cavity, distance_m, p), site_log_odds(cavity, p)});
    }
    return sites;
}

double median(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<long>(values.size() / 2), values.end());
    return values[values.size() / 2];
}

void compare(std::uint32_t scouts, std::uint32_t sites) {
    constexpr std::uint32_t hunts = 300;
    const ScoutParameters p;
    const auto sky = fine_sky();
    Toy toy;
    toy.scouts = scouts;
    toy.sites = sites;
    std::vector<double> toy_us, ours_us;
    double toy_min = 0, ours_min = 0;
    for (std::uint32_t n = 0; n < hunts; ++n) {  // turn by turn, so that both meet the same machine
        double before = cpu_us();
        toy_min += toy.decide(n);
        toy_us.push_back(cpu_us() - before);
        Swarm swarm;
        swarm.id = swarm_of(ColonyId{n + 1}, 0);
        swarm.day = {130};
        swarm.bees = std::lround(scouts / p.scout_share);
        swarm.honey_g = 0.04 * static_cast<double>(swarm.bees);
        const auto offers = ordinary_sites(n, sites, p);
        before = cpu_us();
        ours_min += 60 * hunt(swarm, offers, sky, p, Chance{1, 0}).scouting_h;
        ours_us.push_back(cpu_us() - before);
    }
    const double toy_median = median(toy_us);
    const double ours_median = median(ours_us);
    std::printf(
        "%3u scouts, %2u sites: toy %6.0f us (%4.0f min, %5.1f ns/event)   hunt %6.0f us (%4.0f min)   ratio "
        "%4.2f, per flying minute %4.2f\n",
        scouts, sites, toy_median, toy_min / hunts, 1e3 * toy_median * hunts / static_cast<double>(toy.events),
        ours_median, ours_min / hunts, ours_median / toy_median, (ours_median / ours_min) / (toy_median / toy_min));
}

/// The toy's own law, for the same toy written in another simulator.
void describe_toy() {
    constexpr std::uint32_t decisions = 400;
    Toy toy;
    std::vector<double> us;
    double minutes = 0;
    double best = 0;
    double undecided = 0;
    for (std::uint32_t n = 0; n < decisions; ++n) {
        const double before = cpu_us();
        minutes += toy.decide(n);
        us.push_back(cpu_us() - before);
        best += toy.winner == 0 ? 1 : 0;
        undecided += toy.winner < 0 ? 1 : 0;
    }
    std::printf("%.1f us, best site %.2f, undecided %.2f, %.0f min\n", median(us), best / decisions,
                undecided / decisions, minutes / decisions);
}

}  // namespace

int main(int count, char** words) {
    if (count > 1 && std::string_view(words[1]) == "--toy") {
        describe_toy();
        return 0;
    }
    std::printf("One house-hunt, processor time on one core, median of 300 (goal: 500 us, at most 3 toy hunts)\n");
    compare(300, 10);
    compare(300, 30);
    compare(400, 20);
    compare(500, 10);
    compare(500, 30);
    return 0;
}
