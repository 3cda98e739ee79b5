"""Rows of least preheat: which one holds at a wall, and what it shows."""
import math

import grades
import shown


def fits(row, wall, carbon, tensile):
    return (wall <= grades.limit(row.get("up_to_mm", math.inf))
            and carbon <= grades.limit(row.get("carbon_up_to_pct", math.inf))
            and tensile <= grades.limit(row.get("tensile_up_to_MPa", math.inf)))


def row_for(rows, wall, carbon=math.inf, tensile=math.inf):
    """The first row that fits and whether the wall is past the table; an unknown wall takes the thickest row."""
    thick = math.inf if wall is None else wall
    for row in rows:
        if fits(row, thick, carbon, tensile):
            return row, False
    return rows[-1], True


def row_minimum(row, inch, rise=0.0):
    """The shown minimum of a row: of a range the upper end; a rise for hydrogen makes it a computed figure."""
    if "practice_degC" in row:
        row = {"minimum_degC": [row["practice_degC"][1]]}
    if rise > 0:
        own = row["minimum_degC"][0] if "minimum_degC" in row else shown.celsius(row["minimum_degF"][0])
        return shown.minimum(own + rise, inch)
    return shown.printed(row, "minimum", inch, math.ceil)


def rise_over(practice, hydrogen):
    """What hydrogen over that of the row adds."""
    most = grades.limit(practice.get("hydrogen_up_to_ml_100g", [math.inf]))
    return 0.0 if hydrogen <= most else 62 * (hydrogen**0.35 - most**0.35)
