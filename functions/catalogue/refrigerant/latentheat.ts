import { latentHeat } from '../../../src/refrigerants/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import { refrigerantParameter } from '../../runtime/shared-parameters.ts';

export const latentheat = defineFunction({
  id: 'LATENTHEAT',
  family: 'refrigerant',
  summary: 'Heat taken up by boiling: enthalpy of the dew-point vapor less that of the bubble-point liquid.',
  parameters: {
    refrigerant: refrigerantParameter,
    temperature: { kind: 'number', quantity: 'temperature', description: 'Saturation temperature.' },
  },
  returns: { kind: 'number', quantity: 'specificEnthalpy', description: 'Enthalpy difference' },
  source: 'Published equation of state of the refrigerant; both states at the same temperature.',
  examples: [
    {
      arguments: { refrigerant: 'R-22', temperature: '-40 degC', units: 'SI' },
      gives: 233.242,
      tolerance: 0.1,
      source: 'CoolProp 8.0.1dev, R-22 at 233.15 K: 233242 J/kg',
    },
    {
      arguments: { refrigerant: 'R-22', temperature: 250 },
      gives: '#NUM!',
      source: 'above the critical temperature, definition',
    },
  ],
  compute: ({ refrigerant, temperature }) => latentHeat(refrigerant, temperature),
});
