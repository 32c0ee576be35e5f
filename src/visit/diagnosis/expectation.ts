import { designVariances, fittedDesignFactor, iceVariances } from './design-spread.ts';
import { observableCount as order } from './observables.ts';
import type { Hypothesis, ResponseTable } from './response-form.ts';
import { fullMatrix, hypotheses, weatherTerms } from './response-form.ts';
import type { Weather } from './weather.ts';
import { weatherCount } from './weather.ts';

/** What a hypothesis lets expect in one weather: mean sound + s first + s² square, and how it moves with weather that is in doubt. */
export interface Expectation {
  readonly first: Float64Array;
  readonly square: Float64Array;
  /** Standard deviation times slope of the two parts above, for every part of the weather that is in doubt. */
  readonly drift: readonly { readonly first: Float64Array; readonly square: Float64Array }[];
}

/** Expectations of a sound unit and of every fault in one weather. */
export interface Expectations {
  readonly sound: Float64Array;
  readonly soundDrift: readonly Float64Array[];
  readonly volts: readonly number[];
  readonly of: ReadonlyMap<Hypothesis, Expectation>;
}

/** Expectations in this weather and at these volts (ten times the logarithm of their share of the rated ones). */
export function expectationsIn(weather: Weather, volts: number, table: ResponseTable): Expectations {
  const terms = weatherTerms(weather.values);
  const sound = new Float64Array(order);
  for (let term = 0; term < terms.length; term += 1) add(sound, table.sound[term]!, terms[term]!);
  add(sound, table.volts, volts);
  const doubtful = weather.doubts.flatMap((doubt, part) => (doubt > 0 ? [{ doubt, part }] : []));
  return {
    sound,
    soundDrift: doubtful.map(({ doubt, part }) => soundSlope(weather.values, part, doubt, table)),
    volts: table.volts,
    of: new Map(
      hypotheses.map((hypothesis) => [
        hypothesis,
        expectationOf(hypothesis, weather.values, doubtful, table),
      ]),
    ),
  };
}

function add(sum: Float64Array, row: readonly number[], factor: number): void {
  for (let place = 0; place < order; place += 1) sum[place]! += factor * row[place]!;
}

/** Derivative of the weather terms by one part, times its doubt. */
function soundSlope(
  values: readonly number[],
  part: number,
  doubt: number,
  table: ResponseTable,
): Float64Array {
  const slope = new Float64Array(order);
  add(slope, table.sound[1 + part]!, doubt);
  let row = 1 + weatherCount;
  for (let one = 0; one < weatherCount; one += 1)
    for (let other = one; other < weatherCount; other += 1) {
      if (one === part) add(slope, table.sound[row]!, doubt * values[other]!);
      if (other === part) add(slope, table.sound[row]!, doubt * values[one]!);
      row += 1;
    }
  return slope;
}

function expectationOf(
  hypothesis: Hypothesis,
  values: readonly number[],
  doubtful: readonly { readonly doubt: number; readonly part: number }[],
  table: ResponseTable,
): Expectation {
  const first = new Float64Array(order);
  const square = new Float64Array(order);
  if (hypothesis === 'nothing wrong')
    return { first, square, drift: doubtful.map(() => ({ first, square })) };
  const rows = table.faults[hypothesis === 'ice' ? 'low indoor airflow' : hypothesis];
  add(first, rows[0]!, 1);
  add(square, rows[1]!, 1);
  for (let part = 0; part < weatherCount; part += 1) {
    add(first, rows[2 + part]!, values[part]!);
    add(square, rows[2 + weatherCount + part]!, values[part]!);
  }
  const drift = doubtful.map(({ doubt, part }) => ({
    first: Float64Array.from(rows[2 + part]!, (value) => value * doubt),
    square: Float64Array.from(rows[2 + weatherCount + part]!, (value) => value * doubt),
  }));
  return { first, square, drift };
}

const spreads = new WeakMap<ResponseTable, ReadonlyMap<Hypothesis, Float64Array>>();

/** Covariances of a hypothesis without the instruments: scatter within a design and spread among designs. */
export function spreadOf(hypothesis: Hypothesis, table: ResponseTable): Float64Array {
  let known = spreads.get(table);
  if (known === undefined) {
    const designs = fullMatrix(table.designs, order);
    known = new Map(
      hypotheses.map((each) => {
        const matrix = fullMatrix(table.scatter[each === 'ice' ? 'low indoor airflow' : each], order);
        for (let index = 0; index < matrix.length; index += 1)
          matrix[index]! += fittedDesignFactor * designs[index]!;
        for (let place = 0; place < order; place += 1)
          matrix[place * order + place]! +=
            designVariances[place]! + (each === 'ice' ? iceVariances[place]! : 0);
        return [each, matrix];
      }),
    );
    spreads.set(table, known);
  }
  return known.get(hypothesis)!;
}
