// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-143a',
  source: 'LemmonJacobsen-JPCRD-2000',
  molarMassKgPerMol: 0.08404099999999999,
  gasConstant: 8.314472,
  acentricFactor: 0.261489646224,
  reducingTemperatureK: 345.857,
  reducingDensityMolPerM3: 5128.45,
  criticalTemperatureK: 345.857,
  criticalPressurePa: 3761000,
  lowestTemperatureK: 161.34,
  highestTemperatureK: 650,
  highestPressurePa: 150000000,
  residual: {
    exponential: {
      n: [
        7.7736443, -8.70185, -0.27779799, 0.1460922, 0.0089581616, -0.20552116, 0.10653258, 0.023270816,
        -0.013247542, -0.04279387, 0.36221685, -0.25671899, -0.092326113, 0.083774837, 0.017128445,
        -0.01725611, 0.0049080492,
      ],
      d: [1, 1, 1, 2, 5, 1, 3, 5, 7, 1, 2, 2, 3, 4, 2, 3, 5],
      t: [0.67, 0.833, 1.7, 1.82, 0.35, 3.9, 0.95, 0, 1.19, 7.2, 5.9, 7.65, 7.5, 7.45, 15.5, 22, 19],
      l: [0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 2, 3, 3, 3],
    },
  },
  ideal: {
    logTau: -1,
    planckEinstein: {
      n: [4.4402, 3.7515],
      t: [5.178440800677737, 2.379596191489546],
    },
    heatCapacity: {
      c: [1.0578],
      t: [0.33],
    },
  },
};
