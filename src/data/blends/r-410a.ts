import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-410A',
  names: [],
  components: [
    ['R-32', 0.5],
    ['R-125', 0.5],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  factoryCharge: true,
  standardBoilingPointC: [-51.6, -51.5],
};
