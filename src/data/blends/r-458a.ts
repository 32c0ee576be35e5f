import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-458A',
  names: [],
  components: [
    ['R-32', 0.205],
    ['R-125', 0.04],
    ['R-134a', 0.614],
    ['R-227ea', 0.135],
    ['R-236fa', 0.006],
  ],
  type: 'HFC blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-42.4, -32.4],
};
