import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-457A',
  names: [],
  components: [
    ['R-32', 0.18],
    ['R-1234yf', 0.7],
    ['R-152a', 0.12],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-42.7, -35.5],
};
