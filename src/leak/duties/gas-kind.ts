import type { Refrigerant } from '../../refrigerants/index.ts';

/**
 * Gases of the ozone laws: CFCs, HCFCs and blends with them. An unsaturated HCFO depletes a trace as well, but stands with
 * the fluorinated gases: Annex II of Regulation (EU) 2024/573; it is on no list of 40 CFR 82 (both from memory).
 */
export function isOzoneDepleting(refrigerant: Refrigerant): boolean {
  return refrigerant.odp > 0 && refrigerant.type !== 'HCFO';
}

/** A gas without fluorine and chlorine: hydrocarbons, carbon dioxide. */
export function isNatural(refrigerant: Refrigerant): boolean {
  return refrigerant.type === 'hydrocarbon' || refrigerant.type === 'inorganic';
}

/** Unsaturated fluorocarbons and nothing else: Annex II, section 1 of Regulation (EU) 2024/573. */
export function isOnlyHfo(refrigerant: Refrigerant): boolean {
  return refrigerant.type === 'HFO' || refrigerant.type === 'HCFO';
}

export function isFlammable(refrigerant: Refrigerant): boolean {
  return !refrigerant.safetyClass.endsWith('1');
}

/** Value that the rules of the United States go by. */
export function gwpUnitedStates({ gwp }: Refrigerant): number | undefined {
  return gwp['40 CFR 84.64'] ?? gwp['US exchange value'] ?? gwp.AR4;
}

/** Value that the rules of the European Union go by. */
export function gwpEuropeanUnion({ gwp }: Refrigerant): number | undefined {
  return gwp['EU 2024/573'] ?? gwp.AR4;
}
