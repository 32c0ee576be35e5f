import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-601',
  names: ['pentane', 'n-pentane'],
  type: 'hydrocarbon',
  safetyClass: 'A3',
  usualOil: 'mineral oil or polyolester (POE)',
  gwp: { AR4: 5, AR5: 5, AR6: 0, 'EU 2024/573': 0 },
  odp: 0,
  onlyInBlends: true,
};
