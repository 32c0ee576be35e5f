// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-124',
  source: 'deVries-ICR-1995',
  molarMassKgPerMol: 0.1364762,
  gasConstant: 8.314471,
  acentricFactor: 0.2880950842214292,
  reducingTemperatureK: 395.425,
  reducingDensityMolPerM3: 4103.279546177282,
  criticalTemperatureK: 395.425,
  criticalPressurePa: 3624295,
  lowestTemperatureK: 75,
  highestTemperatureK: 470,
  highestPressurePa: 40000000,
  residual: {
    exponential: {
      n: [
        -0.01262962, 2.168373, -3.330033, 0.1610361, -9.666145e-5, 0.0119131, -0.002880217, 0.001681346,
        1.594968e-5, 0.1289674, 1.182213e-5, -0.4713997, -0.2412873, 0.6868066, -0.08621095, 4.728645e-6,
        0.01487933, -0.03001338, 0.001849606, 0.0004126073,
      ],
      d: [1, 1, 1, 2, 2, 3, 5, 6, 8, 2, 12, 1, 1, 1, 1, 15, 3, 3, 4, 9],
      t: [2, 0.5, 1, 0.5, 2.5, -1, 1, 0, -0.5, 1.5, 1, 2.5, -0.25, 1, 5, 2, 15, 20, 15, 45],
      l: [0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 2, 2, 2, 2, 2, 3, 3, 4, 4],
    },
  },
  ideal: {
    logTau: 2.175638,
    power: {
      n: [-7.389735, 0.8736831, -0.1115133],
      t: [-1, -2, -3],
    },
  },
};
