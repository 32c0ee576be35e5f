"""Drives one running office over a pipe: a line of JSON in, a line of JSON out. Run with the Python that has `uno`.

usage: drive.py PIPE_NAME
"""

import json
import sys
import time

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.sheet.FillDirection import TO_BOTTOM
from com.sun.star.sheet.FormulaResult import ERROR


def connect(pipe, patience_seconds):
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    until = time.monotonic() + patience_seconds
    while True:
        try:
            return resolver.resolve("uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext")
        except Exception:
            if time.monotonic() > until:
                raise
            time.sleep(0.1)


def option(name, value):
    made = PropertyValue()
    made.Name, made.Value = name, value
    return made


def hidden():
    return (option("Hidden", True),)


class Office:
    def __init__(self, context):
        self.context = context
        self.desktop = self.service("com.sun.star.frame.Desktop")

    def service(self, name):
        return self.context.ServiceManager.createInstanceWithContext(name, self.context)

    def recalc(self, path, hard):
        """Opens a file and gives every filled cell; `hard` recalculates even what the file says is up to date."""
        document = self.desktop.loadComponentFromURL(uno.systemPathToFileUrl(path), "_blank", 0, hidden())
        try:
            if hard:
                document.calculateAll()
            return read_document(document)
        finally:
            document.close(True)

    def convert(self, path, to, filter_name):
        document = self.desktop.loadComponentFromURL(uno.systemPathToFileUrl(path), "_blank", 0, hidden())
        try:
            document.storeToURL(uno.systemPathToFileUrl(to), (option("FilterName", filter_name),))
        finally:
            document.close(True)

    def evaluate(self, cells, arrays, fill):
        """A new document with these contents ("=..." is a formula) and array formulas."""
        document = self.desktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, hidden())
        try:
            sheet = document.Sheets.getByIndex(0)
            document.enableAutomaticCalculation(False)
            for address, content in cells.items():
                cell = sheet.getCellRangeByName(address)
                if isinstance(content, str):
                    # The API takes formulas in English with arguments parted by semicolons.
                    cell.setFormula(content)
                else:
                    cell.setValue(float(content))
            for address, formula in arrays.items():
                sheet.getCellRangeByName(address).setArrayFormula(formula)
            for address in fill:
                sheet.getCellRangeByName(address).fillAuto(TO_BOTTOM, 1)
            started = time.monotonic()
            document.calculateAll()
            seconds = time.monotonic() - started
            return {"cells": read_sheet(sheet), "seconds": seconds}
        finally:
            document.close(True)

    def describe(self):
        """What the function wizard shows of our functions."""
        found = {}
        descriptions = self.service("com.sun.star.sheet.FunctionDescriptions")
        for index in range(descriptions.getCount()):
            function = {p.Name: p.Value for p in descriptions.getByIndex(index)}
            if function["Name"].upper().startswith("OUNCE."):
                found[function["Name"]] = {
                    "description": function["Description"],
                    "parameters": [
                        {"name": a.Name, "description": a.Description, "optional": a.IsOptional}
                        for a in function["Arguments"]
                    ],
                }
        return found

    def report(self):
        return self.service("ouncewise.libreoffice.Menu").execute(())


def read_document(document):
    sheets = document.Sheets
    return {sheets.getByIndex(i).Name: read_sheet(sheets.getByIndex(i)) for i in range(sheets.Count)}


def read_sheet(sheet):
    """Filled cells by address. Whole arrays are fetched, since every single question crosses the pipe."""
    cursor = sheet.createCursor()
    cursor.gotoEndOfUsedArea(True)
    values, formulas = cursor.getDataArray(), cursor.getFormulaArray()
    cells = {}
    for row, line in enumerate(formulas):
        for column, text in enumerate(line):
            if text != "":
                formula = text if text[:1] in ("=", "{") else None
                cells[a1(column, row)] = {"value": values[row][column], "formula": formula}
    for address in cursor.queryFormulaCells(ERROR).getRangeAddresses():
        for row in range(address.StartRow, address.EndRow + 1):
            for column in range(address.StartColumn, address.EndColumn + 1):
                code = sheet.getCellByPosition(column, row).getError()
                if code:
                    name = a1(column, row)
                    cells[name] = {"error": code, "formula": cells[name]["formula"]}
    return cells


def a1(column, row):
    letters = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, 26)
        letters = chr(65 + rest) + letters
    return letters + str(row + 1)


def main():
    office = Office(connect(sys.argv[1], 60))
    print(json.dumps({"ready": True}), flush=True)
    for line in sys.stdin:
        request = json.loads(line)
        try:
            answer = {"answer": getattr(office, request["do"])(*request["with"])}
        except Exception as error:
            answer = {"fault": repr(error)}
        print(json.dumps(answer), flush=True)


main()
