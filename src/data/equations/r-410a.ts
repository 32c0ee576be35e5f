// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-410A',
  source: 'Lemmon-IJT-2003',
  molarMassKgPerMol: 0.07258540000000001,
  gasConstant: 8.314472,
  acentricFactor: 0.296,
  reducingTemperatureK: 344.494,
  reducingDensityMolPerM3: 6323.999999999999,
  criticalTemperatureK: 344.494,
  criticalPressurePa: 4901200,
  lowestTemperatureK: 200,
  highestTemperatureK: 500,
  highestPressurePa: 50000000,
  residual: {
    exponential: {
      n: [
        0.987252, -1.03017, 1.17666, -0.138991, 0.00302373, -2.53639, -1.9668, -0.83048, 0.172477, -0.261116,
        -0.0745473, 0.679757, -0.652431, 0.0553849, -0.071097, -0.000875332, 0.020076, -0.0139761, -0.018511,
        0.0171939, -0.00482049,
      ],
      d: [1, 1, 1, 2, 5, 1, 2, 3, 5, 5, 5, 1, 1, 4, 4, 9, 2, 2, 4, 5, 6],
      t: [
        0.44, 1.2, 2.97, 2.95, 0.2, 1.93, 1.78, 3, 0.2, 0.74, 3, 2.1, 4.3, 0.25, 7, 4.7, 13, 16, 25, 17, 7.4,
      ],
      l: [0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 3, 3, 3, 3, 3],
    },
  },
  ideal: {
    logTau: -1,
    power: {
      n: [-46.87575],
      t: [-0.1],
    },
    planckEinstein: {
      n: [2.0623, 5.9751, 1.5612],
      t: [2.02326, 5.00154, 11.2484],
    },
  },
  bubblePressure: {
    T: 344.494,
    p: 4901200,
    n: [-7.2818, 2.5093, -3.2695, -2.8022],
    t: [1, 1.8, 2.4, 4.9],
  },
  dewPressure: {
    T: 344.494,
    p: 4901200,
    n: [-7.4411, 1.9883, -2.4925, -3.2633],
    t: [1, 1.6, 2.4, 5],
  },
};
