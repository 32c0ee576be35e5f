import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-448A',
  names: [],
  components: [
    ['R-32', 0.26],
    ['R-125', 0.26],
    ['R-1234yf', 0.2],
    ['R-134a', 0.21],
    ['R-1234ze(E)', 0.07],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-45.9, -39.8],
};
