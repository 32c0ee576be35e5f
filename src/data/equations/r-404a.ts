// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-404A',
  source: 'Lemmon-IJT-2003',
  molarMassKgPerMol: 0.0976038,
  gasConstant: 8.314472,
  acentricFactor: 0.293,
  reducingTemperatureK: 345.27,
  reducingDensityMolPerM3: 4939.999999999999,
  criticalTemperatureK: 345.27,
  criticalPressurePa: 3734800,
  lowestTemperatureK: 200,
  highestTemperatureK: 500,
  highestPressurePa: 50000000,
  residual: {
    exponential: {
      n: [
        6.10984, -7.79453, 0.0183377, 0.26227, -0.00351688, 0.0116181, 0.00105992, 0.850922, -0.520084,
        -0.0464225, 0.62119, -0.195505, 0.336159, -0.0376062, -0.00636579, -0.0758262, -0.0221041, 0.0310441,
        0.0132798, 0.0689437, -0.0507525, 0.0161382,
      ],
      d: [1, 1, 1, 2, 2, 4, 6, 1, 1, 1, 2, 2, 3, 4, 7, 2, 3, 4, 4, 2, 3, 5],
      t: [
        0.67, 0.91, 5.96, 0.7, 6, 0.3, 0.7, 1.7, 3.3, 7, 2.05, 4.3, 2.7, 1.8, 1.25, 12, 6, 8.7, 11.6, 13, 17,
        16,
      ],
      l: [0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3],
    },
  },
  ideal: {
    logTau: -1,
    power: {
      n: [-18.8664],
      t: [-0.3],
    },
    planckEinstein: {
      n: [0.63078, 3.5979, 5.0335],
      t: [1.19617, 2.32861, 5.00188],
    },
  },
  bubblePressure: {
    T: 345.27,
    p: 3734800,
    n: [0.061067, -6.5646, -3.6162, -3.9771],
    t: [0.54, 0.965, 3.7, 9],
  },
  dewPressure: {
    T: 345.27,
    p: 3734800,
    n: [-0.00026863, -6.5757, -4.1802, -7.9102],
    t: [0.1, 0.972, 3.8, 9],
  },
};
