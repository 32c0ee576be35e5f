// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-407C',
  source: 'Lemmon-IJT-2003',
  molarMassKgPerMol: 0.08620359999999999,
  gasConstant: 8.314472,
  acentricFactor: 0.363,
  reducingTemperatureK: 359.345,
  reducingDensityMolPerM3: 5260.000046401775,
  criticalTemperatureK: 359.345,
  criticalPressurePa: 4631700,
  lowestTemperatureK: 200,
  highestTemperatureK: 500,
  highestPressurePa: 50000000,
  residual: {
    exponential: {
      n: [
        1.0588, -1.12018, 0.629064, -0.351953, 0.00455978, -1.75725, -1.12009, 0.0277353, 0.898881, -1.17591,
        0.0818591, -0.0794097, -1.04047e-5, 0.233779, -0.29179, 0.0154776, -0.0314579, -0.00442552,
        -0.0101254, 0.00915953, -0.003615,
      ],
      d: [1, 1, 1, 2, 5, 1, 2, 2, 3, 3, 5, 5, 5, 1, 1, 4, 4, 2, 4, 5, 6],
      t: [
        0.241, 0.69, 2.58, 1.15, 0.248, 2.15, 2.43, 5.3, 0.76, 1.48, 0.24, 2.86, 8, 3.3, 4.7, 0.45, 8.4, 16.2,
        26, 16, 8.7,
      ],
      l: [0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3],
    },
  },
  ideal: {
    logTau: -1,
    power: {
      n: [-14.3914],
      t: [-0.4],
    },
    planckEinstein: {
      n: [1.4245, 3.9419, 3.1209],
      t: [2.40437, 5.25122, 13.3632],
    },
  },
  bubblePressure: {
    T: 359.345,
    p: 4631700,
    n: [0.48722, -6.6959, -1.4165, -2.5109],
    t: [0.54, 0.925, 2.7, 4.7],
  },
  dewPressure: {
    T: 359.345,
    p: 4631700,
    n: [-0.086077, -6.6364, -2.4648, -3.4776],
    t: [0.4, 0.965, 3.1, 5],
  },
};
