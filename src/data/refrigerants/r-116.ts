import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-116',
  names: ['hexafluoroethane'],
  type: 'PFC',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  gwp: { AR4: 12200, AR5: 11100, AR6: 12400, 'EU 2024/573': 12400 },
  odp: 0,
  onlyInBlends: true,
};
