import type { GasSeries } from '../saturation-series.ts';
import { degree } from '../saturation-series.ts';
import { all, isNumber } from './words.ts';

export type CurveName = Exclude<keyof GasSeries, 'gas'>;

export const curveNames: readonly CurveName[] = ['dew', 'bubble', 'pressure'];

/** Parts of a series as the tables name them: `§dew_lowest`, `§dew_0` … */
export const curveParts: readonly string[] = [
  'lowest',
  'highest',
  'middle',
  'half',
  ...Array.from({ length: degree + 1 }, (_, power) => String(power)),
];

/** Nested products: sums of powers fail in some programs where x is zero. */
export function curveValue(curve: CurveName, x: string): string {
  let text = `§${curve}_${String(degree)}`;
  for (let power = degree - 1; power >= 0; power -= 1) text = `(§${curve}_${String(power)}+${x}*${text})`;
  return text;
}

/** Change of the curve for one more of its variable. */
export function curveSlope(curve: CurveName, x: string): string {
  let text = `${String(degree)}*§${curve}_${String(degree)}`;
  for (let power = degree - 1; power >= 1; power -= 1)
    text = `(${String(power)}*§${curve}_${String(power)}+${x}*${text})`;
  return `${text}/§${curve}_half`;
}

/** x of a variable: a number inside the series, "outside", or nothing without gas or reading. */
export function curveVariable(curve: CurveName, variable: string, reading: string): string {
  const inside = all(`${variable}>=§${curve}_lowest`, `${variable}<=§${curve}_highest`);
  const x = `(${variable}-§${curve}_middle)/§${curve}_half`;
  return `IF(${all('§gas_row>0', isNumber(reading))},IF(${inside},${x},"outside"),"")`;
}
