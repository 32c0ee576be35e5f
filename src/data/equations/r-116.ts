// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-116',
  source: 'Lemmon-JCED-2006',
  molarMassKgPerMol: 0.13801182,
  gasConstant: 8.314472,
  acentricFactor: 0.2566,
  reducingTemperatureK: 293.03,
  reducingDensityMolPerM3: 4444,
  criticalTemperatureK: 293.03000000000003,
  criticalPressurePa: 3048000,
  lowestTemperatureK: 173.1,
  highestTemperatureK: 425,
  highestPressurePa: 50000000,
  residual: {
    exponential: {
      n: [
        1.1632, -2.8123, 0.77202, -0.14331, 0.10227, 0.00024629, 0.30893, -0.028499, -0.30343, -0.068793,
        -0.027218, 0.010665,
      ],
      d: [1, 1, 1, 2, 3, 7, 2, 5, 1, 4, 3, 4],
      t: [0.25, 1.125, 1.5, 1.375, 0.25, 0.875, 0.625, 1.75, 3.625, 3.625, 14.5, 12],
      l: [0, 0, 0, 0, 0, 0, 1, 1, 2, 2, 3, 3],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [2.4818, 7.0622, 7.9951],
      t: [0.6483977749718459, 2.122649558065727, 5.016551206361124],
    },
  },
};
