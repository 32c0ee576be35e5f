// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-12',
  source: 'Marx-BOOK-1992',
  molarMassKgPerMol: 0.120913,
  gasConstant: 8.314471,
  acentricFactor: 0.1794783173435512,
  reducingTemperatureK: 385.12,
  reducingDensityMolPerM3: 4672.781255944357,
  criticalTemperatureK: 385.12,
  criticalPressurePa: 4136100.000000001,
  lowestTemperatureK: 116.099,
  highestTemperatureK: 525,
  highestPressurePa: 200000000,
  residual: {
    exponential: {
      n: [
        2.075343402, -2.962525996, 0.01001589616, 0.01781347612, 0.02556929157, 0.002352142637,
        -8.495553314e-5, -0.01535945599, -0.2108816776, -0.01654228806, -0.0118131613, -4.16029583e-5,
        2.784861664e-5, 1.618686433e-6, -0.1064614686, 0.0009369665207, 0.02590095447, -0.04347025025,
        0.1012308449, -0.1100003438, -0.003361012009, 0.0003789190008,
      ],
      d: [1, 1, 1, 2, 4, 6, 8, 1, 1, 5, 7, 12, 12, 14, 1, 9, 1, 1, 3, 3, 5, 9],
      t: [0.5, 1, 2, 2.5, -0.5, 0, 0, -0.5, 1.5, 2.5, -0.5, 0, 0.5, -0.5, 4, 4, 2, 4, 12, 14, 0, 14],
      l: [0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 2, 2, 3, 3, 3, 3, 3, 4],
    },
  },
  ideal: {
    logTau: 3.00361975,
    planckEinstein: {
      n: [3.16062357, 0.371258136, 3.56226039, 2.12152336],
      t: [3.72204562, 6.30985083, 1.78037889, 1.07087607],
    },
  },
};
