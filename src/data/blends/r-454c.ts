import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-454C',
  names: [],
  components: [
    ['R-32', 0.215],
    ['R-1234yf', 0.785],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-46.0, -37.8],
};
