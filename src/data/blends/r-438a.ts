import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-438A',
  names: [],
  components: [
    ['R-32', 0.085],
    ['R-125', 0.45],
    ['R-134a', 0.442],
    ['R-600', 0.017],
    ['R-601a', 0.006],
  ],
  type: 'HFC/hydrocarbon blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil, alkylbenzene or polyolester (POE)',
  standardBoilingPointC: [-43.0, -36.4],
};
