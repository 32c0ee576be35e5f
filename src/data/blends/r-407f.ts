import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-407F',
  names: [],
  components: [
    ['R-32', 0.3],
    ['R-125', 0.3],
    ['R-134a', 0.4],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-46.1, -39.7],
};
