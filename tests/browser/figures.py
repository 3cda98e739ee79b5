"""The figures of a page held against the result file and the job file."""
import re

from quantities import agrees, clock_of, kind_of, measured, shown_in

COLLECT = """
const all = (name) => [...document.querySelectorAll('[' + name + ']')].filter(e => !e.closest('svg'));
const attributes = (e) => Object.fromEntries([...e.attributes].map(a => [a.name, a.value]));
return ['data-figure', 'data-figures', 'data-text', 'data-given', 'data-cover', 'data-inputs'].flatMap(
    name => all(name).map(e => [name, e.textContent, attributes(e)]));
"""

# Quantities that stand nowhere under a mark: they could say anything.
UNMARKED = r"""
const marked = '[data-figure],[data-figures],[data-text],[data-given],[data-cover],[data-inputs],.told,svg,style,title,caption,thead';
const walker = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_TEXT);
const found = [];
for (let node = walker.nextNode(); node; node = walker.nextNode())
  if (/\d (mm|in|kg|g|lb|oz|L|gal|°C|°F|min|h|s|kW|rev\/min)\b/.test(node.data) && !node.parentElement.closest(marked))
    found.push(node.data);
return found;
"""
# The reference temperature of ISO 1 names rows and facts; it is no figure of the plan.
KNOWN_UNMARKED = {"20 °C", "68 °F", "limits at 20 °C", "limits at 68 °F"}


def at(document, path):
    """The value at a path such as bores[0].layers[1].rings."""
    for name, index in re.findall(r"([^.\[\]]+)|\[(\d+)\]", path):
        document = document[name] if name else document[int(index)]
    return document


def figure_fault(text, attributes, result):
    path, how = attributes["data-figure"], attributes.get("data-shown", "")
    value = at(result, path)
    if how == "clock":
        return None if text == clock_of(result["day"]["start_s"], value) else f"{path}: {text!r} for {value}"
    value = len(value) if how == "count" else 2 * value if how == "twice" else value
    if path.startswith("working["):
        number = float(text.split()[0])
        unit = at(result, path.replace(".value", "")).get("unit", "")
        good = abs(number - value) <= 5.1e-7 * abs(value) and text.split(" ", 1)[1:] == ([unit] if unit else [])
        return None if good else f"{path}: {text!r} for {value} {unit}"
    shown = shown_in(text)
    kind = {"kg": "kg", "L": "l", "kW": "kw", "pieces": None}[attributes["data-unit"]] \
        if "data-unit" in attributes else kind_of(path)
    if len(shown) != 1 or shown[0].kind != kind or not agrees(shown[0], value, how):
        return f"{path}: {text!r} for {value}"
    return None


def sentence_faults(text, attributes, result):
    """Each figure that a sentence tells stands in it, a least or greatest temperature rounded to the safe side."""
    for path in attributes["data-figures"].split():
        value = at(result, path)
        how = "up" if path.endswith("preheat_min_degC") else "down" if path.endswith("interpass_max_degC") else ""
        fits = [one for one in shown_in(text) if one.kind == kind_of(path)]
        if not any(agrees(one, value, how) or (how and agrees(one, value, "") and one.digit < 0.5) for one in fits):
            yield f"{path}: {value} is not told in {text!r}"


def given_fault(text, path, job):
    value = measured(at(job, path), job.get("units"))
    shown = shown_in(text)
    good = len(shown) == 1 and shown[0].kind in ("mm", "deg") and agrees(shown[0], value, "")
    return None if good else f"job {path}: {text!r} for {value}"


def words_of_cover(need):
    """What to load of a need, or that it is not known."""
    packs = " + ".join(f"{one['count']:.0f} × {one['pack']}" for one in need["cover"])
    if "unknown" in need:
        return f"{packs or 'no pack known'}, and more, not known" if "need" in need else "not known"
    return packs or "no pack known"


def inputs_fault(text, path, result):
    for symbol, one in at(result, path).items():
        if not isinstance(one["value"], list):
            unit = f" {one['unit']}" if "unit" in one else ""
            # The result has 15 digits of it: what lies that near a half may be rounded either way.
            wanted = [f"{symbol} = {one['value'] * near:.7g}{unit}" for near in (1, 1 - 1e-14, 1 + 1e-14)]
            if not any(way in text for way in wanted):
                return f"{path}: {wanted[0]!r} is not in {text!r}"
    return None


def figure_faults(driver, result, job):
    """Everything on the page in the driver that does not say what the result and the job say; and how many."""
    faults, counts = [], {}
    for name, text, attributes in driver.execute_script(COLLECT):
        counts[name] = counts.get(name, 0) + 1
        path = attributes[name]
        if name == "data-figure":
            faults.append(figure_fault(text, attributes, result))
        elif name == "data-figures":
            faults += sentence_faults(text, attributes, result)
        elif name == "data-text":
            faults.append(None if text == at(result, path) else f"{path}: {text!r}")
        elif name == "data-given":
            faults.append(given_fault(text, path, job))
        elif name == "data-cover":
            cover = words_of_cover(at(result, path.rpartition(".")[0]))
            faults.append(None if text == cover else f"{path}: {text!r} for {cover!r}")
        else:
            faults.append(inputs_fault(text, path, result))
    for text in driver.execute_script(UNMARKED):
        if text.strip() not in KNOWN_UNMARKED:
            faults.append(f"a quantity without its figure: {text!r}")
    return [fault for fault in faults if fault], counts


def drawing_faults(driver, bores, job):
    """Circles of the drawings whose size is not the plan's, to 0.1 %; and how many circles were held against it."""
    circles = driver.execute_script("""
        return [...document.querySelectorAll('svg[data-mm-per-unit] circle[data-figure]')].map(c =>
            [c.dataset.figure, c.r.baseVal.value * c.ownerSVGElement.dataset.mmPerUnit,
             c.closest('section').querySelector('h2').id]);""")
    faults = []
    for figure, radius, place in circles:
        number = int(place.removeprefix("bore-")) - 1
        bore = bores[number]
        if figure.startswith("layer_"):
            wanted = bore["layers"][int(figure.removeprefix("layer_")) - 1]["radius_after_mm"]
        elif figure == "weld_to_diameter":
            wanted = bore["build"]["weld_to_diameter_mm"] / 2
        elif figure == "skim_diameter":
            wanted = bore["build"]["skim_diameter_mm"] / 2
        elif figure == "finish_diameter":
            wanted = measured(at(job, f"bores[{number}].finish_diameter"), job.get("units")) / 2
        elif figure == "boss_diameter":
            wanted = measured(at(job, f"bores[{number}].boss_diameter"), job.get("units")) / 2
        else:
            faults.append(f"{place}: circle of unknown meaning: {figure}")
            continue
        if abs(radius - wanted) > 1e-3 * wanted:
            faults.append(f"{place}: circle {figure} has {radius} mm for {wanted}")
    return faults, len(circles)
