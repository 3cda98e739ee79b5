"""The library with one mutant in it, and the tests over it. Nothing in the tree changes: a mutated source stands in the
build folder, a mutated header in a folder that is searched first, and the tests load the library linked there."""

import json
import os
import re
import resource
import shlex
import shutil
import subprocess
import time
from pathlib import Path

# In the order of likelihood; the own room's tests go before all of them.
TESTS = ["published", "working", "plan", "weld", "boring", "day", "quote", "caution", "job", "heat", "survey", "take"]
SLOW = ["report", "identity"]  # seconds to minutes: for what survives all others
LONGEST_TEST = 900  # seconds of processor: an endless mutant ends even when nobody waits for it any more
ROOM_FOR_TESTS = 4 << 30  # bytes: a count that runs away shall not take the machine with it


def limited():
    resource.setrlimit(resource.RLIMIT_AS, (ROOM_FOR_TESTS, ROOM_FOR_TESTS))
    resource.setrlimit(resource.RLIMIT_CPU, (LONGEST_TEST, LONGEST_TEST))


def quiet(command, **more):
    return subprocess.run(command, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, **more)


def named(text, mutant):
    """What a line of a header declares, and the structure it stands in."""
    declared = re.search(r"(\w+)(?:\([^)]*\)(?: const)?)?\s*(?:=|\{|$)", re.sub(r"\s*//.*", "", mutant.code))
    structure = re.findall(r"^(?:struct|class|enum class) (\w+)", text[:mutant.start], re.MULTILINE)
    inside = structure and not re.search(r"^};", text[text.rfind(structure[-1], 0, mutant.start):mutant.start], re.MULTILINE)
    return ([declared[1]] if declared else [mutant.code.split()[0]]) + (structure[-1:] if inside else [])


class Program:
    def __init__(self, build, root):
        self.build, self.lib = build, root / "lib"
        self.sources = {}  # source -> (object, command)
        for row in json.loads((build / "compile_commands.json").read_text()):
            if "/lib/ringfill/" in row["file"]:
                command = shlex.split(row["command"])
                self.sources[row["file"]] = (build / command[command.index("-o") + 1], command)
        self.prefix = self.precompiled()
        self.includers = self.read_includers()
        self.made_of = {}
        self.link = self.link_command()

    def precompiled(self):
        """The headers of the library once more, for sources that are compiled quickly rather than made quick."""
        command = next(iter(self.sources.values()))[1]
        header = self.build / "mutation.hpp"
        if "-include" not in command:
            return []
        # Anew each time: with one older than a header every mutant of that header would seem not to compile.
        shutil.copy(command[command.index("-include") + 1], header)
        subprocess.run([*self.flags(command), "-x", "c++-header", "-w", str(header), "-o", f"{header}.gch"], check=True, cwd=self.build)
        return ["-include", str(header)]

    @staticmethod
    def flags(command):
        """The compiler and what it needs to know, without its files and its zeal."""
        kept, i = [], 0
        while i < len(command):
            if command[i] in ("-include", "-o", "-c"):
                i += 2
                continue
            if not command[i].startswith(("-O", "-Winvalid-pch", "-Werror")):
                kept.append(command[i])
            i += 1
        return [*kept, "-O0", "-g0", "-w"]

    def read_includers(self):
        """Header -> the sources of the library that include it, as the build has found them."""
        by_object = {str(made.relative_to(self.build)): source for source, (made, _) in self.sources.items()}
        includers, source = {}, None
        told = subprocess.run(["ninja", "-t", "deps"], cwd=self.build, capture_output=True, text=True, check=True).stdout
        for line in told.splitlines():
            if not line.startswith(" "):
                source = by_object.get(line.split(":")[0])
            elif source and line.strip().startswith(str(self.lib)):
                includers.setdefault(line.strip(), []).append(source)
        return includers

    def cost(self, mutant):
        """How many sources must be compiled."""
        path = self.lib / "ringfill" / mutant.file
        return 1 if path.suffix == ".cpp" else max(1, len(self.users(path, path.read_text(), mutant)))

    def users(self, header, text, mutant):
        """The sources that include a header and name what a mutant stands in: its constant, function or structure.
        What another source makes of it without naming it stays as it was, so that this may miss, never invent."""
        names = named(text, mutant)
        if names[0] in self.constants():  # another constant or inline function may be made of it
            names += self.constants()[names[0]]
        word = re.compile(r"\b(?:%s)\b" % "|".join(map(re.escape, names)))
        return [source for source in self.includers.get(str(header), []) if word.search(Path(source).read_text())]

    def constants(self):
        """Constant -> what headers declare on the lines that mention it."""
        if not self.made_of:
            for header in self.includers:
                for line in Path(header).read_text().splitlines():
                    if declared := re.match(r"inline (?:constexpr|const) [\w:<>]+ (\w+) = (.*)", line):
                        self.made_of.setdefault(declared[1], [])
                        for other in re.findall(r"[a-z_]\w+", declared[2]):
                            self.made_of.setdefault(other, []).append(declared[1])
        return self.made_of

    def link_command(self):
        told = subprocess.run(["ninja", "-t", "commands", "lib/libringfill.so"], cwd=self.build, capture_output=True, text=True,
                              check=True).stdout.strip().splitlines()[-1]
        command = shlex.split(told.split("&&")[1])  # between CMake's ": &&" and "&& :"
        command[command.index("-o") + 1] = "libringfill.so"
        # Its own inline functions and constants before those of the tests, which are not built anew.
        return [*command, "-Wl,-Bsymbolic"]

    def build_mutant(self, mutant, text, folder):
        """False where it does not compile."""
        path = self.lib / "ringfill" / mutant.file
        over = folder / "include"
        shutil.rmtree(over, ignore_errors=True)
        if path.suffix == ".cpp":
            told = [(str(path), folder / path.name)]
            (folder / path.name).write_text(mutant.applied(text))
        else:
            told = [(source, Path(source)) for source in self.users(path, text, mutant)]
            (over / "ringfill" / mutant.file).parent.mkdir(parents=True)
            (over / "ringfill" / mutant.file).write_text(mutant.applied(text))
        replaced = {}
        for i, (source, compiled) in enumerate(told):
            made, command = self.sources[source]
            flags = self.flags(command)
            flags[1:1] = [f"-I{over}"]
            if quiet([*flags, *self.prefix, "-o", str(folder / f"{i}.o"), "-c", str(compiled)], cwd=self.build).returncode:
                return False
            replaced[str(made.relative_to(self.build))] = str(folder / f"{i}.o")
        # The mutated ones first: of what stands in several, as inline functions and constants, the linker takes the first.
        first = next(i for i, part in enumerate(self.link) if part.endswith(".o"))
        link = [*self.link[:first], *replaced.values(), *(part for part in self.link[first:] if part not in replaced)]
        link[link.index("-o") + 1] = str(folder / "libringfill.so")
        subprocess.run(link, cwd=self.build, check=True, capture_output=True)
        return True

    def run_tests(self, folder, names, limits, stem=""):
        """The first test program that fails, "" where all pass, and how long each took. The tests that bear the name of
        the source go first."""
        taken = {}
        own = [(names[0], ["-#", f"[#{stem}_test]"])] if stem else []
        for name, chosen in own + [(name, []) for name in names]:
            begin = time.monotonic()
            command = [str(self.build / "tests" / f"{name}_tests"), "--abort", *chosen]
            try:
                failed = quiet(command, cwd=self.build, timeout=limits.get(name, 600), preexec_fn=limited,
                               env={**os.environ, "LD_LIBRARY_PATH": str(folder)}).returncode != 0
            except subprocess.TimeoutExpired:
                failed, name = True, name + " (hangs)"
            taken[name] = time.monotonic() - begin
            if failed:
                return name, taken
        return "", taken
