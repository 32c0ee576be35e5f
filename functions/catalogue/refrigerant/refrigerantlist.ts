import { refrigerants } from '../../../src/refrigerants/index.ts';
import { defineFunction } from '../../runtime/define.ts';

export const refrigerantlist = defineFunction({
  id: 'REFRIGERANTLIST',
  family: 'refrigerant',
  summary: 'Every refrigerant the functions know, with what a technician asks first.',
  parameters: {},
  returns: {
    kind: 'table',
    description: 'One row a refrigerant',
    columns: [
      { heading: 'Refrigerant', kind: 'text' },
      { heading: 'Type', kind: 'text' },
      { heading: 'Safety class', kind: 'text' },
      { heading: 'Boils at sea level', kind: 'number', quantity: 'temperature' },
      { heading: 'Glide', kind: 'number', quantity: 'temperatureDifference' },
      { heading: 'Doubt', kind: 'number', quantity: 'temperatureDifference' },
      { heading: 'Quality', kind: 'text' },
    ],
  },
  source:
    'ASHRAE Standard 34 (classes from memory; check the edition in force) and the models of each refrigerant.',
  examples: [
    { arguments: {}, gives: [['Refrigerant', 'Type', 'Safety class']], source: 'definition' },
    { arguments: { units: 'furlongs' }, gives: '#VALUE!', source: 'not a unit of any quantity here' },
  ],
  compute: () =>
    refrigerants().map((gas) => [
      gas.designation,
      gas.type,
      gas.safetyClass,
      gas.normalBoilingPoint?.bubbleK,
      gas.glideAtAtmosphereK,
      gas.qualityGrade.doubtK,
      gas.qualityGrade.grade,
    ]),
});
