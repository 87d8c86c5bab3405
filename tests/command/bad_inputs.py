#!/usr/bin/env python3
"""Bad inputs on the command line: each ends with exit code 2 and one clear line with its place, and touches nothing.

Argument: the maybough program. A small good scenario is made in a scratch folder for each case and spoilt in one way."""
import hashlib
import os
import pathlib
import subprocess
import sys
import tempfile

SCENARIO = """{
  "format": 1,
  "name": "Test meadow",
  "year": 2026,
  "place": {"latitude_deg": 47.5, "longitude_deg": 8.5, "radius_m": 2000},
  "habitats": "habitats.geojson",
  "apiaries": "apiaries.csv",
  "spots": "spots.csv",
  "trap_kinds": [{"id": "box", "volume_l": 40, "cost": 30}],
  "keeper": {"budget": 300, "max_traps": 3},
  "traps": "traps.csv",
  "weather": {"file": "weather.csv"}
}
"""
SPOTS = """id,latitude_deg,longitude_deg,min_height_m,max_height_m,use
oak,47.501,8.501,2,5,may
barn,47.495,8.49,2,3,must
hedge,47.51,8.51,1,2,never
"""
APIARIES = "id,latitude_deg,longitude_deg,hives\nhome,47.502,8.503,6\n"
TRAPS = "spot,kind,height_m,facing,hang,take_down,visit_every_days,lured\noak,box,3,S,2026-04-10,2026-08-01,7,yes\n"
RING = "[[8.49,47.49],[8.51,47.49],[8.51,47.51],[8.49,47.51],[8.49,47.49]]"
HABITATS = ('{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"habitat":"woodland"},'
            '"geometry":{"type":"Polygon","coordinates":[' + RING + ']}}]}')
MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
WEATHER = "date,tmax_c,tmin_c,rain_mm,wind_ms\n" + "".join(
    f"{year}-{month + 1:02d}-{day + 1:02d},{14 - 11 * abs(month - 6) / 6 + (day * 7 + month * 3 + year) % 9:.1f},"
    f"{5 - 9 * abs(month - 6) / 6 + (day * 5 + month + year) % 7:.1f},{(day * 11 + month) % 5 if day % 3 == 0 else 0},"
    f"{2 + (day * 3 + month) % 4}\n"
    for year in (2021, 2022, 2023) for month in range(12) for day in range(MONTHS[month]))
FILES = {"scenario.json": SCENARIO, "spots.csv": SPOTS, "apiaries.csv": APIARIES, "traps.csv": TRAPS,
         "habitats.geojson": HABITATS, "weather.csv": WEATHER}


def swap(name, old, new):
    """A case's change: the first `old` in a file becomes `new`."""
    def change(folder):
        text = (folder / name).read_text()
        assert old in text, f"the case changes nothing: {old!r} in {name}"
        (folder / name).write_text(text.replace(old, new, 1))
    return change


def write(name, text):
    """A case's change: a file gets another text."""
    return lambda folder: (folder / name).write_bytes(text if isinstance(text, bytes) else text.encode())


def remove(name):
    return lambda folder: (folder / name).unlink()


def nothing(_folder):
    return None


JSON = "scenario.json"
CHECK = ["check", "{}"]
PLAN = ["plan", "{}", "--out", "{}/out", "--seasons", "8", "--record-seasons", "8"]
SEASON = ["season", "{}", "--out", "{}/out", "--seasons", "2"]
LEARN = ["learn", "{}", "--log", "{}/log.csv", "--out", "{}/out", "--seasons", "20"]
REPLAY = ["replay", "{}", "--out", "{}/out"]
COMPARE = ["compare", "{}", "{}/traps.csv", "--out", "{}/out", "--seasons", "2"]

# What is wrong; how it is made; the command; what the line has to say: the file and place first, then the matter.
CASES = [
    ("malformed JSON", swap(JSON, '"format": 1,', '"format": 1'), PLAN, ["scenario.json:3:", "not valid JSON"]),
    ("trailing comma", swap(JSON, '"weather.csv"}', '"weather.csv"},'), CHECK, ["scenario.json:1", "not valid JSON"]),
    ("JSON cut off", write(JSON, SCENARIO[:200]), CHECK, ["scenario.json:", "not valid JSON"]),
    ("empty scenario", write(JSON, ""), PLAN, ["scenario.json", "empty"]),
    ("a list for a scenario", write(JSON, "[1]"), CHECK, ["scenario.json", "expected an object"]),
    ("bytes that are no UTF-8", write(JSON, SCENARIO.encode().replace(b"meadow", b"\xe4\xff")), CHECK, ["scenario.json:3:", "UTF-8"]),
    ("zero bytes", write("spots.csv", b"id\0,latitude_deg\n"), CHECK, ["spots.csv", "zero bytes"]),
    ("no scenario.json", remove(JSON), PLAN, ["holds no scenario.json"]),
    ("no such folder", nothing, ["plan", "{}/nowhere"], ["nowhere", "no such file"]),
    ("unknown key", swap(JSON, '"budget"', '"budgte"'), PLAN, ["scenario.json: /keeper/budgte", "did you mean budget?"]),
    ("unknown key at the top", swap(JSON, '"year"', '"yaer"'), CHECK, ["scenario.json: /yaer", "did you mean year?"]),
    ("key of another unit", swap(JSON, '"volume_l"', '"volume_gal"'), CHECK, ["/trap_kinds/0/volume_gal"]),
    ("duplicate key", swap(JSON, '"year": 2026', '"year": 2026, "year": 2027'), CHECK, ["scenario.json: /year", "twice"]),
    ("missing key", swap(JSON, '"radius_m": 2000', '"elsewhere": "town"'), CHECK, ["scenario.json: /place", "radius_m"]),
    ("text for a number", swap(JSON, "2000", '"2 km"'), PLAN, ["/place/radius_m", "expected a number"]),
    ("NaN", swap(JSON, "2000", "NaN"), PLAN, ["scenario.json:5:"]),
    ("number without end", swap(JSON, "2000", "1e999"), CHECK, ["scenario.json", "too large"]),
    ("null", swap(JSON, "2000", "null"), CHECK, ["/place/radius_m", "nothing (null)"]),
    ("float for a whole number", swap(JSON, '"max_traps": 3', '"max_traps": 2.5'), CHECK, ["/keeper/max_traps", "whole number"]),
    ("negative cost", swap(JSON, '"cost": 30', '"cost": -30'), PLAN, ["/trap_kinds/0/cost", "found -30"]),
    ("zero budget", swap(JSON, '"budget": 300', '"budget": 0'), PLAN, ["/keeper/budget", "above 0"]),
    ("volume of a thimble", swap(JSON, '"volume_l": 40', '"volume_l": 0.04'), CHECK, ["/trap_kinds/0/volume_l", "2 to 200"]),
    ("no kinds", swap(JSON, '{"id": "box", "volume_l": 40, "cost": 30}', ""), CHECK, ["/trap_kinds", "at least one"]),
    ("kinds of one id", swap(JSON, '"cost": 30}', '"cost": 30}, {"id": "box", "volume_l": 20}'), CHECK, ["/trap_kinds/1/id", "twice"]),
    ("newer format", swap(JSON, '"format": 1', '"format": 2'), PLAN, ["/format", "newer"]),
    ("older format", swap(JSON, '"format": 1', '"format": 0'), CHECK, ["/format", "found format 0"]),
    ("latitude beyond the pole", swap(JSON, "47.5", "97.5"), CHECK, ["/place/latitude_deg"]),
    ("unknown habitat", swap(JSON, '"radius_m": 2000', '"radius_m": 2000, "elsewhere": "farm"'), CHECK, ["/place/elsewhere", "farmland"]),
    ("unknown parameter", swap(JSON, '"traps":', '"parameters": {"room.nothing": 1}, "traps":'), CHECK, ["/parameters/room.nothing"]),
    ("both file and normals", swap(JSON, '"weather.csv"}', '"weather.csv", "monthly_normals": {}}'), CHECK, ["/weather", "not both"]),
    ("no weather at all", swap(JSON, '{"file": "weather.csv"}', "{}"), CHECK, ["/weather", "file"]),
    ("no spots file", remove("spots.csv"), PLAN, ["spots.csv", "no such file"]),
    ("zero spots", write("spots.csv", SPOTS.splitlines()[0] + "\n"), PLAN, ["spots.csv", "without any row"]),
    ("empty spots file", write("spots.csv", ""), CHECK, ["spots.csv", "empty"]),
    ("spot outside the area", swap("spots.csv", "47.501", "47.601"), PLAN, ["spots.csv:2", "oak"]),
    ("latitude and longitude swapped", swap("spots.csv", "47.501,8.501", "8.501,47.501"), CHECK, ["spots.csv:2", "swapped"]),
    ("duplicate id", swap("spots.csv", "barn", "oak"), PLAN, ["spots.csv:3", '"oak"']),
    ("two spots in one place", swap("spots.csv", "47.495,8.49,", "47.501,8.501,"), CHECK, ["spots.csv:3", "same square"]),
    ("heights the wrong way round", swap("spots.csv", "2,5,may", "5,2,may"), CHECK, ["spots.csv:2", "min_height"]),
    ("number with a unit", swap("spots.csv", "2,5,may", "2 m,5,may"), CHECK, ["spots.csv:2", "min_height_m"]),
    ("height without a unit", swap("spots.csv", "min_height_m", "min_height"), CHECK, ["spots.csv", "min_height"]),
    ("wrong delimiter", lambda f: (f / "spots.csv").write_text(SPOTS.replace(",", "|")), CHECK, ["spots.csv:1", "one column only"]),
    ("row cut off", swap("spots.csv", "47.495,8.49,2,3,must", "47.495"), CHECK, ["spots.csv:3", "found 2 cells"]),
    ("open quote", swap("spots.csv", "barn", '"barn'), CHECK, ["spots.csv:3", "never closed"]),
    ("id over two lines", swap("spots.csv", "barn", '"ba\nrn"'), CHECK, ["spots.csv:3", "expected an id"]),
    ("line break in a key", swap(JSON, '"budget"', '"bud\\nget"'), CHECK, ["/keeper/bud get", "budget"]),
    ("line break in an id", swap(JSON, '"box"', '"b\\nox"'), CHECK, ["/trap_kinds/0/id"]),
    ("missing column", swap("spots.csv", "longitude_deg", "notes"), CHECK, ["spots.csv:1", "longitude_deg"]),
    ("no spot may be used", lambda f: (f / "spots.csv").write_text(SPOTS.replace("may", "never").replace("must", "never")), PLAN, ["spots.csv", "never"]),
    ("hives that are no number", swap("apiaries.csv", ",6", ",six"), CHECK, ["apiaries.csv:2", "six"]),
    ("hives far away", swap("apiaries.csv", "47.502", "48.902"), CHECK, ["apiaries.csv:2", "home"]),
    ("habitat misspelt", swap("habitats.geojson", "woodland", "wodland"), CHECK, ["habitats.geojson: /features/0/properties/habitat", "woodland"]),
    ("open ring", swap("habitats.geojson", ",[8.49,47.49]]", "]"), CHECK, ["habitats.geojson", "not closed"]),
    ("a map of points", swap("habitats.geojson", '"Polygon"', '"Point"'), CHECK, ["/features/0/geometry", "Polygon"]),
    ("no weather file", remove("weather.csv"), PLAN, ["weather.csv", "no such file"]),
    ("empty weather", write("weather.csv", ""), PLAN, ["weather.csv", "empty"]),
    ("truncated weather", write("weather.csv", WEATHER[:3000]), PLAN, ["weather.csv"]),
    ("half a year of weather", lambda f: (f / "weather.csv").write_text("".join(WEATHER.splitlines(True)[:150])), PLAN, ["weather.csv", "a year at least"]),
    ("dates out of order", swap("weather.csv", "2021-02-01", "2021-01-01"), CHECK, ["weather.csv:33", "rising dates"]),
    ("a day that is none", swap("weather.csv", "2021-02-28", "2021-02-30"), CHECK, ["weather.csv:60", "2021-02-30"]),
    ("days first", swap("weather.csv", "2021-01-03", "03.01.2021"), CHECK, ["weather.csv:4", "YYYY-MM-DD"]),
    ("temperature without a unit", swap("weather.csv", "tmax_c", "tmax"), CHECK, ["weather.csv:1", "tmax_f"]),
    ("Fahrenheit under Celsius", swap("weather.csv", "2021-07-01,", "2021-07-01,8"), CHECK, ["weather.csv:183", "tmax_c"]),
    ("negative rain", swap("weather.csv", "2021-01-02,", "2021-01-02,5,1,-4,2\n2021-01-02,"), CHECK, ["weather.csv:3", "rain_mm"]),
    ("nan in the weather", swap("weather.csv", "2021-01-02,", "2021-01-02,nan,1,0,2\n2021-01-02,"), CHECK, ["weather.csv:3", "nan"]),
    ("trap at no spot", swap("traps.csv", "oak", "elm"), SEASON, ["traps.csv:2", '"elm"']),
    ("trap of no kind", swap("traps.csv", "box", "crate"), COMPARE, ["traps.csv:2", '"crate"']),
    ("trap too high", swap("traps.csv", ",3,S", ",9,S"), SEASON, ["traps.csv:2", "9 m"]),
    ("trap taken down before it hangs", swap("traps.csv", "2026-08-01", "2026-03-01"), SEASON, ["traps.csv:2", "take_down"]),
    ("trap in another year", swap("traps.csv", "2026-04-10", "2025-04-10"), COMPARE, ["traps.csv:2", "2025-04-10"]),
    ("two traps at a spot", swap("traps.csv", "oak,", "oak,box,,,,,,\noak,"), SEASON, ["traps.csv:3", "oak"]),
    ("no such placement", nothing, ["compare", "{}", "{}/trap.csv", "--out", "{}/out"], ["trap.csv", "did you mean traps.csv"]),
    ("no such overlay", nothing, ["check", "{}", "--overlay", "{}/over.json"], ["over.json", "no such file"]),
    ("overlay with spots", write("over.json", '{"format": 1, "spots": "a.csv"}'), ["check", "{}", "--overlay", "{}/over.json"], ["over.json: /spots"]),
    ("output folder is a file", nothing, ["plan", "{}", "--out", "{}/spots.csv"], ["spots.csv"]),
    ("output folder below a file", nothing, ["plan", "{}", "--out", "{}/spots.csv/out"], ["spots.csv/out"]),
    ("unknown option", nothing, PLAN + ["--sed", "3"], ["sed"]),
    ("unknown command", nothing, ["plann", "{}"], ["plan"]),
    ("negative seed", nothing, PLAN + ["--seed=-1"], ["--seed"]),
    ("seed that is no number", nothing, PLAN + ["--seed", "one"], ["seed"]),
    ("too many threads", nothing, PLAN + ["--threads", "100000"], ["--threads"]),
    ("no season", nothing, SEASON + ["--seasons", "0"], ["--seasons"]),
    ("no trap to plan", nothing, PLAN + ["--max-traps", "0"], ["--max-traps"]),
    ("budget of nothing", nothing, PLAN + ["--budget", "0"], ["--budget"]),
    ("no scenario named", nothing, ["plan"], ["scenario"]),
    ("no catch log named", nothing, ["learn", "{}", "--out", "{}/out"], ["command line", "--log"]),
    ("no such catch log", nothing, ["learn", "{}", "--log", "{}/trap.csv"], ["trap.csv", "no such file"]),
    ("an empty catch log", write("log.csv", ""), LEARN, ["log.csv", "empty"]),
    ("a catch log without rows", write("log.csv", "year,spot,swarms\n"), LEARN, ["log.csv", "without any row"]),
    ("a catch log of another place", write("log.csv", "year,spot,swarms\n2023,elm,1\n"), LEARN, ["log.csv:2", '"elm"']),
    ("a catch log without swarms", write("log.csv", "year,spot\n2023,oak\n"), LEARN, ["log.csv:1", "swarms"]),
    ("a log's column misspelt", write("log.csv", "year,spot,swarms,hunged\n2023,oak,1,\n"), LEARN, ["log.csv:1", "did you mean hung"]),
    ("half a swarm", write("log.csv", "year,spot,swarms\n2023,oak,0.5\n"), LEARN, ["log.csv:2", "swarms", "0.5"]),
    ("a swarm on a day the trap did not hang", write("log.csv", "year,spot,swarms,hung,taken_down,caught\n2023,oak,1,2023-04-10,2023-07-01,2023-08-02\n"),
     LEARN, ["log.csv:2", "2023-08-02"]),
    ("a trap hung in another year", write("log.csv", "year,spot,swarms,hung\n2023,oak,1,2022-04-10\n"), LEARN, ["log.csv:2", "2022-04-10"]),
    ("a trap twice in a year", write("log.csv", "year,spot,swarms\n2023,oak,1\n2023,oak,0\n"), LEARN, ["log.csv:3", "already"]),
    ("too few seasons to learn from", write("log.csv", "year,spot,swarms\n2023,oak,1\n"), LEARN[:-1] + ["3"], ["--seasons"]),
    ("a starter over a full folder", nothing, ["new", "{}", "--latitude", "47", "--longitude", "8"], ["not an empty folder"]),
    ("a starter beyond the pole", nothing, ["new", "{}/made", "--latitude", "95", "--longitude", "8"], ["--latitude"]),
    ("a starter from missing spots", nothing,
     ["new", "{}/made", "--latitude", "47.5", "--longitude", "8.5", "--spots", "{}/spot.csv"], ["spot.csv"]),
    ("unknown theme of experiments", nothing, ["verify", "--theme", "birds", "--out", "{}/out"], ["--theme", "birds"]),
    ("a season of number nought", nothing, REPLAY + ["--season", "0"], ["--season", "from 1"]),
    ("a season beyond all", nothing, REPLAY + ["--season", "1000001"], ["--season", "1000000"]),
    ("a season that is no number", nothing, REPLAY + ["--season", "late"], ["season", "late"]),
    ("a swarm that never hung", nothing, REPLAY + ["--hunt", "99999"], ["--hunt", "a number from 1 to"]),
    ("a swarm below nought", nothing, REPLAY + ["--hunt=-3"], ["--hunt", "a number from 1 to"]),
    ("a swarm by name", nothing, REPLAY + ["--hunt", "caugth"], ["--hunt", "'caught'"]),
    ("a change misspelt", nothing, REPLAY + ["--hunt", "1", "--change", "volume=10"], ["--change", "volume_l?"]),
    ("a change unknown", nothing, REPLAY + ["--hunt", "1", "--change", "zzzzzz=1"], ["--change", "it knows volume_l"]),
    ("a change without a number", nothing, REPLAY + ["--hunt", "1", "--change", "lure=some"], ["--change", "lure=some"]),
    ("a change without a value", nothing, REPLAY + ["--hunt", "1", "--change", "lure"], ["--change", "a number after"]),
    ("a change out of range", nothing, REPLAY + ["--hunt", "1", "--change", "volume_l=5000"], ["volume_l", "2 to 200"]),
    ("a change without a hunt", nothing, REPLAY + ["--change", "lure=0"], ["--hunt"]),
    ("a change of a trap at no spot", nothing, REPLAY + ["--hunt", "1", "--change", "lure=0", "--trap", "elm"], ["elm"]),
    ("a replay with another's traps", nothing, REPLAY + ["--placement", "{}/trap.csv"], ["trap.csv"]),
    ("experiments of a broken scenario", swap(JSON, "2000", "null"), ["verify", "{}", "--out", "{}/out"], ["/place/radius_m"]),
]


def fingerprint(folder):
    """Every path below the folder, with a digest of what it holds."""
    return {str(p.relative_to(folder)): hashlib.sha256(p.read_bytes()).hexdigest() if p.is_file() else ""
            for p in sorted(folder.rglob("*"))}


def run(program, command, folder):
    return subprocess.run([program] + [part.replace("{}", str(folder)) for part in command], capture_output=True,
                          text=True, check=False, cwd=folder, timeout=120, env={**os.environ, "LC_ALL": "C.UTF-8"})


def faults_of(program, change, command, expected, folder):
    change(folder)
    before = fingerprint(folder)
    done = run(program, command, folder)
    faults = []
    lines = done.stderr.splitlines()
    if done.returncode != 2:
        faults.append(f"exit code {done.returncode}, expected 2")
    if len(lines) != 1 or not lines[0].startswith("maybough: "):
        faults.append(f"expected one line 'maybough: ...', got {len(lines)}")
    faults += [f"the line does not say {part!r}" for part in expected if part not in done.stderr]
    if done.stdout:
        faults.append("something was printed as if all were well")
    if fingerprint(folder) != before:
        faults.append("files were written or changed")
    return [f"{fault}: {done.stderr.strip()[:300]}" for fault in faults]


def main():
    program = os.path.abspath(sys.argv[1])
    failures = []
    with tempfile.TemporaryDirectory() as scratch:
        for number, (what, change, command, expected) in enumerate([("the good one", nothing, CHECK, [])] + CASES):
            folder = pathlib.Path(scratch) / f"case{number}"
            folder.mkdir()
            for name, text in FILES.items():
                (folder / name).write_text(text)
            if number == 0:
                good = run(program, command, folder)
                if good.returncode != 0:
                    failures.append(f"the good scenario is refused: {good.stderr}")
                continue
            failures += [f"{what}: {fault}" for fault in faults_of(program, change, command, expected, folder)]
    print("\n".join(failures) or f"{len(CASES)} bad inputs are refused with their place, and nothing is touched")
    return 1 if failures else 0


sys.exit(main())
