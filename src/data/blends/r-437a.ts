import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-437A',
  names: [],
  components: [
    ['R-125', 0.195],
    ['R-134a', 0.785],
    ['R-600', 0.014],
    ['R-601', 0.006],
  ],
  type: 'HFC/hydrocarbon blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil, alkylbenzene or polyolester (POE)',
  standardBoilingPointC: [-32.9, -29.2],
};
