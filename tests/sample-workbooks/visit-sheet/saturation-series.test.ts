import { expect, test } from 'vitest';
import type { Series } from '../../../sample-workbooks/visit-sheet/saturation-series.ts';
import {
  gasSeries,
  highestK,
  listedGases,
  lowestK,
  stampOfFits,
} from '../../../sample-workbooks/visit-sheet/saturation-series.ts';
import { SheetUnits } from '../../../sample-workbooks/visit-sheet/sheet-units.ts';
import { readValues } from '../../../functions/office-work/gather/read-values.ts';
import { refrigerants } from '../../../src/refrigerants/index.ts';
import { visitSheetFiles } from '../../../sample-workbooks/visit-sheet/recipe.ts';
import { committed } from '../built.ts';

const points = 300;
const along = ({ lowest, highest }: Series): number[] =>
  Array.from({ length: points + 1 }, (_, index) => lowest + ((highest - lowest) * index) / points);
const valueOf = ({ middle, half, coefficients }: Series, variable: number): number =>
  coefficients.reduceRight((sum, coefficient) => coefficient + ((variable - middle) / half) * sum, 0);

test('every refrigerant of the project is listed', () => {
  expect(listedGases()).toHaveLength(refrigerants().length);
});

/** Regression: the project's own fits, within what the issue allows. */
test.each(['US', 'SI'] as const)(
  'series in %s units lie within 0.02 K, and a part in 5,000, of the fits',
  (system) => {
    const units = new SheetUnits(system);
    const perPa = units.value(1e6, 'pressureDifference') / 1e6;
    const perK = system === 'US' ? 1.8 : 1;
    const kelvin = (value: number): number => (system === 'US' ? (value + 459.67) / 1.8 : value + 273.15);
    let worstK = 0;
    let worstShare = 0;
    for (const { gas, dew, bubble, pressure } of gasSeries(units)) {
      for (const [curve, series] of [
        ['dew', dew],
        ['bubble', bubble],
      ] as const) {
        for (const variable of along(series)) {
          const fit = units.value(
            gas.saturation.temperatureK(Math.exp(variable) / perPa, curve),
            'temperature',
          );
          worstK = Math.max(worstK, Math.abs(valueOf(series, variable) - fit) / perK);
        }
      }
      for (const variable of along(pressure)) {
        const fit = gas.saturation.pressurePa(kelvin(variable), 'bubble') * perPa;
        worstShare = Math.max(worstShare, Math.abs(Math.exp(valueOf(pressure, variable)) / fit - 1));
      }
      expect(kelvin(pressure.lowest), gas.designation).toBeCloseTo(
        Math.max(lowestK, gas.saturation.lowestTemperatureK),
        6,
      );
      expect(kelvin(pressure.highest), gas.designation).toBeCloseTo(
        Math.min(highestK, gas.saturation.highestTemperatureK),
        6,
      );
    }
    expect(worstK).toBeLessThan(0.02);
    expect(worstShare).toBeLessThan(0.0002);
  },
);

test.each(['US', 'SI'] as const)(
  'the committed %s sheet bears the stamp of the fits as they are',
  (system) => {
    const tables = readValues('visit-sheet.xlsx', committed(visitSheetFiles[system], 'others')).find(
      ({ name }) => name === 'Tables',
    );
    expect(tables?.rows[0]?.[0], 'stale: npm run samples').toBe(`Fits ${stampOfFits()}`);
  },
);
