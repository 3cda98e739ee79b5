"""EN 1011-2 method B and Table C.1, and Séférian, with their ranges and edges."""
import math

RANGE_OF_B = {"C": 0.32, "Si": 0.8, "Mn": 1.9, "Cr": 1.5, "Cu": 0.7, "Mo": 0.75, "Nb": 0.06, "Ni": 2.5, "Ti": 0.12,
              "V": 0.18, "B": 0.005}
TABLE_C1 = ((3, (60, 100, 100, 100)), (5, (50, 100, 100, 100)), (10, (35, 65, 60, 100)), (15, (30, 55, 50, 90)),
            (math.inf, (25, 50, 40, 80)))


def out_of_range(metal):
    """The elements of the metal past the table of method B."""
    return {element for element, most in RANGE_OF_B.items() if metal.get(element, 0.0) > most + 1e-9}


def method_b(cet, wall, hydrogen, heat_input):
    """The least preheat in degC, not rounded: thickness, CET and heat input at their edges, hydrogen at 30 at most."""
    cet = min(max(cet, 0.20), 0.50)
    thick = 90 if wall is None else min(max(wall, 10), 90)
    content = min(max(hydrogen, 1), 30)
    heat = 0.5 if heat_input is None else min(max(heat_input, 0.5), 4.0)
    return 697 * cet + 160 * math.tanh(thick / 35) + 62 * content**0.35 + (53 * cet - 32) * heat - 328


def table_c1(ce, wall, hydrogen, heat_input):
    """"none needed", "needed, no figure" or None where the table gives no answer."""
    if ce > 0.49 or wall is None or heat_input is None or heat_input < 1.0:
        return None
    columns = next(row for most, row in TABLE_C1 if hydrogen <= most)
    column = (0 if ce > 0.43 else 2) + (1 if heat_input >= 2.0 else 0)
    return "none needed" if min(2 * wall, 100) <= columns[column] else "needed, no figure"


def seferian(equivalent, wall):
    return 350 * math.sqrt(max(equivalent * (1 + 0.005 * wall) - 0.25, 0))
