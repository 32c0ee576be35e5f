import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-454B',
  names: [],
  components: [
    ['R-32', 0.689],
    ['R-1234yf', 0.311],
  ],
  type: 'HFC/HFO blend',
  safetyClass: 'A2L',
  usualOil: 'polyolester (POE)',
  factoryCharge: true,
  lowerFlammabilityLimitKgPerM3: 0.296,
  standardBoilingPointC: [-50.9, -50.0],
};
