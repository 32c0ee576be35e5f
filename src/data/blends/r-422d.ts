import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-422D',
  names: [],
  components: [
    ['R-125', 0.651],
    ['R-134a', 0.315],
    ['R-600a', 0.034],
  ],
  type: 'HFC/hydrocarbon blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil, alkylbenzene or polyolester (POE)',
  standardBoilingPointC: [-43.2, -38.4],
};
