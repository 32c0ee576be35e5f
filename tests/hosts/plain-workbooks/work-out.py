"""Works out .xlsx files with an engine: its name as argument; for each its file, cells and sheets as JSON on stdin; values as JSON out."""

import datetime
import json
import re
import sys


def number_of(letters):
    value = 0
    for letter in letters:
        value = value * 26 + ord(letter) - 64
    return value


def serial(value):
    """Dates as workbooks keep them."""
    if isinstance(value, datetime.datetime):
        return (value - datetime.datetime(1899, 12, 30)) / datetime.timedelta(days=1)
    if isinstance(value, datetime.date):
        return (value - datetime.date(1899, 12, 30)).days
    return value


def by_formualizer(path):
    import formualizer

    book = formualizer.load_workbook(path)
    book.evaluate_all()
    return lambda sheet, row, column: serial(book.get_value(sheet, row, column))


def by_ironcalc(path):
    import ironcalc

    book = ironcalc.load_from_xlsx(path)
    book.evaluate()
    return lambda sheet, row, column: book.get_cell_value(sheets.index(sheet), row, column)


results = []
for job in json.load(sys.stdin):
    sheets = job["sheets"]
    value = {"formualizer": by_formualizer, "ironcalc": by_ironcalc}[sys.argv[1]](job["file"])
    found = {}
    for cell in job["cells"]:
        sheet, letters, row = re.fullmatch(r"(.*)!([A-Z]+)(\d+)", cell).groups()
        found[cell] = value(sheet, int(row), number_of(letters))
    results.append(found)
print(json.dumps(results, default=str))
