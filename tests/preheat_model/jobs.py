"""Random jobs of one bore, and the case of the model that each one is."""
import json

import composition
import grades
from case import Case

SKIM_RADIUS = 46.5  # mm: worn to 92 mm, 0.5 mm skimmed a side
DOCUMENTS = ["AWS D1.1", "US Army TI 809-26", "field procedure for A36", "NAVSEA S9074-AR-GIB-010/278",
             "ASME B31.3-2014", "ASME B31.3-2010"]
RANGES = {"C": (0.08, 0.45), "Mn": (0.5, 1.6), "Cr": (0.0, 1.6), "Mo": (0.0, 0.6), "Ni": (0.0, 2.0), "Cu": (0.0, 0.4),
          "V": (0.0, 0.1)}
WALLS = (3, 8, 12, 12.7, 15, 19, 19.05, 20, 25, 26, 30, 31, 38.1, 40, 45, 50, 55, 60, 63.5, 64, 75, 90, 100, 120)  # mm


def pairs():
    """Every base grade with every filler that goes with it."""
    fillers = [grades.filler(name) for name in grades.names("fillers")]
    rows = [grades.base(name) for name in grades.names("bases")]
    return [(f"{base['family']}/{base['name']}", f"{filler['family']}/{filler['name']}")
            for base in rows for filler in fillers
            if grades.suited(base, filler) or base["group"] == "unknown_steel"]


def certificate(draw, grade):
    """Full, partial or none: near the standard's maxima, now and then past one of them."""
    kind = draw.random()
    if grade["family"] != "steel" or kind < 0.5:
        return {}
    if grade["group"] == "unknown_steel":
        return {element: round(draw.uniform(*span), 3) for element, span in RANGES.items()}
    least = grades.percents(grade.get("composition_min_pct", {}))
    most = grades.percents(grade["composition_pct"])
    elements = composition.FULL if kind > 0.7 else draw.sample(composition.FULL, draw.randint(1, 4))
    metal = {}
    for element in elements:
        high = most.get(element, composition.RESIDUALS.get(element, 0.0))
        low = least.get(element, 0.6 * high)
        metal[element] = round(draw.uniform(low, high), 3)
    if draw.random() < 0.1 and "C" in metal:
        metal["C"] = round(most["C"] + draw.uniform(0.0, 0.04), 3)
    return metal


def welding(draw, filler):
    """The settings of a procedure, with or without the voltage that the heat input needs."""
    size = draw.choice(sorted(filler["diameters_mm"]))
    settings = {"filler": f"{filler['family']}/{filler['name']}", "wire": f"{size} mm",
                "travel": f"{draw.choice([180, 240, 320, 400])} mm/min",
                "current": f"{draw.choice([120, 160, 200, 280])} A"}
    if filler["form"] in ("solid", "cored"):
        settings["wire_feed"] = f"{draw.choice([4, 5.5, 7])} m/min"
    else:
        settings["deposition_rate"] = "1.2 kg/h"
    if filler.get("gases"):
        settings["gas"] = draw.choice(filler["gases"])
    if draw.random() < 0.75:
        settings["voltage"] = f"{draw.choice([18, 22, 28, 32])} V"
    if draw.random() < 0.5:
        settings["hydrogen_ml_100g"] = draw.choice([0.5, 1, 3, 4, 5, 6, 8, 10, 12, 15, 16, 18, 20, 25, 30])
    if filler["family"] == "steel" and draw.random() < 0.2:
        settings["deposit"] = {element: round(draw.uniform(*span) * 0.5, 3) for element, span in RANGES.items()}
    return settings


def approved(draw, settings, case):
    """A procedure that is approved, with one figure or more."""
    figures, told = {}, {"reference": "P-1"}
    if draw.random() < 0.7:
        figures["minimum"] = draw.choice([60, 100, 125, 150, 200, 250, 320])
        told["preheat_min"] = f"{figures['minimum']} degC"
    if draw.random() < 0.6:
        figures["maximum"] = draw.choice([160, 200, 230, 250, 265, 300, 380])
        told["interpass_max"] = f"{figures['maximum']} degC"
    if draw.random() < 0.3:
        figures["hold"] = (draw.choice([200, 230, 260, 300]), 1.5)
        told["post_heat"] = {"temperature": f"{figures['hold'][0]} degC", "time": "1.5 h"}
    if draw.random() < 0.5:
        told["confirmed"] = figures["confirmed"] = True
    settings["approved"], case.approved = told, figures


def wall_of(draw, bore, case):
    """A wall from the boss, one that is told, or none."""
    wall, kind = draw.choice(WALLS), draw.random()
    bore["length"] = f"{draw.choice([40, 60, 100, 160, 260])} mm"
    length = float(bore["length"].split()[0])
    if kind < 0.85:
        bore["boss_diameter"] = f"{2 * (SKIM_RADIUS + wall)} mm"
        case.wall, case.product = wall, max(wall, length, SKIM_RADIUS + wall)
    elif kind < 0.95:
        bore["heat_wall"] = f"{wall} mm"
        case.wall, case.product = wall, max(wall, length)
    if draw.random() < 0.3:
        product = draw.choice([10, 30, 40, 41, 60, 100, 150, 200, 250, 300, 400, 500])
        bore["product_thickness"] = f"{product} mm"
        case.product = product


def drawn(draw, every_pair, number):
    """A job and its case; the heat input as laid is filled in from what the program lays."""
    base, filler_name = every_pair[number % len(every_pair)]
    grade, filler = grades.base(base), grades.filler(filler_name)
    settings = welding(draw, filler)
    case = Case(base, filler_name, gas=settings.get("gas", "none"), hydrogen=settings.get("hydrogen_ml_100g"),
                certificate=certificate(draw, grade), deposit=settings.get("deposit", {}), inch=draw.random() < 0.3)
    bore = {"name": "bore", "base": base, "finish_diameter": "90 mm", "worn": {"diameter": "92 mm"}, "skim": "0.5 mm"}
    wall_of(draw, bore, case)
    if case.certificate:
        bore["composition"] = case.certificate
    if "cev_max" in grade and draw.random() < 0.5:
        case.bought_after = bore["bought_after"] = draw.choice([1995, 2003, 2004, 2015])
    if grade["structure"] == "ferritic" and draw.random() < 0.15:
        case.carbon_equivalent = bore["carbon_equivalent"] = round(draw.uniform(0.35, 0.8), 2)
    if grade["structure"] == "ferritic" and filler["family"] == "steel" and draw.random() < 0.15:
        approved(draw, settings, case)
    if grade["group"] == "unknown_steel" and draw.random() < 0.6:
        case.magnetic = bore["magnetic"] = draw.random() < 0.7
    job = {"format": "ringfill-job/1", "title": "a random job", "units": "inch" if case.inch else "mm",
           "site": {"ambient": f"{draw.choice([-10, 4, 20, 30])} degC"}, "procedures": {"main": settings}, "bores": [bore],
           "torch": {"smallest_bore": "40 mm", "reach": "600 mm"}}
    if draw.random() < 0.3:
        case.welding_rules = job["welding_rules"] = draw.choice(DOCUMENTS)
    return job, case


def size(job):
    """How much a job says: of two that differ alike the smaller is shown."""
    return len(json.dumps(job))
