// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-134a',
  source: 'TillnerRoth-JPCRD-1994',
  molarMassKgPerMol: 0.102032,
  gasConstant: 8.314471,
  acentricFactor: 0.32684,
  reducingTemperatureK: 374.18,
  reducingDensityMolPerM3: 4978.830171000001,
  criticalTemperatureK: 374.21,
  criticalPressurePa: 4059280,
  lowestTemperatureK: 169.85,
  highestTemperatureK: 455,
  highestPressurePa: 70000000,
  residual: {
    exponential: {
      n: [
        0.05586817, 0.498223, 0.02458698, 0.0008570145, 0.0004788584, -1.800808, 0.2671641, -0.04781652,
        0.01423987, 0.3324062, -0.007485907, 0.0001017263, -0.5184567, -0.08692288, 0.2057144, -0.005000457,
        0.0004603262, -0.003497836, 0.006995038, -0.01452184, -0.0001285458,
      ],
      d: [2, 1, 3, 6, 6, 1, 1, 2, 5, 2, 2, 4, 1, 4, 1, 2, 4, 1, 5, 3, 10],
      t: [-0.5, 0, 0, 0, 1.5, 1.5, 2, 2, 1, 3, 5, 1, 5, 5, 6, 10, 10, 10, 18, 22, 50],
      l: [0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 2, 2, 2, 2, 2, 2, 3, 3, 3, 4],
    },
  },
  ideal: {
    logTau: -1.629789,
    power: {
      n: [-9.723916, -3.92717],
      t: [-0.5, -0.75],
    },
  },
};
