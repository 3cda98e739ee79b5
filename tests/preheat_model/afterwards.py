"""What follows the last ring: the hold that lets hydrogen out."""
import composition
import grades
import shown

NO_HOLD_STRUCTURES = {"austenitic", "nickel", "copper", "cast_iron"}


def hours(wall):
    """The longer of 2 h and 1 h per 25 mm; the page is open about an unknown wall: 90 mm, where method B ends."""
    return max(2.0, (90 if wall is None else wall) / 25)


def is_needed(steel):
    """Yield over 460 MPa over 30 mm, or CE(IIW) of 0.50 % over 13 mm on a metal that hardens."""
    grade, wall = steel.grade, steel.case.wall
    thick = float("inf") if wall is None else wall
    if grade["structure"] in NO_HOLD_STRUCTURES or grade.get("hold_is_ruled"):
        return False
    strong = grades.limit(grade.get("yield_MPa", [0])) > 460 and thick > 30
    ce = composition.index(composition.CE, steel.metal(composition.CE))
    return strong or (ce >= 0.50 - 1e-9 and thick > 13 and bool(steel.group.get("hardenable")))


def temperature(steel, minimum, maximum):
    """As shown in the job's scale: a least temperature, so rounded up, and never over the maximum of quenched metal."""
    inch = steel.case.inch
    if steel.group.get("quenched"):
        return min(max(shown.minimum(200, inch), minimum), maximum)
    degrees = max(shown.minimum(250, inch), minimum)
    if "tempering_degC" in steel.grade:
        degrees = min(degrees, grades.limit(steel.grade["tempering_degC"]) - 50)
    return degrees


def heat_treated_at_once(steel):
    """Metal that its rules send to heat treatment at this wall. P-3, P-4 and P-5A may be held first instead."""
    wall = float("inf") if steel.case.wall is None else steel.case.wall
    return any(wall > row["over_mm"] for row in steel.grade.get("heat_treatment", []))


def hold(steel, minimum, maximum, as_hot_as_allowed):
    if not as_hot_as_allowed and not is_needed(steel):
        return None
    return temperature(steel, minimum, maximum), hours(steel.case.wall)
