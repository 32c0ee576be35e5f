import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-453A',
  names: [],
  components: [
    ['R-32', 0.2],
    ['R-125', 0.2],
    ['R-134a', 0.538],
    ['R-227ea', 0.05],
    ['R-600', 0.006],
    ['R-601a', 0.006],
  ],
  type: 'HFC/hydrocarbon blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil, alkylbenzene or polyolester (POE)',
  standardBoilingPointC: [-42.2, -35.0],
};
