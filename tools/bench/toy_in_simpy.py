"""Times the toy best-of-N hunt of bench_hunt written in SimPy, a general-purpose process simulator, and prints the ratio.

Usage: toy_in_simpy.py <bench_hunt>. The same law as `Toy` in hunt.cpp: scouts wait, visit, dance and rest with
exponential times; the swarm decides when 30 bees visit one site, and gives up after 1440 flying minutes. Times are
processor times of this process and of bench_hunt, one core each; building the bees counts in both.
"""

import random
import re
import statistics
import subprocess
import sys
import time

import simpy

SCOUTS, SITES, MOST_MINUTES, QUORUM = 300, 10, 1440, 30
DECISIONS = 100


def quality(site):
    return 0.95 - 0.45 * site / (SITES - 1)


class Swarm:
    """One swarm's decision: what its scouts share."""

    def __init__(self, seed):
        self.luck = random.Random(seed)
        self.world = simpy.Environment()
        self.decided = self.world.event()
        self.visitors = [0] * SITES
        self.floor = []  # (process, site) of dancing bees
        self.winner = None
        for _ in range(SCOUTS):
            self.world.process(self.scout())

    def minutes(self, mean):
        return self.world.timeout(self.luck.expovariate(1 / mean))

    def visit(self, site):
        self.visitors[site] += 1
        if self.visitors[site] >= QUORUM and self.winner is None:
            self.winner = site
            self.decided.succeed()
        yield self.minutes(20)
        self.visitors[site] -= 1

    def dance(self, site):
        """Dances out; False where a rival stopped her."""
        me = (self.world.active_process, site)
        self.floor.append(me)
        try:
            yield self.minutes(6)
        except simpy.Interrupt:
            return False
        self.floor.remove(me)
        if self.floor and self.luck.random() < 0.25:
            rival = self.luck.choice(self.floor)
            if rival[1] != site:
                self.floor.remove(rival)
                rival[0].interrupt()
        return True

    def scout(self):
        yield self.minutes(20)
        while True:
            dancers = len(self.floor)
            if self.luck.random() * (dancers + 0.5 * SCOUTS) < dancers:
                site = self.luck.choice(self.floor)[1]
            else:
                find = self.luck.random()
                if find >= 0.003:
                    yield self.minutes(20)
                    continue
                site = int(find / 0.003 * SITES)
            yield from self.visit(site)
            keen = self.luck.random() < quality(site)
            while keen:
                keen = yield from self.dance(site)
                if keen and self.luck.random() < 0.85 * quality(site):
                    yield from self.visit(site)
                    keen = self.luck.random() < quality(site)
                else:
                    keen = False
            yield self.minutes(30)
            yield self.minutes(20)

    def decide(self):
        """The chosen site or None, and the minutes it took."""
        self.world.run(until=self.decided | self.world.timeout(MOST_MINUTES))
        return self.winner, self.world.now


def main():
    ours = subprocess.run([sys.argv[1], "--toy"], check=True, capture_output=True, text=True).stdout
    toy = re.search(r"([\d.]+) us, best site ([\d.]+), undecided ([\d.]+), ([\d.]+) min", ours)
    seconds, minutes, best, undecided = [], [], 0, 0
    for seed in range(DECISIONS):
        before = time.process_time()
        winner, took = Swarm(seed).decide()
        seconds.append(time.process_time() - before)
        minutes.append(took)
        best += winner == 0
        undecided += winner is None
    median_us = 1e6 * statistics.median(seconds)
    print(f"{SCOUTS} scouts, {SITES} sites, the toy law written twice; shares over {DECISIONS} decisions in SimPy")
    print(
        f"  SimPy {simpy.__version__}: {median_us:.0f} us a decision, best site {best / DECISIONS:.2f}, "
        f"undecided {undecided / DECISIONS:.2f}, {statistics.mean(minutes):.0f} min"
    )
    print(f"  ours: {toy[0]}")
    print(f"  ratio {median_us / float(toy[1]):.0f}")


main()
