import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-424A',
  names: [],
  components: [
    ['R-125', 0.505],
    ['R-134a', 0.47],
    ['R-600a', 0.009],
    ['R-600', 0.01],
    ['R-601a', 0.006],
  ],
  type: 'HFC/hydrocarbon blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil, alkylbenzene or polyolester (POE)',
  standardBoilingPointC: [-39.1, -33.3],
};
