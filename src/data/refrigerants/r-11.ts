import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-11',
  names: ['trichlorofluoromethane'],
  type: 'CFC',
  safetyClass: 'A1',
  usualOil: 'mineral oil or alkylbenzene',
  gwp: { AR4: 4750, AR5: 4660, AR6: 6230, 'US exchange value': 4750 },
  odp: 1,
};
