import { superheatCheck } from '../../../src/visit/superheat-check.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import * as shared from './shared-parameters.ts';

export const superheatcheck = defineFunction({
  id: 'SUPERHEATCHECK',
  family: 'visit',
  summary:
    'Superheat with its doubt against the target for this weather: one piece of evidence, never what to add or recover.',
  parameters: {
    refrigerant: refrigerantParameter,
    pressure: shared.suctionPressureParameter,
    line_temperature: { ...shared.pipe, description: 'Suction line where the pressure is read.' },
    ready: shared.readyParameter,
    return_wet_bulb: { ...shared.returnWetBulbParameter, optional: true },
    outdoor_temperature: { ...shared.outdoorTemperatureParameter, optional: true },
    metering: shared.meteringParameter,
    role: shared.roleParameter,
    gauge_accuracy: shared.suctionGaugeParameter,
    probe_accuracy: shared.probeParameter,
    split: shared.splitVerdictParameter,
    elevation: elevationParameter,
  },
  returns: {
    kind: 'verdict',
    description:
      'On target, High, Low, Floodback or probe (below zero), Within doubt or Refused, then superheat and target.',
  },
  source:
    'Fixed metering ± 5 degF (verifier 6), a valve 4 to 25 degF (verifier 3 to 26): California RA3.2.2.6 (2008), pages RA3-14 and 15. There a difference alone calls for adding or recovering; here it does not, because air, a restriction or a worn compressor give the same: DONEXT hears them all.',
  examples: [
    {
      arguments: {
        refrigerant: 'R-410A',
        pressure: 118,
        line_temperature: 62,
        ready: 'Ready',
        return_wet_bulb: 67,
        outdoor_temperature: 95,
      },
      gives: 'High: superheat 22.',
      source: 'California RA3.2.2.6 step 6 (2008): more than 5 degF above the target',
    },
    {
      arguments: {
        refrigerant: 'R-410A',
        pressure: 118,
        line_temperature: 53,
        return_wet_bulb: 67,
        outdoor_temperature: 95,
      },
      gives: 'On target',
      source: 'California RA3.2.2.6 (2008): within 5 degF',
    },
    {
      arguments: {
        refrigerant: 'R-410A',
        pressure: 118,
        line_temperature: 53,
        ready: 'Thaw first: frost on part of the coil',
        return_wet_bulb: 67,
        outdoor_temperature: 95,
      },
      gives: 'Refused',
      source: 'common practice, no source: no charge verdict over ice',
    },
    {
      arguments: {
        refrigerant: 'R-410A',
        pressure: 118,
        line_temperature: 36,
        return_wet_bulb: 67,
        outdoor_temperature: 95,
      },
      gives: 'Floodback or probe: superheat -3.',
      source: 'definition: vapor is never colder than its dew point',
    },
  ],
  compute: (args) =>
    superheatCheck({
      refrigerant: args.refrigerant,
      pressurePa: args.pressure,
      lineTemperatureK: args.line_temperature,
      ready: args.ready,
      split: args.split,
      returnWetBulbK: args.return_wet_bulb,
      outdoorTemperatureK: args.outdoor_temperature,
      metering: args.metering,
      role: args.role,
      accuracy: { gaugePa: args.gauge_accuracy, probeK: args.probe_accuracy },
    }),
});
