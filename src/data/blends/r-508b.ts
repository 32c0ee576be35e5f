import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-508B',
  names: [],
  components: [
    ['R-23', 0.46],
    ['R-116', 0.54],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-87.4, -87.0],
};
