#!/usr/bin/env python3
"""Validates scenarios against the schema with a general validator (Debian's python3-jsonschema, Draft 2020-12).

Arguments: schema.json, the maybough program, then scenario.json files that have to pass. Broken copies of the first have
to fail, both here and in the program itself."""
import copy
import json
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

from jsonschema import Draft202012Validator


def without_comments(text):
    """JSON with its // and /* */ comments taken out; texts in quotes are left alone."""
    pattern = r'("(?:\\.|[^"\\])*")|//[^\n]*|/\*.*?\*/'
    return re.sub(pattern, lambda m: m.group(1) or "", text, flags=re.S)


def put(document, path, value):
    """Sets a value at a path of keys; None as value deletes."""
    for key in path[:-1]:
        document = document.setdefault(key, {}) if isinstance(document, dict) else document[key]
    if value is None:
        del document[path[-1]]
    else:
        document[path[-1]] = value


BROKEN = [
    (["radius"], 3),
    (["format"], 2),
    (["format"], "1"),
    (["name"], ""),
    (["name"], 7),
    (["name"], None),
    (["year"], 2026.5),
    (["year"], 1200),
    (["place", "latitude_deg"], 91),
    (["place", "latitude_deg"], "47"),
    (["place", "longitude_deg"], -181),
    (["place", "radius_m"], 0),
    (["place", "elsewhere"], "jungle"),
    (["place", "colour"], "green"),
    (["place"], []),
    (["spots"], None),
    (["spots"], ["a"]),
    (["trap_kinds"], []),
    (["trap_kinds", 0, "volume_l"], -4),
    (["trap_kinds", 0, "volume_l"], None),
    (["trap_kinds", 0, "id"], "two words"),
    (["trap_kinds", 0, "frames"], "yes"),
    (["trap_kinds", 0, "frames"], 1),
    (["trap_kinds", 0, "owned"], 1.5),
    (["trap_kinds", 0, "price"], 12),
    (["keeper", "budget"], 0),
    (["keeper", "hour_value"], -1),
    (["keeper", "late_from"], "July 1"),
    (["keeper", "max_traps"], 0),
    (["apiary_management", "cell_finding"], 1.2),
    (["apiaries"], 3),
    (["weather"], {}),
    (["weather"], {"file": "w.csv", "monthly_normals": {}}),
    (["weather"], {"file": "w.csv", "columns": {"tmax_k": "a"}}),
    (["weather"], {"monthly_normals": {"tmax_c": [1], "tmin_c": [1], "rain_mm": [1], "wet_days": [1]}}),
    (["parameters"], {"no.such": 1}),
    (["beliefs"], {"no.such": {"median": 1, "low": 1, "high": 1}}),
]


def main():
    schema_file, program, *scenarios = sys.argv[1:]
    schema = json.loads(pathlib.Path(schema_file).read_text())
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    failures = []
    for scenario in scenarios:
        errors = list(validator.iter_errors(json.loads(without_comments(pathlib.Path(scenario).read_text()))))
        failures += [f"{scenario} should pass: {e.message} at {list(e.path)}" for e in errors]
    folder = pathlib.Path(scenarios[0]).parent
    good = json.loads(without_comments(pathlib.Path(scenarios[0]).read_text()))
    for key, row in schema["properties"]["parameters"]["properties"].items():
        BROKEN.append((["parameters"], {key: row["maximum"] + abs(row["maximum"]) + 1}))
        break
    with tempfile.TemporaryDirectory() as scratch:
        copied = pathlib.Path(scratch) / "scenario"
        shutil.copytree(folder, copied)
        for path, value in BROKEN:
            broken = copy.deepcopy(good)
            put(broken, path, value)
            if validator.is_valid(broken):
                failures.append(f"the validator should refuse {path} = {value!r}")
            (copied / "scenario.json").write_text(json.dumps(broken))
            done = subprocess.run([program, "check", str(copied)], capture_output=True, text=True, check=False)
            if done.returncode != 2:
                failures.append(f"the program should refuse {path} = {value!r}: exit {done.returncode}")
    print("\n".join(failures) or f"{len(scenarios)} scenarios pass, {len(BROKEN)} broken ones are refused by both")
    return 1 if failures else 0


sys.exit(main())
