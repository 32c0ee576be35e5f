import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-444B',
  names: [],
  components: [
    ['R-32', 0.415],
    ['R-152a', 0.1],
    ['R-1234ze(E)', 0.485],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-44.6, -34.9],
};
