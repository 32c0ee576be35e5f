import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-427A',
  names: [],
  components: [
    ['R-32', 0.15],
    ['R-125', 0.25],
    ['R-143a', 0.1],
    ['R-134a', 0.5],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-43.0, -36.3],
};
