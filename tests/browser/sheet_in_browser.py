"""Opens the sheets of all demo jobs, and of bores of 2, 10 and 40 layers, in one browser and asks what a
reader would: does it say what the result says, does it fit the telephone and the paper, can it be read aloud, does it
stay by itself. Usage: sheet_in_browser.py PROGRAM DEMO-FOLDER. Exit status 1 and one line a fault."""
import json
import pathlib
import sys
import tempfile

from selenium import webdriver
from selenium.webdriver.chrome.service import Service

import looks
from figures import drawing_faults, figure_faults
from jobs import Program, layered, plain_json

CLOSING = "Local codes, the approved procedure and licensed practice prevail over everything here."


def browser():
    options = webdriver.ChromeOptions()
    options.binary_location = "/usr/bin/chromium"
    for word in ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--window-size=1000,1200"]:
        options.add_argument(word)
    options.set_capability("goog:loggingPrefs", {"browser": "ALL", "performance": "ALL"})
    driver = webdriver.Chrome(service=Service("/usr/bin/chromedriver"), options=options)
    driver.execute_cdp_cmd("Network.enable", {})
    return driver


def opened(driver, path):
    """Opens a page; what it asked for beside itself, and what the browser had to say."""
    driver.get_log("performance"), driver.get_log("browser")
    driver.get(f"file://{path}")
    faults = [f"console: {entry['message']}" for entry in driver.get_log("browser")]
    asked = []
    for entry in driver.get_log("performance"):
        message = json.loads(entry["message"])["message"]
        if message["method"] == "Network.requestWillBeSent":
            asked.append(message["params"]["request"]["url"])
    if asked != [f"file://{path}"]:
        faults.append(f"asked for {asked}")
    return faults


def page_faults(driver, path, result, job, folder, on_paper=True):
    faults = opened(driver, path)
    wrong, counts = figure_faults(driver, result, job)
    faults += wrong
    for name, least in [("data-figure", 60), ("data-figures", 3), ("data-text", 20), ("data-given", 1), ("data-inputs", 50)]:
        if counts.get(name, 0) < least:
            faults.append(f"only {counts.get(name, 0)} of {name}")
    wrong, circles = drawing_faults(driver, result["bores"], job)
    faults += wrong
    if circles < 3 * len(result["bores"]):
        faults.append(f"only {circles} circles carry a figure")
    faults += driver.execute_script(looks.STRUCTURE) + driver.execute_script(looks.CONTRAST)
    wrong, labels = driver.execute_script(looks.LABELS)
    faults += wrong
    if labels < 10 * len(result["bores"]):
        faults.append(f"only {labels} labels in the drawings")
    faults += looks.narrow_faults(driver) + looks.unsplit_faults(driver)
    if on_paper:
        faults += looks.paper_faults(driver, [bore["name"] for bore in result["bores"]], CLOSING, folder)
    return faults


def spoiled_are_noticed(driver, path, result, job, folder):
    """A page spoiled in one way each must be found out, else the checks see nothing."""
    page = pathlib.Path(path).read_text(encoding="utf-8")
    ways = {
        "a figure": ('build.skim_diameter_mm">', 'build.skim_diameter_mm">1'),
        "a unit": (" kg</span>", " lb</span>"),
        "a text": ('data-text="title">', 'data-text="title">x'),
        "a safe side": ("at least 150 °C", "at least 145 °C"),
        "a request": ("<h2 ", '<img src="other.png" alt=""/><h2 '),
        "a wide part": ("<h2 ", '<div style="width: 400px">x</div><h2 '),
        "faint text": ("<h2 ", '<p style="color: #999">x</p><h2 '),
        "an unmarked quantity": ("<h2 ", "<p>7 mm</p><h2 "),
        "a heading": ("<h2 ", "<h5>x</h5><h2 "),
        "labels": ("</svg>", '<text x="9" y="9">abc</text><text x="9" y="9">abc</text></svg>'),
        "a circle": (' r="', ' r="1'),
        "a bore in the middle of a sheet": ("section.bore, ", ""),
    }
    faults = []
    for way, (old, new) in ways.items():
        if old not in page:
            faults.append(f"no place to spoil {way}")
            continue
        spoiled = pathlib.Path(folder, "spoiled.html")
        spoiled.write_text(page.replace(old, new, 1), encoding="utf-8")
        if not page_faults(driver, str(spoiled), result, job, folder, on_paper="sheet" in way):
            faults.append(f"{way} was spoiled and nothing noticed it")
    return faults


def main(program_path, demos):
    faults = []
    with tempfile.TemporaryDirectory() as folder, browser() as driver:
        program = Program(program_path, folder)
        files = sorted(pathlib.Path(demos).glob("*.json"))
        for layers in (2, 10, 40):
            files.append(pathlib.Path(folder, f"{layers}-layers.json"))
            files[-1].write_text(json.dumps(layered(layers)), encoding="utf-8")
        for file in files:
            job = plain_json(file.read_text(encoding="utf-8"))
            other = "mm" if job.get("units") == "inch" else "inch"
            for options in ([], ["--units", other]) if file.stem in ("dredger-pivots", "every-field") else ([],):
                path, result = program.page(str(file), file.stem, *options)
                faults += [f"{file.stem} {options}: {fault}" for fault in page_faults(driver, path, result, job, folder)]
            if file.stem.endswith("-layers") and len(result["bores"][0]["layers"]) != int(file.stem.split("-")[0]):
                faults.append(f"{file.stem}: has {len(result['bores'][0]['layers'])} layers")
        small = pathlib.Path(demos, "barge-winch-frame.json")
        path, result = program.page(str(small), "whole")
        faults += spoiled_are_noticed(driver, path, result, plain_json(small.read_text(encoding="utf-8")), folder)
    print("\n".join(faults) or f"{len(files)} jobs: no fault")
    return 1 if faults or len(files) < 8 else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
