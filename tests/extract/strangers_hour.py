#!/usr/bin/env python3
"""A stranger's hour: a folder with a phone's waypoints, a spreadsheet of hives, a weather archive's file and an extract
becomes a plan by three commands and no editor. Usage: strangers_hour.py MAYBOUGH SOURCE_DIR"""
import csv
import json
import pathlib
import subprocess
import sys
import tempfile

program, source = sys.argv[1], pathlib.Path(sys.argv[2])
demo = source / "scenarios" / "brindle-ferry"
CREDIT = "OpenStreetMap contributors"


def run(*words, code=0):
    done = subprocess.run([program, *map(str, words)], capture_output=True, text=True, cwd=folder)
    assert done.returncode == code, f"{words}: exit {done.returncode}\n{done.stdout[-800:]}{done.stderr}"
    return done


with tempfile.TemporaryDirectory() as scratch:
    folder = pathlib.Path(scratch)
    made = subprocess.run([sys.executable, demo / "make_land.py"], capture_output=True, text=True, check=True)
    (folder / "extract.osm").write_text(made.stdout)
    spots = list(csv.DictReader((demo / "spots.csv").open()))[:12]
    points = "".join(f'<wpt lat="{s["latitude_deg"]}" lon="{s["longitude_deg"]}"><name>{s["name"].replace("&", "&amp;")}'
                     f"</name></wpt>" for s in spots)
    (folder / "phone.gpx").write_text('<?xml version="1.0"?><gpx version="1.1" creator="phone" '
                                      'xmlns="http://www.topografix.com/GPX/1/1">' + points + "</gpx>")
    rows = ["Place;Latitude;Longitude;Remarks;;"]
    for n, hive in enumerate(csv.DictReader((demo / "apiaries.csv").open())):
        lat, lon = float(hive["latitude_deg"]), float(hive["longitude_deg"])
        rows.append(f"Stand {n + 1};{lat:.6f} N;{-lon:.6f} W;{hive['hives']} hives;;".replace(".", ","))
    (folder / "hives.csv").write_text("\ufeff" + "\r\n".join(rows) + "\r\n")
    lines = []
    for day in csv.DictReader((demo / "weather.csv").open()):
        for name, element, scale in (("tmax_c", "TMAX", 10), ("tmin_c", "TMIN", 10), ("rain_mm", "PRCP", 10)):
            if day.get(name):
                lines.append(f"XX000000001,{day['date'].replace('-', '')},{element},{round(float(day[name]) * scale)},,,S,")
    (folder / "archive.csv").write_text("\n".join(lines) + "\n")

    land = run("land", "extract.osm", "--place", "46.8,-6.0", "--radius", "3km")
    run("new", "home", "--land", "land", "--spots", "phone.gpx", "--hives", "hives.csv", "--weather", "archive.csv")
    plan = run("plan", "home", "--seasons", "40", "--no-progress")

    assert CREDIT in land.stdout
    for name in ("habitats.geojson", "land.geojson", "spots-proposed.csv", "land.txt"):
        assert CREDIT in (folder / "land" / name).read_text(), name
    assert CREDIT in plan.stdout and CREDIT in (folder / "plan-home" / "plan.html").read_text()
    assert "EXAMPLES" not in plan.stdout + plan.stderr
    page = (folder / "plan-home" / "plan.html").read_text()
    assert "Sallow Road" in page, "the page's map has no streets"
    assert json.loads((folder / "plan-home" / "plan.json").read_text())
    taken = list(csv.DictReader((folder / "home" / "spots.csv").open()))
    assert len(taken) == len(spots)
    hives = list(csv.DictReader((folder / "home" / "apiaries.csv").open()))
    assert [h["hives"] for h in hives] == [h["hives"] for h in csv.DictReader((demo / "apiaries.csv").open())]
    # The proposals are a spots file, and the beliefs an overlay, as they come.
    run("new", "proposed", "--spots", "land/spots-proposed.csv", "--land", "land", "--latitude", "46.8", "--longitude", "-6")
    run("check", "proposed", "--overlay", "land/land-cavities.json")
    # A starter of examples says so loudly.
    run("new", "nothing", "--latitude", "46.8", "--longitude", "-6")
    loud = run("plan", "nothing", "--seasons", "20", "--no-progress")
    assert "EXAMPLES" in loud.stderr and "EXAMPLES" in loud.stdout
    # The other place: one line, exit 2, nothing written over.
    wrong = run("land", "extract.osm", "--place", "-6.0,46.8", "--out", "other", code=2)
    assert len(wrong.stderr.strip().splitlines()) == 1 and "swapped" in wrong.stderr
print("three commands: a plan")
