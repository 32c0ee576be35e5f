import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-454A',
  names: [],
  components: [
    ['R-32', 0.35],
    ['R-1234yf', 0.65],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-48.4, -41.6],
};
