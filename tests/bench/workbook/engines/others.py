"""One round with another engine: its name as argument, the job as JSON on stdin, times in milliseconds and values as JSON out.

The last line printed counts.
"""

import json
import sys
import time


def timed(work):
    began, before = time.perf_counter(), time.process_time()
    work()
    return {
        "processor": (time.process_time() - before) * 1e3,
        "wall": (time.perf_counter() - began) * 1e3,
    }


class Formualizer:
    def __init__(self, job):
        import formualizer

        self.book = formualizer.load_workbook(job["path"])
        if job["custom"]:
            self.book.register_function(job["custom"], lambda reading, step: reading * 0.5 + step)
        self.book.evaluate_all()
        self.sheets = self.book.sheet_names

    def edit(self, row, column, value):
        self.book.set_value(self.sheets[0], row, column, value)
        self.book.evaluate_all()

    def value(self, sheet, row, column):
        return self.book.get_value(self.sheets[sheet - 1], row, column)


class IronCalc:
    def __init__(self, job):
        import ironcalc

        self.book = ironcalc.load_from_xlsx(job["path"])
        self.book.evaluate()

    def edit(self, row, column, value):
        self.book.set_user_input(0, row, column, str(value))
        self.book.evaluate()

    def value(self, sheet, row, column):
        return self.book.get_cell_value(sheet - 1, row, column)


job = json.load(sys.stdin)
made = []
opened = timed(lambda: made.append({"formualizer": Formualizer, "ironcalc": IronCalc}[sys.argv[1]](job)))
engine = made[0]


def present():
    return [engine.value(*place) for place in job["checked"]]


# What is known is told after every step: an engine may be stopped before it has made all edits.
result = {"open": opened, "edits": [[] for _ in job["edits"]], "values": present(), "after": None}
print(json.dumps(result), flush=True)
for edit, times in zip(job["edits"], result["edits"]):
    for value in edit["values"]:
        times.append(timed(lambda: engine.edit(edit["row"], edit["column"], value)))
        print(json.dumps(result), flush=True)
result["after"] = present()
print(json.dumps(result), flush=True)
