// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-115',
  source: 'Lemmon-JCED-2016-365227',
  molarMassKgPerMol: 0.154466416,
  gasConstant: 8.3144621,
  acentricFactor: 0.24843499306634587,
  reducingTemperatureK: 353.1,
  reducingDensityMolPerM3: 3980,
  criticalTemperatureK: 353.1,
  criticalPressurePa: 3129036.968278708,
  lowestTemperatureK: 173.57,
  highestTemperatureK: 550,
  highestPressurePa: 60000000,
  residual: {
    exponential: {
      n: [
        1.20873, -3.5446, 0.745302, 0.114128, 0.000436572, 0.988385, 1.13878, -0.0215633, -0.63023, 0.0167901,
        -0.149412, -0.0271153,
      ],
      d: [1, 1, 1, 3, 7, 1, 2, 5, 1, 1, 4, 2],
      t: [0.25, 1.25, 1.5, 0.25, 0.875, 2.375, 2, 2.125, 3.5, 6.5, 4.75, 12.5],
      l: [0, 0, 0, 0, 0, 1, 1, 1, 2, 2, 2, 3],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [7.142, 10.61],
      t: [0.8184650240725007, 3.6845086377796656],
    },
  },
};
