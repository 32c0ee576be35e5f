import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-290',
  names: ['propane'],
  type: 'hydrocarbon',
  safetyClass: 'A3',
  usualOil: 'mineral oil or polyolester (POE)',
  factoryCharge: true,
  gwp: { AR4: 3, AR5: 3, AR6: 0.02, 'EU 2024/573': 0.02 },
  odp: 0,
  lowerFlammabilityLimitKgPerM3: 0.038,
};
