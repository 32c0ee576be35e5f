import type { Refrigerant } from '../../refrigerants/index.ts';

export function isOzoneDepleting(refrigerant: Refrigerant): boolean {
  return refrigerant.odp > 0;
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
  return gwp['US exchange value'] ?? gwp.AR4;
}

/** Value that the rules of the European Union go by. */
export function gwpEuropeanUnion({ gwp }: Refrigerant): number | undefined {
  return gwp['EU 2024/573'] ?? gwp.AR4;
}
