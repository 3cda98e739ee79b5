"""What a page looks like: order of headings, contrast, width, labels of drawings, sheets of paper."""
import base64
import html
import re
import subprocess
import tempfile

STRUCTURE = """
const faults = [];
if (document.documentElement.lang !== 'en-GB') faults.push('no language');
if (!document.title.startsWith('Hot-work notes, not a permit')) faults.push('title ' + document.title);
let rank = 0;
for (const h of document.querySelectorAll('h1,h2,h3,h4,h5,h6')) {
  const own = Number(h.tagName[1]);
  if (own > rank + 1 || (own === 1 && rank > 0)) faults.push('heading out of order: ' + h.textContent);
  if (!h.textContent.trim()) faults.push('empty heading');
  rank = own;
}
if (document.querySelectorAll('h1').length !== 1) faults.push('not one h1');
for (const t of document.querySelectorAll('table')) {
  if (!t.caption || !t.tHead) faults.push('table without caption or head');
  for (const row of t.tBodies[0].rows)
    if (!row.querySelector('th[scope=row]')) faults.push('row without head: ' + row.textContent);
}
for (const e of document.querySelectorAll('.tick'))
  if (e.getAttribute('role') !== 'img' || !e.getAttribute('aria-label')) faults.push('box without a name');
for (const e of document.querySelectorAll('svg')) {
  const names = (e.getAttribute('aria-labelledby') || '').split(' ');
  if (e.getAttribute('role') !== 'img' || !names.every(id => document.getElementById(id)))
    faults.push('drawing without a name');
}
return faults;
"""

# Every text against what lies behind it; nothing behind it is white.
CONTRAST = r"""
const channel = (v) => (v /= 255) <= 0.03928 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
const luminance = (c) => 0.2126 * channel(c[0]) + 0.7152 * channel(c[1]) + 0.0722 * channel(c[2]);
const numbers = (css) => css.match(/[\d.]+/g).map(Number);
const behind = (e) => {
  for (; e; e = e.parentElement) {
    const c = numbers(getComputedStyle(e).backgroundColor);
    if (c.length < 4 || c[3] > 0) return c;
  }
  return [255, 255, 255];
};
const faults = new Set();
for (const e of document.body.querySelectorAll('*')) {
  if (![...e.childNodes].some(n => n.nodeType === 3 && n.data.trim())) continue;
  const style = getComputedStyle(e);
  const ink = numbers(e.closest('svg') && style.fill !== 'none' ? style.fill : style.color);
  const [a, b] = [luminance(ink), luminance(behind(e))].sort((x, y) => y - x);
  if ((a + 0.05) / (b + 0.05) < 4.5 || Number(style.opacity) < 1) faults.add('faint: ' + e.textContent.slice(0, 40));
}
return [...faults];
"""

NARROW = """
const faults = [];
const wide = document.documentElement.scrollWidth;
if (wide > 360) faults.push('the page is ' + wide + ' px wide');
for (const e of document.body.querySelectorAll('*')) {
  const box = e.getBoundingClientRect();
  if (!e.closest('thead') && (box.right > 360.5 || box.left < -0.5))
    faults.push('past the edge: ' + e.tagName + ' ' + e.textContent.slice(0, 40));
  if (/auto|scroll/.test(getComputedStyle(e).overflowX)) faults.push('scroll box: ' + e.tagName);
}
return faults;
"""

LABELS = """
const faults = [];
let count = 0;
for (const svg of document.querySelectorAll('svg')) {
  const frame = svg.getBoundingClientRect();
  const boxes = [...svg.querySelectorAll('text')].map(t => [t.textContent, t.getBoundingClientRect()]);
  count += boxes.length;
  boxes.forEach(([text, a], i) => {
    if (a.left < frame.left - 1 || a.right > frame.right + 1 || a.top < frame.top - 1 || a.bottom > frame.bottom + 1)
      faults.push('outside its drawing: ' + text);
    for (const [other, b] of boxes.slice(i + 1))
      if (Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.5 &&
          Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.1 * Math.min(a.height, b.height))
        faults.push('over one another: ' + text + ' / ' + other);
  });
}
return [faults, count];
"""

UNSPLIT = """
const faults = [];
for (const e of document.querySelectorAll('tr, svg, figure'))
  if (getComputedStyle(e).breakInside !== 'avoid') faults.push('may be parted: ' + e.tagName);
for (const e of document.querySelectorAll('thead'))
  if (getComputedStyle(e).display !== 'table-header-group') faults.push('a head that does not repeat');
return faults;
"""


def narrow_faults(driver):
    """A telephone 360 px wide."""
    driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride",
                           {"width": 360, "height": 740, "deviceScaleFactor": 1, "mobile": False})
    faults = driver.execute_script(NARROW)
    driver.execute_cdp_cmd("Emulation.clearDeviceMetricsOverride", {})
    return faults


def unsplit_faults(driver):
    driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": "print"})
    faults = driver.execute_script(UNSPLIT)
    driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": ""})
    return faults


def printed(driver, width, height, folder):
    """The page on paper of a size in inches, as a file."""
    answer = driver.execute_cdp_cmd("Page.printToPDF", {
        "paperWidth": width, "paperHeight": height, "preferCSSPageSize": False, "displayHeaderFooter": False})
    with tempfile.NamedTemporaryFile(dir=folder, suffix=".pdf", delete=False) as file:
        file.write(base64.b64decode(answer["data"]))
    return file.name


def words_of(pdf):
    """The words of each sheet of paper, and of each the furthest edge to the right [points]."""
    boxes = subprocess.run(["pdftotext", "-bbox", pdf, "-"], check=True, capture_output=True, text=True).stdout
    sheets = []
    for sheet in boxes.split("<page ")[1:]:
        words = re.findall(r'xMax="([\d.]+)" yMax="[\d.]+">([^<]*)</word>', sheet)
        sheets.append(([html.unescape(word) for _, word in words], max((float(right) for right, _ in words), default=0)))
    return sheets


def paper_faults(driver, names, closing, folder):
    """On A4 and Letter: as many sheets as parts at least, each bore begins one, all end with the closing line."""
    faults = []
    for paper, width, height in [("A4", 210 / 25.4, 297 / 25.4), ("Letter", 8.5, 11)]:
        pdf = printed(driver, width, height, folder)
        told = subprocess.run(["pdfinfo", pdf], check=True, capture_output=True, text=True).stdout
        count = int(re.search(r"Pages:\s+(\d+)", told)[1])
        size = [float(one) for one in re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", told).groups()]
        if abs(size[0] - 72 * width) > 1 or abs(size[1] - 72 * height) > 1:
            faults.append(f"{paper}: printed on {size}")
        sheets = words_of(pdf)
        text = [" ".join(words) for words, _ in sheets]
        starts = ["Hot-work notes, not a permit"] + [f"Bore: {name}" for name in names] + \
                 ["Notes by hand", "Working"]
        if len(sheets) != count or count < len(starts):
            faults.append(f"{paper}: {count} sheets for {len(starts)} parts")
        for start in starts:
            if sum(one.replace(" ", "").startswith(start.replace(" ", "")) for one in text) != 1:
                faults.append(f"{paper}: {start!r} does not begin one sheet")
        for i, (words, right) in enumerate(sheets):
            if right > 72 * width - 30:
                faults.append(f"{paper}: sheet {i + 1} reaches to {right} of {72 * width} points")
            if closing not in text[i] or f"{i + 1} / {count}" not in text[i]:
                faults.append(f"{paper}: sheet {i + 1} has no closing line or number")
            if len(words) - len(closing.split()) - 3 < 5:
                faults.append(f"{paper}: sheet {i + 1} holds nothing but a heading: {text[i]!r}")
    return faults
