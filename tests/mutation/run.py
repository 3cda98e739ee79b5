#!/usr/bin/python3
"""Changes one arithmetic operator or one number of the computation at a time and asks whether a test notices.

    cmake -S . -B build/mutation -G Ninja -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_FLAGS_RELEASE=-O1 \\
        -DBUILD_SHARED_LIBS=ON -DCMAKE_EXPORT_COMPILE_COMMANDS=ON
    cmake --build build/mutation && nice python3 tests/mutation/run.py --resume

Results stand in build/mutation/mutants.jsonl, a line a mutant. What survives and may is in survivors.json beside this
file, with its reason. The status is 1 if a mutant survives that is not there."""

import argparse
import collections
import concurrent.futures
import json
import random
import shutil
import sys
import tempfile
import threading
import time
from pathlib import Path

from mutants import find_mutants
from program import SLOW, TESTS, Program

ROOT = Path(__file__).resolve().parents[2]
ROOMS = ["weld", "survey", "heat", "boring", "take"]


def all_mutants(only):
    found = []
    for suffix in ("*.cpp", "*.hpp"):  # a header costs many compilations: last
        for room in ROOMS:
            for path in sorted((ROOT / "lib" / "ringfill" / room).glob(suffix)):
                file = f"{room}/{path.name}"
                if not only or any(part in file for part in only):
                    found += find_mutants(file, path.read_text())
    return found


def read_results(path):
    if not path.exists():
        return {}
    rows = [json.loads(line) for line in path.read_text().splitlines()]
    return {row["key"]: row for row in rows}


class Run:
    def __init__(self, program, results_path, slow):
        self.program, self.path, self.lock, self.slow = program, results_path, threading.Lock(), slow
        self.limits = {}

    def tests_of(self, room):
        """The own room's first; a room before it knows nothing of it."""
        later = [name for name in TESTS if name not in ROOMS[:ROOMS.index(room) + 1]]
        return [room, *later, *(SLOW if self.slow else [])]

    def measure(self):
        """The tests over the library as it is must pass; what they take bounds what a mutant may."""
        failed, taken = self.program.run_tests(self.program.build / "lib", self.tests_of(ROOMS[0]), {})
        if failed:
            sys.exit(f"{failed}_tests fails without a mutant")
        # a source is compiled quickly, not made quick, and the machine may be busy with other work
        self.limits = {name: 5 * seconds + 10 for name, seconds in taken.items()}

    def one(self, mutant, folder):
        begin = time.monotonic()
        text = (ROOT / "lib" / "ringfill" / mutant.file).read_text()
        if not self.program.build_mutant(mutant, text, folder):
            caught_by, by = "compiler", {}
        else:
            caught_by, by = self.program.run_tests(folder, self.tests_of(mutant.file.split("/")[0]), self.limits,
                                                     Path(mutant.file).stem)
        row = {"key": mutant.key, "line": mutant.line, "caught_by": caught_by, "seconds": round(time.monotonic() - begin, 2)}
        with self.lock, self.path.open("a") as out:
            out.write(json.dumps(row) + "\n")
        if not caught_by:
            print(f"survives: {mutant.file}:{mutant.line}: {mutant.old} -> {mutant.new or 'nothing'} ({mutant.which}): {mutant.code}",
                  flush=True)

    def all(self, mutants, workers):
        free = [Path(tempfile.mkdtemp(prefix="mutant_", dir=self.program.build)) for _ in range(workers)]
        folders = list(free)

        def work(mutant):
            with self.lock:
                folder = free.pop()
            try:
                self.one(mutant, folder)
            finally:
                with self.lock:
                    free.append(folder)

        with concurrent.futures.ThreadPoolExecutor(workers) as pool:
            list(pool.map(work, mutants))
        for folder in folders:
            shutil.rmtree(folder)


def summary(mutants, results, known):
    """Prints the figures by room; the number of survivors without a reason."""
    count = collections.defaultdict(collections.Counter)
    unknown = []
    for mutant in mutants:
        row = results.get(mutant.key)
        what = ("not run" if row is None else "did not compile" if row["caught_by"] == "compiler" else
                "caught" if row["caught_by"] else "survived, known" if mutant.key in known else "survived, unknown")
        for group in (mutant.file.split("/")[0], "all"):
            count[group][what] += 1
        if what == "survived, unknown":
            unknown.append(mutant)
    columns = ["not run", "did not compile", "caught", "survived, known", "survived, unknown"]
    print(f"{'room':8}{'mutants':>9}" + "".join(f"{name:>19}" for name in columns) + f"{'caught of compiled':>20}")
    for group in [*ROOMS, "all"]:
        row = count[group]
        compiled = row["caught"] + row["survived, known"] + row["survived, unknown"]
        share = f"{100 * row['caught'] / compiled:.1f} %" if compiled else "-"
        print(f"{group:8}{sum(row.values()):9}" + "".join(f"{row[name]:19}" for name in columns) + f"{share:>20}")
    both = count["all"]["caught"] + count["all"]["did not compile"]
    run = sum(count["all"].values()) - count["all"]["not run"]
    if run:
        print(f"with those that did not compile: {100 * both / run:.1f} % of {run}")
    for mutant in unknown:
        print(f"unknown: {mutant.file}:{mutant.line}: {mutant.key}")
    for key in sorted(set(known) - {mutant.key for mutant in mutants}):
        print(f"no longer there: {key}")
    return len(unknown)


def main():
    ask = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    ask.add_argument("--build", type=Path, default=ROOT / "build" / "mutation")
    ask.add_argument("--only", action="append", help="a part of a file's name, as weld/layers; may be repeated")
    ask.add_argument("--sample", type=int, help="so many, drawn with a fixed seed")
    ask.add_argument("--resume", action="store_true", help="leave out what has been run")
    ask.add_argument("--again", action="store_true", help="run what survived and is not known to, and that alone")
    ask.add_argument("--slow", action="store_true", help="the tests of minutes too, as --again --slow asks them of what survived")
    ask.add_argument("--workers", type=int, default=1)
    ask.add_argument("--summary", action="store_true", help="run nothing")
    told = ask.parse_args()

    mutants = all_mutants(told.only)
    if told.sample:
        mutants = random.Random(1).sample(mutants, min(told.sample, len(mutants)))
    results_path = told.build / "mutants.jsonl"
    known = json.loads((Path(__file__).parent / "survivors.json").read_text())
    if not told.summary:
        before = read_results(results_path)
        chosen = mutants
        if told.again:
            chosen = [one for one in mutants if before.get(one.key, {}).get("caught_by") == "" and one.key not in known]
        elif told.resume:
            chosen = [one for one in mutants if one.key not in before]
        program = Program(told.build, ROOT)
        chosen.sort(key=program.cost)  # what is soon done first
        run = Run(program, results_path, told.slow)
        run.measure()
        run.all(chosen, told.workers)
    sys.exit(1 if summary(mutants, read_results(results_path), known) else 0)


if __name__ == "__main__":
    main()
