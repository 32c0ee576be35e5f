import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-426A',
  names: [],
  components: [
    ['R-125', 0.051],
    ['R-134a', 0.93],
    ['R-600', 0.013],
    ['R-601a', 0.006],
  ],
  type: 'HFC/hydrocarbon blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil, alkylbenzene or polyolester (POE)',
  standardBoilingPointC: [-28.5, -26.7],
};
