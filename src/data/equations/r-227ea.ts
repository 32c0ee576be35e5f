// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-227ea',
  source: 'Lemmon-JCED-2016-365227',
  molarMassKgPerMol: 0.17002886,
  gasConstant: 8.3144621,
  acentricFactor: 0.3576412419532815,
  reducingTemperatureK: 374.9,
  reducingDensityMolPerM3: 3495,
  criticalTemperatureK: 374.90000000000003,
  criticalPressurePa: 2925242.2339447653,
  lowestTemperatureK: 146.35,
  highestTemperatureK: 475,
  highestPressurePa: 60000000,
  residual: {
    exponential: {
      n: [
        2.024341, -2.60593, 0.4957216, -0.824082, 0.06543703, -1.02461, 0.6247065, 0.2997521, -0.353917,
        -1.232043, -0.8824483,
      ],
      d: [1, 1, 2, 2, 4, 1, 3, 6, 6, 2, 3],
      t: [0.34, 0.77, 0.36, 0.9, 1, 2.82, 2.1, 0.9, 1.13, 3.8, 2.75],
      l: [0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2],
    },
    gaussian: {
      n: [0.1349661, -0.2662928, 0.1764733, 0.01536163, -0.004667185, -11.70854, 0.9114512],
      d: [1, 2, 1, 1, 4, 2, 1],
      t: [1.5, 2.5, 2.5, 5.4, 4, 1, 3.5],
      eta: [0.83, 2.19, 2.44, 3.65, 8.88, 8.23, 2.01],
      epsilon: [1.13, 0.71, 1.2, 1.7, 0.546, 0.896, 0.747],
      beta: [1.72, 5.2, 2.31, 1.02, 5.63, 50.9, 1.56],
      gamma: [0.414, 1.051, 1.226, 1.7, 0.904, 1.42, 0.926],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [11.43, 12.83],
      t: [1.07495332088557, 3.809015737530008],
    },
  },
};
