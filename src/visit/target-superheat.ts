import { CalcError } from '../errors.ts';
import { fahrenheitDifferenceK } from '../units/trade.ts';
import { lowestOutdoorK } from './gates.ts';
import { outdoorScale, targetSuperheatRows, wetBulbScale } from './target-superheat-table.ts';

export const meteringChoices = ['capillary', 'orifice', 'valve'] as const;
export type Metering = (typeof meteringChoices)[number];

/** Below this no test is valid. Source: California RA3.2.2.6 step 3 (2008): a dash in the table. */
export const lowestTargetK = fahrenheitDifferenceK(5);

/** What the makers print beside the table: a right charge lies within 5 degF of it at the service port. */
export const targetDoubtK = fahrenheitDifferenceK(5);

export interface TargetConditions {
  readonly returnWetBulbK: number;
  readonly outdoorTemperatureK: number;
  readonly metering: Metering;
}

/**
 * Superheat a right charge gives a unit with a capillary tube or an orifice: bilinear between the points of the published
 * table, wet bulb of the return air and dry bulb outdoors. No value where a point beside it forbids charging by superheat.
 *
 * @returns [K], good to plus or minus `targetDoubtK`
 * @throws CalcError refused: valve-fed, below 55 or above 115 degF outdoors, a wet bulb outside 50 to 76 degF, target below 5 degF
 * @source makers' charging tables, see `target-superheat-table.ts`; limits California RA3.2.1 and RA3.2.2.6 (2008)
 */
export function targetSuperheatK(conditions: TargetConditions): number {
  const { returnWetBulbK, outdoorTemperatureK, metering } = conditions;
  if (metering === 'valve') {
    throw new CalcError('a valve holds superheat by itself; judge a valve-fed unit by subcooling', {
      code: 'refused',
      parameter: 'metering',
      received: 'valve',
      limit: 'capillary or orifice',
    });
  }
  if (outdoorTemperatureK < lowestOutdoorK - 1e-9) {
    throw new CalcError('below 55 degF outdoors the running test means nothing; weigh in', {
      code: 'refused',
      parameter: 'outdoor_temperature',
      received: degF(outdoorTemperatureK),
      limit: '55 degF or more',
    });
  }
  const outdoor = inFahrenheit(outdoorTemperatureK);
  const wetBulb = inFahrenheit(returnWetBulbK);
  if (outdoor > outdoorScale.highest) throw offTheTable('outdoor_temperature', outdoor, '55 to 115 degF');
  if (wetBulb < wetBulbScale.lowest || wetBulb > wetBulbScale.highest) {
    throw offTheTable('return_wet_bulb', wetBulb, '50 to 76 degF');
  }
  const target = betweenPoints(outdoor, wetBulb);
  if (target === undefined) {
    throw new CalcError(
      'the target is below 5 degF, no valid test; warm the space or come back in other weather',
      {
        code: 'refused',
        parameter: 'return_wet_bulb',
        received: degF(returnWetBulbK),
        limit: 'conditions with a target of 5 degF or more',
      },
    );
  }
  return fahrenheitDifferenceK(target);
}

/** The target, or undefined where there is none: for verdicts that go on without it. */
export function targetSuperheatIfAny(conditions: TargetConditions): number | undefined {
  try {
    return targetSuperheatK(conditions);
  } catch (error) {
    if (error instanceof CalcError && error.code === 'refused') return undefined;
    throw error;
  }
}

function betweenPoints(outdoor: number, wetBulb: number): number | undefined {
  const row = place(outdoor, outdoorScale);
  const column = place(wetBulb, wetBulbScale);
  let target = 0;
  for (const [rowIndex, rowShare] of row) {
    for (const [columnIndex, columnShare] of column) {
      const value = targetSuperheatRows[rowIndex]?.[columnIndex];
      if (value === undefined) return undefined;
      target += rowShare * columnShare * value;
    }
  }
  return target;
}

/** The points beside a value with their shares; a point without a share is left out, so that its dash does not matter. */
function place(
  value: number,
  scale: { readonly lowest: number; readonly step: number },
): readonly (readonly [index: number, share: number])[] {
  const steps = (value - scale.lowest) / scale.step;
  const lower = Math.floor(steps);
  const share = steps - lower;
  return (
    [
      [lower, 1 - share],
      [lower + 1, share],
    ] as const
  ).filter(([, part]) => part > 0);
}

function offTheTable(parameter: string, received: number, limit: string): CalcError {
  return new CalcError(
    `there is no published target for ${received.toFixed(1)} degF; the table holds ${limit}`,
    {
      code: 'refused',
      parameter,
      received: `${received.toFixed(1)} degF`,
      limit,
    },
  );
}

/** Rounded where conversion leaves crumbs, so that a whole degree stays one. */
function inFahrenheit(kelvin: number): number {
  return Number(((kelvin * 9) / 5 - 459.67).toFixed(9));
}

function degF(kelvin: number): string {
  return `${inFahrenheit(kelvin).toFixed(1)} degF`;
}
