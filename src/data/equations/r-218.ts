// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-218',
  source: 'Lemmon-JCED-2006',
  molarMassKgPerMol: 0.18801933,
  gasConstant: 8.314472,
  acentricFactor: 0.3172,
  reducingTemperatureK: 345.02,
  reducingDensityMolPerM3: 3340.000000000001,
  criticalTemperatureK: 345.02,
  criticalPressurePa: 2640000,
  lowestTemperatureK: 125.45,
  highestTemperatureK: 440,
  highestPressurePa: 20000000,
  residual: {
    exponential: {
      n: [
        1.327, -3.8433, 0.922, 0.1136, 0.00036195, 1.1001, 1.1896, -0.025147, -0.65923, -0.027969, -0.1833,
        -0.02163,
      ],
      d: [1, 1, 1, 3, 7, 1, 2, 5, 1, 1, 4, 2],
      t: [0.25, 1.25, 1.5, 0.25, 0.875, 2.375, 2, 2.125, 3.5, 6.5, 4.75, 12.5],
      l: [0, 0, 0, 0, 0, 1, 1, 1, 2, 2, 2, 3],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [7.2198, 7.2692, 11.599],
      t: [0.9448727609993625, 1.724537707958959, 4.315691843951075],
    },
  },
};
