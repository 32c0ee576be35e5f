import { CalcError } from '../errors.ts';

/**
 * Discharge over suction pressure, both absolute: gauge readings would give a larger, wrong figure.
 *
 * @param pressures - absolute [Pa]
 * @throws CalcError out-of-range when discharge is not above suction, or suction is a perfect vacuum
 * @source definition
 */
export function compressionRatio(pressures: {
  readonly suctionPa: number;
  readonly dischargePa: number;
}): number {
  const { suctionPa, dischargePa } = pressures;
  if (!(suctionPa > 0)) {
    throw new CalcError('suction_pressure must be above absolute zero pressure', {
      code: 'out-of-range',
      parameter: 'suction_pressure',
      limit: 'above absolute zero pressure',
    });
  }
  if (dischargePa < suctionPa) {
    throw new CalcError('discharge_pressure must not be below suction_pressure; are the hoses swapped?', {
      code: 'out-of-range',
      parameter: 'discharge_pressure',
      limit: 'suction_pressure or more',
    });
  }
  return dischargePa / suctionPa;
}
