/** Which end of the two-phase region: only blends with glide tell them apart. */
export const curveParameter = {
  kind: 'choice',
  choices: ['dew', 'bubble'],
  default: 'dew',
  description: 'dew (vapor side, used if left out) or bubble (liquid side). One and the same for a pure gas.',
} as const;
