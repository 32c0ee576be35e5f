import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-124',
  names: ['chlorotetrafluoroethane'],
  type: 'HCFC',
  safetyClass: 'A1',
  usualOil: 'mineral oil or alkylbenzene',
  gwp: { AR4: 609, AR5: 527, AR6: 597, 'US exchange value': 609 },
  odp: 0.022,
  onlyInBlends: true,
};
