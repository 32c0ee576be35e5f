import { splitCheck } from '../../../src/visit/split-check.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import * as shared from './shared-parameters.ts';

const rule = 'California RA3.2.2.7 (2008): within 3 degF of the target';

export const splitcheck = defineFunction({
  id: 'SPLITCHECK',
  family: 'visit',
  summary:
    'Temperature split with its doubt against the published target, or a rough band without a wet bulb.',
  parameters: {
    return_temperature: shared.returnTemperatureParameter,
    supply_temperature: shared.supplyTemperatureParameter,
    return_wet_bulb: { ...shared.returnWetBulbParameter, optional: true },
    ready: shared.readyParameter,
    role: shared.roleParameter,
    probe_accuracy: shared.airProbeParameter,
    elevation: elevationParameter,
  },
  returns: {
    kind: 'verdict',
    description: 'Normal, High (little air), Low (capacity), Within doubt or Refused, then split and target.',
  },
  source:
    'California RA3.2.2.7 (2008), Table RA3.2-3 from memory; 15 to 22 degF without a wet bulb: common practice, no source; in thin air the upper end grows as the density falls.',
  examples: [
    {
      arguments: { return_temperature: 75, supply_temperature: 56, return_wet_bulb: 62 },
      gives: 'Normal: split 19.0 ± 1.4 degF',
      source: `${rule}; target 19.3 degF, table from memory`,
    },
    {
      arguments: { return_temperature: 75, supply_temperature: 62, return_wet_bulb: 62, ready: 'Ready' },
      gives: 'Low',
      source: `${rule}, step d: air passes, capacity likely low`,
    },
    {
      arguments: {
        return_temperature: 75,
        supply_temperature: 50,
        return_wet_bulb: 62,
        elevation: 7000,
      },
      gives: 'Normal: split 25.0 ± 1.4 degF, target 19.3 ± 3.0 degF, in air this thin up to 28.0 degF',
      source: 'standard atmosphere at 7,000 ft: 0.772 of sea level; 19.3 / 0.772 + 3 = 28.0 degF',
    },
    {
      arguments: { return_temperature: 75, supply_temperature: 78 },
      gives: 'Refused: supply_temperature must be below',
      source: 'definition: supply is colder than return when cooling',
    },
  ],
  compute: (args, { atmospherePa }) =>
    splitCheck({
      returnTemperatureK: args.return_temperature,
      supplyTemperatureK: args.supply_temperature,
      returnWetBulbK: args.return_wet_bulb,
      ready: args.ready,
      role: args.role,
      probeK: args.probe_accuracy,
      atmospherePa,
    }),
});
