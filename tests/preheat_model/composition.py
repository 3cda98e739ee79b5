"""What the metal may be made of: certificate, ladle maxima, the cap on the carbon equivalent, the weld metal."""
import math

import grades

CE = {"C": 1, "Mn": 1 / 6, "Cr": 1 / 5, "Mo": 1 / 5, "V": 1 / 5, "Ni": 1 / 15, "Cu": 1 / 15}
CET = {"C": 1, "Mn": 1 / 10, "Mo": 1 / 10, "Cr": 1 / 20, "Cu": 1 / 20, "Ni": 1 / 40}
PCM = {"C": 1, "Si": 1 / 30, "Mn": 1 / 20, "Cu": 1 / 20, "Cr": 1 / 20, "Ni": 1 / 60, "Mo": 1 / 15, "V": 1 / 10, "B": 5}
SEFERIAN = {"C": 1, "Mn": 1 / 9, "Cr": 1 / 9, "Ni": 1 / 18, "Mo": 7 / 90}
FULL = ("C", "Mn", "Cr", "Mo", "Ni", "Cu", "V")
FILL_ORDER = ("C", "Cu", "Mn", "Ni", "Mo", "V", "Cr")
RESIDUALS = {"Cr": 0.15, "Ni": 0.15, "Cu": 0.25, "Mo": 0.04, "V": 0.02, "Nb": 0.0, "B": 0.0, "Si": 0.60}


def index(weights, metal):
    return sum(weight * metal.get(element, 0.0) for element, weight in weights.items())


def cen(metal):
    carbon = metal.get("C", 0.0)
    rest = metal.get("Si", 0) / 24 + metal.get("Mn", 0) / 6 + metal.get("Cu", 0) / 15 + metal.get("Ni", 0) / 20
    rest += sum(metal.get(element, 0) for element in ("Cr", "Mo", "Nb", "V")) / 5 + 5 * metal.get("B", 0)
    return carbon + (0.75 + 0.25 * math.tanh(20 * (carbon - 0.12))) * rest


def is_full(certificate):
    return all(element in certificate for element in FULL)


def band(rows, thickness):
    """The first row whose `up_to_mm` is not under the thickness, its end included; None past the last one.

    An unknown thickness takes the last row: the page names no product then, and the last one is the most careful.
    """
    if thickness is None:
        return rows[-1]
    return next((row for row in rows if thickness <= grades.limit(row.get("up_to_mm", math.inf))), None)


def maxima(grade, product):
    """The most the standard lets the ladle hold for a product of this thickness."""
    most = grades.percents(grade.get("composition_pct", {}))
    row = band(grade.get("composition_by_thickness", [{}]), product)
    return {**most, **grades.percents((row or {}).get("composition_pct", {}))}


def cap_on_ce(grade, product, bought_after, printed):
    """The most CE(IIW) that the standard allows, + 0.02 as with copper; None where no cap binds.

    The page may be read so that a grade of the edition by its name keeps its cap whatever the year; the safe reading
    lets `bought_after` before that year unbind it too. One printed on the certificate is the cap as it stands.
    """
    if printed is not None:
        return printed
    if "cev_max" not in grade:
        return None
    since = grades.limit(grade.get("cev_since", [0]))
    if bought_after is not None and bought_after < since:
        return None
    row = band(grade["cev_max"], product)
    return None if row is None else row["value"] + 0.02


def largest(weights, grade, certificate, product, bought_after, printed=None):
    """The composition within the maxima and the cap whose index is the largest: the greedy rule.

    Index and CE are linear, so filling what is left under the cap by (weight in the index)/(weight in CE) is exact.
    """
    most = {**RESIDUALS, **maxima(grade, product)}
    least = grades.percents(grade.get("composition_min_pct", {}))
    cap = cap_on_ce(grade, product, bought_after, printed)
    metal = {**most, **certificate}
    if cap is None:
        return metal
    free = [element for element in FILL_ORDER if element not in certificate]
    for element in free:
        metal[element] = min(least.get(element, 0.0), most.get(element, 0.0))
    room = max(0.0, cap - index(CE, metal))
    for element in sorted(free, key=lambda one: -weights.get(one, 0.0) / CE[one]):
        more = max(0.0, min(most.get(element, 0.0) - metal[element], room / CE[element]))
        metal[element] += more
        room -= more * CE[element]
    return metal


def not_this_grade(grade, certificate, product):
    """A certificate over a maximum of the standard by more than 0.02 % C or a tenth of another element."""
    for element, most in maxima(grade, product).items():
        slack = 0.02 if element == "C" else most / 10
        if certificate.get(element, 0.0) > most + slack + 1e-12:
            return True
    return False


AUSTENITIC_NICKEL_COPPER = {"austenitic_filler", "buffer_filler", "manganese_filler", "nickel_filler", "nickel_iron_filler",
                            "aluminium_bronze_filler", "tin_bronze_filler", "silicon_bronze_filler"}
LEFT_OUT_OF_METHOD_B = AUSTENITIC_NICKEL_COPPER | {"martensitic_hardfacing", "carbide_hardfacing", "cobalt_hardfacing",
                                                   "nickel_hardfacing", "iron_filler"}
MN_BURN_OFF = {"M20": 0.85, "M21": 0.85, "M12": 0.90, "M13": 0.90, "I1": 0.90, "C1": 0.75}


def deposit(filler, gas, analysis):
    """The undiluted weld metal; None where method B leaves it out. What is not stated of it counts as 0."""
    if filler["group"] in LEFT_OUT_OF_METHOD_B or filler["family"] == "hardfacing":
        return None
    if analysis:
        return analysis
    if "deposit_pct" in filler:
        return grades.percents(filler["deposit_pct"])
    most = grades.percents(filler.get("composition_pct", {}))
    if filler["form"] not in ("solid", "rod"):
        return most
    least = grades.percents(filler.get("composition_min_pct", {}))
    metal = {element: (value + least.get(element, value)) / 2 for element, value in most.items()}
    metal["Mn"] = metal.get("Mn", 0.0) * MN_BURN_OFF.get(gas, 1.0)
    metal["C"] = min(metal.get("C", 0.0), 0.12)
    return metal
