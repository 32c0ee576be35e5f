// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-290',
  source: 'Lemmon-JCED-2009',
  molarMassKgPerMol: 0.04409562,
  gasConstant: 8.314472,
  acentricFactor: 0.1521,
  reducingTemperatureK: 369.89,
  reducingDensityMolPerM3: 5000.000000000001,
  criticalTemperatureK: 369.89,
  criticalPressurePa: 4251200,
  lowestTemperatureK: 85.525,
  highestTemperatureK: 650,
  highestPressurePa: 1000000000,
  residual: {
    exponential: {
      n: [
        0.042910051, 1.7313671, -2.4516524, 0.34157466, -0.46047898, -0.66847295, 0.20889705, 0.19421381,
        -0.22917851, -0.60405866, 0.066680654,
      ],
      d: [4, 1, 1, 2, 2, 1, 3, 6, 6, 2, 3],
      t: [1, 0.33, 0.8, 0.43, 0.9, 2.46, 2.09, 0.88, 1.09, 3.25, 4.62],
      l: [0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2],
    },
    gaussian: {
      n: [0.017534618, 0.33874242, 0.22228777, -0.23219062, -0.09220694, -0.47575718, -0.017486824],
      d: [1, 1, 1, 2, 2, 4, 1],
      t: [0.76, 2.5, 2.75, 3.05, 2.55, 8.4, 6.75],
      eta: [0.963, 1.977, 1.917, 2.307, 2.546, 3.28, 14.6],
      epsilon: [1.283, 0.6936, 0.788, 0.473, 0.8577, 0.271, 0.948],
      beta: [2.33, 3.47, 3.15, 3.19, 0.92, 18.8, 547.8],
      gamma: [0.684, 0.829, 1.419, 0.817, 1.5, 1.426, 1.093],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [3.043, 5.874, 9.337, 7.922],
      t: [1.062478, 3.344237, 5.363757, 11.762957],
    },
  },
};
