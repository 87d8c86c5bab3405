"""traps.csv read by Python's csv module.
Source: Shafranovich, RFC 4180 Common Format and MIME Type for CSV Files (2005)."""
import csv
import json
import pathlib
import sys

folder = pathlib.Path(sys.argv[1])
plan = json.loads((folder / "plan.json").read_text(encoding="utf-8"))
with open(folder / "traps.csv", encoding="utf-8", newline="") as file:
    rows = list(csv.DictReader(file, strict=True))
assert len(rows) == len(plan["traps"]) > 0
for row, trap in zip(rows, plan["traps"]):
    assert None not in row and None not in row.values(), row
    assert (row["spot"], row["kind"]) == (trap["spot"], trap["kind"])
    assert float(row["height_m"]) == trap["height_m"]
    assert (row["hang"], row["take_down"]) == (trap["hang"], trap["take_down"])
    assert int(row["visit_every_days"]) == trap["visit_every_days"]
print(f"{len(rows)} rows read back")
