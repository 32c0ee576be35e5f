import type { Phrase } from '../../phrase.ts';
import { phrase } from '../../phrase.ts';
import type { Refrigerant } from '../../refrigerants/index.ts';
import { saturationPressurePa } from '../../refrigerants/index.ts';
import { fahrenheitK, psiPa } from '../../units/trade.ts';

/** Classes of appliances by the pressure of the liquid at 104 degF: 40 CFR 82.152, from memory. */
export type PressureClass = 'low' | 'medium' | 'high' | 'very high';

const classTemperatureK = fahrenheitK(104);
const classLimits: readonly (readonly [PressureClass, number])[] = [
  ['low', psiPa(45)],
  ['medium', psiPa(170)],
  ['high', psiPa(355)],
];

/** A gas without liquid at 104 degF is of the highest class. */
export function pressureClass(refrigerant: Refrigerant): PressureClass {
  if (refrigerant.saturation.highestTemperatureK < classTemperatureK) return 'very high';
  const pressurePa = saturationPressurePa(refrigerant, classTemperatureK, 'bubble');
  return classLimits.find(([, limitPa]) => pressurePa < limitPa)?.[0] ?? 'very high';
}

/** Above this much the deeper level holds. */
const largeApplianceKg = 200 * 0.453_592_37;

const levels: Readonly<
  Record<Exclude<PressureClass, 'low'>, { readonly small: string; readonly large: string }>
> = {
  'very high': { small: '0 inHg', large: '0 inHg' },
  high: { small: '0 inHg', large: '10 inHg' },
  medium: { small: '10 inHg', large: '15 inHg' },
};

/**
 * Level to evacuate an appliance to before it is opened, with recovery equipment made since 15 November 1993.
 *
 * @source 40 CFR 82.156(a), table 1, from memory
 */
export function evacuationLevel(refrigerant: Refrigerant, fullChargeKg: number): Phrase {
  const kind = pressureClass(refrigerant);
  if (kind === 'low') return phrase`25 mmHg absolute (low-pressure gas)`;
  const size = fullChargeKg < largeApplianceKg ? 'small' : 'large';
  return phrase`${levels[kind][size]} of vacuum (${kind}-pressure gas, ${size === 'small' ? 'below' : 'from'} 200 lb)`;
}
