"""The season that `maybough replay` plays is the one that `maybough season` simulates: same catches, same days. The hunt
it plays ends as that season has it. Arguments: maybough, a scenario folder."""
import json
import pathlib
import re
import subprocess
import sys
import tempfile

import h5py

program, scenario = sys.argv[1], sys.argv[2]


def run(*words):
    done = subprocess.run([program, *map(str, words)], capture_output=True, text=True, check=False, timeout=300)
    assert done.returncode == 0, (words, done.stderr)
    return done.stdout


def island(page):
    return json.loads(re.search(r'id="data">(.*?)</script>', page.read_text(encoding="utf-8"), re.S).group(1))


with tempfile.TemporaryDirectory() as name:
    out = pathlib.Path(name)
    run("season", scenario, "--seasons", 3, "--seed", 5, "--out", out / "season")
    with h5py.File(out / "season" / "results.h5", "r") as file:
        rows = {key: list(file["replicates"][key][()]) for key in ("catches", "in_area")}
        caught = sorted(zip(*(file["events/catches"][key][()].tolist() for key in ("replicate", "trap", "day", "bees"))))
    for season in (1, 2, 3):
        said = run("replay", scenario, "--season", season, "--seed", 5, "--out", out / str(season))
        data = island(out / str(season) / "season.html")
        played = sorted((season - 1, s["trap"], s["ended"] // 240, s["bees"]) for s in data["swarms"] if s["fate"] == "caught")
        assert played == [row for row in caught if row[0] == season - 1], (played, caught)
        assert said.count("caught in trap") == rows["catches"][season - 1]
        assert f"{rows['in_area'][season - 1]} swarm" in said, said
    first = next(season for season in (1, 2, 3) if rows["catches"][season - 1] > 0)
    said = run("replay", scenario, "--season", first, "--seed", 5, "--hunt", "caught", "--change", "volume_l=5", "--out", out / "hunt")
    data = island(out / "hunt" / "hunt.html")
    as_it_was, changed = data["runs"]
    number = data["swarm"]["number"]
    swarm = next(s for s in island(out / str(first) / "season.html")["swarms"] if s["number"] == number)
    assert as_it_was["sites"][as_it_was["chosen"]]["name"].startswith(f"Trap {swarm['trap'] + 1} ("), (swarm, as_it_was["chosen"])
    assert abs(as_it_was["arrival"] / 12 - (swarm["ended"] - swarm["hung"])) <= 2, (as_it_was["arrival"], swarm)
    assert changed["events"] != as_it_was["events"] and "of 5 l" in said
print("replay plays the seasons that season simulates")
