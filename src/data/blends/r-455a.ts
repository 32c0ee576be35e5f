import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-455A',
  names: [],
  components: [
    ['R-744', 0.03],
    ['R-32', 0.215],
    ['R-1234yf', 0.755],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-51.6, -39.1],
};
