"""The families' tables as the model needs them: base metals, fillers, tables of least preheat, groups of metals."""
import json
from functools import lru_cache
from pathlib import Path

TABLES = Path(__file__).resolve().parents[2] / "tables"


@lru_cache(maxsize=None)
def family(name):
    return json.loads((TABLES / "families" / f"{name}.json").read_text(encoding="utf-8"))


def family_names():
    return sorted(path.stem for path in (TABLES / "families").glob("*.json"))


def whole(name, kind, form=None):
    """A base metal or filler with what its family says is usual."""
    house, row_name = name.split("/", 1)
    tables = family(house)
    row = tables[kind][row_name]
    usual = tables.get("usual", {}).get("bases" if kind == "bases" else row["form"], {})
    return {**usual, **row, "family": house, "name": row_name}


def base(name):
    return whole(name, "bases")


def filler(name):
    return whole(name, "fillers")


def names(kind):
    return [f"{house}/{row}" for house in family_names() for row in family(house).get(kind, {})]


def practice(grade):
    """The grade's own row of practice, or the one of the grade that it is treated by."""
    rows = grade.get("practice")
    while rows is None and "practice_of" in grade:
        grade = family(grade["family"])["bases"][grade["practice_of"]]
        rows = grade.get("practice")
    return rows


def heat_group(grade):
    """What metals of its kind share; iron has no group of this sort."""
    groups = family(grade["family"]).get("heat_groups", {})
    return groups.get(grade.get("heat_group", grade["group"]), {})


def limit(value):
    """The number of [number, source], or the number itself."""
    return value[0] if isinstance(value, list) else value


def percents(values):
    return {element: limit(value) for element, value in values.items()}


def tables_of(grade):
    """The tables whose document names the grade, by name; a grade without such a list goes by all it shows."""
    groups = family(grade["family"])["preheat_groups"]
    if "listed_in" in grade:
        listed = [name for name, _source in grade["listed_in"]]
    else:
        listed = grade.get("preheat_groups", [])
    return {name: groups[name] for name in listed}


def suited(base_row, filler_row):
    """Whether the filler goes on the metal, with or without a buffer: the rule that names more closely goes first."""
    rules = list(json.loads((TABLES / "suits.json").read_text(encoding="utf-8"))["suits"].values())
    for house in family_names():
        rules += family(house).get("suits", {}).values()
    care = {"recommended": 0, "with_buffer": 1, "not_advised": 2}
    found = []
    for rule in rules:
        closeness = 0
        for row, wanted in ((base_row, rule["bases"]), (filler_row, rule["fillers"])):
            if f"{row['family']}/{row['name']}" in wanted:
                closeness += 2
            elif row["group"] in wanted:
                closeness += 1
            else:
                break
        else:
            found.append((-closeness, -care[rule["verdict"]], rule["verdict"]))
    return bool(found) and min(found)[2] != "not_advised"
