import { highestElevationM, lowestElevationM, standardAtmospherePa } from '../air/standard-atmosphere.ts';
import type { RecordRow } from './field.ts';

/** Atmosphere [Pa] from which the gauges of a row read: at its elevation, or at sea level when none is usable. */
export function atmosphereOfRow(row: RecordRow): number {
  const elevationM = row['elevation'];
  const usable =
    typeof elevationM === 'number' && elevationM >= lowestElevationM && elevationM <= highestElevationM;
  return standardAtmospherePa(usable ? elevationM : 0);
}
