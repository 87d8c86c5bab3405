"""The classroom scenarios: runs what each README tells to run, and checks that its answer holds beyond chance: the mean of
the difference, season by season on the same random numbers, is at least four standard errors from nothing (a chance of
some 1 in 30,000 of being wrong where there is no difference), blocks of draws of the unknowns taken together as the
program does. Every figure of the answer's first sentence is compared with the run, and each replay named there is written;
one with a change shows two different ends. Arguments: maybough; --print tells the figures, --write puts them into the
pages."""
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
PER_BLOCK = 8  # seasons that share a block of two draws of the unknowns


def run(words, out):
    done = subprocess.run([program, *words, "--threads", "1", "--out", str(out), "--no-progress"], cwd=root, capture_output=True,
                          text=True, check=False, timeout=120)
    assert done.returncode == 0, (words, done.stderr)
    return done.stdout


def seasons(folder, words, scratch):
    """Per season: swarms in the area, catches, catches of the first trap, and the days on which swarms were caught."""
    run(["season", folder, *words, "--seasons", str(SEASONS)], scratch)
    with h5py.File(scratch / "results.h5", "r") as file:
        rows = file["replicates"]
        caught = list(zip(file["events/catches/replicate"][()], file["events/catches/trap"][()], file["events/catches/day"][()]))
        return {"in_area": [float(v) for v in rows["in_area"][()]], "catches": [float(v) for v in rows["catches"][()]],
                "first_trap": [float(sum(1 for s, trap, _ in caught if s == k and trap == 0)) for k in range(SEASONS)],
                "first_day": [min((day for s, _, day in caught if s == k), default=math.nan) for k in range(SEASONS)]}


def less(first, second):
    """Mean of first - second over seasons, with its standard error over draws of the unknowns, and both means."""
    values = [a - b for a, b in zip(first, second)]
    told = [v for v in values if not math.isnan(v)]
    mean = sum(told) / len(told)
    blocks = [[v for v in values[at:at + PER_BLOCK] if not math.isnan(v)] for at in range(0, len(values), PER_BLOCK)]
    robust = sum((sum(block) - len(block) * mean) ** 2 for block in blocks)
    error = math.sqrt(robust * len(blocks) / (len(blocks) - 1)) / len(told)
    both = [[v for v in side if not math.isnan(v)] for side in (first, second)]
    return mean, error, [sum(v) / len(v) for v in both]


def answer_of(readme):
    """Where the figures of the answer stand: the first sentences of its paragraph, up to the last +-."""
    begin = readme.index("**Answer, as measured.**") + len("**Answer, as measured.**")
    return begin, readme.index("\n\n", begin)


def figures_as_told(case, mean, error, means):
    """The four figures of a page's answer in the order in which it tells them."""
    if "spring" in case:
        return [f"{mean:.0f}", f"{error:.0f}", f"{means[0]:.0f}", f"{means[1]:.0f}"]
    return [f"{means[0]:.2f}", f"{means[1]:.2f}", f"{mean:.2f}", f"{error:.2f}"]


def with_figures(readme, case, figures):
    """The page with its answer's measured figures replaced, in order; volumes and such are whole numbers and stay."""
    begin, end = answer_of(readme)
    pattern = r"\d+" if "spring" in case else r"\d+\.\d\d"
    left = list(figures)
    text = re.sub(pattern, lambda found: left.pop(0) if left else found.group(0), readme[begin:end])
    return readme[:begin] + text + readme[end:]


CASES = {
    "class-why-swarms-leave": ("swarms a season in hives of 40 l against 120 l", "in_area", [], ["--overlay", "{}/roomy.json"]),
    "class-forty-or-ten-litres": ("catches of a trap of 40 l against 10 l", "catches", [], ["--placement", "{}/ten-litres.csv"]),
    "class-lure": ("catches with a lure against without", "catches", [], ["--placement", "{}/no-lure.csv"]),
    "class-high-or-low": ("catches at 5 m against 1 m", "catches", [], ["--placement", "{}/low.csv"]),
    "class-rival-trap": ("catches of your trap alone against beside a rival", "first_trap", [], ["--placement", "{}/with-rival.csv"]),
    "class-cold-or-warm-spring": ("day of the first catch in a cold spring against a warm one", "first_day", None, []),
}


def replays_of(readme):
    """The words of each replay told there, without the name of the program and the folder for the results."""
    lines = re.findall(r"^    maybough (replay .*)$", readme, re.M)
    return [shlex.split(re.sub(r" --out \S+", "", line)) for line in lines]


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
        right = with_figures(readme, case, figures_as_told(case, mean, error, means))
        if "--write" in sys.argv:
            (root / folder / "README.md").write_text(right, encoding="utf-8")
        elif right != readme:
            faults.append(f"{case}: the page tells other figures than the run: {told}; --write renews them")
        if not mean > 4 * error:
            faults.append(f"not beyond chance: {told}")
        if case == "class-rival-trap" and not sum(second["catches"]) > sum(first["catches"]):
            faults.append(f"{case}: two traps caught no more than one")
        commands = replays_of(readme)
        if not any("--change" in command for command in commands) and case != "class-why-swarms-leave" and "spring" not in case:
            faults.append(f"{case}: README plays no hunt with one thing changed")
        for number, command in enumerate(commands):
            said = run(command, scratch / case / f"replay{number}")
            page = "hunt.html" if "--hunt" in command else "season.html"
            ends = re.findall(r"moved into .*? after|hived the cluster|built in the open|was lost", said)
            if "--change" in command and len(set(ends)) < 2:
                faults.append(f"{case}: both hunts end alike: {ends}")
            if page not in said or (scratch / case / f"replay{number}" / page).stat().st_size > 5_000_000:
                faults.append(f"{case}: {' '.join(command)}")
print("\n".join(faults) or f"{len(CASES)} classroom scenarios answer as their pages say")
sys.exit(1 if faults else 0)
