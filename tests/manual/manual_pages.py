"""The manual pages: no fault of form, nothing missing, and every example of them tried.

Arguments: the program, the folder of the pages.
"""
import json
import re
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent.parent / "schema"))
from plain_json import read
from program import Program

PROGRAM, PAGES = Program(sys.argv[1]), Path(sys.argv[2])
NAMES = ["ringfill.1", "ringfill-job.5"]


def shown(name):
    """A page as a reader sees it, on a screen so wide that no example is broken."""
    page = subprocess.run(["mandoc", "-Tutf8", "-O", "width=400", PAGES / name], check=True, capture_output=True, text=True)
    return re.sub(".\b", "", page.stdout)  # bold is struck twice


def section(page, title):
    return re.search(rf"^{title}\n(.*?)(?=^\S|\Z)", page, re.M | re.S)[1]


PAGE = {name: shown(name) for name in NAMES}
FIELDS = re.findall(r"^ {5}(\S[\w.\[\]]*)(?: {2}[^\n]*)?\n(.*?)(?=^ {5}\S|\Z)", section(PAGE["ringfill-job.5"], "FIELDS OF A JOB"), re.M | re.S)
WHOLE_JOB = section(PAGE["ringfill-job.5"], "EXAMPLES").partition("A whole job:")[2]


JOB_ON_ONE_LINE = json.dumps(read((Path(__file__).parents[2] / "cli/demo/sluice-gate-lugs.json").read_text())) + "\n"
BY_DIAMETER = {"bores[].worn": {"diameter": "93 mm"}}
# What must stand differently in the job that the page shows before a field can have its example.
BESIDE = {
    "procedures.NAME.deposition_rate": {"procedures": {"main": {
        "filler": "steel/E7018", "wire": "3.2 mm", "current": "110 A", "voltage": "22 V", "travel": "150 mm/min"}}},
    "bores[].size_limits": {"bores[].size_class": None},
    "bores[].worn.diameter": {"bores[].worn": {}},
    "bores[].worn.offset": BY_DIAMETER,
    "bores[].worn.offset_clock": BY_DIAMETER,
    "bores[].worn.stations[].diameters": {"bores[].worn.stations": [{"depth": "5 mm"}]},
    "bores[].holes[].other_end": {"bores[].holes": [{"diameter": "10 mm", "depth": "50 mm", "clock": "90 deg"}]},
}


def put(job, path, value):
    """Puts a value into a job at a path such as bores[].worn.diameter, or takes it out; what is missing on the way is made."""
    steps = path.replace(".NAME", "{}").split(".")
    for step in steps[:-1]:
        name = step.rstrip("[]{}")
        if step.endswith("[]"):
            job = job.setdefault(name, [{}])[0]
        elif step.endswith("{}"):
            inner = job.setdefault(name, {"main": {}})
            job = inner[next(iter(inner))]
        else:
            job = job.setdefault(name, {})
    if value is None:
        del job[steps[-1]]
    else:
        job[steps[-1]] = value


class ManualPages(unittest.TestCase):
    maxDiff = None

    def faults_at(self, path, value):
        """What the program says about a field that has a value in the job that the page shows."""
        job = read(WHOLE_JOB)
        for beside, other in BESIDE.get(path, {}).items():
            put(job, beside, other)
        put(job, path, value)
        with tempfile.TemporaryDirectory() as folder:
            (Path(folder) / "job.json").write_text(json.dumps(job, indent=1))
            said = PROGRAM.run("check", "job.json", folder=folder)
        place = re.escape(path).replace(r"\[\]", r"\[0\]").replace(r"\.NAME", r"\.main")
        return re.findall(rf"^job\.json:\d+:\d+: {place}[.:\[].*", said.stderr, re.M)

    def test_the_pages_have_no_fault_of_form(self):
        for name in NAMES:
            found = subprocess.run(["mandoc", "-Tlint", "-Wstyle", PAGES / name], capture_output=True, text=True)
            # The two name each other and are not installed here.
            told = [line for line in found.stdout.splitlines() if "referenced manual not found: Xr ringfill" not in line]
            self.assertEqual(told, [])

    def test_every_command_and_option_is_told_with_the_command_it_belongs_to(self):
        commands = PROGRAM.commands()
        self.assertGreaterEqual(len(commands), 10)
        page = PAGE["ringfill.1"]
        told = section(page, "DESCRIPTION").partition("The commands:")[2]
        for command in commands:
            self.assertRegex(section(page, "SYNOPSIS"), rf"ringfill {command} \[option ...\]")
            own = re.search(rf"^ {{5}}{command} .*?Options: (.*?)\.$", told, re.M | re.S)[1]
            names = re.findall(r"(?<![\w-])--?\w+", own)
            self.assertEqual(sorted(names + ["-h", "--help"]), sorted(PROGRAM.options(command)))
            for name in names:
                self.assertRegex(section(page, "OPTIONS"), rf"(?m)^ {{5}}.*{name}\b", name)

    def test_every_exit_status_of_the_help_is_told(self):
        statuses = re.findall(r"^  (\d+) +(.*)$", PROGRAM.run("--help").stdout, re.M)
        self.assertGreaterEqual(len(statuses), 6)
        for number, meaning in statuses:
            self.assertRegex(section(PAGE["ringfill.1"], "EXIT STATUS"), rf"(?m)^ {{5}}{number} +{re.escape(meaning)}$")

    def test_every_example_runs_as_it_stands_one_after_the_other(self):
        lines = re.findall(r"^ +\$ (.*)$", section(PAGE["ringfill.1"], "EXAMPLES"), re.M)
        self.assertGreaterEqual(len(lines), len(PROGRAM.commands()))
        for command in PROGRAM.commands():
            self.assertTrue(any(f"ringfill {command}" in line for line in lines), command)
        with tempfile.TemporaryDirectory() as folder:
            (Path(folder) / "jobs.jsonl").write_text(JOB_ON_ONE_LINE * 2)  # what a user of batch has at hand
            for line in lines:
                with self.subTest(line):
                    before = set(Path(folder).iterdir())
                    done = PROGRAM.shell(line, folder)
                    self.assertEqual((done.returncode, done.stderr), (0, ""))
                    made = [one for one in Path(folder).iterdir() if one not in before and one.stat().st_size > 0]
                    self.assertTrue(done.stdout or made, "nothing came of it")

    def test_every_field_of_the_guide_is_told_and_no_other(self):
        guide = PROGRAM.run("start", "--fields").stdout
        self.assertEqual([path for path, _ in FIELDS], re.findall(r"^([a-z]\S*)$", guide, re.M))
        self.assertGreater(len(FIELDS), 80)

    def test_the_example_of_every_field_is_read(self):
        tried = 0
        for path, told in FIELDS:
            name = path.rpartition(".")[2]
            example = re.search(rf'^ +"{name}": (.*)$', told, re.M)
            with self.subTest(path):
                if not example:
                    self.assertIn(path, ("procedures", "bores"), "only what is shown in the whole job may have none")
                    continue
                self.assertEqual(self.faults_at(path, read(example[1])), [])
                self.assertNotEqual(self.faults_at(path, [None]), [], "a wrong value must be told")
                tried += 1
        self.assertGreater(tried, 80)

    def test_the_whole_job_is_planned(self):
        with tempfile.TemporaryDirectory() as folder:
            (Path(folder) / "job.json").write_text(WHOLE_JOB)
            done = PROGRAM.run("take", "job.json", folder=folder)
        self.assertEqual((done.returncode, done.stderr), (0, ""))
        self.assertIn("TAKE", done.stdout)

    def test_every_unit_that_is_told_is_read_and_of_its_kind(self):
        kinds = re.findall(r"^ {5}(an? .*?) such as .*\n +(.*)$", section(PAGE["ringfill-job.5"], "QUANTITIES"), re.M)
        self.assertGreaterEqual(len(kinds), 14)
        guide = PROGRAM.run("start", "--fields").stdout
        for kind, units in kinds:
            paths = re.findall(rf"^(\S+)\n.*\n    (?:.*; each )?{kind} such as", guide, re.M)
            self.assertTrue(paths, f"a field takes {kind}")
            for unit in units.split(", "):
                with self.subTest(unit):
                    said = " ".join(self.faults_at(paths[0], f"1 {unit}"))
                    self.assertNotIn("unit", said.replace("out of range", ""))
        self.assertIn("is not known", " ".join(self.faults_at("bores[].length", "1 furlong")))


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=1)
