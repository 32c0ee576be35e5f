import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-123',
  names: ['dichlorotrifluoroethane'],
  type: 'HCFC',
  safetyClass: 'B1',
  usualOil: 'mineral oil or alkylbenzene',
  gwp: { AR4: 77, AR5: 79, AR6: 90.4, 'US exchange value': 77 },
  odp: 0.02,
};
