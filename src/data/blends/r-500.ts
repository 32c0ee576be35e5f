import type { BlendFacts } from '../facts-form.ts';

export const facts: BlendFacts = {
  designation: 'R-500',
  names: [],
  components: [
    ['R-12', 0.738],
    ['R-152a', 0.262],
  ],
  type: 'CFC blend',
  safetyClass: 'A1',
  usualOil: 'mineral oil or alkylbenzene',
  standardBoilingPointC: [-33.6, -33.6],
};
