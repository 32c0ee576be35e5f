import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-449A',
  names: [],
  components: [
    ['R-32', 0.243],
    ['R-125', 0.247],
    ['R-1234yf', 0.253],
    ['R-134a', 0.257],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-46.0, -39.9],
};
