"""The program under test, run in a folder of its own, and what its help tells."""
import os
import re
import subprocess
from pathlib import Path


class Program:
    def __init__(self, path):
        self.path = Path(path).resolve()

    def shell(self, line, folder):
        """A line as typed in a shell that finds the program by its name."""
        environment = {**os.environ, "PATH": f"{self.path.parent}:{os.environ['PATH']}"}
        return subprocess.run(["bash", "-e", "-o", "pipefail", "-c", line], cwd=folder, env=environment, capture_output=True,
                              text=True, timeout=60)

    def run(self, *words, folder="."):
        return subprocess.run([self.path, *words], cwd=folder, capture_output=True, text=True, timeout=60)

    def commands(self):
        told = self.run("--help").stdout.partition("Subcommands:")[2].partition("\n\n")[0]
        return re.findall(r"^  (\w+) ", told, re.M)

    def options(self, command):
        """Every spelling of every option of a command."""
        told = self.run(command, "--help").stdout.partition("Options:")[2].partition("\n\n")[0]
        return [name for line in re.findall(r"^  (-\S+)", told, re.M) for name in line.split(",")]
