"""What is asked of the model and what it answers."""
from dataclasses import dataclass, field


@dataclass
class Case:
    base: str
    filler: str
    wall: float | None = None  # mm
    product: float | None = None  # mm, the thickest product the part can be cut from
    hydrogen: float | None = None  # ml/100 g, measured
    heat_input: float | None = None  # kJ/mm, as laid, the lowest
    gas: str = "none"
    certificate: dict = field(default_factory=dict)
    deposit: dict = field(default_factory=dict)
    bought_after: int | None = None
    welding_rules: str | None = None
    carbon_equivalent: float | None = None  # printed on the certificate
    approved: dict = field(default_factory=dict)  # minimum, maximum, hold (degC, hours), confirmed
    magnetic: bool | None = None
    inch: bool = False


@dataclass
class Answer:
    state: str
    minimum: float | None = None  # degC
    maximum: float | None = None  # degC
    rules: tuple = ()
    hold: tuple | None = None  # degC, hours
    later: tuple | None = None  # degC, degC: from layer 2 on under a filler of another kind
    method_b: float | None = None  # degC, exact, as it stands among the methods
    cooling: float | None = None  # s, from 800 to 500 degC at the minimum
    hardness: float | None = None  # HV beside the weld
