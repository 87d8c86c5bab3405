"""A plan with one thread and with two: the same numbers to the bit in every file, the clock and the command line apart.
Usage: same_bits.py PROGRAM SCENARIO"""
import json
import pathlib
import subprocess
import sys
import tempfile

import h5py
import numpy

SKIP = {"written_at", "command_line"}


def facts(path):
    """Every dataset and attribute of a results file as bytes, by name."""
    found = {}
    with h5py.File(path) as file:
        for name, value in file.attrs.items():
            found[name] = numpy.asarray(value).tobytes()
        def visit(name, thing):
            for key, value in thing.attrs.items():
                found[f"{name}@{key}"] = numpy.asarray(value).tobytes()
            if isinstance(thing, h5py.Dataset):
                found[name] = thing[()].tobytes()
        file.visititems(visit)
    return {name: value for name, value in found.items() if name not in SKIP}


def plan(program, scenario, out, threads, seed):
    subprocess.run([program, "plan", scenario, "--out", str(out), "--seed", str(seed), "--threads", str(threads),
                    "--seasons", "24", "--record-seasons", "16", "--max-traps", "4"], check=True, capture_output=True)
    report = json.loads((out / "plan.json").read_text())
    for key in SKIP:
        del report["origin"][key]
    return facts(out / "results.h5"), report, (out / "traps.csv").read_bytes(), (out / "traps.geojson").read_bytes()


def main():
    program, scenario = sys.argv[1:3]
    with tempfile.TemporaryDirectory() as folder:
        base = pathlib.Path(folder)
        one = plan(program, scenario, base / "one", 1, 5)
        two = plan(program, scenario, base / "two", 2, 5)
        other = plan(program, scenario, base / "other", 2, 6)
    differing = [name for name in one[0] if one[0][name] != two[0].get(name)]
    if differing or one[0].keys() != two[0].keys():
        sys.exit(f"results.h5 differs between one thread and two: {differing[:8]}")
    if one[2] != two[2]:
        sys.exit("traps.csv differs between one thread and two")
    if json.dumps(one[1], sort_keys=True) != json.dumps(two[1], sort_keys=True):
        sys.exit("plan.json differs between one thread and two")
    if one[0] == other[0]:
        sys.exit("another seed gave the very same results: this test would see nothing")
    print(f"{len(one[0])} datasets and attributes equal to the bit")


main()
