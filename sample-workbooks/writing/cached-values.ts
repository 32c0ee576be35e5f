import { catalogueFunctions } from '../../functions/workbook/catalogue-functions.ts';
import type { Recalculation } from '../../functions/workbook/recalculate.ts';
import { recalculate } from '../../functions/workbook/recalculate.ts';

/** The moment at which every build computes; nothing in a sample may depend on the day it is built. */
const fixedMoment = new Date(Date.UTC(2026, 10, 25, 12));

/** Recalculates a written workbook with our own workbook host, as the command line does. */
export function recalculateSample(file: Uint8Array): Recalculation {
  return recalculate(file, catalogueFunctions, { now: () => fixedMoment });
}
