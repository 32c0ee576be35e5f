import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-22',
  names: ['chlorodifluoromethane'],
  type: 'HCFC',
  safetyClass: 'A1',
  usualOil: 'mineral oil or alkylbenzene',
  factoryCharge: true,
  gwp: { AR4: 1810, AR5: 1760, AR6: 1960, 'US exchange value': 1810 },
  odp: 0.055,
};
