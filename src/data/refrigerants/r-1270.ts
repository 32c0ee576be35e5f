import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-1270',
  names: ['propylene', 'propene'],
  type: 'hydrocarbon',
  safetyClass: 'A3',
  usualOil: 'mineral oil or polyolester (POE)',
  gwp: { AR4: 2, AR5: 2, AR6: 0, 'EU 2024/573': 0 },
  odp: 0,
  lowerFlammabilityLimitKgPerM3: 0.046,
};
