import { evapCheck } from '../../../src/visit/evap-check.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import {
  outdoorTemperatureParameter,
  readyParameter,
  returnTemperatureParameter,
  suctionGaugeParameter,
  suctionPressureParameter,
} from './shared-parameters.ts';

export const evapcheck = defineFunction({
  id: 'EVAPCHECK',
  family: 'visit',
  summary: 'Whether the evaporator runs too cold (ice), low, in range or high for the air it gets.',
  parameters: {
    refrigerant: refrigerantParameter,
    pressure: suctionPressureParameter,
    return_temperature: returnTemperatureParameter,
    ready: readyParameter,
    gauge_accuracy: suctionGaugeParameter,
    outdoor_temperature: { ...outdoorTemperatureParameter, optional: true },
    elevation: elevationParameter,
  },
  returns: {
    kind: 'verdict',
    description: 'Too cold, Low, In range, High, Within doubt or Refused, then coil and aim.',
  },
  source:
    'Freezing judged at the coil inlet, the aim (return air less 35 ± 5 degF) at the middle of bubble and dew: common practice, no source. In milder weather than 95 degF the aim falls by a degree for six, by a maker’s normal pressures (LRP14AC page 23).',
  examples: [
    {
      arguments: { refrigerant: 'R-410A', pressure: 118, return_temperature: 75 },
      gives: 'In range',
      source: 'R-410A at 40 degF: 118.4 psig by CoolProp 8.0.0; aim 40 degF, common practice',
    },
    {
      arguments: {
        refrigerant: 'R-410A',
        pressure: 106,
        return_temperature: 74,
        outdoor_temperature: 68,
        ready: 'Ready',
      },
      gives: 'In range',
      source: 'weather by a maker’s normal pressures (LRP14AC page 23): the aim falls by 4.5 degF',
    },
    {
      arguments: { refrigerant: 'R-410A', pressure: 62, return_temperature: 75 },
      gives: 'Too cold',
      source: 'common practice, no source: 62 psig is about 10 degF',
    },
    {
      arguments: {
        refrigerant: 'R-410A',
        pressure: 62,
        return_temperature: 75,
        ready: 'Wait: 6 min left of 15 min',
      },
      gives: 'Refused',
      source: 'California RA3.2.2.6 step 6 (2008)',
    },
  ],
  compute: ({ refrigerant, pressure, return_temperature, ready, gauge_accuracy, outdoor_temperature }) =>
    evapCheck({
      refrigerant,
      pressurePa: pressure,
      returnTemperatureK: return_temperature,
      ready,
      gaugePa: gauge_accuracy,
      outdoorTemperatureK: outdoor_temperature,
    }),
});
