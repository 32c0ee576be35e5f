import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-408A',
  names: [],
  components: [
    ['R-125', 0.07],
    ['R-143a', 0.46],
    ['R-22', 0.47],
  ],
  type: 'HCFC blend',
  safetyClass: 'A1',
  usualOil: 'alkylbenzene or mineral oil; polyolester (POE) also used',
  standardBoilingPointC: [-45.5, -45.0],
};
