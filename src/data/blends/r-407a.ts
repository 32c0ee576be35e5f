import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-407A',
  names: [],
  components: [
    ['R-32', 0.2],
    ['R-125', 0.4],
    ['R-134a', 0.4],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-45.2, -38.7],
};
