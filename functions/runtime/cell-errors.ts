import type { ErrorCode } from '../../src/errors.ts';

/** The one table from our error codes to what a spreadsheet cell can show. */
export const cellErrorOf: Readonly<Record<ErrorCode, '#VALUE!' | '#NUM!' | '#N/A'>> = {
  'invalid-argument': '#VALUE!',
  'unknown-name': '#VALUE!',
  // Not #N/A, which sheets put a blank or another value in the place of.
  internal: '#VALUE!',
  'out-of-range': '#NUM!',
  'no-convergence': '#NUM!',
  refused: '#N/A',
  'not-available': '#N/A',
};
