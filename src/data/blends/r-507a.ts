import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-507A',
  names: [],
  components: [
    ['R-125', 0.5],
    ['R-143a', 0.5],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-47.1, -47.1],
};
