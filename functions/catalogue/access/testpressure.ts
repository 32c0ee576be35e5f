import { nitrogenPressurePa } from '../../../src/access/nitrogen-test.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import * as shared from './nitrogen-parameters.ts';

export const testpressure = defineFunction({
  id: 'TESTPRESSURE',
  family: 'access',
  summary: 'Gauge pressure a tight unit filled with nitrogen shows after its temperature has changed.',
  parameters: {
    start_pressure: shared.startPressureParameter,
    start_temperature: shared.startTemperatureParameter,
    end_temperature: shared.endTemperatureParameter,
    low_side: shared.lowSideParameter,
    gas: shared.testGasParameter,
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'pressure', description: 'Expected gauge pressure' },
  source: 'Ideal gas at constant volume, absolute pressure and temperature.',
  examples: [
    {
      arguments: { start_pressure: 150, start_temperature: 75, end_temperature: 60, low_side: 150 },
      gives: 145.4,
      tolerance: 0.2,
      source: shared.gasLaw,
    },
    {
      arguments: { start_pressure: 300, start_temperature: 70, end_temperature: 50, low_side: 320 },
      gives: 288.1,
      tolerance: 0.2,
      source: shared.gasLaw,
    },
    {
      arguments: { start_pressure: 300, start_temperature: 70, end_temperature: 50, low_side: 236 },
      gives: '#N/A',
      source: 'safety: never above the low side on the nameplate',
    },
    {
      arguments: {
        start_pressure: 150,
        start_temperature: 70,
        end_temperature: 50,
        low_side: 236,
        gas: 'oxygen',
      },
      gives: '#N/A',
      source: 'safety: nitrogen only',
    },
  ],
  compute: (given, { atmospherePa }) =>
    nitrogenPressurePa({
      startPa: given.start_pressure,
      startK: given.start_temperature,
      endK: given.end_temperature,
      lowSidePa: given.low_side,
      gas: given.gas,
      atmospherePa,
    }),
});
