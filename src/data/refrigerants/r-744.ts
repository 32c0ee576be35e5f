import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-744',
  names: ['carbon dioxide', 'CO2'],
  type: 'inorganic',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE) or polyalkylene glycol (PAG)',
  gwp: { AR4: 1, AR5: 1, AR6: 1, 'EU 2024/573': 1 },
  odp: 0,
};
