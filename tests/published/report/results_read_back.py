"""results.h5 read back by h5py and h5dump, and compared with plan.json of the same plan.
Source: The HDF Group, HDF5 File Format Specification Version 3.0; h5py 3.7, hdf5-tools 1.10."""
import json
import math
import pathlib
import subprocess
import sys

import h5py

folder = pathlib.Path(sys.argv[1])
plan = json.loads((folder / "plan.json").read_text(encoding="utf-8"))


def texts(dataset):
    return [value.decode("utf-8") for value in dataset[()]]


with h5py.File(folder / "results.h5", "r") as file:
    attributes = file.attrs
    assert attributes["file_kind"] == "maybough plan" and attributes["format_version"] == 2
    assert attributes["complete"] == 1 and attributes["seed"] == plan["origin"]["seed"]
    assert json.loads(attributes["scenario_text"])["format"] == 1
    for key, told in (("program_version", "version"), ("flags", "flags"), ("command_line", "command_line"),
                      ("written_at", "written_at")):
        assert attributes[key] == plan["origin"][told], key

    lengths = {}

    def look(name, item):
        if isinstance(item, h5py.Dataset):
            assert item.attrs["unit"], name
            assert item.ndim == 1
            lengths.setdefault(item.parent.name, set()).add(len(item))
            if len(item) >= 64:
                assert item.chunks and item.shuffle and item.compression == "gzip", name

    file.visititems(look)
    assert all(len(rows) == 1 for rows in lengths.values()), lengths
    assert {"/parameters", "/weather", "/plan/curve", "/plan/traps", "/scenario/spots"} <= set(lengths)

    curve = file["plan/curve"]
    for row, point in enumerate(plan["curve"]):
        for name in ("catches", "cost", "value", "net", "marginal_catches", "marginal_net"):
            assert curve[name + "_mean"][row] == point[name]["mean"], name
            assert curve[name + "_half_width_95"][row] == point[name]["half_width_95"], name
            assert curve[name + "_se"][row] == point[name]["standard_error"], name
    spots = texts(file["scenario/spots/id"])
    chosen = file["plan/curve_traps/placement"][()] == plan["recommended_traps"]
    assert [spots[i] for i in file["plan/curve_traps/spot"][()][chosen]] == [trap["spot"] for trap in plan["traps"]]
    assert list(file["plan/traps/height_m"]) == [trap["height_m"] for trap in plan["traps"]]
    assert texts(file["plan/days/date"])[0] == plan["calendar"]["first_day"]
    assert list(file["plan/days/swarms"]) == plan["calendar"]["swarms_per_day"]
    assert math.isnan(file["weather/tmax_c"][2]) and texts(file["weather/date"])[0] == "2020-01-01"
    keys = texts(file["parameters/key"])
    assert len(keys) == len(set(keys)) > 0 and all(texts(file["parameters/unit"]))

out = subprocess.run(["h5dump", "-H", folder / "results.h5"], capture_output=True, check=True, text=True)
assert 'GROUP "parameters"' in out.stdout and "DEFLATE" not in out.stderr
print(f"{len(lengths)} tables read back")
