import { CalcError } from '../errors.ts';
import type { CostInput, Values } from './inputs.ts';
import { definitionOf } from './inputs.ts';
import type { Range } from './range.ts';

/** The value of an input that this estimate cannot do without. @throws CalcError not-available naming the row */
export function need(values: Values, name: CostInput, why: string): number {
  const value = values[name];
  if (value !== undefined) return value;
  const { label } = definitionOf(name);
  throw new CalcError(`${label} is missing: ${why}`, {
    code: 'invalid-argument',
    parameter: label,
    received: 'nothing',
    limit: `a row "${label}" in the assumptions`,
  });
}

/** A unit that runs today is judged season by season: no remaining life is taken to be below one year. */
const shortestYearsLeft = 1;

/**
 * Years the present unit still lasts apart from its leak, from its age and the life expected of a unit like it, and never
 * less than one: who knows better gives the years left.
 * Low: shortest life less greatest age. High: longest life less least age.
 */
export function yearsLeftFromAge(age: Range, life: Range): Range {
  const season = (years: number): number => Math.max(shortestYearsLeft, years);
  const likely = season(life.likely - age.likely);
  return {
    low: Math.min(likely, season(life.low - age.high)),
    likely,
    high: Math.max(likely, season(life.high - age.low)),
  };
}

/** Share of nameplate lost in the first year, or undefined when nothing is known of the leak. */
export function firstYearLeak(values: Values): number | undefined {
  if (values.leakRate !== undefined) return values.leakRate;
  if (values.ouncesAYear === undefined) return undefined;
  const nameplate = need(values, 'nameplate', 'ounces a year are compared with it');
  return (values.ouncesAYear * secondsPerYear) / nameplate;
}

/** The year of 365 days in which a leak is counted. */
const secondsPerYear = 365 * 86_400;
