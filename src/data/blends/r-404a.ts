import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-404A',
  names: [],
  components: [
    ['R-125', 0.44],
    ['R-143a', 0.52],
    ['R-134a', 0.04],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-46.6, -45.8],
};
