import { expectedAmps, usualPowerFactor } from '../../../src/visit/expected-amps.ts';
import { defineFunction } from '../../runtime/define.ts';

export const expectedamps = defineFunction({
  id: 'EXPECTEDAMPS',
  family: 'visit',
  summary:
    'Running amps of a single-phase unit from capacity and efficiency on its label, when rated amps cannot be read.',
  parameters: {
    capacity: {
      kind: 'number',
      quantity: 'heatRate',
      above: 0,
      maximum: 100_000,
      description: 'Cooling capacity.',
    },
    efficiency: {
      kind: 'number',
      quantity: 'coolingEfficiency',
      above: 0,
      maximum: 20,
      description: 'EER: Btu/h of cooling for each watt.',
    },
    volts: {
      kind: 'number',
      quantity: 'voltage',
      above: 0,
      maximum: 600,
      description: 'Supply at the unit.',
    },
    power_factor: {
      kind: 'number',
      quantity: 'ratio',
      above: 0,
      maximum: 1,
      default: usualPowerFactor,
      description: 'Power factor. 0.97 if left out.',
    },
  },
  returns: { kind: 'number', quantity: 'current', description: 'Running amps at the rated load' },
  source: 'W = capacity / EER; I = W / (V × power factor). Power factor: common practice, no source.',
  examples: [
    {
      arguments: { capacity: 13500, efficiency: 9.5, volts: 115 },
      gives: 12.74,
      tolerance: 0.05,
      source: 'definition: 13500 / 9.5 / (115 × 0.97)',
    },
    { arguments: { capacity: 13500, efficiency: 0, volts: 115 }, gives: '#NUM!', source: 'definition' },
  ],
  compute: ({ capacity, efficiency, volts, power_factor }) =>
    expectedAmps({ capacityW: capacity, efficiency, volts, powerFactor: power_factor }),
});
