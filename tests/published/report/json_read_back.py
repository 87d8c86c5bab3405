"""plan.json read by another JSON library (Python's): valid, no duplicate keys, no NaN, sums that must agree.
Source: Bray, RFC 8259 The JavaScript Object Notation (JSON) Data Interchange Format (2017)."""
import json
import pathlib
import sys

path = pathlib.Path(sys.argv[1]) / "plan.json"


def unique(pairs):
    keys = [key for key, _ in pairs]
    assert len(keys) == len(set(keys)), keys
    return dict(pairs)


def refuse(word):
    raise AssertionError(f"{word} is no JSON")


plan = json.loads(path.read_text(encoding="utf-8"), object_pairs_hook=unique, parse_constant=refuse)
best = plan["curve"][plan["recommended_traps"]]
assert best["traps"] == plan["recommended_traps"] == len(plan["traps"])
assert sum(kind["used"] for kind in plan["kinds"]) == best["traps"]
assert [trap["spot"] for trap in plan["traps"]] == best["spots"]
assert [point["traps"] for point in plan["curve"]] == list(range(len(plan["curve"])))
for before, after in zip(plan["curve"], plan["curve"][1:]):
    gain = after["catches"]["mean"] - before["catches"]["mean"]
    assert abs(gain - after["marginal_catches"]["mean"]) < 1e-9
print(f"a plan of {best['traps']} traps read back")
