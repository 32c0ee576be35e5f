import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-401A',
  names: [],
  components: [
    ['R-22', 0.53],
    ['R-152a', 0.13],
    ['R-124', 0.34],
  ],
  type: 'HCFC blend',
  safetyClass: 'A1',
  usualOil: 'alkylbenzene or mineral oil; polyolester (POE) also used',
  standardBoilingPointC: [-34.4, -28.8],
};
