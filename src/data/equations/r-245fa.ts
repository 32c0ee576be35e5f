// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-245fa',
  source: 'Akasaka-JPCRD-2015-R245fa',
  molarMassKgPerMol: 0.13404794,
  gasConstant: 8.3144621,
  acentricFactor: 0.3776,
  reducingTemperatureK: 427.01,
  reducingDensityMolPerM3: 3875,
  criticalTemperatureK: 427.01,
  criticalPressurePa: 3651000,
  lowestTemperatureK: 171.05,
  highestTemperatureK: 440,
  highestPressurePa: 200000000,
  residual: {
    exponential: {
      n: [
        0.057506623, 1.5615975, -2.3614485, -0.51773521, 0.18509788, -0.87405626, -0.27530955, 0.57971151,
        -0.39934306, -0.033230277,
      ],
      d: [4, 1, 1, 2, 3, 1, 3, 2, 2, 7],
      t: [1, 0.27, 0.9, 1.09, 0.4, 2.9, 1.7, 0.8, 3.6, 1.05],
      l: [0, 0, 0, 0, 0, 2, 2, 1, 2, 1],
    },
    gaussian: {
      n: [0.83210508, -0.335443, -0.10117801, -0.0091495867],
      d: [1, 1, 3, 3],
      t: [1.8, 4, 4.5, 2],
      eta: [1.011, 1.447, 1.079, 7.86],
      epsilon: [0.709, 0.939, 0.703, 0.777],
      beta: [1.879, 2.454, 1.256, 21.1],
      gamma: [1.081, 0.651, 0.468, 1.293],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [5.5728, 10.385, 12.554],
      t: [0.5197115834815994, 2.364453600524394, 5.735555763648281],
    },
  },
};
