"""Who rules a steel: its own row, the documents that list it, EN 1011-2 method B."""
import math

import composition
import grades
import methods
import shown
from rows import rise_over, row_for, row_minimum

STRUCTURAL_FLOOR = 65  # degC, under 0.5 kJ/mm over 19.05 mm
METHOD_B = "EN 1011-2 method B"


def hydrogen_of(case, filler):
    """Measured, else the limit of the filler's class, else 30 ml/100 g."""
    return case.hydrogen if case.hydrogen is not None else grades.limit(filler.get("hydrogen_ml_100g", [30]))


class Steel:
    """One case of a metal that is worked out by rows, documents and method B: what each of them asks."""

    def __init__(self, case):
        self.case = case
        self.grade = grades.base(case.base)
        self.filler = grades.filler(case.filler)
        self.group = grades.heat_group(self.grade)
        self.hydrogen = hydrogen_of(case, self.filler)
        self.foreign = composition.not_this_grade(self.grade, case.certificate, case.product)
        self.certificate = {} if self.foreign else case.certificate

    def metal(self, weights, certificate=None):
        given = self.certificate if certificate is None else certificate
        printed = None if self.foreign and certificate is None else self.case.carbon_equivalent
        return composition.largest(weights, self.grade, given, self.case.product, self.case.bought_after, printed)

    def method_b(self, cet):
        """The least preheat by method B, in degC, not rounded."""
        return methods.method_b(self.with_deposit(cet), self.case.wall, self.hydrogen, self.case.heat_input)

    def with_deposit(self, cet):
        """The CET that counts: that of the weld metal + 0.03 where it is over that of the base metal."""
        undiluted = composition.deposit(self.filler, self.case.gas, self.case.deposit)
        return cet if undiluted is None else max(cet, composition.index(composition.CET, undiluted) + 0.03)

    def method_b_on(self, certificate=None):
        return self.method_b(composition.index(composition.CET, self.metal(composition.CET, certificate)))

    def document_rows(self, named=None):
        """The rows of the documents that list the grade: (table's name, table, row), of two categories the one for the
        hydrogen there is. With `named` only those of that document."""
        found = {}
        for name, table in grades.tables_of(self.grade).items():
            document = table.get("document", name)
            if named is None and table.get("only_if_named") or named is not None and document != named:
                continue
            if "fillers" in table and self.filler["name"] not in table["fillers"]:
                continue
            most = grades.limit(table.get("hydrogen_up_to_ml_100g", [math.inf]))
            if self.hydrogen > most or self.hydrogen <= grades.limit(table.get("hydrogen_over_ml_100g", [-1])):
                continue
            carbon = self.metal(composition.CET).get("C", 0.0)
            row, _past = row_for(table["rows"], self.case.wall, carbon, self.grade.get("tensile_MPa", [math.inf])[0])
            kind = document if table.get("structural") else name
            if kind not in found or most < found[kind][0]:
                found[kind] = (most, name, table, row)
        return [entry[1:] for entry in found.values()]

    def passed_documents(self):
        """Structural tables that end under the hydrogen there is: the answer never falls with hydrogen."""
        asked = []
        for name, table in grades.tables_of(self.grade).items():
            most = grades.limit(table.get("hydrogen_up_to_ml_100g", [math.inf]))
            if not table.get("only_if_named") and "hydrogen_up_to_ml_100g" in table and self.hydrogen > most:
                asked.append((row_minimum(row_for(table["rows"], self.case.wall)[0], self.case.inch), name))
        return asked


def structural_floor(case):
    thick = case.wall is None or case.wall > 19.05
    cold = case.heat_input is None or case.heat_input < 0.5
    return [(shown.minimum(STRUCTURAL_FLOOR, case.inch), "practice at a low heat input")] if thick and cold else []


def asked_by_documents(steel, rows):
    asked = [(row_minimum(row, steel.case.inch), name) for name, _table, row in rows]
    if any(table.get("structural") for _name, table, _row in rows):
        asked += structural_floor(steel.case)
    return asked


def asked_by_practice(steel, practice):
    """The grade's own row; past its table the higher of the hottest row and method B."""
    case = steel.case
    row, past = row_for(practice["rows"], case.wall)
    asked = [(row_minimum(row, case.inch, rise_over(practice, steel.hydrogen)), f"practice for {case.base}")]
    if past:
        asked.append((shown.minimum(steel.method_b_on(), case.inch), METHOD_B))
    return asked


def asked_of_steel(steel):
    """What rules a steel that is neither quenched nor unknown, highest first by the caller."""
    case = steel.case
    rows = steel.document_rows()
    asked = asked_by_documents(steel, rows)
    if any(table.get("structural") for _name, table, _row in rows):
        return asked
    practice = grades.practice(steel.grade)
    if practice is not None:
        return asked + asked_by_practice(steel, practice)
    if steel.grade["structure"] != "ferritic":
        return asked
    out = methods.out_of_range(steel.metal(composition.CET))
    if not out:
        asked.append((shown.minimum(steel.method_b_on(), case.inch), METHOD_B))
    return asked + steel.passed_documents()


def listed_in_named(steel):
    """The rows of the document that the job works by, where its own list names the grade."""
    return steel.document_rows(steel.case.welding_rules) if steel.case.welding_rules else []


def demand_of_filler(steel):
    """What the filler's own metal asks for: of a range over 300 degC no more than 300 degC or its lower end."""
    practice = steel.filler.get("practice")
    if practice is None or steel.grade["structure"] not in ("ferritic", "martensitic"):
        return []
    row = row_for(practice["rows"], steel.case.wall)[0]
    low, high = row["practice_degC"][:2]
    figure = min(high, max(300, low))
    return [(row_minimum({"minimum_degC": [figure]}, steel.case.inch), f"filler {steel.filler['name']}")]


def own_and_certificate(steel, asked):
    """Not this grade: the higher of the grade's own answer and method B on the certificate, at its edge."""
    by_b = shown.minimum(steel.method_b_on(steel.case.certificate), steel.case.inch)
    return asked + [(by_b, f"{METHOD_B} on the certificate")]
