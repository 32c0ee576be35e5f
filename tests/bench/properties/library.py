"""Times the reference library on the inputs given on stdin (JSON) and prints nanoseconds of processor time per call as JSON.

low: AbstractState.update plus one output, state object reused; the fastest call for one state.
batch: AbstractState.fast_evaluate over the whole array, where the library offers it; per state.
high: PropsSI with one output.
"""

import json
import sys
import time

import CoolProp
import CoolProp.CoolProp as library
import numpy as np

OUTPUT = {"T": CoolProp.iT, "P": CoolProp.iP, "D": CoolProp.iDmass}


def per_call(action, values, seconds=0.25):
    action(values[0])
    count, start = 0, time.process_time()
    while True:
        for value in values:
            action(value)
        count += len(values)
        elapsed = time.process_time() - start
        if elapsed > seconds:
            return elapsed / count * 1e9


def measure(case):
    fluid, fractions, kind, values = case["fluid"], case["fractions"], case["kind"], case["values"]
    state = library.AbstractState("HEOS", fluid)
    name = fluid
    if fractions:
        state.set_mole_fractions(fractions)
        name = "&".join(f"{part}[{x!r}]" for part, x in zip(fluid.split("&"), fractions))
    pair = CoolProp.PQ_INPUTS if kind == "T" else CoolProp.QT_INPUTS
    read = {"T": state.T, "P": state.p, "D": state.rhomass}[kind]
    result = {}

    def low(value):
        state.update(pair, *((value, 1.0) if kind == "T" else (1.0, value)))
        return read()

    def high(value):
        return library.PropsSI(kind, "P" if kind == "T" else "T", value, "Q", 1.0, name)

    def batch():
        n = 2000
        array = np.resize(np.array(values), n)
        quality = np.ones(n)
        first, second = (array, quality) if kind == "T" else (quality, array)
        out, status = np.zeros((n, 1)), np.zeros(n, dtype=np.int32)
        outputs = np.array([int(OUTPUT[kind])], dtype=np.int32)
        call = lambda _: state.fast_evaluate(pair, first, second, outputs, out, status)
        time_all = per_call(call, [0])
        return time_all / n if not status.any() else None

    result["value"] = low(values[0])
    for label, action in (("low", lambda: per_call(low, values)), ("batch", batch), ("high", lambda: per_call(high, values))):
        try:
            result[label] = action()
        except (ValueError, TypeError, RuntimeError) as problem:
            result[label] = None
            result[label + "Problem"] = str(problem)[:120]
    return result


print(json.dumps([measure(case) for case in json.load(sys.stdin)]))
