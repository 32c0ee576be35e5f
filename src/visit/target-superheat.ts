import { CalcError } from '../errors.ts';
import { fahrenheitDifferenceK, fahrenheitK } from '../units/trade.ts';
import { lowestOutdoorK } from './gates.ts';

export const meteringChoices = ['capillary', 'orifice', 'valve'] as const;
export type Metering = (typeof meteringChoices)[number];

/** Below this no test is valid. Source: California RA3.2.2.6 step 3 (2008): a dash in the table. */
export const lowestTargetK = fahrenheitDifferenceK(5);

/** By how much the field equation and the published charging table may differ: about 3 degF at the points compared. */
export const targetDoubtK = fahrenheitDifferenceK(3);

export interface TargetConditions {
  readonly returnWetBulbK: number;
  readonly outdoorTemperatureK: number;
  readonly metering: Metering;
}

/**
 * Superheat a right charge gives a unit with a capillary tube or an orifice.
 * (3 WB - 80 - DB) / 2 in degrees Fahrenheit, WB of the return air, DB outdoors.
 *
 * @returns [K]
 * @throws CalcError refused: valve-fed, below 55 degF outdoors, target below 5 degF
 * @source field approximation to published fixed-orifice charging charts (common practice);
 *   limits California RA3.2.1 and RA3.2.2.6 (2008)
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
  const targetK = fieldTargetK(returnWetBulbK, outdoorTemperatureK);
  if (targetK < lowestTargetK - 1e-9) {
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
  return targetK;
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

function fieldTargetK(returnWetBulbK: number, outdoorTemperatureK: number): number {
  const zeroK = fahrenheitK(0);
  const wetBulb = returnWetBulbK - zeroK;
  const outdoor = outdoorTemperatureK - zeroK;
  return (3 * wetBulb - fahrenheitDifferenceK(80) - outdoor) / 2;
}

function degF(kelvin: number): string {
  return `${((kelvin * 9) / 5 - 459.67).toFixed(1)} degF`;
}
