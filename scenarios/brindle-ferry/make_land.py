#!/usr/bin/env python3
"""Invents a map of Brindle Ferry in OpenStreetMap's XML: streets, river, buildings, trees and names round the demo's own
habitats, all made up. Usage: make_land.py > land.osm; then maybough land land.osm --place 46.8,-6.0 --radius 2.5km --tolerance 6m.
The land of the demo was made so; the same seed gives the same file."""
import json
import math
import pathlib
import random
from xml.sax.saxutils import quoteattr

HERE = pathlib.Path(__file__).parent
random.seed(20260405)
CENTRE = (46.8, -6.0)
M_LAT, M_LON = 111320.0, 111320.0 * math.cos(math.radians(CENTRE[0]))
TAGS = {"woodland": ("natural", "wood"), "orchard": ("landuse", "orchard"), "farmland": ("landuse", "farmland"),
        "grassland": ("landuse", "meadow"), "parkland": ("leisure", "park"), "suburb": ("landuse", "residential"),
        "town": ("landuse", "retail"), "water": ("natural", "water")}
nodes, ways, points = [], [], []


def node(lat, lon, **tags):
    nodes.append((len(nodes) + 1, lat, lon, tags))
    return len(nodes)


def way(places, **tags):
    ways.append(([node(*p) for p in places], tags))


def closed(places, **tags):
    ids = [node(*p) for p in places]
    ways.append((ids + ids[:1], tags))


def at(east_m, north_m):
    return CENTRE[0] + north_m / M_LAT, CENTRE[1] + east_m / M_LON


def box(east_m, north_m, wide_m, deep_m, turn, **tags):
    c, s = math.cos(turn), math.sin(turn)
    corners = [(-1, -1), (1, -1), (1, 1), (-1, 1)]
    closed([at(east_m + (x * wide_m * c - y * deep_m * s) / 2, north_m + (x * wide_m * s + y * deep_m * c) / 2)
            for x, y in corners], **tags)


def inside(lat, lon, ring):
    odd = False
    for (x1, y1), (x2, y2) in zip(ring, ring[1:]):
        if (y1 > lat) != (y2 > lat) and lon < x1 + (lat - y1) / (y2 - y1) * (x2 - x1):
            odd = not odd
    return odd


features = json.loads((HERE / "habitats.geojson").read_text())["features"]
built = []
for feature in features:
    kind, name = feature["properties"]["habitat"], feature["properties"].get("name", "")
    ring = feature["geometry"]["coordinates"][0]
    key, value = TAGS[kind]
    closed([(lat, lon) for lon, lat in ring[:-1]], **{key: value, "name": name})
    if kind in ("suburb", "town"):
        lat = sum(p[1] for p in ring[:-1]) / (len(ring) - 1)
        lon = sum(p[0] for p in ring[:-1]) / (len(ring) - 1)
        node(lat, lon, place="town" if kind == "town" else "suburb", name=name)
        built.append((kind, name, ring))

# Streets: a bent grid in each built-up patch, houses along them; their names are made of two lists.
FIRST = "Mill Ferry Sedge Priory Tanner Weaver Lantern Willow Orchard Osier Cooper Bell Quay Saddler Linden Rook".split()
LAST = "Street Lane Row Way Close Hill".split()
names = [f"{a} {b}" for a in FIRST for b in LAST]
random.shuffle(names)
for kind, name, ring in built:
    east = [(p[0] - CENTRE[1]) * M_LON for p in ring]
    north = [(p[1] - CENTRE[0]) * M_LAT for p in ring]
    step = 130 if kind == "town" else 190
    for across in (False, True):
        low, high = (min(east), max(east)) if across else (min(north), max(north))
        start, end = (min(north), max(north)) if across else (min(east), max(east))
        line = low + step / 2
        while line < high:
            path = []
            for k in range(int((end - start) // 30) + 1):
                along, bent = start + 30 * k, line + 18 * math.sin((start + 30 * k) / 170.0)
                e, n = (bent, along) if across else (along, bent)
                if inside(*at(e, n), ring):
                    path.append((e, n))
                    if k % 2 and random.random() < 0.8:
                        side = random.choice((-1, 1)) * 22
                        he, hn = (e + side, n) if across else (e, n + side)
                        tags = {"building": "yes"}
                        if random.random() < 0.6:
                            tags["start_date"] = str(random.choice((1780, 1860, 1905, 1932, 1958, 1974, 1996)))
                        if inside(*at(he, hn), ring):
                            box(he, hn, 11, 9, random.uniform(-0.2, 0.2), **tags)
            if len(path) > 2:
                way([at(*p) for p in path], highway="residential", name=names.pop() if names else "")
            line += step

way([at(e, 60 * math.sin(e / 900) - 150) for e in range(-3900, 3901, 100)], highway="secondary", name="Sallow Road")
way([at(80 * math.sin(n / 800) + 120, n) for n in range(-3900, 3901, 100)], highway="secondary", name="Hanger Road")
way([at(-3900 + 80 * k, 900 - 22 * k + 90 * math.sin(k / 6)) for k in range(98)], waterway="river", name="Brindle")
box(-60, 60, 26, 14, 0.1, building="church", name="Old ferry church", start_date="1430")
box(-1750, -150, 24, 12, 0.3, building="barn", name="Priory tithe barn", start_date="1620")
box(1250, -1250, 22, 12, -0.2, building="barn", name="Orchard barn")
for k in range(90):
    turn, away = random.uniform(0, 2 * math.pi), 3600 * math.sqrt(random.random())
    node(*at(away * math.cos(turn), away * math.sin(turn)), natural="tree")

print('<?xml version="1.0" encoding="UTF-8"?>\n<osm version="0.6" generator="make_land.py">')
for number, lat, lon, tags in nodes:
    inner = "".join(f"<tag k={quoteattr(k)} v={quoteattr(v)}/>" for k, v in tags.items() if v)
    print(f'<node id="{number}" version="1" lat="{lat:.6f}" lon="{lon:.6f}"' + (f">{inner}</node>" if inner else "/>"))
for number, (refs, tags) in enumerate(ways, 1):
    inner = "".join(f'<nd ref="{r}"/>' for r in refs)
    inner += "".join(f"<tag k={quoteattr(k)} v={quoteattr(v)}/>" for k, v in tags.items() if v)
    print(f'<way id="{number}" version="1">{inner}</way>')
print("</osm>")
