import { CalcError } from '../errors.ts';
import type { GwpBasis, Refrigerant } from '../refrigerants/index.ts';

/**
 * Mass of carbon dioxide that warms as much in 100 years.
 *
 * CO2e = mass x GWP
 *
 * @param basis - the GWP of one gas differs between editions and laws by a tenth or more
 * @returns [kg CO2e]
 * @throws CalcError not-available when the basis gives no value for the gas
 */
export function co2EquivalentKg(release: {
  readonly refrigerant: Refrigerant;
  readonly massKg: number;
  readonly basis: GwpBasis;
}): number {
  const { refrigerant, massKg, basis } = release;
  const gwp = refrigerant.gwp[basis];
  if (gwp !== undefined) return massKg * gwp;
  throw new CalcError(`${refrigerant.designation} has no GWP on the basis ${basis}`, {
    code: 'not-available',
    parameter: 'basis',
    received: basis,
    limit: Object.keys(refrigerant.gwp).join(', ') || 'none is at hand',
  });
}
