"""An approved procedure: it rules, and its figures are shown as typed."""
import grades
from case import Answer
from maximum import maximum_of
from shown import DRY

NARROWEST = 15  # K between minimum and maximum


def softening(steel):
    """What a hardened part softens over, in degC; without a figure the group's maximum and 50 K; None for other metal."""
    if "softens_over_degC" in steel.grade:
        return grades.limit(steel.grade["softens_over_degC"])
    if "tempering_degC" in steel.grade:
        return grades.limit(steel.grade["tempering_degC"])
    return maximum_of(steel, None, []) + 50 if steel.group.get("quenched") or steel.group.get("as_quenched") else None


def is_stopped(steel, approved):
    """An interpass or a hold over the softening of a hardened part, until its author has confirmed it."""
    most = softening(steel)
    hot = max(approved.get("maximum", 0), approved.get("hold", (0,))[0])
    return most is not None and hot > most and not approved.get("confirmed", False)


def ruled(steel, asked, computed, rows, hold_for):
    """The answer with the figures of the procedure in place of ours."""
    approved = steel.case.approved
    minimum = max(approved.get("minimum", computed), DRY)
    maximum = approved.get("maximum")
    if maximum is None:
        maximum = maximum_of(steel, minimum, rows)
    narrow = maximum is not None and maximum - minimum < NARROWEST - 1e-6
    if is_stopped(steel, approved) or narrow:
        # The page gives the STOP over softening no state of its own; of the five only this one fits.
        return Answer("contradictory", None, None, ("approved", minimum, maximum))
    names = ("approved",)
    if "minimum" not in approved:
        names = tuple(name for figure, name in asked if max(figure, DRY) == computed)
    hold = approved.get("hold") or hold_for(minimum, maximum)
    return Answer("none" if minimum <= DRY else "figure", minimum, maximum, names, hold)
