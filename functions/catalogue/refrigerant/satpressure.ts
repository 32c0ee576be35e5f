import { saturationPressurePa } from '../../../src/refrigerants/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { curveParameter } from './curve-parameter.ts';

export const satpressure = defineFunction({
  id: 'SATPRESSURE',
  family: 'refrigerant',
  summary: 'Gauge pressure at which a refrigerant boils or condenses at a temperature.',
  parameters: {
    refrigerant: refrigerantParameter,
    temperature: { kind: 'number', quantity: 'temperature', description: 'Temperature of the refrigerant.' },
    curve: curveParameter,
    elevation: elevationParameter,
  },
  returns: {
    kind: 'number',
    quantity: 'pressure',
    description: 'Saturation pressure on a gauge at that elevation',
  },
  source:
    'Fit of the published equation of state of the refrigerant; see REFRIGERANTFACT(refrigerant, "model").',
  examples: [
    {
      arguments: { refrigerant: 'R-410A', temperature: 40 },
      gives: 118,
      tolerance: 0.6,
      source: 'handbook table, R-410A dew pressure at 40 degF, from memory',
    },
    {
      arguments: { refrigerant: 'R-134a', temperature: 40 },
      gives: 35,
      tolerance: 0.2,
      source: 'handbook table, R-134a at 40 degF, from memory',
    },
    {
      arguments: { refrigerant: 'R-410A', temperature: 300 },
      gives: '#NUM!',
      source: 'above the critical temperature, definition',
    },
  ],
  compute: ({ refrigerant, temperature, curve }) => saturationPressurePa(refrigerant, temperature, curve),
});
