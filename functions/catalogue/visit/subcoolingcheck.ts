import { fahrenheitDifferenceK } from '../../../src/units/trade.ts';
import { subcoolingCheck } from '../../../src/visit/subcooling-check.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import * as shared from './shared-parameters.ts';

const usual = 'common practice, no source: 5 to 15 degF';

export const subcoolingcheck = defineFunction({
  id: 'SUBCOOLINGCHECK',
  family: 'visit',
  summary:
    'Subcooling with its doubt against the maker’s target or the usual band: one piece of evidence, never what to add or recover.',
  parameters: {
    refrigerant: refrigerantParameter,
    pressure: { kind: 'number', quantity: 'pressure', description: 'Liquid-side pressure, running.' },
    line_temperature: { ...shared.pipe, description: 'Liquid line where the pressure is read.' },
    ready: shared.readyParameter,
    target: {
      kind: 'number',
      quantity: 'temperatureDifference',
      minimum: fahrenheitDifferenceK(1),
      maximum: fahrenheitDifferenceK(40),
      optional: true,
      description: 'Subcooling by the maker of the unit. Left out: the usual 5 to 15 degF.',
    },
    role: shared.roleParameter,
    gauge_accuracy: shared.liquidGaugeParameter,
    probe_accuracy: shared.probeParameter,
    elevation: elevationParameter,
  },
  returns: {
    kind: 'verdict',
    description:
      'On target (maker’s), In range (usual), Low, High, Flash gas or probe (below zero), Within doubt or Refused, then the figures.',
  },
  source: `Maker’s target ± 3 degF (verifier 4): California RA3.2.2 (2008), from memory. Without it ${usual}.`,
  examples: [
    {
      arguments: { refrigerant: 'R-410A', pressure: 365, line_temperature: 98, gauge_accuracy: 2 },
      gives: 'In range: subcooling 11.',
      source: `bubble point of R-410A by CoolProp 8.0.0, 109.7 degF; ${usual}`,
    },
    {
      arguments: {
        refrigerant: 'R-410A',
        pressure: 365,
        line_temperature: 108,
        gauge_accuracy: 2,
        ready: 'Ready',
      },
      gives: 'Low: subcooling 1.',
      source: usual,
    },
    {
      arguments: { refrigerant: 'R-410A', pressure: 365, line_temperature: 115 },
      gives: 'Flash gas or probe: subcooling -5.',
      source: 'definition: liquid is never warmer than its bubble point',
    },
  ],
  compute: (args) =>
    subcoolingCheck({
      refrigerant: args.refrigerant,
      pressurePa: args.pressure,
      lineTemperatureK: args.line_temperature,
      ready: args.ready,
      targetK: args.target,
      role: args.role,
      accuracy: { gaugePa: args.gauge_accuracy, probeK: args.probe_accuracy },
    }),
});
