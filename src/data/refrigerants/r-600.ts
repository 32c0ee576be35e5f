import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-600',
  names: ['butane', 'n-butane'],
  type: 'hydrocarbon',
  safetyClass: 'A3',
  usualOil: 'mineral oil or polyolester (POE)',
  gwp: { AR4: 4, AR5: 4, AR6: 0.006, 'EU 2024/573': 0.006 },
  odp: 0,
  onlyInBlends: true,
};
