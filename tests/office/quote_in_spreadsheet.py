"""The workbook of a quote, opened and reckoned anew by a spreadsheet, against the program's own total.

Usage: quote_in_spreadsheet.py PROGRAM DEMO_FOLDER
"""
import decimal
import json
import os
import random
import re
import subprocess
import sys
import tempfile
import zipfile

import openpyxl

PROGRAM, DEMO = sys.argv[1:3]
AMOUNT, PRICE, QUANTITY = 5, 4, 2  # columns
failures = []


def check(holds, what):
    if not holds:
        failures.append(what)


def demo(name):
    with open(os.path.join(DEMO, name), encoding="utf-8") as file:
        lines = [line for line in file if not line.lstrip().startswith("//")]
    return json.loads("".join(lines))


class Folder:
    """A folder of its own with jobs, workbooks and the spreadsheet's profile."""

    def __init__(self, path):
        self.path = path
        self.count = 0

    def name(self, ending):
        self.count += 1
        return os.path.join(self.path, f"{self.count}.{ending}")

    def run(self, job, *words):
        name = self.name("json")
        with open(name, "w", encoding="utf-8") as file:
            json.dump(job, file)
        return subprocess.run([PROGRAM, "quote", name, *words], check=True, capture_output=True).stdout

    def quote(self, job):
        return json.loads(self.run(job, "--json"))["quote"]

    def workbook(self, job):
        name = self.name("xlsx")
        self.run(job, "-o", name)
        return name

    def reckoned(self, books):
        """The sheets of some workbooks after the spreadsheet has opened and saved them, values only."""
        out = os.path.join(self.path, "out")
        names = []
        for book in books:
            # What a hand saves again has no remembered results: every one is reckoned.
            names.append(self.name("xlsx"))
            book.save(names[-1])
        subprocess.run(["soffice", "--headless", f"-env:UserInstallation=file://{self.path}/profile",
                        "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", out, *names],
                       check=True, capture_output=True, timeout=240)
        return [openpyxl.load_workbook(os.path.join(out, os.path.basename(name)), data_only=True).active
                for name in names]


def row_of(sheet, text, start=1):
    for row in range(start, sheet.max_row + 1):
        if str(sheet.cell(row, 1).value or "").startswith(text):
            return row
    raise AssertionError(f"no row begins with {text}")


def total(sheet):
    row = row_of(sheet, "TOTAL")
    return sheet.cell(row, 1).value, sheet.cell(row, AMOUNT).value


def minor(value, exponent):
    scaled = decimal.Decimal(repr(value)).scaleb(exponent)
    whole = scaled.quantize(decimal.Decimal(1))
    check(abs(scaled - whole) < decimal.Decimal("1e-4"), f"{value} is no whole number of smallest units")
    return int(whole)


def with_currency(job, currency, factor):
    """The prices times a factor, in another currency."""
    job = json.loads(json.dumps(job))

    def scaled(value):
        if isinstance(value, dict):
            return {key: scaled(one) for key, one in value.items()}
        return round(value * factor, 2) if isinstance(value, (int, float)) else value

    prices = job["prices"]
    job["prices"] = {key: prices[key] if key == "travel" else scaled(value) for key, value in prices.items()}
    job["prices"]["currency"] = currency
    return job


def try_totals(folder):
    """Total as written, as reckoned, after a changed price, share and choice; in currencies of every exponent."""
    jobs, books, wanted = [], [], []
    base = demo("dredger-pivots.json")
    for currency, factor in (("EUR", 1), ("JPY", 160), ("KWD", 0.33)):
        job = with_currency(base, currency, factor)
        job["prices"]["travel"]["trips"] = 3
        quote = folder.quote(job)
        check(quote["whole"], f"{currency}: the sample has all its prices")
        name = folder.workbook(job)
        exponent = quote["exponent"]
        written = openpyxl.load_workbook(name, data_only=True).active
        check(minor(total(written)[1], exponent) == quote["total_minor"], f"{currency}: total as written")
        jobs.append((currency, exponent))
        books.append(openpyxl.load_workbook(name))
        wanted.append(quote["total_minor"])

        book = openpyxl.load_workbook(name)
        sheet = book.active
        row = row_of(sheet, "welding")
        sheet.cell(row, PRICE).value = 97.35
        job["prices"]["labour"]["welding"] = 97.35
        row = row_of(sheet, "mark-up")
        sheet.cell(row, QUANTITY).value = 0.1725
        job["prices"]["markup"] = "17.25 %"
        sheet.cell(3, 2).value = "use"
        job["prices"]["materials"] = "use"
        jobs.append((f"{currency}, changed", exponent))
        books.append(book)
        wanted.append(folder.quote(job)["total_minor"])
        check(wanted[-1] != wanted[-2], f"{currency}: the change tells")
    for (name, exponent), sheet, want in zip(jobs, folder.reckoned(books), wanted):
        label, value = total(sheet)
        check(minor(value, exponent) == want, f"{name}: the spreadsheet has {value}, the program {want}")
        check(label == "TOTAL", f"{name}: {label}")


def try_missing(folder):
    """A missing price is no nothing; written into the sheet it makes the total whole."""
    job = demo("dredger-pivots.json")
    del job["prices"]["watch_hour"]
    without = folder.quote(job)
    check(not without["whole"] and without["missing"] ==
          ["fire watch, a second person: price: write prices.watch_hour"], "the missing price is told")
    name = folder.workbook(job)
    book = openpyxl.load_workbook(name)
    sheet = book.active
    sheet.cell(row_of(sheet, "fire watch"), PRICE).value = 38
    open_sheet, filled = folder.reckoned([openpyxl.load_workbook(name), book])
    label, value = total(open_sheet)
    check(label == "TOTAL, INCOMPLETE", label)
    check(minor(value, 2) == without["total_minor"], "the total of what is known")
    row = row_of(open_sheet, "fire watch")
    check(open_sheet.cell(row, AMOUNT).value == "missing", "the missing amount is said")
    label, value = total(filled)
    check(label == "TOTAL", label)
    job["prices"]["watch_hour"] = 38
    check(minor(value, 2) == folder.quote(job)["total_minor"], "the total with the price")


def try_shares(folder):
    """A share that is blanked or mistyped is missing from the total, and said."""
    name = folder.workbook(demo("dredger-pivots.json"))
    books = []
    for typed in (None, "20 percent"):
        books.append(openpyxl.load_workbook(name))
        books[-1].active.cell(row_of(books[-1].active, "tax"), QUANTITY).value = typed
    for sheet in folder.reckoned(books):
        check(total(sheet)[0] == "TOTAL, INCOMPLETE", f"without its tax: {total(sheet)[0]}")


def try_halves(folder):
    """Lines whose amount lies at, or next to, a half: to the even one, as exact decimals have it."""
    draw = random.Random(7)
    for currency, exponent in (("JPY", 0), ("EUR", 2), ("KWD", 3)):
        job = demo("dredger-pivots.json")
        job["prices"] = {"currency": currency, "extras": {f"line {i}": 1 for i in range(400)}}
        book = openpyxl.load_workbook(folder.workbook(job))
        sheet = book.active
        first = row_of(sheet, "line 0")
        wanted = []
        small = decimal.Decimal(1).scaleb(-exponent)
        for i in range(400):
            quantity = decimal.Decimal(draw.choice([500, 1500, 250, 2500, 125, 1, draw.randrange(1, 10**6)])) / 1000
            price = decimal.Decimal(draw.choice([draw.randrange(1, 2000) * 100, draw.randrange(1, 10**7)])) * small / 100
            sheet.cell(first + i, QUANTITY).value = float(quantity)
            sheet.cell(first + i, PRICE).value = float(price)
            wanted.append((quantity, price, (quantity * price).quantize(small, decimal.ROUND_HALF_EVEN)))
        halves = sum((q * p / small) % 1 == decimal.Decimal("0.5") for q, p, _ in wanted)
        check(halves > 40, f"{currency}: only {halves} halves")
        (reckoned,) = folder.reckoned([book])
        for i, (quantity, price, want) in enumerate(wanted):
            value = reckoned.cell(first + i, AMOUNT).value
            check(minor(value, exponent) == int(want / small), f"{currency}: {quantity} times {price} is {value}, not {want}")
        whole = sum(int(want / small) for *_, want in wanted)
        check(minor(reckoned.cell(first + 400, AMOUNT).value, exponent) == whole, f"{currency}: the sum of the lines")


def try_text(folder):
    """What the job says stays text."""
    job = demo("dredger-pivots.json")
    job["title"] = "=1+1"
    hostile = ["=cmd|' /C calc'!A0", "+1", "-1", "@SUM(A1)", '"&A1&"']
    job["prices"]["extras"] = {name: 1 for name in hostile}
    sheet = openpyxl.load_workbook(folder.workbook(job)).active
    check(sheet.page_setup.orientation == "landscape" and sheet.sheet_properties.pageSetUpPr.fitToPage, "one page wide")
    check(len(sheet.print_area) == 1 and sheet.print_area[0].startswith("$A$1:$F$"), f"printed is {sheet.print_area}")
    check([str(one.sqref) for one in sheet.data_validations.dataValidation] == ["B3"], "what counts is chosen")
    for text in ["=1+1", *hostile]:
        cells = [cell for row in sheet.iter_rows() for cell in row if cell.value == text]
        check(len(cells) == 1 and cells[0].data_type == "s", f"{text} is a text")
    for row in sheet.iter_rows():
        for cell in row:
            if cell.data_type == "f":
                check("cmd" not in cell.value and "SUM(A1)" not in cell.value, f"{cell.coordinate} is ours")


def try_names(folder):
    """The workbook names the program that wrote it and its version, no other, and no font but ours."""
    version = subprocess.run([PROGRAM, "--version"], check=True, capture_output=True, text=True).stdout.split()[-1]
    with zipfile.ZipFile(folder.workbook(demo("dredger-pivots.json"))) as package:
        check(package.testzip() is None, "the package is whole")
        parts = {name: package.read(name).decode("utf-8") for name in package.namelist()}

    def all_of(part, pattern):
        return re.findall(pattern, parts[part])

    properties, book, theme = "docProps/app.xml", "xl/workbook.xml", "xl/theme/theme1.xml"
    check(all_of(properties, "<Application>(.*?)</Application>") == ["ringfill"], "the program in the properties")
    major, minor_part, patch = (int(number) for number in version.split("."))
    check(all_of(properties, "<AppVersion>(.*?)</AppVersion>") == [f"{major}.{minor_part:02}{patch:02}"], "its version")
    check(all_of(properties, "<Company>(.*?)</Company>") == [""], "no company")
    check(all_of("docProps/core.xml", "<dc:creator>(.*?)</dc:creator>") == [f"ringfill {version}"], "who made it")
    check(all_of(book, 'appName="(.*?)"') == ["ringfill"], "the program in the book")
    check(set(all_of("xl/styles.xml", '<name val="(.*?)"/>')) == {"Liberation Sans"}, "the fonts of the cells")
    check(not all_of("xl/styles.xml", "<scheme "), "no font comes from the theme")
    check(set(all_of(theme, ' name="(.*?)"')) == {"ringfill"}, "the names in the theme")
    check(set(all_of(theme, 'typeface="(.*?)"')) == {"Liberation Sans", ""}, "the fonts of the theme")
    foreign = ["micro" + "soft", "exc" + "el", "cali" + "bri", "cam" + "bria", "off" + "ice theme", "libre" + "office"]
    for name, text in parts.items():
        for word in foreign:
            check(not re.search(rf"\b{word}\b", text.lower()), f"{name} names {word}")


def main():
    with tempfile.TemporaryDirectory() as path:
        folder = Folder(path)
        for attempt in (try_totals, try_missing, try_shares, try_halves, try_text, try_names):
            attempt(folder)
    for failure in failures[:40]:
        print("FAILED:", failure)
    print(f"{len(failures)} checks failed")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
