import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-1233zd(E)',
  names: ['trans-1-chloro-3,3,3-trifluoropropene'],
  type: 'HCFO',
  safetyClass: 'A1',
  usualOil: 'mineral oil or alkylbenzene',
  gwp: { AR5: 1, AR6: 3.88, 'EU 2024/573': 3.88 },
  odp: 0.0003,
};
