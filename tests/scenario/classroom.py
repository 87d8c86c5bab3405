"""The six classroom scenarios: runs what each README tells to run, and checks that its answer holds beyond chance: the
mean of the difference, season by season on the same random numbers, is at least four standard errors from nothing (a
chance of some 1 in 30,000 of being wrong where there is no difference), seasons under one draw of the unknowns taken
together. Also checks that each replay named there is written. Arguments: maybough; --print tells the figures."""
import math
import pathlib
import re
import shlex
import subprocess
import sys
import tempfile

import h5py

root = pathlib.Path(__file__).resolve().parents[2]
program = sys.argv[1]
SEASONS = 100
PER_BELIEF = 4  # seasons that share one draw of the unknowns


def run(words, out):
    done = subprocess.run([program, *words, "--threads", "1", "--out", str(out), "--no-progress"], cwd=root, capture_output=True,
                          text=True, check=False, timeout=120)
    assert done.returncode == 0, (words, done.stderr)
    return done.stdout


def seasons(folder, words, scratch):
    """Per season: swarms in the area, catches, catches of the first trap, and the days on which swarms were caught."""
    run(["season", folder, *words, "--seasons", str(SEASONS)], scratch)
    with h5py.File(scratch / "results.h5", "r") as file:
        rows = file["season/replicates"]
        caught = list(zip(file["season/catches/replicate"][()], file["season/catches/trap"][()], file["season/catches/day"][()]))
        return {"in_area": [float(v) for v in rows["in_area"][()]], "catches": [float(v) for v in rows["catches"][()]],
                "first_trap": [float(sum(1 for s, trap, _ in caught if s == k and trap == 0)) for k in range(SEASONS)],
                "first_day": [min((day for s, _, day in caught if s == k), default=math.nan) for k in range(SEASONS)]}


def less(first, second):
    """Mean of first - second over seasons, with its standard error over draws of the unknowns, and both means."""
    pairs = [(a, b) for a, b in zip(first, second)]
    groups = []
    for at in range(0, len(pairs), PER_BELIEF):
        values = [a - b for a, b in pairs[at:at + PER_BELIEF] if not math.isnan(a - b)]
        if values:
            groups.append(sum(values) / len(values))
    mean = sum(groups) / len(groups)
    spread = sum((value - mean) ** 2 for value in groups) / (len(groups) - 1)
    both = [[v for v in side if not math.isnan(v)] for side in (first, second)]
    return mean, math.sqrt(spread / len(groups)), [sum(v) / len(v) for v in both]


CASES = {
    "class-why-swarms-leave": ("swarms a season in hives of 40 l against 120 l", "in_area", [], ["--overlay", "{}/roomy.json"]),
    "class-forty-or-ten-litres": ("catches of a trap of 40 l against 10 l", "catches", [], ["--placement", "{}/ten-litres.csv"]),
    "class-lure": ("catches with a lure against without", "catches", [], ["--placement", "{}/no-lure.csv"]),
    "class-high-or-low": ("catches at 5 m against 1 m", "catches", [], ["--placement", "{}/low.csv"]),
    "class-rival-trap": ("catches of your trap alone against beside a rival", "first_trap", [], ["--placement", "{}/with-rival.csv"]),
    "class-cold-or-warm-spring": ("day of the first catch in a cold spring against a warm one", "first_day", None, []),
}


def replays_of(readme):
    return [shlex.split(line)[1:] for line in re.findall(r"^    (maybough replay .*)$", readme, re.M)]


faults = []
with tempfile.TemporaryDirectory() as name:
    scratch = pathlib.Path(name)
    assert {p.name for p in (root / "scenarios").glob("class-*")} == set(CASES)
    for case, (what, measure, first_words, second_words) in CASES.items():
        folder = f"scenarios/{case}"
        readme = (root / folder / "README.md").read_text(encoding="utf-8")
        fill = [word.replace("{}", folder) for word in second_words]
        start = f"{folder}/cold.json" if first_words is None else folder
        first = seasons(start, first_words or [], scratch / case / "first")
        second = seasons(folder, fill, scratch / case / "second")
        mean, error, means = less(first[measure], second[measure])
        told = f"{case}: {what}: {means[0]:.2f} and {means[1]:.2f}, difference {mean:.2f} +- {error:.2f}"
        if "--print" in sys.argv:
            print(told)
        if not mean > 4 * error:
            faults.append(f"not beyond chance: {told}")
        if case == "class-rival-trap" and not sum(second["catches"]) > sum(first["catches"]):
            faults.append(f"{case}: two traps caught no more than one")
        commands = replays_of(readme)
        if not any("--change" in command for command in commands) and case != "class-why-swarms-leave" and "spring" not in case:
            faults.append(f"{case}: README plays no hunt with one thing changed")
        for number, command in enumerate(commands):
            said = run(command[0:], scratch / case / f"replay{number}")
            page = "hunt.html" if "--hunt" in command else "season.html"
            if page not in said or (scratch / case / f"replay{number}" / page).stat().st_size > 5_000_000:
                faults.append(f"{case}: {' '.join(command)}")
print("\n".join(faults) or f"{len(CASES)} classroom scenarios answer as their pages say")
sys.exit(1 if faults else 0)
