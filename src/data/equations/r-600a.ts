// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-600a',
  source: 'Buecker-JPCRD-2006B',
  molarMassKgPerMol: 0.0581222,
  gasConstant: 8.314472,
  acentricFactor: 0.183531783208,
  reducingTemperatureK: 407.81,
  reducingDensityMolPerM3: 3879.756788283995,
  criticalTemperatureK: 407.817,
  criticalPressurePa: 3629000,
  lowestTemperatureK: 113.73,
  highestTemperatureK: 575,
  highestPressurePa: 35000000,
  residual: {
    exponential: {
      n: [
        2.0686820727966, -3.6400098615204, 0.51968754427244, 0.17745845870123, -0.12361807851599,
        0.045145314010528, 0.03047647996598, 0.75508387706302, -0.85885381015629, 0.036324009830684,
        -0.01954879945055, -0.004445239290496, 0.004641076366646, -0.071444097992825, -0.080765060030713,
        0.15560460945053, 0.0020318752160332, -0.10624883571689, 0.039807690546305, 0.016371431292386,
        0.00053212200682628, -0.0078681561156387, -0.0030981191888963,
      ],
      d: [1, 1, 1, 2, 3, 4, 4, 1, 1, 2, 7, 8, 8, 1, 2, 3, 3, 4, 5, 5, 10, 2, 6],
      t: [0.5, 1, 1.5, 0, 0.5, 0.5, 0.75, 2, 2.5, 2.5, 1.5, 1, 1.5, 4, 7, 3, 7, 3, 1, 6, 0, 6, 13],
      l: [0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2, 2, 3, 3],
    },
    gaussian: {
      n: [-0.042276036810382, -0.0053001044558079],
      d: [1, 2],
      t: [2, 0],
      eta: [10, 10],
      epsilon: [0.85, 1],
      beta: [150, 200],
      gamma: [1.16, 1.13],
    },
  },
  ideal: {
    logTau: 3.05956619,
    planckEinstein: {
      n: [4.94641014, 4.09475197, 15.6632824, 9.73918122],
      t: [0.951277902, 2.387895885, 4.346904269, 10.36885864],
    },
  },
};
