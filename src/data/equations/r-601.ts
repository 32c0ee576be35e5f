// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-601',
  source: 'Thol-FPE-2019-alkanes-pentane',
  molarMassKgPerMol: 0.07214878,
  gasConstant: 8.3144598,
  acentricFactor: 0.251031912680427,
  reducingTemperatureK: 469.7,
  reducingDensityMolPerM3: 3210,
  criticalTemperatureK: 469.70000000000005,
  criticalPressurePa: 3367518.9947363394,
  lowestTemperatureK: 143.47,
  highestTemperatureK: 650,
  highestPressurePa: 780000000,
  residual: {
    exponential: {
      n: [
        0.042952795, 2.4923999, -2.603872, -0.83829913, 0.19223378, -3.0778196, -0.000324816, -1.6781976,
        0.6416425, -1.7300934, -0.017585046,
      ],
      d: [4, 1, 1, 2, 3, 1, 1, 3, 2, 2, 7],
      t: [1, 0.367, 0.704, 1.04, 0.494, 1.34, 0.688, 1.688, 0.88, 1.357, 1.021],
      l: [0, 0, 0, 0, 0, 2, 3, 2, 1, 2, 1],
    },
    gaussian: {
      n: [4.5708883, -0.0758188, -0.62122633, -0.42413043, -2.0418443],
      d: [1, 1, 3, 2, 2],
      t: [0.979, 2.966, 1.35, 0.664, 0.937],
      eta: [1.01, 4.77, 1.13, 1.08, 1.12],
      epsilon: [0.927, 0.968, 0.735, 1.196, 0.617],
      beta: [0.583, 31.6, 0.52, 0.654, 0.75],
      gamma: [1.06, 1.37, 1.09, 1.19, 0.83],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [6.618, 15.97, 15.29],
      t: [0.3278688524590164, 2.8188205237385566, 5.607834788162657],
    },
  },
};
