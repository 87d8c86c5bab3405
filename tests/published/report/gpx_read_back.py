"""GPX 1.1 read back by gpsbabel and GDAL, and the order of elements checked.
Source: Topografix, GPX 1.1 Schema Documentation (2004): order of the children of wpt; gpsbabel 1.8, GDAL 3.6."""
import csv
import io
import json
import pathlib
import subprocess
import sys
import xml.etree.ElementTree as tree

folder = pathlib.Path(sys.argv[1])
path = folder / "traps.gpx"
plan = json.loads((folder / "plan.json").read_text(encoding="utf-8"))
ORDER = ("ele time magvar geoidheight name cmt desc src link sym type fix sat hdop vdop pdop ageofdgpsdata dgpsid "
         "extensions").split()
SPACE = "{http://www.topografix.com/GPX/1/1}"

root = tree.parse(path).getroot()
assert root.tag == SPACE + "gpx" and root.get("version") == "1.1" and root.get("creator")
waypoints = root.findall(SPACE + "wpt")
assert len(waypoints) == len(plan["traps"]) > 0
for waypoint, trap in zip(waypoints, plan["traps"]):
    places = [ORDER.index(child.tag.removeprefix(SPACE)) for child in waypoint]
    assert places == sorted(places) and len(set(places)) == len(places), places
    assert waypoint.find(SPACE + "name").text == f"{trap['number']} {trap['spot_name']}"
assert [child.tag for child in root] == [SPACE + "metadata"] + [SPACE + "wpt"] * len(waypoints)

out = subprocess.run(["gpsbabel", "-i", "gpx", "-f", path, "-o", "unicsv", "-F", "-"], capture_output=True, check=True)
rows = list(csv.DictReader(io.StringIO(out.stdout.decode("utf-8")), skipinitialspace=True))
assert len(rows) == len(plan["traps"]), rows
for row, trap in zip(rows, plan["traps"]):
    assert abs(float(row["Latitude"]) - trap["latitude_deg"]) < 1e-6, row
    assert abs(float(row["Longitude"]) - trap["longitude_deg"]) < 1e-6, row
    assert row["Name"].startswith(f"{trap['number']} "), row

out = subprocess.run(["ogrinfo", "-ro", "-al", path, "waypoints"], capture_output=True, check=True, text=True)
assert f"Feature Count: {len(plan['traps'])}" in out.stdout, out.stdout
print(f"{len(rows)} waypoints read back")
