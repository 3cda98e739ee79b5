"""Figures as a job shows them: minima rounded up, maxima down, to 5 degC or 10 degF; printed ones as printed."""
import math

CLOSE = 1e-9
DRY = 20  # degC: dry and hand-warm, what the state "none" carries


def fahrenheit(celsius):
    return celsius * 9 / 5 + 32


def celsius(degrees_f):
    return (degrees_f - 32) * 5 / 9


def rounded(degrees_c, inch, towards):
    """A computed figure, in degC, on the step of the job's scale; `towards` is math.ceil or math.floor."""
    slack = -CLOSE if towards is math.ceil else CLOSE
    if inch:
        return celsius(towards(fahrenheit(degrees_c) / 10 + slack) * 10)
    return towards(degrees_c / 5 + slack) * 5


def minimum(degrees_c, inch):
    """A computed minimum; dry and hand-warm, judged before it is rounded, carries 20 degC in either scale."""
    return DRY if degrees_c <= DRY else rounded(degrees_c, inch, math.ceil)


def maximum(degrees_c, inch):
    return rounded(degrees_c, inch, math.floor)


def printed(row, end, inch, towards):
    """What a row prints as its "minimum" or "maximum", shown in the job's scale; None where it prints none.

    A figure printed in the job's own scale stands; the other scale is a conversion, which is computed.
    """
    own, other = (f"{end}_degF", f"{end}_degC") if inch else (f"{end}_degC", f"{end}_degF")
    if own in row:
        return celsius(row[own][0]) if inch else row[own][0]
    if other in row:
        if towards is math.ceil:
            return minimum(row[other][0] if inch else celsius(row[other][0]), inch)
        return rounded(row[other][0] if inch else celsius(row[other][0]), inch, towards)
    return None
