import type { BlendFacts, PureFacts } from '../../data/facts-form.ts';
import type { DepartureFunction, FluidEquation, MixingPair } from '../../data/equation-form.ts';
import { mixture } from '../equation-of-state/mixture-model.ts';
import { moleFractions } from '../equation-of-state/mole-fractions.ts';
import { mixtureSaturation } from '../equilibrium/mixture-saturation.ts';
import { pseudoPureSaturation } from '../equilibrium/pseudo-pure-saturation.ts';
import { pureSaturation } from '../equilibrium/pure-saturation.ts';
import type { SaturationCurves } from '../equilibrium/saturation-point.ts';

/** Everything a saturation table is derived from. */
export interface Source {
  readonly designation: string;
  readonly method: 'pure' | 'pseudo-pure' | 'mixture';
  readonly molarMassKgPerMol: number;
  /** Upper bound of the two-phase region: reducing temperature. */
  readonly reducingTemperatureK: number;
  readonly reducingDensityMolPerM3: number;
  readonly reducingPressurePa: number;
  readonly lowestTemperatureK: number;
  readonly curves: () => SaturationCurves;
  /** The data itself, for the hash. */
  readonly input: unknown;
}

export interface SourceData {
  readonly equations: ReadonlyMap<string, FluidEquation>;
  readonly pairs: readonly MixingPair[];
  readonly departures: Readonly<Record<string, DepartureFunction>>;
}

/**
 * The model of a refrigerant. A blend that has been fitted as if it were one substance uses that published fit; every
 * other blend uses the mixture model of its components.
 */
export function sourceOf(facts: PureFacts | BlendFacts, data: SourceData): Source {
  const own = data.equations.get(facts.designation);
  if (own !== undefined) return fittedSource(own);
  if (!('components' in facts)) throw new Error(`no equation of state for ${facts.designation}`);
  return mixtureSource(facts, data);
}

function fittedSource(equation: FluidEquation): Source {
  const pseudoPure = equation.bubblePressure !== undefined;
  return {
    designation: equation.designation,
    method: pseudoPure ? 'pseudo-pure' : 'pure',
    molarMassKgPerMol: equation.molarMassKgPerMol,
    reducingTemperatureK: equation.reducingTemperatureK,
    reducingDensityMolPerM3: equation.reducingDensityMolPerM3,
    reducingPressurePa: equation.criticalPressurePa,
    lowestTemperatureK: equation.lowestTemperatureK,
    curves: () => (pseudoPure ? pseudoPureSaturation(equation) : pureSaturation(equation)),
    input: equation,
  };
}

function mixtureSource(facts: BlendFacts, data: SourceData): Source {
  const components = facts.components.map(([designation]) => {
    const equation = data.equations.get(designation);
    if (equation === undefined)
      throw new Error(`${facts.designation}: no equation of state for ${designation}`);
    return equation;
  });
  const names = components.map((c) => c.designation);
  const pairs = data.pairs.filter((p) => names.includes(p.first) && names.includes(p.second));
  const departures = pairs.flatMap((p) => (p.departure === undefined ? [] : [data.departures[p.departure]]));
  const fractions = moleFractions(
    facts.components.map(([, mass]) => mass),
    components.map((c) => c.molarMassKgPerMol),
  );
  const mean = (of: (c: FluidEquation) => number) =>
    components.reduce((sum, c, i) => sum + fractions[i]! * of(c), 0);
  return {
    designation: facts.designation,
    method: 'mixture',
    molarMassKgPerMol: mean((c) => c.molarMassKgPerMol),
    reducingTemperatureK: mean((c) => c.reducingTemperatureK),
    reducingDensityMolPerM3: 1 / mean((c) => 1 / c.reducingDensityMolPerM3),
    reducingPressurePa: mean((c) => c.criticalPressurePa),
    lowestTemperatureK: 0,
    curves: () => mixtureSaturation(mixture(components, pairs, data.departures), fractions),
    input: { components, pairs, departures, masses: facts.components },
  };
}
