"""Job files for the sheets, and the pages and results that the program makes of them."""
import json
import re
import subprocess


def plain_json(text):
    """A job file without its comments and trailing commas."""
    text = re.sub(r'("(?:\\.|[^"\\])*")|//[^\n]*', lambda found: found[1] or "", text)
    return json.loads(re.sub(r",(\s*[}\]])", r"\1", text))


def layered(layers):
    """A bore that takes so many layers, with what a drawing can show beside it."""
    sizes = {2: ("90 mm", "93.4 mm", "180 mm"), 10: ("90 mm", "137 mm", "240 mm"), 40: ("150 mm", "362 mm", "540 mm")}
    finish, worn, boss = sizes[layers]
    name = "W" * 80 if layers == 10 else "arm root <b>&amp;"  # as long as a name may be, with nowhere to break
    return {
        "format": "ringfill-job/1", "title": f"Pivot of {layers} layers", "units": "mm",
        "procedures": {"main": {"filler": "steel/ER70S-6", "wire": "1.0 mm", "gas": "M21", "wire_feed": "6.5 m/min",
                                "current": "150 A", "voltage": "18.5 V", "travel": "320 mm/min"}},
        "bores": [{"name": name, "base": "steel/C45", "finish_diameter": finish, "size_class": "H9",
                   "length": "100 mm", "boss_diameter": boss, "worn": {"diameter": worn, "offset": "0.4 mm"},
                   "grooves": [{"diameter": f"{float(finish[:-3]) + 6} mm", "width": "4 mm"}],
                   "holes": [{"diameter": "10 mm", "depth": "50 mm", "clock": "90 deg"}]}],
    }


class Program:
    """The program, run on job files."""

    def __init__(self, path, folder):
        self.path, self.folder = path, folder

    def run(self, *words):
        done = subprocess.run([self.path, *words], capture_output=True, text=True, check=False)
        if done.returncode:
            raise SystemExit(f"{words}: status {done.returncode}: {done.stderr}")
        return done.stdout

    def page(self, job_file, name, *options):
        """Writes the page of a job; its path, and the result it must agree with."""
        path = f"{self.folder}/{name}.html"
        self.run("sheet", job_file, "-o", path, *options)
        return path, json.loads(self.run("take", job_file, "--json", *options))
