// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-32',
  source: 'TillnerRoth-JPCRD-1997',
  molarMassKgPerMol: 0.052024,
  gasConstant: 8.314471,
  acentricFactor: 0.2769,
  reducingTemperatureK: 351.255,
  reducingDensityMolPerM3: 8150.084599999999,
  criticalTemperatureK: 351.255,
  criticalPressurePa: 5782000,
  lowestTemperatureK: 136.34,
  highestTemperatureK: 435,
  highestPressurePa: 70000000,
  residual: {
    exponential: {
      n: [
        1.046634, -0.5451165, -0.002448595, -0.04877002, 0.03520158, 0.00162275, 2.377225e-5, 0.029149,
        0.003386203, -0.004202444, 0.0004782025, -0.005504323, -0.02418396, 0.4209034, -0.4616537, -1.200513,
        -2.59155, -1.400145, 0.8263017,
      ],
      d: [1, 2, 5, 1, 1, 3, 8, 4, 4, 4, 8, 3, 5, 1, 1, 3, 1, 2, 3],
      t: [0.25, 1, -0.25, -1, 2, 2, 0.75, 0.25, 18, 26, -1, 25, 1.75, 4, 5, 1, 1.5, 1, 0.5],
      l: [0, 0, 0, 0, 0, 0, 0, 0, 4, 3, 1, 4, 1, 2, 2, 1, 1, 1, 1],
    },
  },
  ideal: {
    logTau: 3.004486,
    planckEinstein: {
      n: [1.160761, 2.645151, 5.794987, 1.129475],
      t: [2.2718538, 11.914421, 5.1415638, 32.768217],
    },
  },
};
