import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-452B',
  names: [],
  components: [
    ['R-32', 0.67],
    ['R-125', 0.07],
    ['R-1234yf', 0.26],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE)',
  lowerFlammabilityLimitKgPerM3: 0.31,
  standardBoilingPointC: [-51.0, -50.3],
};
