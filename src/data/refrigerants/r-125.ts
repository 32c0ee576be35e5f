import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-125',
  names: ['pentafluoroethane'],
  type: 'HFC',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  gwp: { AR4: 3500, AR5: 3170, AR6: 3740, 'US exchange value': 3500, 'EU 2024/573': 3500 },
  odp: 0,
  onlyInBlends: true,
};
