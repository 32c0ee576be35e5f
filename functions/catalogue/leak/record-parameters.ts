import { additionReasons } from '../../../src/leak/additions.ts';
import type { Addition, AdditionReason } from '../../../src/leak/additions.ts';
import type { LeakRecord } from '../../../src/leak/intervals.ts';
import { CalcError } from '../../../src/errors.ts';

export const fullChargeParameter = {
  kind: 'number',
  quantity: 'mass',
  above: 0,
  maximum: 5000,
  description: 'Full charge of the unit: the nameplate.',
} as const;

/** How the additions of one unit are handed over. */
export const recordParameters = {
  added: {
    kind: 'list',
    of: {
      kind: 'number',
      quantity: 'mass',
      minimum: 0,
      description: 'Weighed in.',
    },
    description:
      'What was added, one cell or a range of one unit. What stayed in hoses does not belong here. Additions of one day are added together.',
  },
  days: {
    kind: 'number',
    quantity: 'days',
    minimum: 0,
    maximum: 20_000,
    optional: true,
    description: 'Days since the charge was right last, when there are no dates.',
  },
  dates: {
    kind: 'list',
    of: { kind: 'date', description: 'Day.' },
    optional: true,
    description: 'Day of each addition, a range as long as added.',
  },
  reasons: {
    kind: 'list',
    of: { kind: 'choice', choices: additionReasons, description: 'Why.' },
    optional: true,
    description:
      'Why each was added. Factory top-off, seasonal correction and new charge are left out; a blank counts as a leak.',
  },
  since: {
    kind: 'date',
    optional: true,
    description:
      'Day on which a full charge was weighed in before the first addition. Left out: the first addition tells no loss.',
  },
  verified_on: {
    kind: 'date',
    optional: true,
    description: 'Day on which a repair was found to hold; only later additions tell what leaks now.',
  },
} as const;

export interface GivenRecord {
  readonly added: readonly (number | undefined)[];
  readonly days: number | undefined;
  readonly dates: readonly (number | undefined)[] | undefined;
  readonly reasons: readonly (AdditionReason | undefined)[] | undefined;
  readonly since: number | undefined;
  readonly verified_on: number | undefined;
}

/** The arguments as a record; days alone are counted from a day zero. */
export function recordFrom(given: GivenRecord): LeakRecord {
  const { days, dates } = given;
  if (days !== undefined && dates !== undefined) {
    throw wrong('days', 'give days or dates, not both', 'one of the two');
  }
  if (dates === undefined) return { additions: additionsOn(given, () => days), sinceDay: 0 };
  fits('dates', dates, given.added);
  return {
    additions: additionsOn(given, (index) => dates[index]),
    sinceDay: given.since,
    verifiedDay: given.verified_on,
  };
}

function additionsOn(given: GivenRecord, dayAt: (index: number) => number | undefined): Addition[] {
  const { added, reasons } = given;
  if (reasons) fits('reasons', reasons, added);
  return added.flatMap((massKg, index) => {
    if (massKg === undefined || massKg === 0) return [];
    const day = dayAt(index);
    if (day === undefined) {
      throw wrong(
        given.dates ? 'dates' : 'days',
        `addition ${String(index + 1)} has no day`,
        'days since the charge was right last, or a date for each addition',
      );
    }
    return [{ day, massKg, reason: reasons?.[index] }];
  });
}

function fits(parameter: string, list: readonly unknown[], added: readonly unknown[]): void {
  if (list.length === added.length) return;
  throw wrong(
    parameter,
    `${parameter} and added are not equally long: ${String(list.length)} and ${String(added.length)} cells`,
    'ranges of the same rows',
  );
}

function wrong(parameter: string, message: string, limit: string): CalcError {
  return new CalcError(message, { code: 'invalid-argument', parameter, limit });
}
