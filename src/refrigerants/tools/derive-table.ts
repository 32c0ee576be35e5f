import type { SaturationTable } from '../../data/saturation-form.ts';
import { pressureQuantum, propertyQuantum } from '../../data/saturation-form.ts';
import { chebyshevFit, chebyshevNodes } from '../../numerics/chebyshev.ts';
import type { SaturationCurves, SaturationPoint } from '../equilibrium/saturation-point.ts';
import type { Source } from './source-of.ts';

/**
 * Raised by hand whenever the solver or the fit changes its numbers; part of the stamp of every table. A change that
 * forgets it is caught by tests/refrigerants, which solve again and compare.
 */
export const derivationVersion = 2;

/** Points per curve from which the series are made; far more than the series keep. */
const nodeCount = 72;
/** Dropped from the end of a series: the coefficients whose sum stays below this many quanta. */
const droppedQuanta = 6;
/** Tables start where the dew pressure is 1 kPa, or at the lower limit of the model. */
const lowestPressurePa = 1000;
/** Pure fluids are fitted to within 0.2 % of their critical temperature, blends to within 1 %. */
const topOfPure = 0.998;
const topOfBlend = 0.99;

/** Where the densities of the two phases meet: (ρL - ρV)² falls linearly in T just before. */
function meetingTemperatureK(source: Source, curves: SaturationCurves): number {
  let lastK = 0.8 * source.reducingTemperatureK;
  let last = curves.at(lastK);
  let step = 2;
  while (step > 0.02) {
    const next = curves.at(lastK + step);
    if (next === undefined) step /= 2;
    else {
      lastK += step;
      last = next;
    }
  }
  const before = curves.at(lastK - 0.5);
  if (last === undefined || before === undefined) throw new Error(`${source.designation}: no top`);
  const gap = (point: SaturationPoint) =>
    Math.pow(point.liquidDensityMolPerM3 - point.vaporDensityMolPerM3, 2);
  return lastK + (0.5 * gap(last)) / (gap(before) - gap(last));
}

/** The lowest temperature of the table, rounded up to a tenth of a kelvin. */
function bottomTemperatureK(source: Source, curves: SaturationCurves): number {
  let low = source.lowestTemperatureK;
  let high = 0.7 * source.reducingTemperatureK;
  const covers = (temperatureK: number) => {
    const point = curves.at(temperatureK);
    return point !== undefined && point.dewPressurePa > lowestPressurePa;
  };
  if (low > 0 && covers(low)) return Math.ceil(low * 1000 - 1e-6) / 1000;
  low = Math.max(low, 0.4 * source.reducingTemperatureK);
  while (high - low > 0.05) {
    const middle = (low + high) / 2;
    if (covers(middle)) high = middle;
    else low = middle;
  }
  return Math.ceil(high * 10) / 10;
}

function shorten(series: Float64Array, quantum: number): number[] {
  let rest = 0;
  let length = series.length;
  while (length > 1 && rest + Math.abs(series[length - 1]!) < droppedQuanta * quantum) {
    rest += Math.abs(series[length - 1]!);
    length--;
  }
  return [...series.slice(0, length)].map((c) => Math.round(c / quantum));
}

function roundTo(value: number, digits: number): number {
  return Number(value.toPrecision(digits));
}

/** Solves a refrigerant along its saturation curve and fits the table to it. */
export function deriveTable(source: Source, input: string): SaturationTable {
  const curves = source.curves();
  const scaleK = roundTo(meetingTemperatureK(source, curves), 8);
  const topK = scaleK * (source.method === 'pure' ? topOfPure : topOfBlend);
  const bottomK = bottomTemperatureK(source, curves);
  const low = roundTo(Math.sqrt(1 - topK / scaleK), 9);
  const high = roundTo(Math.sqrt(1 - bottomK / scaleK), 12);
  const mass = source.molarMassKgPerMol;
  const scalePressure = roundTo(source.reducingPressurePa, 4);
  const scaleDensity = roundTo(source.reducingDensityMolPerM3 * mass, 4);
  const scaleEnthalpy = roundTo((8.314 * scaleK) / mass, 4);

  const points = chebyshevNodes(nodeCount).map((node) => {
    const s = (low + high) / 2 + (node * (high - low)) / 2;
    const temperatureK = scaleK * (1 - s * s);
    const point = curves.at(temperatureK);
    if (point === undefined) throw new Error(`${source.designation}: not solved at ${temperatureK} K`);
    return { reduced: 1 - s * s, point };
  });
  const series = (of: (point: SaturationPoint, reduced: number) => number, quantum = propertyQuantum) =>
    shorten(chebyshevFit(points.map(({ point, reduced }) => of(point, reduced))), quantum);

  const pressure = (of: (point: SaturationPoint) => number) =>
    series((point, reduced) => reduced * Math.log(of(point) / scalePressure), pressureQuantum);
  return {
    input,
    scale: [scaleK, scalePressure, scaleDensity, scaleEnthalpy],
    low,
    high,
    bubble: pressure((p) => p.bubblePressurePa),
    ...(source.method === 'pure' ? {} : { dew: pressure((p) => p.dewPressurePa) }),
    liquid: series((p) => (p.liquidDensityMolPerM3 * mass) / scaleDensity),
    vapor: series((p, reduced) => reduced * Math.log((p.vaporDensityMolPerM3 * mass) / scaleDensity)),
    heat: series((p) => p.enthalpyDifferenceJPerMol / mass / scaleEnthalpy),
  };
}
