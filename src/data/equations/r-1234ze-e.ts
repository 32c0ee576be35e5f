// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-1234ze(E)',
  source: 'Thol-IJT-2016-R1234zeE',
  molarMassKgPerMol: 0.1140415928,
  gasConstant: 8.314472,
  acentricFactor: 0.3131224184598984,
  reducingTemperatureK: 382.513,
  reducingDensityMolPerM3: 4290,
  criticalTemperatureK: 382.52,
  criticalPressurePa: 3635376.3491348797,
  lowestTemperatureK: 168.62,
  highestTemperatureK: 420,
  highestPressurePa: 15000000,
  residual: {
    exponential: {
      n: [
        0.03982797, 1.812227, -2.537512, -0.5333254, 0.1677031, -1.323801, -0.6694654, 0.8072718, -0.7740229,
        -0.01843846,
      ],
      d: [4, 1, 1, 2, 3, 1, 3, 2, 2, 7],
      t: [1, 0.223, 0.755, 1.24, 0.44, 2, 2.2, 1.2, 1.5, 0.9],
      l: [0, 0, 0, 0, 0, 2, 2, 1, 2, 1],
    },
    gaussian: {
      n: [1.407916, -0.4237082, -0.2270068, -0.805213, 0.00994318, -0.008798793],
      d: [1, 1, 3, 3, 2, 1],
      t: [1.33, 1.75, 2.11, 1, 1.5, 1],
      eta: [1, 1.61, 1.24, 9.34, 5.78, 3.08],
      epsilon: [0.728, 0.87, 0.855, 0.79, 1.3, 0.71],
      beta: [1.21, 1.37, 0.98, 171, 47.4, 15.4],
      gamma: [0.943, 0.642, 0.59, 1.2, 1.33, 0.64],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [9.3575, 10.717],
      t: [1.34113088966911, 5.15538034001459],
    },
  },
};
