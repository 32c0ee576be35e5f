import {
  highestWaterPressurePa,
  lowestWaterPressurePa,
  waterSaturationTemperatureK,
} from '../../../src/air/water-saturation.ts';
import { defineFunction } from '../../runtime/define.ts';

const curve = 'ASHRAE Fundamentals 2017 ch.1 equations 5 (ice) and 6 (liquid), computed with an open library';

export const waterboils = defineFunction({
  id: 'WATERBOILS',
  family: 'access',
  summary:
    'Temperature at which water boils under a vacuum; below the triple point, at which ice turns to vapor.',
  parameters: {
    vacuum: {
      kind: 'number',
      quantity: 'vacuum',
      description: 'Vacuum counted from absolute zero, in microns. Elevation does not matter.',
      minimum: lowestWaterPressurePa,
      maximum: highestWaterPressurePa,
    },
  },
  returns: {
    kind: 'number',
    quantity: 'temperature',
    description: 'Boiling or sublimation temperature of water',
  },
  source: 'Hyland and Wexler 1983, as in ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5 and 6.',
  examples: [
    { arguments: { vacuum: 1000 }, gives: 0.8, tolerance: 0.7, source: curve },
    { arguments: { vacuum: 25400 }, gives: 79, tolerance: 0.7, source: curve },
    { arguments: { vacuum: 760000 }, gives: 212, tolerance: 0.7, source: curve },
    { arguments: { vacuum: 0 }, gives: '#NUM!', source: 'definition: no water boils at zero pressure' },
  ],
  compute: ({ vacuum }) => waterSaturationTemperatureK(vacuum),
});
