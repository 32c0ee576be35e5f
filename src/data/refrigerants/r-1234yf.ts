import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-1234yf',
  names: ['2,3,3,3-tetrafluoropropene'],
  type: 'HFO',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE); polyalkylene glycol (PAG) in vehicles',
  gwp: { AR4: 4, AR5: 1, AR6: 0.501, 'EU 2024/573': 0.501 },
  odp: 0,
  lowerFlammabilityLimitKgPerM3: 0.289,
};
