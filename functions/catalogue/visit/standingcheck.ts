import { naming } from '../../../src/errors.ts';
import { standingCheck } from '../../../src/visit/standing-check.ts';
import { fahrenheitDifferenceK, minutesS } from '../../../src/units/trade.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { outdoorTemperatureParameter, probeParameter, suctionGaugeParameter } from './shared-parameters.ts';

export const standingcheck = defineFunction({
  id: 'STANDINGCHECK',
  family: 'visit',
  summary:
    'What gas a standing pressure says is inside, never how much: compared with the bubble point at ambient.',
  parameters: {
    refrigerant: refrigerantParameter,
    pressure: {
      kind: 'number',
      quantity: 'pressure',
      description: 'Pressure with the compressor off, all parts at one temperature.',
    },
    ambient_temperature: {
      ...outdoorTemperatureParameter,
      description: 'Temperature of the parts of the unit and the air around them.',
    },
    off_minutes: {
      kind: 'number',
      quantity: 'minutes',
      minimum: 0,
      maximum: minutesS(60 * 24 * 365),
      optional: true,
      description: 'Minutes since the compressor stopped. Refused when blank or under 30.',
    },
    parts_spread: {
      kind: 'number',
      quantity: 'temperatureDifference',
      minimum: 0,
      maximum: fahrenheitDifferenceK(150),
      optional: true,
      description: 'Warmest less coldest part of the circuit. Warned about above 5 degF.',
    },
    gauge_accuracy: suctionGaugeParameter,
    probe_accuracy: probeParameter,
    elevation: elevationParameter,
  },
  returns: {
    kind: 'verdict',
    description:
      'Matches, Non-condensables, Mismatch, Empty, Within doubt or Refused, then the reason. More than 5 % off: add nothing. Refused when unequal parts or coarse instruments leave more doubt than that.',
  },
  source:
    'Phase rule and Dalton’s law on the bubble curve; 30 min, 5 degF and 5 %: common practice, no source.',
  examples: [
    {
      arguments: { refrigerant: 'R-410A', pressure: 218, ambient_temperature: 75, off_minutes: 45 },
      gives: 'Matches',
      source: 'bubble point of R-410A by CoolProp 8.0.0: 218.6 psig',
    },
    {
      arguments: { refrigerant: 'R-22', pressure: 150, ambient_temperature: 75, off_minutes: 45 },
      gives: 'Non-condensables: 17.',
      source: 'saturation of R-22 by CoolProp 8.0.0: 132.2 psig, excess 17.8 psi',
    },
    {
      arguments: { refrigerant: 'R-22', pressure: 132, ambient_temperature: 75, off_minutes: 12 },
      gives: 'Refused: off for 12 min',
      source: 'common practice, no source: 30 min',
    },
    {
      arguments: {
        refrigerant: 'R-22',
        pressure: 132,
        ambient_temperature: 75,
        off_minutes: 45,
        parts_spread: 60,
      },
      gives: 'Refused: 0.2 ± 6',
      source: 'arithmetic: 30 degF at 2.2 psi each is nine times the 7.3 psi of 5 %',
    },
  ],
  compute: (args, { atmospherePa }) =>
    naming({ temperature: 'ambient_temperature' }, () =>
      standingCheck({
        refrigerant: args.refrigerant,
        pressurePa: args.pressure,
        ambientTemperatureK: args.ambient_temperature,
        offS: args.off_minutes,
        partsSpreadK: args.parts_spread,
        atmospherePa,
        accuracy: { gaugePa: args.gauge_accuracy, probeK: args.probe_accuracy },
      }),
    ),
});
