"""GeoJSON read back by GDAL and checked against the rules of the standard.
Source: Butler et al., RFC 7946 The GeoJSON Format (2016): longitude first, no crs, geometry and properties in every
feature; GDAL 3.6."""
import json
import pathlib
import subprocess
import sys

folder = pathlib.Path(sys.argv[1])
path = folder / "traps.geojson"
plan = json.loads((folder / "plan.json").read_text(encoding="utf-8"))
data = json.loads(path.read_text(encoding="utf-8"))
assert data["type"] == "FeatureCollection" and "crs" not in data
assert len(data["features"]) == len(plan["traps"]) > 0
for feature, trap in zip(data["features"], plan["traps"]):
    assert set(feature) >= {"type", "geometry", "properties"} and feature["type"] == "Feature"
    assert feature["geometry"]["type"] == "Point"
    longitude, latitude = feature["geometry"]["coordinates"]
    assert longitude == trap["longitude_deg"] and latitude == trap["latitude_deg"]
    for key, value in feature["properties"].items():
        assert value == trap[key], key

out = subprocess.run(["ogrinfo", "-ro", "-al", path], capture_output=True, check=True, text=True)
assert f"Feature Count: {len(plan['traps'])}" in out.stdout and "Geometry: Point" in out.stdout, out.stdout
assert 'WGS 84' in out.stdout
assert f"spot_name (String) = {plan['traps'][1]['spot_name']}" in out.stdout, out.stdout
print(f"{len(data['features'])} points read back")
