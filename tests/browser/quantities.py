"""Shown quantities turned back into the numbers and units of the result file."""
import math
import re

NUMBER = r"-?\d+(?:\.\d+)?(?:e[+-]?\d+)?"
EXACT = 1e-9

# A unit as it is shown: what it measures, and its size in the unit the result file writes that in.
UNITS = {
    "mm": ("mm", 1), "in": ("mm", 25.4), "m": ("m", 1), "ft": ("m", 0.3048),
    "kg": ("kg", 1), "g": ("kg", 1e-3), "lb": ("kg", 0.45359237), "oz": ("kg", 0.45359237 / 16),
    "L": ("l", 1), "gal": ("l", 3.785411784), "ft³": ("l", 28.316846592),
    "mm/min": ("mm_min", 1), "in/min": ("mm_min", 25.4), "m/min": ("m_min", 1), "ft/min": ("m_min", 0.3048),
    "kJ/mm": ("kj_mm", 1), "kJ/in": ("kj_mm", 1 / 25.4), "µm": ("um", 1), "µin": ("um", 0.0254),
    "rev/min": ("rpm", 1), "kW": ("kw", 1), "°": ("deg", 1), "°C": ("degC", 1), "°F": ("degC", 5 / 9),
    "s": ("s", 1), "min": ("s", 60), "h": ("s", 3600),
}
KINDS = ["mm_min", "m_min", "kj_mm", "degC", "deg", "mm", "kg", "um", "rpm", "kw", "s", "l"]


def kind_of(path):
    """What the last name of a path says its figure is; nothing for a plain number."""
    names = re.sub(r"\[\d+\]", "", path).split(".")
    for name in reversed(names[-2:]):  # the unit may stand one step up: heat_input_kj_mm.bore
        for kind in KINDS:
            if name.endswith("_" + kind) or name == kind:
                return kind
    return None


class Shown:
    """A number with its unit: `value` in the unit of the result, and `digit`, what its last digit is worth."""

    def __init__(self, number, unit):
        self.unit = unit
        self.kind, factor = UNITS[unit] if unit else (None, 1)
        mantissa = number.split("e")[0]
        places = len(mantissa.split(".")[1]) if "." in mantissa else 0
        exponent = int(number.split("e")[1]) if "e" in number else 0
        self.digit = factor * 10.0 ** (exponent - places)
        self.value = factor * float(number) if unit != "°F" else (float(number) - 32) * 5 / 9


def shown_in(text):
    """Every quantity of a text; hours and minutes that belong together are one."""
    found = []
    names = sorted(UNITS, key=len, reverse=True)
    pattern = re.compile(rf"(?<![\w.])({NUMBER})(?:[ \u00a0]?({'|'.join(map(re.escape, names))}))?(?![\w/³²])")
    end_of_hours = None
    for match in pattern.finditer(text.replace("−", "-")):
        one = Shown(match[1], match[2])
        if match[2] == "min" and match.start() - 1 == end_of_hours:
            found[-1].value += one.value
            found[-1].digit = one.digit
        else:
            found.append(one)
        end_of_hours = match.end() if match[2] == "h" else None
    return found


def agrees(shown, value, how):
    """Whether a shown number tells a value of the result: within half its last digit, or rounded to one side."""
    slack = EXACT * max(1.0, abs(value))
    if how in ("up", "down"):
        step = {"°C": 5.0, "°F": 10 * 5 / 9}.get(shown.unit, shown.digit)
        over = shown.value - value if how == "up" else value - shown.value
        # An upper or lower limit that is a step but for rounding errors stays on it (1e-6 of a step).
        return -max(slack, 1e-6 * step) <= over < step + slack
    return abs(shown.value - value) <= shown.digit / 2 + slack


def clock_of(start_s, seconds):
    """Seconds from the start of the first day, as day and clock."""
    minute = math.floor((start_s + seconds) / 60 + 0.5)
    return f"day {minute // 1440 + 1} {minute % 1440 // 60:02}:{minute % 60:02}"


def measured(text, units):
    """A length in mm or an angle in degrees as a job writes it: 93.4 mm, 2-3/8 in, 15 thou, or a bare number."""
    if isinstance(text, (int, float)):
        return text * (25.4 if units == "inch" else 1)
    match = re.fullmatch(rf"\s*(?:(\d+)[- ])?(\d+)/(\d+)\s*(\S+)\s*|\s*({NUMBER})\s*(\S+)\s*", text)
    factor = {"mm": 1, "cm": 10, "m": 1000, "in": 25.4, '"': 25.4, "thou": 0.0254, "ft": 304.8, "deg": 1}
    if match[5]:
        return float(match[5]) * factor[match[6]]
    return (int(match[1] or 0) + int(match[2]) / int(match[3])) * factor[match[4]]
