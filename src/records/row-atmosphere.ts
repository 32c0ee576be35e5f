import { highestElevationM, lowestElevationM, standardAtmospherePa } from '../air/standard-atmosphere.ts';
import type { RecordRow } from './field.ts';

/** What a barometer can show on land [Pa]; a figure beyond it was reduced to sea level wrongly or mistyped. */
export const lowestBarometerPa = 50_000;
export const highestBarometerPa = 109_000;

/**
 * Atmosphere [Pa] from which the gauges of a row read: as measured there, else at its elevation, or at sea level when
 * none is usable.
 */
export function atmosphereOfRow(row: RecordRow): number {
  const barometerPa = row['barometer'];
  if (
    typeof barometerPa === 'number' &&
    barometerPa >= lowestBarometerPa &&
    barometerPa <= highestBarometerPa
  )
    return barometerPa;
  const elevationM = row['elevation'];
  const usable =
    typeof elevationM === 'number' && elevationM >= lowestElevationM && elevationM <= highestElevationM;
  return standardAtmospherePa(usable ? elevationM : 0);
}
