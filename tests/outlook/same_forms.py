"""The same forecast whatever the form and unit of this year's weather. Arguments: maybough, scenario folder.
One year of the scenario's record is written in degrees C, in degrees F with inches and miles an hour, and as GHCN-Daily
by station; each forecast has to give the same weeks and days."""
import csv
import pathlib
import subprocess
import sys
import tempfile

program, scenario = sys.argv[1:]
with open(pathlib.Path(scenario) / "weather.csv", newline="", encoding="utf-8") as file:
    rows = [row for row in csv.DictReader(file) if "2025-01-01" <= row["date"] <= "2025-05-20"]
assert len(rows) > 100


def converted(row, key, convert):
    return f"{convert(float(row[key])):.10g}" if row.get(key) else ""


def fahrenheit(value):
    return value * 1.8 + 32


FORMS = {
    "celsius.csv": ("date,tmax_c,tmin_c,rain_mm,wind_ms", lambda r: [r["date"]] + [r.get(k, "") for k in (
        "tmax_c", "tmin_c", "rain_mm", "wind_ms")]),
    "fahrenheit.csv": ("date,tmax_f,tmin_f,rain_in,wind_mph", lambda r: [
        r["date"], converted(r, "tmax_c", fahrenheit), converted(r, "tmin_c", fahrenheit),
        converted(r, "rain_mm", lambda v: v / 25.4), converted(r, "wind_ms", lambda v: v / 0.44704)]),
    "semicolons.csv": ("date;tmax_c;tmin_c;rain_mm;wind_kmh", lambda r: [
        r["date"], *(r.get(k, "").replace(".", ",") for k in ("tmax_c", "tmin_c", "rain_mm")),
        converted(r, "wind_ms", lambda v: v * 3.6).replace(".", ",")]),
}
answers = {}
with tempfile.TemporaryDirectory() as scratch:
    folder = pathlib.Path(scratch)
    for name, (header, cells) in FORMS.items():
        mark = ";" if ";" in header else ","
        (folder / name).write_text("\n".join([header] + [mark.join(cells(row)) for row in rows]) + "\n")
    ghcn = []
    for row in rows:
        for element, key, factor in (("TMAX", "tmax_c", 10), ("TMIN", "tmin_c", 10), ("PRCP", "rain_mm", 10),
                                     ("AWND", "wind_ms", 10)):
            if row.get(key):
                ghcn.append(f"XX000000001,{row['date'].replace('-', '')},{element},"
                            f"{round(float(row[key]) * factor)},,,S,")
    (folder / "station.csv").write_text("\n".join(ghcn) + "\n")
    for name in [*FORMS, "station.csv"]:
        out = folder / (name + ".out")
        done = subprocess.run([program, "forecast", scenario, "--weather", str(folder / name), "--today", "2025-05-20",
                               "--seasons", "4", "--threads", "2", "--out", str(out)], capture_output=True, text=True,
                              check=False)
        assert done.returncode == 0, (name, done.stderr)
        answers[name] = [(out / table).read_text() for table in ("weeks.csv", "days.csv")]
first = answers["celsius.csv"]


def close(one, other):
    """The same words, and numbers that differ by no more than their unit's rounding."""
    cells = [line.split(",") for line in one.splitlines()]
    others = [line.split(",") for line in other.splitlines()]
    if [len(c) for c in cells] != [len(c) for c in others]:
        return False
    for a, b in ((a, b) for row, twin in zip(cells, others) for a, b in zip(row, twin)):
        try:
            if abs(float(a) - float(b)) > 1e-6:
                return False
        except ValueError:
            if a != b:
                return False
    return True


for name, tables in answers.items():
    for mine, other in zip(first, tables):
        assert close(mine, other), f"{name} gives another forecast than celsius.csv"
print(f"{len(answers)} forms give one forecast")
