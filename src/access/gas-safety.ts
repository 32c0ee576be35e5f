import type { SafetyClass } from '../data/facts-form.ts';

/** What access to the circuit depends on: name, safety group and flammability limit of the gas inside. */
export interface GasSafety {
  readonly designation: string;
  readonly safetyClass: SafetyClass;
  /** Lower flammability limit [kg/m3]; absent for gases that do not burn. */
  readonly lowerFlammabilityLimitKgPerM3?: number | undefined;
}

/** Flammability 2L, 2 or 3 of standard 34. */
export function isFlammable({ safetyClass }: Pick<GasSafety, 'safetyClass'>): boolean {
  return !safetyClass.endsWith('1');
}
