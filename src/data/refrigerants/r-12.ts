import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-12',
  names: ['dichlorodifluoromethane'],
  type: 'CFC',
  safetyClass: 'A1',
  usualOil: 'mineral oil or alkylbenzene',
  gwp: { AR4: 10900, AR5: 10200, AR6: 12500, 'US exchange value': 10900 },
  odp: 1,
};
