// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-1270',
  source: 'Lemmon-PROPYLENE-2013',
  molarMassKgPerMol: 0.04207974,
  gasConstant: 8.314472,
  acentricFactor: 0.146,
  reducingTemperatureK: 364.211,
  reducingDensityMolPerM3: 5457,
  criticalTemperatureK: 364.211,
  criticalPressurePa: 4555000,
  lowestTemperatureK: 87.953,
  highestTemperatureK: 575,
  highestPressurePa: 1000000000,
  residual: {
    exponential: {
      n: [
        0.04341002, 1.136592, -0.8528611, 0.5216669, -1.382953, 0.1214347, -0.5984662, -1.391883, -1.008434,
        0.1961249, -0.360693, -0.002407175,
      ],
      d: [4, 1, 1, 2, 2, 3, 1, 1, 3, 2, 2, 8],
      t: [1, 0.205, 0.56, 0.676, 1, 0.5, 1, 1.94, 2, 1, 2.66, 0.83],
      l: [0, 0, 0, 0, 0, 0, 1, 2, 2, 1, 2, 1],
    },
    gaussian: {
      n: [
        0.7432121, 0.1475162, -0.02503391, -0.2734409, 0.006378889, 0.0150294, -0.03162971, -0.04107194,
        -1.190241,
      ],
      d: [1, 1, 2, 3, 3, 2, 1, 2, 3],
      t: [1.6, 2.5, 3, 2.5, 2.72, 4, 4, 1, 4],
      eta: [1.07, 0.66, 1.2, 1.12, 1.47, 1.93, 3.3, 15.4, 6],
      epsilon: [0.78, 0.82, 1.94, 0.69, 1.96, 1.3, 0.38, 0.91, 0.7],
      beta: [0.77, 0.83, 0.607, 0.4, 0.66, 0.07, 3.1, 387, 41],
      gamma: [1.21, 1.08, 0.83, 0.56, 1.22, 1.81, 1.54, 1.12, 1.4],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [1.544, 4.013, 8.923, 6.02],
      t: [0.8895942187358427, 2.671528317376466, 5.304617378387802, 11.85301926630442],
    },
  },
};
