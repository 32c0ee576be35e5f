"""Reads published equation-of-state coefficients out of a property library's wheel and writes them as TypeScript data.

Run with `npm run extract` (a private environment under .cache/ with the pinned library; see extract.mjs), or
`python extract.py OUT_DIR` where CoolProp is importable. Only coefficients are taken; each set keeps the key of its paper.

Pure and pseudo-pure equations come through the library's own interface (get_fluid_param_string). Mixing parameters and
departure functions have no complete interface in 8.0.0: they are JSON text embedded in the compiled extension and are
read from there; every mixing parameter is then compared with get_mixture_binary_pair_data.
"""

import hashlib
import importlib.metadata
import json
import pathlib
import re
import sys

import CoolProp
import CoolProp.CoolProp as library

HERE = pathlib.Path(__file__).parent
DATA = HERE.parent
WANTED = json.loads((HERE / "extract-list.json").read_text())


def file_name(designation):
    return designation.lower().replace("(e)", "-e").replace("(z)", "-z")


def number(x):
    text = repr(float(x))
    return text[:-2] if text.endswith(".0") else text


def numbers(xs):
    return "[" + ", ".join(number(x) for x in xs) + "]"


def provenance():
    extension = pathlib.Path(library.__file__)
    return {
        "library": "CoolProp",
        "version": importlib.metadata.version("CoolProp"),
        "revision": library.get_global_param_string("gitrevision"),
        "extensionSha256": hashlib.sha256(extension.read_bytes()).hexdigest(),
    }


HEADER = "// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.\n"


def residual_groups(terms, where):
    """Sorts the library's terms into the four shapes that src/refrigerants/equation-of-state knows."""
    exponential = {"n": [], "d": [], "t": [], "l": [], "m": []}
    gaussian = {"n": [], "d": [], "t": [], "eta": [], "epsilon": [], "beta": [], "gamma": []}
    critical = None
    for term in terms:
        kind = term["type"]
        if kind == "ResidualHelmholtzPower" or kind == "ResidualHelmholtzLemmon2005":
            size = len(term["n"])
            for key in exponential:
                exponential[key] += term.get(key, [0] * size)
        elif kind == "ResidualHelmholtzGaussian":
            for key in gaussian:
                gaussian[key] += term[key]
        elif kind == "ResidualHelmholtzNonAnalytic":
            critical = {key: term[key] for key in ("n", "a", "b", "beta", "A", "B", "C", "D")}
        else:
            raise SystemExit(f"{where}: unknown residual term {kind}")
    groups = {"exponential": exponential}
    if not any(exponential["m"]):
        del exponential["m"]
    if gaussian["n"]:
        groups["gaussian"] = gaussian
    if critical:
        groups["nonAnalytic"] = critical
    return groups


def ideal_terms(terms, reducing_temperature, where):
    """tau * d(alpha0)/d(tau) only needs ln(tau), powers, Planck-Einstein and polynomial heat capacities; the reference
    state (lead and offset terms) cancels in every enthalpy difference and is left out."""
    log_tau = 0.0
    power = {"n": [], "t": []}
    einstein = {"n": [], "t": []}
    heat_capacity = {"c": [], "t": []}  # cp0/R = sum c T^t, T in kelvin
    for term in terms:
        kind = term["type"]
        if kind == "IdealGasHelmholtzLead" or kind == "IdealGasHelmholtzEnthalpyEntropyOffset":
            continue
        if kind == "IdealGasHelmholtzLogTau":
            log_tau += term["a"]
        elif kind == "IdealGasHelmholtzPower":
            power["n"] += term["n"]
            power["t"] += term["t"]
        elif kind == "IdealGasHelmholtzPlanckEinstein":
            einstein["n"] += term["n"]
            einstein["t"] += term["t"]
        elif kind == "IdealGasHelmholtzCP0Constant":
            heat_capacity["c"].append(term["cp_over_R"])
            heat_capacity["t"].append(0)
        elif kind == "IdealGasHelmholtzCP0PolyT":
            heat_capacity["c"] += term["c"]
            heat_capacity["t"] += term["t"]
        else:
            raise SystemExit(f"{where}: unknown ideal-gas term {kind}")
    ideal = {"logTau": log_tau}
    if power["n"]:
        ideal["power"] = power
    if einstein["n"]:
        ideal["planckEinstein"] = einstein
    if heat_capacity["c"]:
        ideal["heatCapacity"] = heat_capacity
    return ideal


def literal(value, indent=2):
    pad = " " * indent
    if isinstance(value, dict):
        inner = ",\n".join(f"{pad}  {key}: {literal(item, indent + 2)}" for key, item in value.items())
        return "{\n" + inner + ",\n" + pad + "}"
    if isinstance(value, list):
        return numbers(value)
    if isinstance(value, str):
        return json.dumps(value)
    return number(value)


def ancillary(curve):
    if not curve["using_tau_r"]:
        raise SystemExit("pseudo-pure pressure ancillary is expected in the tau form")
    return {"T": curve["T_r"], "p": curve["reducing_value"], "n": curve["n"], "t": curve["t"]}


def write_equation(designation, entry, out):
    fluid = json.loads(library.get_fluid_param_string(entry["library"], "JSON"))[0]
    equation = fluid["EOS"][0]
    reducing = equation["STATES"]["reducing"]
    critical = fluid["STATES"]["critical"]
    lowest = equation["Ttriple"]
    fields = {
        "designation": designation,
        "source": equation["BibTeX_EOS"],
        "molarMassKgPerMol": equation["molar_mass"],
        "gasConstant": equation["gas_constant"],
        "acentricFactor": equation["acentric"],
        "reducingTemperatureK": reducing["T"],
        "reducingDensityMolPerM3": reducing["rhomolar"],
        "criticalTemperatureK": critical["T"],
        "criticalPressurePa": critical["p"],
        "lowestTemperatureK": lowest,
        "highestTemperatureK": equation["T_max"],
        "highestPressurePa": equation["p_max"],
    }
    residual = residual_groups(equation["alphar"], designation)
    ideal = ideal_terms(equation["alpha0"], reducing["T"], designation)
    fields["residual"] = residual
    fields["ideal"] = ideal
    if equation["pseudo_pure"]:
        fields["bubblePressure"] = ancillary(fluid["ANCILLARIES"]["pL"])
        fields["dewPressure"] = ancillary(fluid["ANCILLARIES"]["pV"])
    text = HEADER
    text += "import type { FluidEquation } from '../equation-form.ts';\n\nexport const equation: FluidEquation = " + literal(fields, 0) + ";\n"
    (out / "equations" / f"{file_name(designation)}.ts").write_text(text)
    return fluid["INFO"]["CAS"], equation["BibTeX_EOS"]


def embedded_json(marker):
    """The array of JSON objects around `marker` in the compiled extension, up to its closing zero byte."""
    blob = pathlib.Path(library.__file__).read_bytes()
    for match in re.finditer(re.escape(marker), blob):
        end = blob.index(b"\0", match.start())
        start = blob.rfind(b"\0", 0, match.start()) + 1
        try:
            parsed = json.loads(blob[start:end])
        except ValueError:
            continue
        if isinstance(parsed, list):
            return parsed
    raise SystemExit(f"no embedded JSON around {marker!r}")


def library_order(first, second):
    """The interface knows each pair in one order only; the asymmetric parameters invert with the order."""
    try:
        library.get_mixture_binary_pair_data(first, second, "BibTeX")
        return first, second
    except ValueError:
        return second, first


def write_mixing(cas_of, blends, out):
    pairs = embedded_json(b'"Bell-JPCRD-2023"')
    departures = {d["Name"]: d for d in embedded_json(b'"Name" : "R32-R125"')}
    by_cas = {}
    for pair in pairs:
        by_cas[(pair["CAS1"], pair["CAS2"])] = pair
    in_blends = {tuple(sorted((a, b))) for parts in blends.values() for i, a in enumerate(parts) for b in parts[i + 1:]}
    needed = sorted(in_blends | {tuple(sorted(pair)) for pair in WANTED["relatives"]})
    lines, used, missing, sources = [], {}, [], set()
    for a, b in needed:
        first, second = a, b
        pair = by_cas.get((cas_of[a], cas_of[b]))
        if pair is None:
            first, second = b, a
            pair = by_cas.get((cas_of[b], cas_of[a]))
        if pair is None:
            missing.append((a, b))
            continue
        order = library_order(cas_of[first], cas_of[second])
        names = ("xi", "zeta", "F") if "xi" in pair else ("betaT", "gammaT", "betaV", "gammaV", "F")
        values = {k: float(library.get_mixture_binary_pair_data(*order, k)) for k in names}
        if order[0] != cas_of[first] and "betaT" in values:
            values["betaT"], values["betaV"] = 1 / values["betaT"], 1 / values["betaV"]
        for key, value in values.items():
            if key in pair:
                if abs(float(pair[key]) - value) > 1e-12:
                    raise SystemExit(f"{first}|{second}: {key} differs between the embedded text and the interface")
                values[key] = float(pair[key])
        sources.add(pair["BibTeX"])
        record = f"  {{ first: '{first}', second: '{second}', source: '{pair['BibTeX']}', "
        record += ", ".join(f"{k}: {number(v)}" for k, v in values.items() if k != "F")
        if values["F"] != 0:
            name = library.get_mixture_binary_pair_data(*order, "function")
            used[name] = departures[name]
            record += f", departure: '{name}', departureFactor: {number(values['F'])}"
        lines.append(record + " },")
    text = HEADER + "import type { MixingPair } from '../equation-form.ts';\n\n"
    text += "// prettier-ignore\nexport const mixingPairs: readonly MixingPair[] = [\n" + "\n".join(lines) + "\n];\n\n"
    text += "/** Pairs that occur in the listed blends and for which the library holds no published parameters. */\n"
    text += "// prettier-ignore\nexport const pairsWithoutParameters: readonly (readonly [string, string])[] = [\n"
    text += "\n".join(f"  ['{a}', '{b}']," for a, b in missing) + "\n];\n"
    (out / "mixing" / "pairs.ts").write_text(text)

    text = HEADER + "import type { DepartureFunction } from '../equation-form.ts';\n\n"
    text += "// prettier-ignore\nexport const departureFunctions: Readonly<Record<string, DepartureFunction>> = {\n"
    for name, departure in sorted(used.items()):
        size = len(departure["n"])
        if departure["type"] == "Exponential":
            powers = departure.get("l", [0] * size)
        elif departure["type"] == "GERG-2008" and departure["Npower"] == size:
            powers = [0] * size
        else:
            raise SystemExit(f"departure {name}: type {departure['type']} is not supported")
        sources.add(departure["BibTeX"])
        text += f"  '{name}': {{ source: '{departure['BibTeX']}', n: {numbers(departure['n'])}, d: {numbers(departure['d'])}, t: {numbers(departure['t'])}, l: {numbers(powers)} }},\n"
    text += "};\n"
    (out / "mixing" / "departures.ts").write_text(text)
    return sources


def write_references(keys, out):
    """Copies the bibliography entries of the papers in use; the library's licence covers the file."""
    bib = (pathlib.Path(CoolProp.__file__).parent / "CoolPropBibTeXLibrary.bib").read_text(encoding="utf-8", errors="replace")
    entries = dict((m.group(1), m.group(0)) for m in re.finditer(r"@\w+\{([^,\s]+),.*?\n\}", bib, re.S))
    drop = re.compile(r"^\s*(Owner|Timestamp|owner|timestamp|__markedentry|File|file|Abstract|abstract|Keywords|keywords)\s*=.*\n", re.M)
    text = "% Papers behind the equations in src/data. Written by src/data/tools/extract.py from the library's bibliography.\n\n"
    for key in sorted(keys):
        if key not in entries:
            print(f"note: no bibliography entry for {key}", file=sys.stderr)
            text += f"% {key}: not in the library's bibliography\n\n"
            continue
        entry = re.sub(r"\n\s*\n", "\n", drop.sub("", entries[key]))
        text += entry + "\n\n"
    (out / "references.bib").write_text(text)


def main():
    out = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else DATA
    for folder in ("equations", "mixing"):
        (out / folder).mkdir(parents=True, exist_ok=True)
    cas_of, keys = {}, set()
    for designation, entry in WANTED["equations"].items():
        cas_of[designation], key = write_equation(designation, entry, out)
        keys.add(key)
    keys |= write_mixing(cas_of, WANTED["blends"], out)
    write_references(keys, out)
    text = HEADER + "\n/** Which build of the library the coefficients were read from. */\nexport const provenance = " + literal(provenance(), 0) + " as const;\n"
    (out / "provenance.ts").write_text(text)


main()
