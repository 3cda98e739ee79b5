"""Metal that nobody can name, with a certificate or without."""
import composition
import grades
import methods
import shown
from plate import capped_b
from rows import rise_over, row_for, row_minimum
from steel import METHOD_B, asked_by_practice


def default_limit(grade, element):
    return grades.percents(grade["composition_pct"]).get(element, {"Cr": 0.30, "Ni": 0.30, "Mo": 0.08}.get(element))


def nearest_grade(certificate):
    """The known grade with a row that holds the certificate's C, Cr, Mo and Ni, of the least alloy, then carbon."""
    found = []
    for name, row in grades.family("steel")["bases"].items():
        grade = {**row, "family": "steel", "name": name}
        if row["group"] == "unknown_steel" or grades.practice(grade) is None:
            continue
        most = {element: default_limit(grade, element) for element in ("C", "Cr", "Mo", "Ni")}
        if all(certificate[element] <= most[element] for element in most):
            alloy = most["Cr"] / 20 + most["Mo"] / 10 + most["Ni"] / 40
            found.append((alloy, most["C"], name, grade))
    return min(found, key=lambda one: one[:3])[3] if found else None


def hottest_row(steel):
    """The hottest row of any grade at that wall."""
    hottest = []
    for name, row in grades.family("steel")["bases"].items():
        practice = grades.practice({**row, "family": "steel"})
        if practice is not None:
            at_wall = row_for(practice["rows"], steel.case.wall)[0]
            rise = rise_over(practice, steel.hydrogen)
            figure = row_minimum(at_wall, steel.case.inch, rise)
            hottest.append((figure, f"hottest row, {name}"))
    return max(hottest)


def counts_as_quenched(certificate):
    """Unknown metal that a certificate shows to be quenched plate; its hardness is not given here."""
    hardens = certificate.get("B", 0) >= 0.0008 or certificate.get("Cr", 0) + certificate.get("Mo", 0) > 0.5
    return certificate.get("C", 1) <= 0.25 and hardens


def asked_of_unknown(steel, limit):
    case = steel.case
    if not composition.is_full(case.certificate):
        return asked_by_practice(steel, grades.practice(steel.grade))
    metal = {**composition.RESIDUALS, **case.certificate}
    cet = composition.index(composition.CET, metal)
    by_b = (shown.minimum(steel.method_b(cet), case.inch), METHOD_B)
    if limit is not None:
        return [capped_b(steel, cet, limit)[0]]  # treated as quenched: a full certificate takes the place of any row
    if not methods.out_of_range(metal) and cet <= 0.50:  # of the certificate, whatever the weld metal
        return [by_b]
    grade = nearest_grade(case.certificate)
    if grade is None:
        return [by_b, hottest_row(steel)]
    practice = grades.practice(grade)
    row = row_for(practice["rows"], case.wall)[0]
    return [by_b, (row_minimum(row, case.inch, rise_over(practice, steel.hydrogen)), f"row of {grade['name']}")]
