import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-236fa',
  names: ['hexafluoropropane'],
  type: 'HFC',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  gwp: { AR4: 9810, AR5: 8060, AR6: 8690, 'US exchange value': 9810, 'EU 2024/573': 9810 },
  odp: 0,
};
