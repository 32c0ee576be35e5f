import type { ErrorCode } from '../../src/errors.ts';

/** The one table from our error codes to what a spreadsheet cell can show. */
export const cellErrorOf: Readonly<Record<ErrorCode, '#VALUE!' | '#NUM!' | '#N/A'>> = {
  'invalid-argument': '#VALUE!',
  'unknown-name': '#VALUE!',
  'out-of-range': '#NUM!',
  'no-convergence': '#NUM!',
  refused: '#N/A',
  'not-available': '#N/A',
};
