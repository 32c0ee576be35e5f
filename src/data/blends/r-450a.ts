import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-450A',
  names: [],
  components: [
    ['R-134a', 0.42],
    ['R-1234ze(E)', 0.58],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-23.4, -22.8],
};
