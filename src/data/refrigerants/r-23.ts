import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-23',
  names: ['trifluoromethane', 'fluoroform'],
  type: 'HFC',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  gwp: { AR4: 14800, AR5: 12400, AR6: 14600, 'US exchange value': 14800, 'EU 2024/573': 14800 },
  odp: 0,
};
