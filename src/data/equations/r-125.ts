// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-125',
  source: 'Lemmon-JPCRD-2005',
  molarMassKgPerMol: 0.1200214,
  gasConstant: 8.314472,
  acentricFactor: 0.3052,
  reducingTemperatureK: 339.173,
  reducingDensityMolPerM3: 4779,
  criticalTemperatureK: 339.173,
  criticalPressurePa: 3617700,
  lowestTemperatureK: 172.52,
  highestTemperatureK: 500,
  highestPressurePa: 60000000,
  residual: {
    exponential: {
      n: [
        5.28076, -8.67658, 0.7501127, 0.7590023, 0.01451899, 4.777189, -3.330988, 3.775673, -2.290919,
        0.8888268, -0.6234864, -0.04127263, -0.08455389, -0.1308752, 0.008344962, -1.532005, -0.05883649,
        0.02296658,
      ],
      d: [1, 1, 1, 2, 4, 1, 1, 2, 2, 3, 4, 5, 1, 5, 1, 2, 3, 5],
      t: [0.669, 1.05, 2.75, 0.956, 1, 2, 2.75, 2.38, 3.37, 3.47, 2.63, 3.45, 0.72, 4.23, 0.2, 4.5, 29, 24],
      l: [0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 2, 2, 3, 2, 3, 3],
      m: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1.7, 7, 6],
    },
  },
  ideal: {
    logTau: -1,
    power: {
      n: [-49.8651],
      t: [-0.1],
    },
    planckEinstein: {
      n: [2.303, 5.086, 7.3],
      t: [0.92578, 2.22895, 5.03283],
    },
  },
};
