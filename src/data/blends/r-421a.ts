import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-421A',
  names: [],
  components: [
    ['R-125', 0.58],
    ['R-134a', 0.42],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-40.8, -35.5],
};
