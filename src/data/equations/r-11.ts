// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.
import type { FluidEquation } from '../equation-form.ts';

export const equation: FluidEquation = {
  designation: 'R-11',
  source: 'Jacobsen-FPE-1992',
  molarMassKgPerMol: 0.137368,
  gasConstant: 8.31451,
  acentricFactor: 0.1887506482528083,
  reducingTemperatureK: 471.11,
  reducingDensityMolPerM3: 4032.962,
  criticalTemperatureK: 471.06,
  criticalPressurePa: 4394000,
  lowestTemperatureK: 162.68,
  highestTemperatureK: 625,
  highestPressurePa: 100000000,
  residual: {
    exponential: {
      n: [
        1.25993633881, -2.60818574641, 0.00982122542463, -1.06085385839, 1.2282036351, 0.118000776439,
        -0.000698956926463, -0.0355428373358, 0.00197169579643, -0.00848363012252, 0.00417997567653,
        -0.000242772533848, 0.00313371368974, 3.96182646586e-6, 0.339736319502, -0.203010634531,
        -0.1060178599, 0.45156488259, -0.339265767612, 0.114338523359, 0.0319537833995, 0.036790825978,
        -9.61768948364e-6, 0.00246717966418, -0.00167030256045, 0.00240710110806, 0.00156214678738,
        -0.00323352596704,
      ],
      d: [1, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 5, 6, 8, 1, 1, 2, 2, 2, 3, 4, 6, 10, 3, 5, 8, 9, 9],
      t: [
        0.5, 1.5, 5, 1, 1.5, 0, 5, 2, 3, 1, 2, 4, 1, 4, 5, 6, 3.5, 5.5, 7.5, 3, 2.5, 5, 1.5, 11, 9, 13, 5, 9,
      ],
      l: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 2, 2, 2, 2, 2, 2, 2, 2, 2, 4, 6, 6, 6, 6],
    },
  },
  ideal: {
    logTau: -1,
    planckEinstein: {
      n: [1, 2, 1, 2, 1, 2],
      t: [
        3.313613168898983, 2.586756086688884, 1.634512228566577, 1.215500498821931, 1.06738046316147,
        0.7360191462715714,
      ],
    },
    heatCapacity: {
      c: [4.00564923248634, 0.0002228874581905608],
      t: [0, 1],
    },
  },
};
