import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-502',
  names: [],
  components: [
    ['R-22', 0.488],
    ['R-115', 0.512],
  ],
  type: 'CFC blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil or alkylbenzene',
  standardBoilingPointC: [-45.3, -45.0],
};
