import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-407C',
  names: [],
  components: [
    ['R-32', 0.23],
    ['R-125', 0.25],
    ['R-134a', 0.52],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  factoryCharge: true,
  standardBoilingPointC: [-43.8, -36.7],
};
