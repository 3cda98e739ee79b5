"""Broken jobs that a schema cannot refuse, each with the reason; every other one it must."""

SIZES = "sizes that must fit together"
RANGE = "the range of a quantity: its unit would have to be worked out"
OTHER = "asks what stands elsewhere in the job"
TABLE = "a name or limits of the tables"
PLAN = "comes out only when the job is planned"

REASONS = {
    "amount-too-large": PLAN,
    "boss-smaller-than-finish": SIZES,
    "cleans-up-without-weld": PLAN,
    "depth-not-rising": SIZES,
    "depth-outside": SIZES,
    "doubled-bore-name": OTHER,
    "edge-life-too-short": PLAN,
    "face-swapped": SIZES,
    "face-too-far-in": PLAN,
    "five-faults-geometry": SIZES,
    "four-faults-names-and-sizes": TABLE,
    "gas-that-does-not-shield": TABLE,
    "groove-wider-than-bore": SIZES,
    "hole-outside": SIZES,
    "no-wall-left": PLAN,
    "offset-beside-radii": OTHER,
    "offset-too-large": SIZES,
    "price-too-fine": TABLE,
    "procedure-not-named": OTHER,
    "procedure-not-named-one-letter": OTHER,
    "ring-closes": PLAN,
    "rough-cut-too-shallow": PLAN,
    "size-class-for-large-bore": TABLE,
    "size-class-of-a-shaft": TABLE,
    "size-limits-beside-finish": SIZES,
    "size-limits-swapped": SIZES,
    "stock-too-large": SIZES,
    "stroke-too-short": PLAN,
    "three-faults-unknown-names": TABLE,
    "two-faults-trade-names": TABLE,
    "travel-max-below-travel": SIZES,
    "unequal-readings": OTHER,
    "unknown-gas": TABLE,
    "unknown-procedure": OTHER,
}

# No JSON at all, not UTF-8, or a name twice: refused before any schema is asked.
NO_JSON = {
    "byte-order-mark", "doubled-key", "ends-too-early", "extra-data", "missing-comma", "single-quotes", "unterminated-text",
    "utf-16", "windows-1252",
}
