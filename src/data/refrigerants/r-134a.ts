import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-134a',
  names: ['tetrafluoroethane', '1,1,1,2-tetrafluoroethane'],
  type: 'HFC',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE); polyalkylene glycol (PAG) in vehicles',
  gwp: { AR4: 1430, AR5: 1300, AR6: 1530, 'US exchange value': 1430, 'EU 2024/573': 1430 },
  odp: 0,
};
