// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-601a',
  source: 'Lemmon-JCED-2006',
  molarMassKgPerMol: 0.07214878,
  gasConstant: 8.314472,
  acentricFactor: 0.2274,
  reducingTemperatureK: 460.35,
  reducingDensityMolPerM3: 3271,
  criticalTemperatureK: 460.35,
  criticalPressurePa: 3378000,
  lowestTemperatureK: 112.65,
  highestTemperatureK: 500,
  highestPressurePa: 1000000000,
  residual: {
    exponential: {
      n: [
        1.0963, -3.0402, 1.0317, -0.1541, 0.11535, 0.00029809, 0.39571, -0.045881, -0.35804, -0.10107,
        -0.035484, 0.018156,
      ],
      d: [1, 1, 1, 2, 3, 7, 2, 5, 1, 4, 3, 4],
      t: [0.25, 1.125, 1.5, 1.375, 0.25, 0.875, 0.625, 1.75, 3.625, 3.625, 14.5, 12],
      l: [0, 0, 0, 0, 0, 0, 1, 1, 2, 2, 3, 3],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [7.4056, 9.5772, 15.765, 12.119],
      t: [0.9601390246551537, 2.409036602584989, 4.494406429890301, 9.108287172803301],
    },
  },
};
