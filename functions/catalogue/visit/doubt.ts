import { lineDoubtK } from '../../../src/visit/superheat.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { probeParameter, suctionGaugeParameter } from './shared-parameters.ts';

export const doubt = defineFunction({
  id: 'DOUBT',
  family: 'visit',
  summary: 'By how much a superheat or subcooling may be wrong because of gauge and probe.',
  parameters: {
    refrigerant: refrigerantParameter,
    pressure: { kind: 'number', quantity: 'pressure', description: 'Pressure read on the gauge.' },
    curve: {
      kind: 'choice',
      choices: ['dew', 'bubble'],
      default: 'dew',
      description: 'dew for superheat (used if left out), bubble for subcooling.',
    },
    gauge_accuracy: suctionGaugeParameter,
    probe_accuracy: probeParameter,
    elevation: elevationParameter,
  },
  returns: {
    kind: 'number',
    quantity: 'temperatureDifference',
    description: 'Half-width: 2.4 means plus or minus 2.4.',
  },
  source:
    'Slope of the saturation curve times gauge accuracy, with the probe root-sum-square. Gauge ± 3.5 psi (liquid side 7): California RA3.2.2.2 (2013).',
  examples: [
    {
      arguments: { refrigerant: 'R-410A', pressure: 118 },
      gives: 2.37,
      tolerance: 0.15,
      source: 'root-sum-square of 1.54 degF (slope of R-410A, CoolProp 8.0.0) and 1.8 degF',
    },
    {
      arguments: { refrigerant: 'R-22', pressure: 68.6, probe_accuracy: 0 },
      gives: 2.41,
      tolerance: 0.1,
      source: 'slope of R-22, CoolProp 8.0.0',
    },
    {
      arguments: { refrigerant: 'R-22', pressure: 68.6, gauge_accuracy: -1 },
      gives: '#NUM!',
      source: 'definition: a half-width is not negative',
    },
  ],
  compute: ({ refrigerant, pressure, curve, gauge_accuracy, probe_accuracy }) =>
    lineDoubtK(
      { refrigerant, pressurePa: pressure, curve },
      { gaugePa: gauge_accuracy, probeK: probe_accuracy },
    ),
});
