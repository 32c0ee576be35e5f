import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-515B',
  names: [],
  components: [
    ['R-1234ze(E)', 0.911],
    ['R-227ea', 0.089],
  ],
  compositionUnconfirmed: true,
  type: 'HFC/HFO blend',
  safetyClass: 'A1',
  usualOil: 'polyolester (POE)',
  standardBoilingPointC: [-18.9, -18.8],
};
