import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-414B',
  names: [],
  components: [
    ['R-22', 0.5],
    ['R-124', 0.39],
    ['R-600a', 0.015],
    ['R-142b', 0.095],
  ],
  type: 'HCFC blend',
  safetyClass: 'A1',
  usualOil: 'alkylbenzene or mineral oil; polyolester (POE) also used',
  standardBoilingPointC: [-34.4, -26.1],
};
