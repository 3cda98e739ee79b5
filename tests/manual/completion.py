"""The completion for bash, asked as bash asks it.

Arguments: the program, the folder of the completion.
"""
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

from program import Program

PROGRAM, PAGES = Program(sys.argv[1]), Path(sys.argv[2])

ASK = """
source "$1"; shift
set -- ringfill "$@"
COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1))
$(complete -p ringfill | sed 's/.*-F \\([^ ]*\\).*/\\1/')
printf '%s\\n' "${COMPREPLY[@]}"
"""


def offered(*words, folder="."):
    """What is offered for the last of the words."""
    asked = subprocess.run(["bash", "--norc", "-c", ASK, "ask", PAGES.resolve() / "ringfill.bash", *words], cwd=folder, check=True,
                           capture_output=True, text=True)
    assert asked.stderr == "", asked.stderr
    return [line for line in asked.stdout.split("\n") if line]


class Completion(unittest.TestCase):
    def test_the_first_word_is_a_command(self):
        self.assertEqual(sorted(offered("")), sorted(PROGRAM.commands() + ["--help", "--version"]))
        self.assertEqual(offered("pas"), ["passes"])
        self.assertEqual(offered("--v"), ["--version"])

    def test_each_command_is_offered_its_own_options(self):
        for command in PROGRAM.commands():
            self.assertEqual(sorted(offered(command, "-")), sorted(PROGRAM.options(command)), command)
        self.assertEqual(offered("sheet", "job.json", "--un"), ["--units"])
        self.assertEqual(offered("sheet", "job.json", "--js"), [])

    def test_files_folders_and_unit_systems(self):
        with tempfile.TemporaryDirectory() as folder:
            (Path(folder) / "a job.json").touch()
            (Path(folder) / "tables").mkdir()
            self.assertEqual(sorted(offered("take", "", folder=folder)), ["a job.json", "tables"])
            self.assertEqual(offered("a", folder=folder), ["a job.json"])
            (Path(folder) / "dredger.json").touch()
            self.assertEqual(offered("d", folder=folder), ["day", "dredger.json"])
            self.assertEqual(offered("a job.json", "--jso", folder=folder), ["--json"])
            self.assertEqual(offered("take", "--tables", "", folder=folder), ["tables"])
            self.assertEqual(offered("take", "-o", "a", folder=folder), ["a job.json"])
            self.assertEqual(offered("materials", "", folder=folder), [])
        self.assertEqual(offered("take", "--units", ""), ["mm", "inch"])
        self.assertEqual(offered("check", "--schema", ""), ["job", "result"])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=1)
