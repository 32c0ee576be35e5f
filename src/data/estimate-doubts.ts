/**
 * Largest difference [K] of a saturation temperature between the model with borrowed mixing parameters and the same model
 * without correction, over the whole saturation table of the blend. What the estimate moves is what it may be wrong by.
 * Computed by ours; tests/standards/refrigerants/estimated-pairs.test.ts works it out anew.
 */
export const estimateDoubtsK: Readonly<Record<string, number>> = {
  'R-401A': 1.15,
  'R-402A': 1.1,
  'R-408A': 0.15,
  'R-409A': 0.7,
  'R-414B': 2.35,
  'R-424A': 3.35,
  'R-426A': 2.1,
  'R-437A': 4.15,
  'R-438A': 3.45,
  'R-453A': 2.9,
};
