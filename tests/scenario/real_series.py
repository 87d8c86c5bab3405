#!/usr/bin/env python3
"""The demo area with a real weather series in place of its invented one, in every form: check reads all, plan runs on one.

Arguments: the maybough program, the demo scenario's folder. The series is Seattle 2012 to 2015 (NOAA, public domain) as
Debian's python3-vega-datasets ships it."""
import csv
import datetime
import itertools
import json
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

SERIES = pathlib.Path("/usr/lib/python3/dist-packages/vega_datasets/_data/seattle-weather.csv")
ELEMENTS = {"PRCP": "precipitation", "TMAX": "temp_max", "TMIN": "temp_min", "AWND": "wind"}
STATION = "XXT00000001"


def tenths(row, element):
    return round(10 * float(row[ELEMENTS[element]]))


def fixed_width(rows):
    out = []
    for (year, month), days in itertools.groupby(rows, key=lambda r: (r["day"].year, r["day"].month)):
        by_day = {r["day"].day: r for r in days}
        for element in ELEMENTS:
            values = (tenths(by_day[d], element) if d in by_day else -9999 for d in range(1, 32))
            out.append(f"{STATION}{year:04d}{month:02d}{element}" + "".join(f"{v:5d}   " for v in values))
    return "\n".join(out) + "\n"


def by_station(rows):
    return "".join(f"{STATION},{r['day']:%Y%m%d},{e},{tenths(r, e)},,,W,\n" for r in rows for e in ELEMENTS)


def us_units(rows):
    return "date,tmax_f,tmin_f,rain_in,wind_kn\n" + "".join(
        f"{r['day']},{32 + 1.8 * float(r['temp_max']):.4f},{32 + 1.8 * float(r['temp_min']):.4f},"
        f"{float(r['precipitation']) / 25.4:.5f},{float(r['wind']) * 3600 / 1852:.5f}\n" for r in rows)


def run(program, *arguments):
    done = subprocess.run([program, *map(str, arguments)], capture_output=True, text=True, check=False)
    if done.returncode != 0:
        sys.exit(f"{' '.join(map(str, arguments))}: exit {done.returncode}: {done.stderr}")
    return done.stdout


def main():
    program, demo = sys.argv[1:]
    rows = list(csv.DictReader(SERIES.open()))
    for row in rows:
        row["day"] = datetime.date.fromisoformat(row["date"].replace("/", "-"))
    forms = {"s.dly": (fixed_width(rows), {}), "by_station.csv": (by_station(rows), {}), "us.csv": (us_units(rows), {}),
             "plain.csv": (SERIES.read_text(), {"columns": {"tmax_c": "temp_max", "tmin_c": "temp_min",
                                                            "rain_mm": "precipitation", "wind_ms": "wind"}})}
    with tempfile.TemporaryDirectory() as scratch:
        folder = pathlib.Path(scratch) / "demo"
        shutil.copytree(demo, folder)
        text = (folder / "scenario.json").read_text()
        for name, (series, more) in forms.items():
            (folder / name).write_text(series)
            changed, count = re.subn(r'"weather": \{.*?\}', lambda _: '"weather": ' + json.dumps({"file": name, **more}), text)
            assert count == 1, "the demo's weather was not found"
            (folder / "scenario.json").write_text(changed)
            told = run(program, "check", folder)
            assert "1461, 2012-01-01 to 2015-12-31" in told, told
        out = pathlib.Path(scratch) / "out"
        run(program, "plan", folder, "--out", out, "--seasons", 24, "--record-seasons", 24, "--max-traps", 3)
        plan = json.loads((out / "plan.json").read_text())
        assert plan, "the plan is empty"
    print(f"{len(forms)} forms of the real series are read alike, and the demo is planned on it")


main()
