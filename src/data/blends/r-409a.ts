import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-409A',
  names: [],
  components: [
    ['R-22', 0.6],
    ['R-124', 0.25],
    ['R-142b', 0.15],
  ],
  type: 'HCFC blend',
  safetyClass: 'A1',
  usualOil: 'alkylbenzene or mineral oil; polyolester (POE) also used',
  standardBoilingPointC: [-35.4, -27.5],
};
