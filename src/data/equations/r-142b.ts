// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-142b',
  source: 'Lemmon-JCED-2006',
  molarMassKgPerMol: 0.10049503,
  gasConstant: 8.314472,
  acentricFactor: 0.2321,
  reducingTemperatureK: 410.26,
  reducingDensityMolPerM3: 4438,
  criticalTemperatureK: 410.26,
  criticalPressurePa: 4055000,
  lowestTemperatureK: 142.72,
  highestTemperatureK: 470,
  highestPressurePa: 60000000,
  residual: {
    exponential: {
      n: [
        1.0038, -2.7662, 0.42921, 0.081363, 0.00024174, 0.48246, 0.75542, -0.00743, -0.4146, -0.016558,
        -0.10644, -0.021704,
      ],
      d: [1, 1, 1, 3, 7, 1, 2, 5, 1, 1, 4, 2],
      t: [0.25, 1.25, 1.5, 0.25, 0.875, 2.375, 2, 2.125, 3.5, 6.5, 4.75, 12.5],
      l: [0, 0, 0, 0, 0, 1, 1, 1, 2, 2, 2, 3],
    },
  },
  ideal: {
    logTau: 3,
    planckEinstein: {
      n: [5.0385, 6.8356, 4.0591, 2.8136],
      t: [1.152927411885146, 3.061473212109394, 6.086384244137864, 16.67235411690148],
    },
  },
};
