import { naming } from '../../../src/errors.ts';
import { nitrogenTest } from '../../../src/access/nitrogen-test.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import * as shared from './nitrogen-parameters.ts';

/** Two readings of one gauge, one probe: repeatability, not accuracy. Common practice, no source. */
const gaugeRepeatabilityPa = 6894.757;
const probeRepeatabilityK = 1 / 1.8;

export const testcheck = defineFunction({
  id: 'TESTCHECK',
  family: 'access',
  summary: 'Whether a nitrogen pressure test held, with the pressure corrected for temperature.',
  parameters: {
    start_pressure: shared.startPressureParameter,
    start_temperature: shared.startTemperatureParameter,
    end_pressure: {
      kind: 'number',
      quantity: 'pressure',
      description: 'Gauge pressure at the second reading, on the same gauge.',
    },
    end_temperature: shared.endTemperatureParameter,
    low_side: shared.lowSideParameter,
    gas: shared.testGasParameter,
    gauge_doubt: {
      kind: 'number',
      quantity: 'pressureDifference',
      description: 'How far two readings of this gauge may differ by themselves. 1 psi if left out.',
      minimum: 0,
      default: gaugeRepeatabilityPa,
    },
    probe_doubt: {
      kind: 'number',
      quantity: 'temperatureDifference',
      description: 'How far two readings of this probe may differ by themselves. 1 degF if left out.',
      minimum: 0,
      default: probeRepeatabilityK,
    },
    hours: {
      kind: 'number',
      quantity: 'hours',
      description: 'How long it stood between the two readings.',
      above: 0,
      maximum: 3600 * 24 * 365,
      optional: true,
    },
    free_volume: {
      kind: 'number',
      quantity: 'volume',
      description:
        'Gas space of the circuit with hoses, such as "1.5 L". With the hours it tells what loss a year the test still misses.',
      above: 0,
      maximum: 1,
      optional: true,
    },
    refrigerant: {
      ...refrigerantParameter,
      optional: true,
      description: 'What goes into the unit. Left out: any refrigerant, at the test pressure.',
    },
    elevation: elevationParameter,
  },
  returns: { kind: 'verdict', description: 'Holds, Leak, Read again or Refused' },
  source:
    'Ideal gas at constant volume; doubts added as the root of the sum of squares (JCGM 100:2008). Loss still missed: the same gap, flow by the squares of the pressures over the viscosity, standing at saturation; viscosities from memory.',
  examples: [
    {
      arguments: {
        start_pressure: 300,
        start_temperature: 70,
        end_pressure: 288.5,
        end_temperature: 50,
        low_side: 320,
      },
      gives: 'Holds: 288.5 psig against 288.1',
      source: shared.gasLaw,
    },
    {
      arguments: {
        start_pressure: 300,
        start_temperature: 70,
        end_pressure: 291,
        end_temperature: 70,
        low_side: 320,
      },
      gives: 'Leak: 291.0 psig where 300.0',
      source: shared.gasLaw,
    },
    {
      arguments: {
        start_pressure: 100,
        start_temperature: 70,
        end_pressure: 100,
        end_temperature: 70,
        low_side: 320,
        gas: 'shop air',
      },
      gives: 'Refused: only nitrogen',
      source: 'safety: nitrogen only',
    },
  ],
  compute: (given, { atmospherePa }) =>
    naming({ temperature: 'end_temperature' }, () =>
      nitrogenTest({
        startPa: given.start_pressure,
        startK: given.start_temperature,
        endPa: given.end_pressure,
        endK: given.end_temperature,
        lowSidePa: given.low_side,
        gas: given.gas,
        gaugeDoubtPa: given.gauge_doubt,
        probeDoubtK: given.probe_doubt,
        scope:
          given.hours === undefined || given.free_volume === undefined
            ? undefined
            : { heldS: given.hours, freeVolumeM3: given.free_volume, refrigerant: given.refrigerant },
        atmospherePa,
      }),
    ),
});
