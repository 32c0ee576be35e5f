import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-407H',
  names: [],
  components: [
    ['R-32', 0.325],
    ['R-125', 0.15],
    ['R-134a', 0.525],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-44.6, -37.6],
};
