import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-417A',
  names: [],
  components: [
    ['R-125', 0.466],
    ['R-134a', 0.5],
    ['R-600', 0.034],
  ],
  type: 'HFC/hydrocarbon blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil, alkylbenzene or polyolester (POE)',
  standardBoilingPointC: [-38.0, -32.9],
};
