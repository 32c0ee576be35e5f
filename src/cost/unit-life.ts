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

/** A unit that runs today is judged season by season: no range of its remaining life goes below one year. */
const shortestYearsLeft = 1;

/**
 * Years the present unit still lasts apart from its leak, from its age and the life expected of a unit like it.
 * Low end: shortest life less greatest age, but not below one year. Undefined when age or life is not known.
 *
 * @throws CalcError refused - at its likely age the unit is older than its likely life: only who saw it can say
 */
export function yearsLeftFromAge(age: Range | undefined, life: Range | undefined): Range | undefined {
  if (!age || !life) return undefined;
  const likely = life.likely - age.likely;
  if (!(likely > 0)) {
    throw new CalcError(
      `the unit is ${String(age.likely)} years old and was expected to last ${String(life.likely)}: give the years left as you see it`,
      {
        code: 'refused',
        parameter: 'years left',
        received: 'nothing',
        limit: 'a row "years left" in the assumptions',
      },
    );
  }
  const low = Math.max(Math.min(shortestYearsLeft, likely), life.low - age.high);
  return { low: Math.min(low, likely), likely, high: Math.max(likely, life.high - age.low) };
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
