"""Random jobs through the program and through the model, and where the two differ.

Arguments: the program, how many jobs (500), the seed (1). Status 1 on any difference.
"""
import json
import random
import subprocess
import sys
import tempfile
from pathlib import Path

import grades
import jobs
import shown
from preheat_model import answer
from steel import METHOD_B

NEAR = 0.05  # K, and 0.02 h


def planned(program, lines):
    """What `batch` answers, a line a job."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "jobs.jsonl"
        file.write_text("".join(json.dumps(job) + "\n" for job, _case in lines), encoding="utf-8")
        done = subprocess.run([program, "batch", str(file)], capture_output=True, text=True, check=False)
    return [json.loads(line) if line else {} for line in done.stdout.splitlines()]


def kind_of(name):
    """What rules, in words that both share."""
    kinds = {"practice": ("tabulated practice", "practice for steel/", "practice for stainless/", "row of", "hottest row"),
             "filler": ("what ", "filler "), METHOD_B: (METHOD_B,), "approved": ("approved", "the approved")}
    for kind, parts in kinds.items():
        if name.startswith(parts):
            return kind
    return name


def told(heat):
    """The program's answer in the words of the model."""
    later = heat.get("later_layers") or {}
    listed = [method.get("minimum_degC") for method in heat.get("methods", []) if method["name"] == METHOD_B]
    return {"method B": listed[0] if listed else None, "state": heat.get("state"), "minimum": heat.get("preheat_min_degC"),
            "maximum": heat.get("interpass_max_degC"), "later minimum": later.get("min_degC"),
            "later maximum": later.get("max_degC"), "t8/5": heat.get("t85_s"), "hardness": heat.get("hardness_HV"),
            "hold": heat.get("post_heat_degC"), "hours": heat["post_heat_s"] / 3600 if "post_heat_s" in heat else None,
            "rules": kind_of(heat["preheat_by"]) if heat.get("state") == "figure" and heat.get("preheat_by") else None}


def modelled(result):
    hold, hours = result.hold or (None, None)
    later = result.later or (None, None)
    return {"method B": result.method_b, "state": result.state, "minimum": result.minimum, "maximum": result.maximum,
            "later minimum": later[0], "later maximum": later[1], "t8/5": result.cooling, "hardness": result.hardness,
            "hold": hold, "hours": hours,
            "rules": {kind_of(name) for name in result.rules} if result.state == "figure" else None}


def same(one, other):
    if isinstance(one, (int, float)) and isinstance(other, (int, float)):
        return abs(one - other) <= NEAR
    return one == other


def same_of(what, ours, theirs):
    """Method B is left open by the model where a certificate is not of the grade, and not told where it asks for none."""
    if what == "method B" and (ours[what] is None or theirs[what] is None and ours[what] <= shown.DRY):
        return True
    if what == "rules":
        return ours[what] is None or theirs[what] is None or theirs[what] in ours[what]  # of equal ones any may be named
    if what in ("t8/5", "hardness") and ours[what] is None:
        return True  # left open: no wall, no minimum, no ferritic steel
    return same(ours[what], theirs[what])


def reason(heat):
    ruling = [method["name"] for method in heat.get("methods", []) if method.get("rules")]
    return f"{heat.get('preheat_by')}; {heat.get('interpass_by')}; rules {ruling}"


def brief(job):
    """The parts of a job that bear on its preheat."""
    bore, settings = dict(job["bores"][0]), dict(job["procedures"]["main"])
    for known in ("name", "finish_diameter", "worn", "skim"):
        bore.pop(known)
    return json.dumps({**bore, **settings, **{key: job[key] for key in ("units", "welding_rules") if key in job}})


def compared(lines, plans):
    """Every kind of difference: its count, the smallest job, both answers, both reasons; how many agree on what."""
    kinds, agree, faults, judged = {}, {}, {}, 0
    for (job, case), plan in zip(lines, plans):
        if "bores" not in plan:
            message = (plan.get("faults") or [{}])[0].get("message", "no answer")
            faults.setdefault(message[:110], []).append(job)
            continue
        heat = plan["bores"][0]["heat"]
        laid = heat.get("heat_input_kj_mm") or {}
        case.heat_input = min(laid.values()) if laid else None
        result, judged = answer(case), judged + 1
        ours, theirs = modelled(result), told(heat)
        differ = [what for what in ours if not same_of(what, ours, theirs)]
        for what in ours:
            agree[what] = agree.get(what, 0) + (what not in differ)
        if differ:  # told by the first: the others follow from it
            what = differ[0]
            shape = what if what != "state" else f"state {ours[what]} / {theirs[what]}"
            found = kinds.setdefault((grades.base(case.base)["group"], shape), [])
            found.append((jobs.size(job), job, case, result, theirs, reason(heat)))
    return kinds, agree, faults, judged


def main(program, count=500, seed=1):
    draw = random.Random(seed)
    every_pair = jobs.pairs()
    draw.shuffle(every_pair)
    lines = [jobs.drawn(draw, every_pair, number) for number in range(count)]
    plans = planned(program, lines)
    kinds, agree, faults, judged = compared(lines, plans)
    for (group, what), found in sorted(kinds.items(), key=lambda one: -len(one[1])):
        _size, job, case, result, theirs, why = min(found, key=lambda one: one[0])
        print(f"{len(found)} x {group}: {what}\n  {brief(job)}\n"
              f"  heat input {case.heat_input}, wall {case.wall}, product {case.product}\n"
              f"  model   {result}\n  program {theirs}\n          {why}")
    for message, found in faults.items():
        print(f"{len(found)} refused: {message}\n  {brief(found[0])}")
    print(f"{judged} of {len(lines)} planned; agree on", ", ".join(f"{what} {number}" for what, number in agree.items()))
    return 1 if kinds or judged < len(lines) else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], *(int(word) for word in sys.argv[2:4])))
