import { observe } from '../observe.ts';
import { observableCount as order } from '../observables.ts';
import { fittedFaults, fittedStates, weatherTerms } from '../response-form.ts';
import type { Fitted, FittedFault, ResponseTable } from '../response-form.ts';
import { weatherCount, weatherOf } from '../weather.ts';
import { ridge, withLeastVariance } from './least-squares.ts';
import { severityOf } from './simulated-sets.ts';
import type { SimulatedSet } from './simulated-sets.ts';

/** Raised by hand when the derivation below changes what it gives. */
export const derivationVersion = 1;

/** Pull towards zero, in sets' worth of evidence. Own choices, held by leaving units out; none is felt in the visible fit. */
const pull = {
  weather: 0.03,
  weatherProducts: 0.3,
  volts: 0.001,
  first: 0.001,
  square: 0.05,
  withWeather: 0.5,
  unit: 2,
};
/** A set whose wet bulb or volts were not measured counts half. Own choice. */
const gapWeight = 0.5;
/** A fault's own scatter is mixed with that of all as if so many sets of all were its own. Own choice. */
const sharedSets = 60;
/** No scatter is taken for less than a tenth of a kelvin: the model is not that good. Own choice. */
const leastVariance = 0.01;

interface FitRow {
  readonly set: SimulatedSet;
  readonly values: readonly (number | undefined)[];
  readonly terms: readonly number[];
  readonly instruments: Float64Array;
  /** Nothing of the weather and the volts was left open. */
  readonly whole: boolean;
}

const faultRows = 2 * (1 + weatherCount);

/**
 * Fits what sound and faulty units show, and how far designs and single sets scatter about it.
 * A supply fault is left out: it is measured, not inferred.
 */
export function deriveResponses(sets: readonly SimulatedSet[], stamp: string): ResponseTable {
  const fitted = sets.filter(({ causes }) => !causes.includes('supply fault'));
  const units = [...new Set(fitted.map(({ unit }) => unit))].sort();
  const rows = fitted.map((set) => fitRow(set, units));
  const penalties = penaltiesFor(units.length);
  const coefficients = Array.from({ length: order }, (_, place) =>
    ridge(
      rows.flatMap(({ values, terms, whole }) => {
        const value = values[place];
        return value === undefined ? [] : [{ terms, weight: whole ? 1 : gapWeight, value }];
      }),
      penalties,
    ),
  );
  const soundCount = weatherTerms(new Array<number>(weatherCount).fill(0)).length;
  const at = (term: number): number[] => coefficients.map((each) => each[term]!);
  const faultsFrom = soundCount + 1;
  const unitsFrom = faultsFrom + fittedFaults.length * faultRows;
  const unitEffects = units.map((_, index) => at(unitsFrom + index));
  const middle = meanOf(unitEffects);
  const sound = Array.from({ length: soundCount }, (_, term) => at(term));
  sound[0] = sound[0]!.map((value, place) => value + middle[place]!);
  return {
    stamp,
    sound: sound.map(rounded),
    volts: rounded(at(soundCount)),
    faults: Object.fromEntries(
      fittedFaults.map((fault, index) => [
        fault,
        Array.from({ length: faultRows }, (_, row) => rounded(at(faultsFrom + index * faultRows + row))),
      ]),
    ) as Record<FittedFault, number[][]>,
    designs: triangle(covarianceOf(unitEffects, middle)),
    scatter: scatterOf(rows, coefficients),
  };
}

function fitRow(set: SimulatedSet, units: readonly string[]): FitRow {
  const { values, instruments, volts, voltsDoubt } = observe(set.readings);
  const weather = weatherOf(set.readings);
  const faultTerms = fittedFaults.flatMap((fault) => {
    const index = set.causes.indexOf(fault);
    const severity = index < 0 ? 0 : severityOf(fault, set.severities[index]!);
    const one = [severity, severity ** 2];
    return [...one, ...one.flatMap((power) => weather.values.map((part) => power * part))];
  });
  return {
    set,
    values,
    instruments,
    terms: [
      ...weatherTerms(weather.values),
      volts,
      ...faultTerms,
      ...units.map((unit) => (unit === set.unit ? 1 : 0)),
    ],
    whole: voltsDoubt === 0 && weather.doubts.every((doubt) => doubt === 0),
  };
}

function penaltiesFor(unitCount: number): number[] {
  const products = (weatherCount * (weatherCount + 1)) / 2;
  const fill = (count: number, value: number): number[] => new Array<number>(count).fill(value);
  return [
    0,
    ...fill(weatherCount, pull.weather),
    ...fill(products, pull.weatherProducts),
    pull.volts,
    ...fittedFaults.flatMap(() => [pull.first, pull.square, ...fill(faultRows - 2, pull.withWeather)]),
    ...fill(unitCount, pull.unit),
  ];
}

function meanOf(vectors: readonly (readonly number[])[]): number[] {
  return Array.from(
    { length: order },
    (_, place) => vectors.reduce((sum, vector) => sum + vector[place]!, 0) / vectors.length,
  );
}

function covarianceOf(vectors: readonly (readonly number[])[], middle: readonly number[]): Float64Array {
  const matrix = new Float64Array(order * order);
  for (const vector of vectors)
    for (let i = 0; i < order; i += 1)
      for (let j = 0; j < order; j += 1)
        matrix[i * order + j]! +=
          ((vector[i]! - middle[i]!) * (vector[j]! - middle[j]!)) / (vectors.length - 1);
  return matrix;
}

/** What is left over, less what the instruments explain: each fault's own, mixed with that of all. */
function scatterOf(
  rows: readonly FitRow[],
  coefficients: readonly (readonly number[])[],
): Record<Fitted, number[]> {
  const whole = rows.filter((row) => row.whole);
  const left = whole.map(({ values, terms }) =>
    values.map((value, place) =>
      value === undefined
        ? undefined
        : value - terms.reduce((sum, term, index) => sum + term * coefficients[place]![index]!, 0),
    ),
  );
  const all = pairwise(left);
  const instruments = meanInstruments(whole);
  return Object.fromEntries(
    fittedStates.map((state) => {
      const own = left.filter((_, index) => whole[index]!.set.causes.join(' + ') === state);
      const mixed = pairwise(own).map(
        (value, index) =>
          (own.length * value + sharedSets * all[index]!) / (own.length + sharedSets) - instruments[index]!,
      );
      return [state, triangle(withLeastVariance(mixed, order, leastVariance))];
    }),
  ) as Record<Fitted, number[]>;
}

/** Mean products of every two that were measured together. */
function pairwise(vectors: readonly (readonly (number | undefined)[])[]): Float64Array {
  return overPairs((i, j) =>
    vectors.flatMap((vector) => {
      const one = vector[i];
      const other = vector[j];
      return one === undefined || other === undefined ? [] : [one * other];
    }),
  );
}

function meanInstruments(rows: readonly FitRow[]): Float64Array {
  return overPairs((i, j) =>
    rows.flatMap(({ values, instruments }) =>
      values[i] === undefined || values[j] === undefined ? [] : [instruments[i * order + j]!],
    ),
  );
}

function overPairs(found: (i: number, j: number) => readonly number[]): Float64Array {
  const matrix = new Float64Array(order * order);
  for (let i = 0; i < order; i += 1)
    for (let j = 0; j < order; j += 1) {
      const products = found(i, j);
      if (products.length > 0)
        matrix[i * order + j] = products.reduce((sum, value) => sum + value, 0) / products.length;
    }
  return matrix;
}

function triangle(matrix: Float64Array): number[] {
  const values: number[] = [];
  for (let row = 0; row < order; row += 1)
    for (let column = 0; column <= row; column += 1) values.push(matrix[row * order + column]!);
  return rounded(values);
}

/** Five digits carry more than the fit knows and keep the table short. */
function rounded(values: readonly number[]): number[] {
  return values.map((value) => Number(value.toPrecision(5)));
}
