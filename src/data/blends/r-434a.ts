import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-434A',
  names: [],
  components: [
    ['R-125', 0.632],
    ['R-143a', 0.18],
    ['R-134a', 0.16],
    ['R-600a', 0.028],
  ],
  type: 'HFC/hydrocarbon blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil, alkylbenzene or polyolester (POE)',
  standardBoilingPointC: [-45.0, -42.3],
};
