// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-23',
  source: 'Penoncello-JPCRD-2003',
  molarMassKgPerMol: 0.07001385,
  gasConstant: 8.314472,
  acentricFactor: 0.262964892496154,
  reducingTemperatureK: 299.293,
  reducingDensityMolPerM3: 7519.999999999999,
  criticalTemperatureK: 299.293,
  criticalPressurePa: 4832000,
  lowestTemperatureK: 118.02,
  highestTemperatureK: 475,
  highestPressurePa: 120000000,
  residual: {
    exponential: {
      n: [
        7.041529, -8.259512, 0.00805304, -0.08617615, 0.00633341, -0.1863285, 0.328051, 0.5191023, 0.06916144,
        -0.005045875, -0.01744221, -0.05003972, 0.04729813, -0.06164031, 0.01583585, -0.00179579,
        -0.001099007,
      ],
      d: [1, 1, 1, 2, 5, 1, 2, 3, 5, 1, 2, 2, 4, 4, 4, 2, 2],
      t: [0.744, 0.94, 4.3, 1.46, 0.68, 4.8, 1.5, 2.07, 0.09, 9.6, 0.19, 11.2, 0.27, 1.6, 10.3, 14, 15],
      l: [0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 3, 4],
    },
  },
  ideal: {
    logTau: 2.999,
    planckEinstein: {
      n: [2.371, 3.237, 2.61, 0.8274],
      t: [2.485858339486724, 4.874821663052594, 7.133477896242144, 16.4086697650797],
    },
  },
};
