import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-513A',
  names: [],
  components: [
    ['R-1234yf', 0.56],
    ['R-134a', 0.44],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-29.2, -29.1],
};
