import { CalcError } from '../errors.ts';
import type { Assumptions, CostInput } from './inputs.ts';
import { costInputNames, definitionOf } from './inputs.ts';
import type { Range } from './range.ts';
import { exactly } from './range.ts';
import { yearsLeftFromAge } from './unit-life.ts';

/**
 * Checks what was given and fills in what counts when nothing was said: defaults, and the years left from the age.
 * Age and expected life stay only where the unit is older than its kind is expected to get.
 *
 * @throws CalcError out-of-range naming the row
 */
export function completeAssumptions(given: Assumptions): Assumptions {
  const filled: Partial<Record<CostInput, Range>> = {};
  for (const name of costInputNames) {
    const range = given[name] ?? definitionOf(name).default;
    if (range === undefined) continue;
    checkRange(name, range);
    filled[name] = range;
  }
  const life = filled.expectedLife ?? filled.newLife;
  const { age } = filled;
  // They have done their work; left in, they would count as inputs that move nothing.
  delete filled.age;
  delete filled.expectedLife;
  if (filled.yearsLeft || !age || !life) return filled;
  const follows = life === filled.newLife ? ({ follows: 'newLife' } as const) : {};
  filled.yearsLeft = { ...yearsLeftFromAge(age, life), ...follows };
  if (age.likely >= life.high) {
    filled.age = exactly(age.likely);
    filled.expectedLife = exactly(life.high);
  }
  return filled;
}

function checkRange(name: CostInput, { low, likely, high }: Range): void {
  const { label, minimum, above, maximum, below } = definitionOf(name);
  if (!(low <= likely && likely <= high)) {
    throw new CalcError(`${label}: low, likely and high must rise in that order`, {
      code: 'out-of-range',
      parameter: label,
      received: `${String(low)}, ${String(likely)}, ${String(high)}`,
      limit: 'low <= likely <= high',
    });
  }
  const limits: readonly (readonly [boolean, string])[] = [
    [minimum !== undefined && low < minimum, `${String(minimum)} or more`],
    [above !== undefined && low <= above, `more than ${String(above)}`],
    [maximum !== undefined && high > maximum, `${String(maximum)} or less`],
    [below !== undefined && high >= below, `less than ${String(below)}`],
  ];
  for (const [broken, limit] of limits) {
    if (!broken) continue;
    throw new CalcError(`${label} must be ${limit} (SI)`, {
      code: 'out-of-range',
      parameter: label,
      received: `${String(low)} to ${String(high)}`,
      limit,
    });
  }
}
