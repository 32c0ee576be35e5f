// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-1234yf',
  source: 'Lemmon-IJT-2022',
  molarMassKgPerMol: 0.1140416,
  gasConstant: 8.314462618,
  acentricFactor: 0.276,
  reducingTemperatureK: 367.85,
  reducingDensityMolPerM3: 4180,
  criticalTemperatureK: 367.85,
  criticalPressurePa: 3384400,
  lowestTemperatureK: 121.6,
  highestTemperatureK: 410,
  highestPressurePa: 100000000,
  residual: {
    exponential: {
      n: [
        0.0340387, 1.912859, -2.1984719881617, -0.8147645305033, 0.2288282, -1.65436, -1.446628, 0.5961722,
        -0.6148209, -0.0180069,
      ],
      d: [4, 1, 1, 2, 3, 1, 3, 2, 2, 7],
      t: [1, 0.222, 0.61, 1.122, 0.5, 2.14, 2.284, 1.05, 2.33, 0.778],
      l: [0, 0, 0, 0, 0, 2, 2, 1, 2, 1],
    },
    gaussian: {
      n: [0.2845275, -0.3050809, 2.198935, -0.4270329, -0.4015581, 0.1179587, -0.3141002],
      d: [1, 1, 1, 1, 1, 1, 1],
      t: [1, 2, 1.236, 1.6, 1.85, 0.7, 1.75],
      eta: [28.1, 28, 1.307, 1.96, 1.25, 1, 2.2],
      epsilon: [0.96, 0.96, 0.853, 1.15, 1.3, 1.5, 0.762],
      beta: [1016, 1000, 1.16, 1.2, 1.26, 1.6, 0.87],
      gamma: [1.061, 1.062, 1.3, 1.04, 1, 1.14, 1.1],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [8.65, 9.75, 2.11],
      t: [1.3918716868288703, 4.268044039690091, 12.233247247519369],
    },
  },
};
