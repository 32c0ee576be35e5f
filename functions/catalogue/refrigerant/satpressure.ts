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
    'Fit of the published equation of state of the refrigerant; see REFRIGERANTFACT(refrigerant, "model"). Printed tables round to 0.1 psi or 1 psi, near 0 psig more than a hundredth.',
  examples: [
    {
      arguments: { refrigerant: 'R-410A', temperature: 40 },
      gives: 118,
      tolerance: 0.6,
      source: 'handbook table, rounded; dew pressure by CoolProp 8.0.0: 118.4 psig',
    },
    {
      arguments: { refrigerant: 'R-134a', temperature: 40 },
      gives: 35,
      tolerance: 0.2,
      source: 'handbook table, rounded; CoolProp 8.0.0: 35.0 psig',
    },
    {
      arguments: { refrigerant: 'R-410A', temperature: 300 },
      gives: '#NUM!',
      source: 'above the critical temperature, definition',
    },
  ],
  compute: ({ refrigerant, temperature, curve }) => saturationPressurePa(refrigerant, temperature, curve),
});
