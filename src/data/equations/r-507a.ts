// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-507A',
  source: 'Lemmon-IJT-2003',
  molarMassKgPerMol: 0.09885920000000001,
  gasConstant: 8.314472,
  acentricFactor: 0.286,
  reducingTemperatureK: 343.765,
  reducingDensityMolPerM3: 4964.029650250053,
  criticalTemperatureK: 343.765,
  criticalPressurePa: 3704900,
  lowestTemperatureK: 200,
  highestTemperatureK: 500,
  highestPressurePa: 50000000,
  residual: {
    exponential: {
      n: [
        6.24982, -8.07855, 0.0264843, 0.286215, -0.00507076, 0.0109552, 0.00116124, 1.38469, -0.922473,
        -0.0503562, 0.822098, -0.277727, 0.358172, -0.0126426, -0.0060701, -0.0815653, -0.0233323, 0.0352952,
        0.0159566, 0.0755927, -0.0542007, 0.0170451,
      ],
      d: [1, 1, 1, 2, 2, 4, 6, 1, 1, 1, 2, 2, 3, 4, 7, 2, 3, 4, 4, 2, 3, 5],
      t: [
        0.692, 0.943, 5.8, 0.77, 5.84, 0.24, 0.69, 2, 3, 7, 2.2, 4.3, 2.7, 1.2, 1.23, 12, 6, 8.5, 11.5, 13,
        17, 16.2,
      ],
      l: [0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3],
    },
  },
  ideal: {
    logTau: -1,
    power: {
      n: [-21.6054],
      t: [-0.25],
    },
    planckEinstein: {
      n: [0.95006, 4.1887, 5.5184],
      t: [1.05886, 2.37081, 5.14305],
    },
  },
  bubblePressure: {
    T: 343.765,
    p: 3704900,
    n: [-7.4853, 2.0115, -2.0141, -3.7763],
    t: [1, 1.5, 2.2, 4.6],
  },
  dewPressure: {
    T: 343.765,
    p: 3704900,
    n: [-7.5459, 2.338, -2.237, -4.1535],
    t: [1, 1.5, 2.1, 4.7],
  },
};
