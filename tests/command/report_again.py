#!/usr/bin/env python3
"""maybough report makes the outputs of plan, season and compare again from results.h5, byte for byte; a second run into
the same folder is refused. Argument: the maybough program."""
import pathlib
import subprocess
import sys
import tempfile

from bad_inputs import FILES

program = sys.argv[1]


def run(*words, code=0):
    done = subprocess.run([program, *map(str, words)], capture_output=True, text=True, check=False)
    assert done.returncode == code, (words, done.returncode, done.stderr)
    return done.stderr


with tempfile.TemporaryDirectory() as scratch:
    place = pathlib.Path(scratch) / "meadow"
    place.mkdir()
    for name, text in FILES.items():
        (place / name).write_text(text)
    small = {"plan": ["--seasons", 8, "--record-seasons", 8, "--max-traps", 2], "season": ["--seasons", 8],
             "compare": ["--seasons", 8]}
    for command, options in small.items():
        first, again = (pathlib.Path(scratch) / f"{command}-{which}" for which in ("first", "again"))
        run(command, place, *options, "--out", first)
        run("report", first / "results.h5", "--out", again)
        made = sorted(file.name for file in again.iterdir())
        assert made == sorted(file.name for file in first.iterdir() if file.name != "results.h5"), made
        for name in made:
            assert (first / name).read_bytes() == (again / name).read_bytes(), (command, name)
        assert "--overwrite" in run("report", first, "--out", again, code=2)
        run("report", first, "--out", again, "--overwrite")
    assert "results.h5" in run("report", pathlib.Path(scratch) / "plan-first" / "plan.json", code=2)
    assert "is not there" in run("report", pathlib.Path(scratch) / "nowhere.h5", code=2)
print("every output is made again, byte for byte")
