import { figure, phrase } from '../../../src/phrase.ts';
import { likelyRefrigerants } from '../../../src/refrigerants/index.ts';
import { CalcError } from '../../../src/errors.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';

/** Requirement on gauges and probes in the California 2013 Residential Appendices RA3.2.2.2, as half-widths. */
const gaugeAccuracyPa = 24_132;
const probeAccuracyK = 1;

export const likelyrefrigerant = defineFunction({
  id: 'LIKELYREFRIGERANT',
  family: 'refrigerant',
  summary:
    'Which gases a standing pressure and temperature fit within the instruments, and whether air is suspected.',
  parameters: {
    pressure: {
      kind: 'number',
      quantity: 'pressure',
      description: 'Standing pressure, unit off and settled.',
    },
    temperature: {
      kind: 'number',
      quantity: 'temperature',
      description: 'Temperature of every part of the unit and of the air around it.',
    },
    gauge_accuracy: {
      kind: 'number',
      quantity: 'pressureDifference',
      above: 0,
      default: gaugeAccuracyPa,
      description: 'Accuracy of the gauge, plus or minus.',
    },
    probe_accuracy: {
      kind: 'number',
      quantity: 'temperatureDifference',
      above: 0,
      default: probeAccuracyK,
      description: 'Accuracy of the thermometer, plus or minus.',
    },
    elevation: elevationParameter,
  },
  returns: {
    kind: 'table',
    description: 'Gases that fit, best first; then gases that would fit if air had come in',
    columns: [
      { heading: 'Refrigerant', kind: 'text' },
      { heading: 'Fit', kind: 'text' },
      { heading: 'Pressure it would show', kind: 'number', quantity: 'pressure' },
      { heading: 'Measured less that', kind: 'number', quantity: 'pressureDifference' },
      { heading: 'Safety class', kind: 'text' },
    ],
  },
  source:
    'Bubble pressure of each refrigerant at the temperature (liquid is present in a standing unit), within the accuracies. A fit names a possibility, never proof: only an analyser identifies a gas.',
  examples: [
    {
      arguments: { pressure: 132.2, temperature: 75 },
      gives: [
        ['Refrigerant', 'Fit'],
        ['R-22', 'fits'],
      ],
      source: 'CoolProp 8.0.0: R-22 at 75 degF, 132.2 psig',
    },
    {
      arguments: { pressure: '-20 psig', temperature: 75 },
      gives: '#NUM!',
      source: 'below absolute zero pressure',
    },
  ],
  compute: ({ pressure, temperature, gauge_accuracy, probe_accuracy }) => {
    const found = likelyRefrigerants({
      pressurePa: pressure,
      temperatureK: temperature,
      pressureDoubtPa: gauge_accuracy,
      temperatureDoubtK: probe_accuracy,
    });
    if (found.length === 0) {
      throw new CalcError(
        'no refrigerant with liquid left stands at this pressure and temperature: the unit may be nearly empty',
        {
          code: 'not-available',
          parameter: 'pressure',
        },
      );
    }
    return found.map(({ refrigerant, match, expectedPressurePa, differencePa }) => [
      refrigerant.designation,
      match === 'fits'
        ? 'fits'
        : phrase`air suspected: ${figure(differencePa, 'pressureDifference')} too high`,
      expectedPressurePa,
      differencePa,
      refrigerant.safetyClass,
    ]);
  },
});
