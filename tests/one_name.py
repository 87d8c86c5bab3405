"""Fails when a type or function is declared in two rooms: the linker would be free to take one for the other where their
namespaces were ever joined, and a reader cannot tell which is meant. Names are read from the libraries' own symbols.
Argument: the folder with the room libraries."""
import collections
import pathlib
import re
import subprocess
import sys

NAME = re.compile(r"\bmaybough::(\w+)::(\w+)")
# A room's entry point in its own words may share a word with a type's member; nothing else may.
ALLOWED: set[str] = set()

rooms = collections.defaultdict(set)
for library in sorted(pathlib.Path(sys.argv[1]).glob("libmaybough_*.a")):
    symbols = subprocess.run(["nm", "-C", "--defined-only", library], capture_output=True, text=True, check=True).stdout
    for room, name in NAME.findall(symbols):
        rooms[name].add(room)
double = {name: sorted(where) for name, where in rooms.items() if len(where) > 1 and name not in ALLOWED}
for name, where in sorted(double.items()):
    print(f"{name}: declared in {' and '.join(where)}")
print(f"{len(rooms)} names, {len(double)} in two rooms")
sys.exit(1 if double or not rooms else 0)
