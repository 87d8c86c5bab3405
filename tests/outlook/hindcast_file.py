"""hindcast.csv holds what a plot needs, and its columns agree with each other. Arguments: maybough, scenario folder."""
import csv
import datetime
import pathlib
import subprocess
import sys
import tempfile

program, scenario = sys.argv[1:]
with tempfile.TemporaryDirectory() as scratch:
    folder = pathlib.Path(scratch)
    (folder / "seen.csv").write_text("year,first_swarm\n2023,2023-05-02\n2024,2024-04-28\n2025,2025-05-09\n")
    done = subprocess.run([program, "forecast", scenario, "--hindcast", "--hindcast-years", "3", "--hindcast-seasons",
                           "4", "--observed", str(folder / "seen.csv"), "--out", str(folder / "out")],
                          capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    assert "skill against simulated seasons" in done.stdout
    with open(folder / "out" / "hindcast.csv", newline="", encoding="utf-8") as file:
        rows = list(csv.DictReader(file, strict=True))

assert all(None not in row and None not in row.values() for row in rows), "rows of another width than the header"
simulated = [row for row in rows if row["against"] == "simulated"]
observed = [row for row in rows if row["against"] == "observed"]
assert {row["date"] for row in simulated} == {"first_swarm", "half_of_them"}
assert len(simulated) == 2 * len(observed) == 16
for row in simulated:
    ranks = [float(row[f"rank_class_{c}"]) for c in range(1, 11)]
    assert abs(sum(ranks) - 1) < 1e-9
    assert abs(sum(ranks[1:9]) - float(row["coverage_80"])) < 1e-9
    assert abs(1 - float(row["crps_days"]) / float(row["crps_normal_days"]) - float(row["skill"])) < 1e-9
    assert int(row["cases"]) > 0 and float(row["width_80_days"]) > 0
for row in observed:
    assert row["cases"] == "3" and row["coverage_80"] == "" and float(row["crps_own_dates_days"]) > 0
    assert abs(1 - float(row["crps_days"]) / float(row["crps_own_dates_days"]) - float(row["skill_own_dates"])) < 1e-9
days = [datetime.date.fromisoformat("2025-" + row["issued"]) for row in simulated[:8]]
assert days[0] == datetime.date(2025, 3, 1)
assert all(b - a == datetime.timedelta(14) for a, b in zip(days, days[1:]))
print(f"{len(rows)} rows of skill read")
