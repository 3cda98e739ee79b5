"""Honest jobs raise hardly a doubt, and of single slips that matter most are seen.

Arguments: the program, how many honest jobs, how many slips, the seed. The spans of the jobs stand in SPANS; all are
invented. A slip moves a decimal point, swaps or mistypes a digit, takes another unit, or puts two values in each other's
place; it matters where it moves the wire by 20 %, the time on site by 50 % or a preheat by 30 K. A slip that is refused is seen.
"""
import copy
import json
import math
import random
import subprocess
import sys
import tempfile
from pathlib import Path

from slips import put

SPANS = {"finish": (40, 180), "length by finish": (0.5, 1.6), "boss by finish": (1.5, 2.6), "wear a side": (0.4, 4.0),
         "oval": (0.2, 0.8), "skim": (0.3, 1.0), "stock": (1.0, 2.5), "overhang": (1.5, 4.0), "air": (-5, 30)}
WIRES = {"0.9 mm": (90, 170), "1.0 mm": (110, 200), "1.2 mm": (130, 240)}
MELTING = {"0.9 mm": (0.533, 1.58e-4), "1.0 mm": (0.432, 1.04e-4), "1.2 mm": (0.300, 5.0e-5)}  # tables/families/steel.json
STEELS = {"steel/S355J2": {"C": (0.12, 0.19), "Mn": (1.1, 1.5)}, "steel/C45": {"C": (0.42, 0.49), "Mn": (0.55, 0.8)},
          "steel/4140": {"C": (0.38, 0.43), "Mn": (0.75, 1.0), "Cr": (0.85, 1.1), "Mo": (0.16, 0.24)},
          "steel/A36": {"C": (0.10, 0.24), "Mn": (0.5, 1.0)}}
MOST_DOUBTED = 0.02
LEAST_SEEN = 0.85


def readings(draw, finish, length):
    """Stations of an oval with a lopsided wear, as a person would read it off."""
    wear, oval, at = draw.uniform(*SPANS["wear a side"]), draw.uniform(*SPANS["oval"]), draw.uniform(0, 2 * math.pi)
    count, by_radius = draw.choice([6, 8, 12]), draw.random() < 0.5
    turn = 2 * math.pi if by_radius else math.pi
    stations = []
    for depth in ([0.1, 0.9], [0.1, 0.5, 0.9], [0.05, 0.35, 0.65, 0.95])[draw.randrange(3)]:
        here = wear * draw.uniform(0.8, 1.0)
        row = []
        for i in range(count):
            angle = turn * i / count - at
            lobe = (1 - oval + oval * (1 + math.cos(angle)) / 2) if by_radius else (1 - oval / 2 + oval / 4 * math.cos(2 * angle))
            radius = finish / 2 + 0.1 + here * lobe + draw.gauss(0, 0.03)
            row.append(f"{round(radius if by_radius else 2 * radius, 1):.1f} mm")
        stations.append({"depth": f"{round(depth * length)} mm", "radii" if by_radius else "diameters": row})
    return {"stations": stations}


def honest(draw):
    finish = round(draw.uniform(*SPANS["finish"]) / 5) * 5
    length = round(finish * draw.uniform(*SPANS["length by finish"]))
    wire = draw.choice(list(WIRES))
    amps = round(draw.uniform(*WIRES[wire]) / 5) * 5
    a, b = MELTING[wire]
    feed = (a * amps + b * 12 * amps * amps) * 0.06 * draw.uniform(0.92, 1.08)  # m/min, at 12 mm of stick-out
    main = {"filler": draw.choice(["steel/ER70S-6", "steel/ER70S-3", "steel/ER80S-D2"]), "wire": wire, "gas": draw.choice(["M21", "M20"]),
            "wire_feed": f"{feed:.1f} m/min", "current": f"{amps} A", "voltage": f"{14 + 0.035 * amps + draw.uniform(-1, 1):.1f} V",
            "travel": f"{round(draw.uniform(220, 480), -1):.0f} mm/min"}
    if main["filler"] == "steel/ER80S-D2" and wire == "1.0 mm":
        main["filler"] = "steel/ER70S-6"
    if draw.random() < 0.5:
        main["gas_flow"] = f"{draw.randint(12, 18)} L/min"
    if draw.random() < 0.3:
        main["hydrogen_ml_100g"] = round(draw.uniform(1.5, 5), 1)
    base = draw.choice(list(STEELS))
    bore = {"name": "eye", "base": base, "finish_diameter": f"{finish} mm", "length": f"{length} mm",
            "boss_diameter": f"{round(finish * draw.uniform(*SPANS['boss by finish']))} mm", "worn": readings(draw, finish, length),
            "skim": f"{draw.uniform(*SPANS['skim']):.1f} mm", "stock": f"{draw.uniform(*SPANS['stock']):.1f} mm",
            "overhang": f"{draw.uniform(*SPANS['overhang']):.1f} mm", "attached": [{"thickness": f"{draw.choice([12, 20, 25, 30])} mm"}]}
    if draw.random() < 0.5:
        bore["composition"] = {element: round(draw.uniform(*span), 2) for element, span in STEELS[base].items()}
    return {"format": "ringfill-job/1", "title": "Honest", "units": "mm", "site": {"ambient": f"{round(draw.uniform(*SPANS['air']))} degC"},
            "procedures": {"main": main}, "bores": [bore], "heater": {"kind": "propane", "power": "30 kW"}}


def fields(job):
    """The paths of what a person types, with a number in it."""
    found = [f"procedures.main.{name}" for name in job["procedures"]["main"] if name not in ("filler", "gas")]
    bore = job["bores"][0]
    found += [f"bores.0.{name}" for name in ("finish_diameter", "length", "boss_diameter", "skim", "stock", "overhang")]
    found += [f"bores.0.composition.{element}" for element in bore.get("composition", {})]
    found += ["bores.0.attached.0.thickness", "site.ambient"]
    for s, station in enumerate(bore["worn"]["stations"]):
        found.append(f"bores.0.worn.stations.{s}.depth")
        kind = "radii" if "radii" in station else "diameters"
        found += [f"bores.0.worn.stations.{s}.{kind}.{i}" for i in range(len(station[kind]))]
    return found


def value_at(job, path):
    for step in path.split("."):
        job = job[int(step)] if isinstance(job, list) else job[step]
    return job


def mistyped(draw, value):
    """One slip of the pen in a number, with its unit left as it is."""
    number, _, unit = str(value).partition(" ")
    digits = [i for i, c in enumerate(number) if c.isdigit()]
    kind = draw.choice(["point", "point", "swap", "digit", "twice", "lost"])
    if kind == "point":
        slipped = f"{float(number) * draw.choice([10, 0.1]):.4g}"
    elif kind == "swap" and len(digits) > 1:
        at = draw.randrange(len(digits) - 1)
        letters = list(number)
        letters[digits[at]], letters[digits[at + 1]] = letters[digits[at + 1]], letters[digits[at]]
        slipped = "".join(letters)
    elif kind == "twice":
        at = draw.choice(digits)
        slipped = number[:at] + number[at] + number[at:]
    elif kind == "lost" and len(digits) > 1:
        at = draw.choice(digits)
        slipped = number[:at] + number[at + 1:]
    else:
        at = draw.choice(digits)
        slipped = number[:at] + str(draw.randint(0, 9)) + number[at + 1:]
    try:
        float(slipped)
    except ValueError:
        return value
    return float(slipped) if isinstance(value, (int, float)) else f"{slipped} {unit}".strip()


def with_slip(draw, job):
    job = copy.deepcopy(job)
    main = job["procedures"]["main"]
    if draw.random() < 0.1:
        main["voltage"], main["current"] = main["current"].replace("A", "V"), main["voltage"].replace("V", "A")
        return job, "volts and amps swapped"
    # Every figure is as likely; of the readings, of which there are many, one in three slips.
    paths = fields(job)
    few = [path for path in paths if ".worn." not in path]
    path = draw.choice(few) if draw.random() < 2 / 3 else draw.choice([path for path in paths if ".worn." in path])
    before = value_at(job, path)
    put(job, path, mistyped(draw, before))
    return job, f"{path}: {before} -> {value_at(job, path)}"


def planned(program, jobs):
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "jobs.jsonl"
        file.write_text("".join(json.dumps(job) + "\n" for job in jobs), encoding="utf-8")
        done = subprocess.run([program, "batch", str(file)], capture_output=True, text=True, check=False)
    return [json.loads(line) for line in done.stdout.splitlines()]


def matters(honest_plan, slipped_plan):
    """Whether a slip changes what is loaded, how long it takes, or how hot it is made."""
    def far(path, most):
        one, other = (plan["totals"].get(path) for plan in (honest_plan, slipped_plan))
        return one is not None and other is not None and abs(other - one) > most * one
    one, other = (plan["bores"][0]["heat"].get("preheat_min_degC") for plan in (honest_plan, slipped_plan))
    return far("wire_kg", 0.2) or far("elapsed_s", 0.5) or (one is not None and other is not None and abs(one - other) >= 30)


def main(program, honest_count, slip_count, seed):
    draw = random.Random(seed)
    jobs = [honest(draw) for _ in range(honest_count)]
    plans = planned(program, jobs)
    sound = [(job, plan) for job, plan in zip(jobs, plans) if "faults" not in plan]
    refused = [plan["faults"][0] for plan in plans if "faults" in plan]
    doubted = [plan["doubts"] for _job, plan in sound if plan["doubts"]]
    for doubts in doubted[:10]:
        print("doubted:", [one["text"] for one in doubts])
    for fault in refused[:3]:
        print("refused:", fault)
    share = len(doubted) / max(1, len(sound))
    print(f"{len(sound)} honest jobs planned of {honest_count}, {len(doubted)} doubted: {100 * share:.2f} %")

    bases = [sound[draw.randrange(len(sound))] for _ in range(slip_count)]
    slipped = [with_slip(draw, job) for job, _plan in bases]
    seen, passed, unseen = 0, 0, []
    for (_job, before), (_slip, what), after in zip(bases, slipped, planned(program, [job for job, _what in slipped])):
        if "faults" in after:
            seen += 1
        elif matters(before, after):
            seen += bool(after["doubts"])
            if not after["doubts"]:
                unseen.append(what)
        else:
            passed += 1
    weighty = seen + len(unseen)
    for what in unseen[:25]:
        print("not seen:", what)
    print(f"{weighty} slips of {slip_count} matter or are refused, seen {seen}: {100 * seen / max(1, weighty):.1f} %; {passed} change little")
    enough = len(sound) >= 0.95 * honest_count and weighty >= slip_count / 8
    return 0 if enough and share < MOST_DOUBTED and seen >= LEAST_SEEN * weighty else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], int(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4])))
