import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-422B',
  names: [],
  components: [
    ['R-125', 0.55],
    ['R-134a', 0.42],
    ['R-600a', 0.03],
  ],
  type: 'HFC/hydrocarbon blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil, alkylbenzene or polyolester (POE)',
  standardBoilingPointC: [-40.5, -35.6],
};
