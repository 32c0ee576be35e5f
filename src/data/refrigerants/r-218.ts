import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-218',
  names: ['octafluoropropane', 'perfluoropropane'],
  type: 'PFC',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  gwp: { AR4: 8830, AR5: 8900, AR6: 9290, 'EU 2024/573': 9290 },
  odp: 0,
  onlyInBlends: true,
};
