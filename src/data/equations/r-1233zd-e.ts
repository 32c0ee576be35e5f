// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-1233zd(E)',
  source: 'Akasaka-JPCRD-2022-R1233zdE',
  molarMassKgPerMol: 0.1304962,
  gasConstant: 8.314462618,
  acentricFactor: 0.304,
  reducingTemperatureK: 438.86,
  reducingDensityMolPerM3: 3704,
  criticalTemperatureK: 438.86,
  criticalPressurePa: 3582800,
  lowestTemperatureK: 165.75,
  highestTemperatureK: 450,
  highestPressurePa: 100000000,
  residual: {
    exponential: {
      n: [
        0.04394257, 1.062919, -1.2879140374971, -0.8088618920845, 0.2372427, -1.9403, -2.831967, 0.373421,
        -1.515798, -0.02755627,
      ],
      d: [4, 1, 1, 2, 3, 1, 3, 2, 2, 7],
      t: [1, 0.182, 0.865, 1.0924, 0.49, 1.958, 2.05, 0.658, 2.051, 0.862],
      l: [0, 0, 0, 0, 0, 2, 2, 1, 2, 1],
    },
    gaussian: {
      n: [4.24023, -0.03152671, -1.366494, 2.647143, -2.325463, -0.2541521, 0.1330834, -0.1569217],
      d: [1, 2, 3, 1, 1, 1, 1, 1],
      t: [1.852, 1.92, 1.936, 1.515, 2.668, 1.755, 0.526, 2.98],
      eta: [1.532, 0.635, 1.4056, 1.451, 1.395, 2.259, 24.3, 23.6],
      epsilon: [0.8834, 1.386, 0.5196, 1.133, 0.9788, 1.166, 0.9244, 0.9372],
      beta: [0.2912, 0.6245, 0.669, 0.5798, 0.4643, 2.449, 1061.4, 917.8],
      gamma: [1.7171, 0.63, 0.7852, 2.251, 1.821, 2.074, 1.0797, 1.084],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [13.7, 7.0974],
      t: [1.7340381898555348, 6.539670965683817],
    },
  },
};
