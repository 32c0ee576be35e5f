// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-236fa',
  source: 'Pan-FPE-2012',
  molarMassKgPerMol: 0.1520384,
  gasConstant: 8.314472,
  acentricFactor: 0.3769117976336991,
  reducingTemperatureK: 398.07,
  reducingDensityMolPerM3: 3626,
  criticalTemperatureK: 398.07,
  criticalPressurePa: 3200000,
  lowestTemperatureK: 179.6,
  highestTemperatureK: 400,
  highestPressurePa: 70000000,
  residual: {
    exponential: {
      n: [
        0.04453255, 1.777017, -2.230519, -0.6708606, 0.1587907, -1.425119, -0.6461628, 0.8469985, -0.5635356,
        -0.01535611,
      ],
      d: [4, 1, 1, 2, 3, 1, 3, 2, 2, 7],
      t: [1.07, 0.222, 0.66, 1.33, 0.227, 2.33, 1.94, 1.53, 2.65, 0.722],
      l: [0, 0, 0, 0, 0, 2, 2, 1, 2, 1],
    },
    gaussian: {
      n: [1.156362, -0.407031, -0.2172753, -1.007176, -6.902909e-5],
      d: [1, 1, 3, 3, 2],
      t: [1.11, 2.31, 3.68, 4.23, 0.614],
      eta: [1.02, 1.336, 1.055, 5.84, 16.2],
      epsilon: [0.712, 0.91, 0.677, 0.718, 1.64],
      beta: [1.42, 2.31, 0.89, 80, 108],
      gamma: [1.13, 0.67, 0.46, 1.28, 1.2],
    },
  },
  ideal: {
    logTau: 9.175,
    planckEinstein: {
      n: [9.8782, 18.236, 49.934],
      t: [2.416660386364208, 6.014017635089306, 13.03288366367724],
    },
  },
};
