import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-115',
  names: ['chloropentafluoroethane'],
  type: 'CFC',
  safetyClass: 'A1',
  usualOil: 'mineral oil or alkylbenzene',
  gwp: { AR4: 7370, AR5: 7670, AR6: 9600, 'US exchange value': 7370 },
  odp: 0.6,
  onlyInBlends: true,
};
