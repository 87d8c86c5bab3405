#!/usr/bin/env python3
"""Area by class of real extracts from packages, read by `maybough land` and by GDAL's own reader of OpenStreetMap files:
they must agree within 1 %. Usage: area_by_class.py MAYBOUGH FILE... ; a file that is not there is skipped, and one
at least must be. Each file is tried as it comes and, where osmium is installed, as PBF."""
import json
import math
import pathlib
import shutil
import subprocess
import sys
import tempfile

program, files = sys.argv[1], [pathlib.Path(f) for f in sys.argv[2:] if pathlib.Path(f).exists()]
if not files or not shutil.which("ogr2ogr"):
    sys.exit(77)
A, E2 = 6378137.0, 0.00669437999  # WGS 84


def ring_m2(ring, lat0):
    w = math.sqrt(1 - E2 * math.sin(math.radians(lat0)) ** 2)
    north, east = A * (1 - E2) / w ** 3 * math.pi / 180, A / w * math.cos(math.radians(lat0)) * math.pi / 180
    xy = [((p[0] - ring[0][0]) * east, (p[1] - ring[0][1]) * north) for p in ring]
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(xy, xy[1:] + xy[:1]))) / 2


def rules(folder):
    lines = (folder / "tags.csv").read_text().splitlines()[1:]
    return [line.split(",") for line in lines]


def class_of(properties, table):
    for key, value, becomes in table:
        found = properties.get(key)
        if found is not None and (value == "*" or value == found):
            return becomes
    return None


def check(path, scratch):
    made = scratch / (path.name + ".json")
    ordered = scratch / ("ordered-" + path.name)  # GDAL wants objects in order, which editors do not keep
    if shutil.which("osmium") and subprocess.run(["osmium", "sort", str(path), "-o", str(ordered)], capture_output=True).returncode == 0:
        source = ordered
    else:
        source = path
    subprocess.run(["ogr2ogr", "-f", "GeoJSON", str(made), str(source), "multipolygons", "-lco", "COORDINATE_PRECISION=9"],
                   check=True, capture_output=True)
    features = json.loads(made.read_text())["features"]
    corners = [p for f in features for polygon in f["geometry"]["coordinates"] for p in polygon[0]]
    lon, lat = ((min(p[i] for p in corners) + max(p[i] for p in corners)) / 2 for i in (0, 1))
    out = scratch / path.name.replace(".", "-")
    done = subprocess.run([program, "land", str(path), "--place", f"{lat},{lon}", "--radius", "20km", "--out", str(out),
                           "--write-tags"], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    ours = {}
    for line in done.stdout.splitlines()[1:]:
        words = line.split()
        if len(words) == 4 and words[0].isalpha():
            ours[words[0]] = float(words[2]) * 1e4
    table, theirs = rules(out), {}
    for feature in features:
        becomes = class_of(feature["properties"], table)
        if becomes in (None, "nothing", "street", "stream", "name", "tree"):
            continue
        for polygon in feature["geometry"]["coordinates"]:
            area = ring_m2(polygon[0], lat) - sum(ring_m2(hole, lat) for hole in polygon[1:])
            theirs[becomes] = theirs.get(becomes, 0) + area
    bad = 0
    for name in sorted(set(ours) | set(theirs)):
        a, b = ours.get(name, 0), theirs.get(name, 0)
        if max(a, b) < 5:
            continue  # both read nothing, or less than the account prints
        off = abs(a - b) / max(a, b)
        bad += off > 0.01
        print(f"{path.name:24} {name:10} ours {a:14.1f} m2   GDAL {b:14.1f} m2   apart {100 * off:.3f} %")
    assert theirs, f"{path}: GDAL reads no area of a known class"
    return bad


with tempfile.TemporaryDirectory() as folder:
    scratch, bad = pathlib.Path(folder), 0
    for path in list(files):
        if shutil.which("osmium"):
            packed = scratch / (path.stem + ".osm.pbf")
            if subprocess.run(["osmium", "sort", str(path), "-o", str(packed)], capture_output=True).returncode == 0:
                files.append(packed)
    for path in files:
        bad += check(path, scratch)
    sys.exit(1 if bad else 0)
