import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-452A',
  names: [],
  components: [
    ['R-32', 0.11],
    ['R-125', 0.59],
    ['R-1234yf', 0.3],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-47.0, -43.2],
};
