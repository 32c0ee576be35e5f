"""Cells of Calc to JSON and back."""

import struct

# Calc carries the error of a cell as a not-a-number with the error code in its lowest bits.
_NAN = 0x7FF8000000000000
_VALUE = 519
_NAME = 525


def error_cell(code):
    return struct.unpack("<d", struct.pack("<Q", _NAN | code))[0]


# Shown when there is no answer at all, so that it looks different from a wrong reading.
UNAVAILABLE = {"e": _NAME}
FAULTY = {"e": _VALUE}


def to_json(argument):
    """A range arrives as a tuple of rows, a left out argument as None, everything else as it is."""
    if isinstance(argument, tuple):
        return [[_plain(cell) for cell in row] for row in argument]
    return _plain(argument)


def _plain(cell):
    return cell if isinstance(cell, (float, int, str)) else None


def rows_from_json(value):
    """Rows of cells; a single cell is one row of one."""
    if isinstance(value, list):
        return tuple(tuple(cell_from_json(cell) for cell in row) for row in value)
    return ((cell_from_json(value),),)


def cell_from_json(value):
    if isinstance(value, (float, str)):
        return value
    if isinstance(value, bool):
        return 1.0 if value else 0.0
    if isinstance(value, int):
        return float(value)
    if isinstance(value, dict):
        return error_cell(int(value.get("e", _VALUE)))
    return ""
