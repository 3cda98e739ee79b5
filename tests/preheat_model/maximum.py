"""The maximum between rings."""
import math

import composition
import grades
import shown
from steel import listed_in_named


def group_maximum(steel, minimum):
    """The group's maximum; practice alone gives way to minimum + 50 K. None for metal without one."""
    own = steel.grade.get("interpass_max_degC")
    if own is not None and own[1] != "practice":
        return own[0]
    named = steel.case.welding_rules if listed_in_named(steel) else None
    wall = math.inf if steel.case.wall is None else steel.case.wall  # "neither known: the thickest row"
    for row in steel.group.get("interpass_max_degC", []):
        if wall > row.get("up_to_mm", math.inf) or row.get("document", named) != named:
            continue
        value = row["value"]
        if row["source"] == "practice" and "gives_way_to_degC" in steel.group and minimum is not None:
            value = max(value, min(minimum + 50, grades.limit(steel.group["gives_way_to_degC"])))
        return value
    return None


def dissimilar(steel):
    """A filler of another kind on steel: layer 1 goes by the base metal, its own maximum holds from layer 2 on."""
    other = steel.filler["group"] in composition.AUSTENITIC_NICKEL_COPPER
    return other and steel.grade["structure"] in ("ferritic", "martensitic")


def maximum_of(steel, minimum, rows):
    """The lowest of documents, tempering - 50 K and the group's, shown; of a filler of the same kind its own too."""
    inch = steel.case.inch
    found = []
    for _name, _table, row in rows:
        printed = shown.printed(row, "maximum", inch, math.floor)
        if printed is not None:
            found.append(printed)
    values = [group_maximum(steel, minimum)]
    if "tempering_degC" in steel.grade:
        values.append(grades.limit(steel.grade["tempering_degC"]) - 50)
    if "interpass_max_degC" in steel.filler and not dissimilar(steel):
        values.append(grades.limit(steel.filler["interpass_max_degC"]))
    for value in values:
        if value is not None:
            found.append(shown.printed({"maximum_degC": [value]}, "maximum", inch, math.floor))
    return min(found) if found else None
