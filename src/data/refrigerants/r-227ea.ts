import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-227ea',
  names: ['heptafluoropropane'],
  type: 'HFC',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  gwp: { AR4: 3220, AR5: 3350, AR6: 3600, 'US exchange value': 3220, 'EU 2024/573': 3220 },
  odp: 0,
};
