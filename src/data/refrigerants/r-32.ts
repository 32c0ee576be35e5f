import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-32',
  names: ['difluoromethane'],
  type: 'HFC',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE)',
  factoryCharge: true,
  gwp: { AR4: 675, AR5: 677, AR6: 771, 'US exchange value': 675, 'EU 2024/573': 675 },
  odp: 0,
  lowerFlammabilityLimitKgPerM3: 0.307,
};
