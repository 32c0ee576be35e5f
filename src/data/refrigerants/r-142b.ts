import type { PureFacts } from '../facts-form.ts';

export const facts: PureFacts = {
  designation: 'R-142b',
  names: ['chlorodifluoroethane'],
  type: 'HCFC',
  safetyClass: 'A2',
  usualOil: 'mineral oil or alkylbenzene',
  gwp: { AR4: 2310, AR5: 1980, AR6: 2300, 'US exchange value': 2310 },
  odp: 0.065,
  onlyInBlends: true,
};
