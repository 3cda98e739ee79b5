"""The preheat rules of section 10 of the specification, written from its page alone, to be held against the program."""
import math
from dataclasses import replace

import afterwards
import approved
import composition
import grades
import hardness
import shown
from case import Answer
from maximum import dissimilar, maximum_of
from plate import asked_of_plate, capped_b, matching_row, typical_or_middle
from rows import row_for, row_minimum
from shown import DRY
from steel import Steel, asked_by_documents, asked_of_steel, demand_of_filler, listed_in_named, own_and_certificate
from unknown import asked_of_unknown, counts_as_quenched

NARROWEST = 15  # K between minimum and maximum


def unknown_group(certificate):
    """The class that the certificate belongs to; None leaves that of metal nobody can name."""
    if not composition.is_full(certificate):
        return None
    if counts_as_quenched(certificate):
        return {"hardenable": True, "as_quenched": True, "interpass_max_degC": [{"value": 200, "source": "quenched"}]}
    return grades.family("steel")["heat_groups"]["low_carbon_steel" if certificate["C"] <= 0.25 else "low_alloy_steel"]


def state_of(minimum, maximum):
    if maximum is not None and maximum - max(minimum, DRY) < NARROWEST - 1e-6:
        return "contradictory"
    return "none" if minimum <= DRY + 1e-9 else "figure"


def answered(steel, asked, rows, hold_for):
    """The highest that is asked rules, an approved procedure over it; a STOP carries no number."""
    if not asked and "minimum" not in steel.case.approved:
        return Answer("needed_without_figure")
    minimum = max([figure for figure, _name in asked] + [DRY])
    if steel.case.approved:
        return approved.ruled(steel, asked, minimum, rows, hold_for)
    return judged(asked, minimum, maximum_of(steel, minimum, rows), hold_for)


def judged(asked, minimum, maximum, hold_for):
    rules = tuple(name for figure, name in asked if abs(max(figure, DRY) - minimum) < 1e-6)
    state = state_of(minimum, maximum)
    if state == "contradictory":
        return Answer(state, None, None, rules + (minimum, maximum))
    return Answer(state, minimum, maximum, rules, hold_for(minimum, maximum))


def no_hold(_minimum, _maximum):
    return None


def plate_answer(steel, named):
    limit = maximum_of(steel, None, [])
    asked, cut = (asked_by_documents(steel, named), False) if named else asked_of_plate(steel, limit)
    if steel.foreign:
        on_it = composition.index(composition.CET, steel.metal(composition.CET, steel.case.certificate))
        by_b, held = capped_b(steel, on_it, limit)
        asked, cut = asked + [by_b], cut or held
    matching = matching_row(steel)
    rows = [(matching[0], matching[1], row_for(matching[1]["rows"], steel.case.wall)[0])] if matching and not named else []
    rows += named or steel.document_rows()
    return answered(steel, asked + demand_of_filler(steel), rows,
                    lambda low, high: afterwards.hold(steel, low, high, cut))


def unknown_answer(steel):
    certificate = steel.case.certificate
    quenched = composition.is_full(certificate) and counts_as_quenched(certificate)
    steel.group = unknown_group(certificate) or steel.group
    asked = asked_of_unknown(steel, 200 if quenched else None) + demand_of_filler(steel)
    return answered(steel, asked, [], no_hold if quenched else lambda low, high: afterwards.hold(steel, low, high, False))


def steel_answer(steel, named):
    asked = asked_by_documents(steel, named) if named else asked_of_steel(steel)
    if steel.foreign:
        asked = own_and_certificate(steel, asked)
    rows = named or steel.document_rows()
    return answered(steel, asked + demand_of_filler(steel) if asked else [], rows,
                    lambda low, high: afterwards.hold(steel, low, high, False))


def iron_answer(case):
    """Nickel goes cold on grey iron, iron rods go hot, steel goes warm; nodular iron by its own table, at most 320."""
    grade, filler = grades.base(case.base), grades.filler(case.filler)
    if filler["family"] == "bronze":
        return Answer("needed_without_figure")
    if grade["group"] == "ductile_iron":
        name, table = next(iter(grades.tables_of(grade).items()))
        low, high = row_minimum(row_for(table["rows"], case.wall)[0], case.inch), 320
    elif filler["group"] in ("nickel_iron_filler", "nickel_filler"):
        name, low, high = "cold", DRY, 60
    elif filler["group"] == "iron_filler":
        name, low, high = "cast iron welded hot", row_minimum({"minimum_degC": [500]}, case.inch), 650
    else:
        name, low, high = "cast iron welded warm", row_minimum({"minimum_degC": [150]}, case.inch), 320
    shown_high = shown.printed({"maximum_degC": [high]}, "maximum", case.inch, math.floor)
    return judged([(low, name)], low, shown_high, no_hold)


def with_later_layers(steel, result):
    """From layer 2 on under a filler of another kind: not under 120 degC on a base that hardens, elsewhere not under the
    lesser of that and the base's minimum; no ring over the filler's maximum, nor over that of the base."""
    if result.minimum is None or result.maximum is None or not dissimilar(steel):
        return result
    inch = steel.case.inch
    warm = shown.minimum(120, inch)
    low = warm if steel.group.get("hardenable") else min(warm, result.minimum)
    own = grades.limit(steel.filler.get("interpass_max_degC", [result.maximum]))
    high = shown.printed({"maximum_degC": [own]}, "maximum", inch, math.floor)
    result.later = (low, min(high, result.maximum))
    return result


def with_method_b(steel, result):
    """What method B says, ruling or not. Left open where a certificate is not of the grade."""
    if steel.grade["structure"] == "ferritic" and not steel.foreign:
        full = composition.is_full(steel.certificate)
        plate = steel.group.get("quenched") and not full
        result.method_b = steel.method_b(typical_or_middle(steel)) if plate else steel.method_b_on()
    return result


def with_hardness(steel, result):
    """The cooling time at the minimum and the hardness that follows: information, on a grade that is what it is called."""
    case = steel.case
    if result.minimum is None or case.heat_input is None or not case.wall or steel.grade["structure"] != "ferritic":
        return result
    result.cooling = hardness.cooling_time(case.heat_input, result.minimum, case.wall)
    if not steel.foreign:
        result.hardness = hardness.yurioka(steel.metal(composition.CET), result.cooling)
    return result


def answer(case):
    grade = grades.base(case.base)
    if grade["structure"] == "cast_iron":
        return iron_answer(case)
    if grade["group"] == "unknown_steel":
        if case.magnetic is False:
            return Answer("not_known")
        unknown = Steel(case)
        return with_later_layers(unknown, unknown_answer(unknown))
    steel = Steel(case)
    named = listed_in_named(steel)
    plate = steel.group.get("quenched")
    result = plate_answer(steel, named) if plate else steel_answer(steel, named)
    return with_hardness(steel, with_method_b(steel, with_later_layers(steel, result)))
