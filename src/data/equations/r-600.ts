// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-600',
  source: 'Buecker-JPCRD-2006B',
  molarMassKgPerMol: 0.0581222,
  gasConstant: 8.314472,
  acentricFactor: 0.200810094644,
  reducingTemperatureK: 425.125,
  reducingDensityMolPerM3: 3922.769612987809,
  criticalTemperatureK: 425.125,
  criticalPressurePa: 3796000,
  lowestTemperatureK: 134.895,
  highestTemperatureK: 575,
  highestPressurePa: 12000000,
  residual: {
    exponential: {
      n: [
        2.5536998241635, -4.4585951806696, 0.82425886369063, 0.11215007011442, -0.035910933680333,
        0.016790508518103, 0.032734072508724, 0.95571232982005, -1.0003385753419, 0.085581548803855,
        -0.025147918369616, -0.0015202958578918, 0.004706068232642, -0.097845414174006, -0.04831790415876,
        0.17841271865468, 0.018173836739334, -0.11399068074953, 0.019329896666669, 0.001157587740101,
        0.00015253808698116, -0.043688558458471, -0.0082403190629989,
      ],
      d: [1, 1, 1, 2, 3, 4, 4, 1, 1, 2, 7, 8, 8, 1, 2, 3, 3, 4, 5, 5, 10, 2, 6],
      t: [0.5, 1, 1.5, 0, 0.5, 0.5, 0.75, 2, 2.5, 2.5, 1.5, 1, 1.5, 4, 7, 3, 7, 3, 1, 6, 0, 6, 13],
      l: [0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2, 2, 3, 3],
    },
    gaussian: {
      n: [-0.028390056949441, 0.0014904666224681],
      d: [1, 2],
      t: [2, 0],
      eta: [10, 10],
      epsilon: [0.85, 1],
      beta: [150, 200],
      gamma: [1.16, 1.13],
    },
  },
  ideal: {
    logTau: 3.24680487,
    planckEinstein: {
      n: [5.54913289, 11.4648996, 7.59987584, 9.66033239],
      t: [0.774840445, 3.340602552, 4.970513096, 9.975553778],
    },
  },
};
