import { CalcError } from '../errors.ts';

/** What the nameplate says about the supply: one voltage, or a lower and an upper one ("208/230"). */
export interface RatedVolts {
  readonly lowerV: number;
  readonly upperV: number;
}

export interface SupplyBand {
  readonly lowestV: number;
  readonly highestV: number;
}

/**
 * Share of the rated voltage by which the running voltage may differ.
 * Source: ANSI/NEMA MG 1 12.44.1 (condensed edition 2011, 9.9.1).
 */
export const voltageTolerance = 0.1;

export const plausibleVolts = { lowest: 80, highest: 600 };

/**
 * Reads the rated voltage as a nameplate writes it: "115", "115 V", "208/230", "208-230V".
 *
 * @throws CalcError invalid-argument, out-of-range (parameter rated_volts)
 */
export function readRatedVolts(text: string): RatedVolts {
  const bare = text.trim().replace(/\s*v(olts?|ac)?\.?$/i, '');
  const match = /^(\d+(?:\.\d+)?)(?:\s*[/-]\s*(\d+(?:\.\d+)?))?$/.exec(bare);
  if (!match) throw unreadable(text);
  const first = Number(match[1]);
  const second = match[2] === undefined ? first : Number(match[2]);
  const rated = { lowerV: Math.min(first, second), upperV: Math.max(first, second) };
  if (rated.lowerV < plausibleVolts.lowest || rated.upperV > plausibleVolts.highest) {
    throw new CalcError(
      `rated_volts must be ${String(plausibleVolts.lowest)} to ${String(plausibleVolts.highest)} V; received "${text}"`,
      {
        code: 'out-of-range',
        parameter: 'rated_volts',
        received: text,
        limit: `${String(plausibleVolts.lowest)} to ${String(plausibleVolts.highest)} V`,
      },
    );
  }
  return rated;
}

function unreadable(text: string): CalcError {
  return new CalcError(
    `rated_volts must be written as on the nameplate, such as 115 or 208/230; received "${text}"`,
    {
      code: 'invalid-argument',
      parameter: 'rated_volts',
      received: text,
      limit: 'such as 115 or 208/230',
    },
  );
}

/**
 * Voltages between which the unit may run: the lower rating less a tenth to the upper rating plus a tenth.
 *
 * @source ANSI/NEMA MG 1 12.44.1; taking both ratings of a dual nameplate is common practice
 */
export function supplyBand({ lowerV, upperV }: RatedVolts): SupplyBand {
  return { lowestV: lowerV * (1 - voltageTolerance), highestV: upperV * (1 + voltageTolerance) };
}

export type SupplyState = 'in band' | 'low' | 'high';

export function supplyState(volts: number, rated: RatedVolts): SupplyState {
  const { lowestV, highestV } = supplyBand(rated);
  // 115 V less a tenth is 103.49999999999999 in binary: the limit itself is allowed.
  const slackV = 1e-9;
  if (volts < lowestV - slackV) return 'low';
  return volts > highestV + slackV ? 'high' : 'in band';
}

/**
 * The voltage of the rated range that is nearest to a measured one: itself between the two of a dual rating, since a motor
 * rated 208/230 V is rated for 219 V too. It moves with the reading, never by a jump.
 */
export function nearestRatedV(volts: number, { lowerV, upperV }: RatedVolts): number {
  return Math.min(Math.max(volts, lowerV), upperV);
}
