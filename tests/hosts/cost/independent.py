"""Repair, replace, top up, do nothing: worked out anew, from the description of the method and without its code.

Reads units as JSON lines from standard input, writes one JSON line a unit: the equal annual cost of each choice at the likely
values, and over outcomes of the ranges the share in which each costs least with its 10 % and 90 % points.
Money arithmetic by numpy-financial, draws by numpy.
"""

import json
import math
import sys

import numpy as np
import numpy_financial as npf

CHOICES = ("repair", "replace", "top up", "do nothing")


def present_of_year(rate, year):
    """Worth today of 1 paid at the end of a year; a part of a year is the difference of two annuities."""
    return float(npf.pv(rate, year, 0, -1)) if rate else 1.0


def annuity(rate, years):
    return float(npf.pv(rate, years, -1)) if rate else float(years)


def present(rate, years, yearly):
    total, whole = 0.0, math.floor(years + 1e-12)
    for year in range(1, whole + 1):
        total += yearly(year) * present_of_year(rate, year)
    rest = years - whole
    if rest > 1e-12:
        total += yearly(whole + 1) * (annuity(rate, years) - annuity(rate, whole))
    return total


def power(unit, efficiency):
    return unit["capacity"] / efficiency * unit["hours"] / 1000 * unit["powerPrice"]


def short_of_charge(unit, charge, replace_a_year):
    """Electricity at a low charge, and the worth of the cooling that is missed."""
    lost = unit["efficiencyLoss"] * (1 - charge) / 0.15
    cooling = min(0.9, unit["capacityLoss"] * (1 - charge) / 0.15)
    return power(unit, unit["efficiency"] * (1 - lost)) + unit["coolingMissed"] * cooling * replace_a_year


def costs(unit):
    rate, left = unit["discountRate"], unit["yearsLeft"]
    new_power = power(unit, unit["newEfficiency"])
    replace = float(-npf.pmt(rate, unit["newLife"], unit["replacementPrice"])) + new_power
    full = power(unit, unit["efficiency"])
    leak = unit["ouncesAYear"] / unit["nameplate"]
    growth = 1 + unit["leakGrowth"]
    burns = unit["flammability"] > 1
    found = {"replace": replace}

    def equal(total):
        return float(-npf.pmt(rate, left, total))

    def topped_up(year):
        calls = leak / (1 - unit["refillAt"]) * unit["visitPrice"]
        gas = unit["ouncesAYear"] * unit["refrigerantPrice"]
        middle = (1 + unit["refillAt"]) / 2
        return (calls + gas) * growth ** (year - 1) + short_of_charge(unit, middle, replace)

    if not burns:
        found["top up"] = equal(present(rate, left, topped_up))

    failed = min(found.get("top up", math.inf), replace)
    chance = unit["chanceOfHolding"]
    found["repair"] = equal(unit["repairPrice"]) + chance * full + (1 - chance) * failed

    charge, usable = unit["refillAt"], unit["usableDownTo"]
    if not burns and charge > usable:
        lasts, at = None, charge
        for year in range(1, 200):
            lost = leak * growth ** (year - 1)
            if at - lost < usable or year > left + 1:
                lasts = min(left, year - 1 + (at - usable) / lost)
                break
            at -= lost
        if lasts >= min(1, left) - 1e-9:

            def charge_after(time):
                at = charge
                for year in range(1, math.ceil(time - 1e-12) + 1):
                    at -= leak * growth ** (year - 1) * min(1, time - (year - 1))
                return at

            def running_down(year):
                middle = (charge_after(min(year - 1, lasts)) + charge_after(min(year, lasts))) / 2
                return short_of_charge(unit, middle, replace)

            total = present(rate, lasts, running_down) + replace * (annuity(rate, left) - annuity(rate, lasts))
            found["do nothing"] = equal(total)
    return found


def draw(ranges, random):
    drawn = {}
    for name, (low, likely, high) in ranges.items():
        drawn[name] = low if low == high else random.triangular(low, likely, high)
    return drawn


def main():
    for line in sys.stdin:
        told = json.loads(line)
        ranges, draws = told["ranges"], told["draws"]
        random = np.random.default_rng(told["seed"])
        likely = {name: middle for name, (_, middle, _) in ranges.items()}
        best = dict.fromkeys(CHOICES, 0)
        sampled = {name: [] for name in CHOICES}
        for _ in range(draws):
            found = costs(draw(ranges, random))
            for name, cost in found.items():
                sampled[name].append(cost)
            best[min(found, key=found.get)] += 1
        print(
            json.dumps(
                {
                    "likely": costs(likely),
                    "shares": {name: count / draws for name, count in best.items()},
                    "ends": {
                        name: [float(end) for end in np.quantile(values, (0.1, 0.9))] + [len(values)]
                        for name, values in sampled.items()
                        if values
                    },
                }
            )
        )


if __name__ == "__main__":
    main()
