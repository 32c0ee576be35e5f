import { standardAtmospherePa } from '../../../src/air/standard-atmosphere.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';

const { kind, quantity, minimum, maximum } = elevationParameter;

export const airpressure = defineFunction({
  id: 'AIRPRESSURE',
  family: 'air',
  summary: 'Air pressure of the standard atmosphere at an elevation: what a gauge counts from.',
  parameters: {
    elevation: { kind, quantity, minimum, maximum, description: 'Elevation of the site above sea level.' },
  },
  returns: { kind: 'number', quantity: 'absolutePressure', description: 'Absolute pressure of the air' },
  source: 'U.S. Standard Atmosphere 1976, troposphere.',
  examples: [
    {
      arguments: { elevation: 0 },
      gives: 14.696,
      tolerance: 0.01,
      source: 'ASHRAE Handbook Fundamentals 2017, chapter 1, table 1',
    },
    {
      arguments: { elevation: 3000 },
      gives: 13.173,
      tolerance: 0.01,
      source: 'ASHRAE Handbook Fundamentals 2017, chapter 1, table 1',
    },
    {
      arguments: { elevation: 25000 },
      gives: '#NUM!',
      source: 'limit of the service, 15,000 ft',
    },
  ],
  // The runtime turns the elevation into the atmosphere of the call already, with the same function.
  compute: ({ elevation }) => standardAtmospherePa(elevation),
});
