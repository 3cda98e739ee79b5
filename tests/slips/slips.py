"""Slips of the pen, a file a rule: the job with the slip is told in so many words, its twin without raises nothing.

Arguments: the program. A file has what it changes on the sound job first ("on"), then the slip, and what is told of that:
the whole text of each doubt, or of each fault after "FAULT ".
"""
import copy
import json
import subprocess
import sys
import tempfile
from pathlib import Path

HERE = Path(__file__).parent


def put(job, path, value):
    """Sets the value at bores.0.length; null takes it out."""
    *way, last = path.split(".")
    for step in way:
        job = job[int(step)] if isinstance(job, list) else job.setdefault(step, {})
    if isinstance(job, list):
        job[int(last)] = value
    elif value is None:
        job.pop(last, None)
    else:
        job[last] = value


def changed(job, changes):
    job = copy.deepcopy(job)
    for path, value in copy.deepcopy(changes).items():
        put(job, path, value)
    return job


def told(answer):
    if "faults" in answer:
        return [f"FAULT {one['path']}: {one.get('value', '')} {one['reason']}; {one.get('remedy', '')}" for one in answer["faults"]]
    return [one["text"] for one in answer["doubts"]]


def main(program):
    sound = json.loads((HERE / "sound.json").read_text(encoding="utf-8"))
    rules = {file.stem: json.loads(file.read_text(encoding="utf-8")) for file in sorted(HERE.glob("*.json")) if file.stem != "sound"}
    lines = [sound]
    for rule in rules.values():
        twin = changed(sound, rule["on"])
        lines += [twin, changed(twin, rule["slip"])]
    with tempfile.TemporaryDirectory() as folder:
        jobs = Path(folder) / "jobs.jsonl"
        jobs.write_text("".join(json.dumps(line) + "\n" for line in lines), encoding="utf-8")
        done = subprocess.run([program, "batch", str(jobs)], capture_output=True, text=True, check=False)
    answers = [told(json.loads(line)) for line in done.stdout.splitlines()]
    wrong = [] if answers[0] == [] else [f"sound: {answers[0]}"]
    for at, (name, rule) in enumerate(rules.items()):
        twin, slip = answers[2 * at + 1], answers[2 * at + 2]
        if twin:
            wrong.append(f"{name}: the twin raises {twin}")
        if slip != rule["told"] or not slip:
            wrong.append(f"{name}: told {slip}, not {rule['told']}")
    print("\n".join(wrong) or f"{len(rules)} rules, each told with its slip and silent without")
    return 1 if wrong or len(rules) < 60 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
