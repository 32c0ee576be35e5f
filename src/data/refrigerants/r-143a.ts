import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-143a',
  names: ['trifluoroethane', '1,1,1-trifluoroethane'],
  type: 'HFC',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE)',
  gwp: { AR4: 4470, AR5: 4800, AR6: 5810, 'US exchange value': 4470, 'EU 2024/573': 4470 },
  odp: 0,
  onlyInBlends: true,
  lowerFlammabilityLimitKgPerM3: 0.282,
};
