"""The cooling time from 800 to 500 degC and the hardness beside the weld by Yurioka's formula of 1987."""
import math

NITROGEN = 0.006  # %
# Whether silicon counts as alloy is open: it is there to calm the steel, and is left out of the sum.
ALLOY = ("Mn", "Cr", "Ni", "Mo", "V", "Cu", "Nb")


def cooling_time(heat_input, start, wall):
    """t8/5 in s from Q in kJ/mm, the temperature in degC that a ring begins at, and the wall in mm: the longer of both."""
    near, far = 1 / (500 - start), 1 / (800 - start)
    thick = (6700 - 5 * start) * heat_input * (near - far)
    thin = (4300 - 4.3 * start) * 1e5 * (heat_input / wall) ** 2 * (near**2 - far**2)
    return max(thick, thin)


def boron_term(boron):
    """What boron (percent) adds, less with nitrogen."""
    ppm = boron * 1e4
    steps = 0.0 if ppm <= 1 + 1e-9 else 0.03 if ppm <= 2 + 1e-9 else 0.06 if ppm < 4 - 1e-9 else 0.09
    return steps * (0.02 - NITROGEN) / 0.02


def yurioka(metal, seconds):
    """HV, or None outside the range: C to 0.8 %, alloy to 5 %."""
    at = {element: metal.get(element, 0.0) for element in (*ALLOY, "C", "Si", "B")}
    if at["C"] > 0.8 or sum(at[element] for element in ALLOY) > 5:
        return None
    carbon = at["C"] if at["C"] <= 0.3 else at["C"] / 6 + 0.25
    first = carbon + at["Si"] / 24 + at["Mn"] / 6 + at["Cu"] / 15 + at["Ni"] / 12
    first += at["Cr"] * (1 - 0.16 * math.sqrt(at["Cr"])) / 8 + at["Mo"] / 4 + boron_term(at["B"])
    second = at["C"] + at["Si"] / 24 + at["Mn"] / 5 + at["Cu"] / 10 + at["Ni"] / 18 + at["Cr"] / 5 + at["Mo"] / 2.5
    second += at["V"] / 5 + at["Nb"] / 3
    third = carbon + at["Mn"] / 3.6 + at["Cu"] / 20 + at["Ni"] / 9 + at["Cr"] / 5 + at["Mo"] / 4
    martensite = 884 * at["C"] * (1 - 0.3 * at["C"] ** 2) + 294
    bainite = 145 + 130 * math.tanh(2.65 * second - 0.69)
    start, end = math.exp(10.6 * first - 4.8), math.exp(6.2 * third + 0.74)
    if seconds <= start:
        return martensite
    if seconds >= end:
        return bainite
    turn = math.atan(4 * math.log(seconds / start) / math.log(end / start) - 2)
    return min(max((martensite + bainite) / 2 - (martensite - bainite) / 2.2 * turn, bainite), martensite)
