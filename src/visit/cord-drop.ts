import { CalcError } from '../errors.ts';

/**
 * Resistance of uncoated stranded copper at 75 degC [ohm/kft]; tinned copper has 3 to 6 % more.
 * Source: NEC chapter 9, Table 8, as printed in a public table of conductor properties.
 */
const ohmPerThousandFeet: Readonly<Record<number, number>> = {
  6: 0.491,
  8: 0.778,
  10: 1.24,
  12: 1.98,
  14: 3.14,
  16: 4.99,
  18: 7.95,
};

const metresPerFoot = 0.3048;

/**
 * Volts lost in a two-wire copper cord, there and back: 2 I R L.
 *
 * @param cord - length one way [m], American wire gauge number
 * @returns [V]
 * @throws CalcError out-of-range for another gauge
 * @source Ohm's law; resistances NEC chapter 9 Table 8, uncoated stranded copper
 */
export function cordDropV(cord: {
  readonly amps: number;
  readonly lengthM: number;
  readonly wireGauge: number;
}): number {
  const resistance = ohmPerThousandFeet[cord.wireGauge];
  if (resistance === undefined) {
    const limit = Object.keys(ohmPerThousandFeet).join(', ');
    throw new CalcError(`wire_gauge must be one of ${limit}; received ${String(cord.wireGauge)}`, {
      code: 'out-of-range',
      parameter: 'wire_gauge',
      received: String(cord.wireGauge),
      limit,
    });
  }
  return 2 * cord.amps * (resistance / (1000 * metresPerFoot)) * cord.lengthM;
}
