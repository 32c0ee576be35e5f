import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-245fa',
  names: ['pentafluoropropane'],
  type: 'HFC',
  safetyClass: 'B1',
  usualOil: 'polyolester (POE)',
  gwp: { AR4: 1030, AR5: 858, AR6: 962, 'US exchange value': 1030, 'EU 2024/573': 1030 },
  odp: 0,
};
