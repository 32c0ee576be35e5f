import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-152a',
  names: ['difluoroethane', '1,1-difluoroethane'],
  type: 'HFC',
  safetyClass: 'A2',
  usualOil: 'polyolester (POE)',
  gwp: { AR4: 124, AR5: 138, AR6: 164, 'US exchange value': 124, 'EU 2024/573': 124 },
  odp: 0,
  lowerFlammabilityLimitKgPerM3: 0.13,
};
