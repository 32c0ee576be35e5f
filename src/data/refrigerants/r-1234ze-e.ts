import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-1234ze(E)',
  names: ['trans-1,3,3,3-tetrafluoropropene'],
  type: 'HFO',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE)',
  gwp: { AR4: 7, AR5: 1, AR6: 1.37, 'EU 2024/573': 1.37 },
  odp: 0,
  lowerFlammabilityLimitKgPerM3: 0.303,
};
