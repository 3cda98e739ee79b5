"""Quenched and wear plate."""
import math

import composition
import grades
import shown
from rows import row_for, row_minimum
from steel import METHOD_B, asked_by_documents


def typical_or_middle(steel):
    """The CET that a plate usually has: its row, else the middle of its composition."""
    if "typical_cet" in steel.grade:
        return composition.band(steel.grade["typical_cet"], steel.case.wall)["value"]
    least = grades.percents(steel.grade.get("composition_min_pct", {}))
    most = composition.maxima(steel.grade, steel.case.product)
    middle = {element: (value + least.get(element, 0.0)) / 2 for element, value in most.items()}
    return composition.index(composition.CET, middle)


def capped_b(steel, cet, limit):
    """Method B for quenched plate: at hydrogen to 5 no more than the maximum - 25 K. Told whether that cut it."""
    figure = shown.minimum(steel.method_b(cet), steel.case.inch)
    if steel.hydrogen <= 5 and figure > limit - 25 + shown.CLOSE:  # no more than that, so rounded down
        return (shown.maximum(limit - 25, steel.case.inch), METHOD_B), True
    return (figure, METHOD_B), False


def matching_row(steel):
    """The printed row that stands in place of the plate's own with consumables of its strength."""
    for name in steel.grade.get("preheat_groups", []):
        table = grades.family(steel.grade["family"])["preheat_groups"][name]
        if table.get("in_place_of_practice") and steel.filler["name"] in table["fillers"]:
            return name, table
    return None


def asked_of_plate(steel, limit):
    """Quenched and wear plate. The second value tells that method B was held back by what the plate allows."""
    case = steel.case
    asked = asked_by_documents(steel, steel.document_rows())
    full = composition.is_full(steel.certificate)
    cet = composition.index(composition.CET, steel.certificate) if full else typical_or_middle(steel)
    by_b, cut = capped_b(steel, cet, limit)
    matching = matching_row(steel)
    if matching is not None:
        # Whether a full certificate also takes the place of this row is open; the safe reading keeps both.
        name, table = matching
        asked.append((row_minimum(row_for(table["rows"], case.wall)[0], case.inch), name))
        over = steel.hydrogen > grades.limit(table["hydrogen_up_to_ml_100g"])
        beside = full or len(asked) > 1  # it takes the place of a maker's row alone, and there is none
        return (asked + [by_b], cut) if over or beside else (asked, False)
    practice = grades.practice(steel.grade)
    if practice is None or full:
        return asked + [by_b], cut
    row, past = row_for(practice["rows"], case.wall)
    least_heat = grades.limit(practice.get("heat_input_from_kJ_mm", [0]))
    most_hydrogen = grades.limit(practice.get("hydrogen_up_to_ml_100g", [math.inf]))
    asked.append((row_minimum(row, case.inch), f"practice for {case.base}"))
    outside = past or steel.hydrogen > most_hydrogen or least_heat > (case.heat_input or 0.5)
    return (asked + [by_b], cut) if outside else (asked, False)
