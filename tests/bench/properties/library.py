"""Times the reference library on the inputs given on stdin (JSON) and prints nanoseconds of processor time per call as JSON.

low: AbstractState.update plus one output, state object reused; the fastest call for one state.
high: PropsSI with one output.
(Its array interface, fast_evaluate, does not serve these equations of state, only tables made beforehand.)
"""

import json
import sys
import time

import CoolProp
import CoolProp.CoolProp as library


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

    result["value"] = low(values[0])
    for label, action in (("low", lambda: per_call(low, values)), ("high", lambda: per_call(high, values))):
        try:
            result[label] = action()
        except (ValueError, TypeError, RuntimeError) as problem:
            result[label] = None
            result[label + "Problem"] = str(problem)[:120]
    return result


print(json.dumps([measure(case) for case in json.load(sys.stdin)]))
