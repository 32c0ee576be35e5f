import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-402A',
  names: [],
  components: [
    ['R-125', 0.6],
    ['R-290', 0.02],
    ['R-22', 0.38],
  ],
  type: 'HCFC blend',
  safetyClass: 'A1',
  usualOil: 'alkylbenzene or mineral oil; polyolester (POE) also used',
  standardBoilingPointC: [-49.2, -47.0],
};
